package journal

import (
	"bytes"
	"errors"
	"testing"
	"time"

	"pgregory.net/rapid"
)

// memory is a file in memory that may fail after so many bytes.
type memory struct {
	data []byte
	room int // -1 without end
}

func (m *memory) WriteAt(b []byte, at int64) (int, error) {
	n := len(b)
	if m.room >= 0 {
		n = min(n, m.room)
		m.room -= n
	}
	m.data = append(m.data[:at], b[:n]...)
	if n < len(b) {
		return n, errors.New("no space left")
	}
	return n, nil
}

func (m *memory) Truncate(n int64) error { m.data = m.data[:n]; return nil }
func (m *memory) Sync() error            { return nil }

var someone = Head{Study: "a.toml", User: "mechanic", Host: "shop", PID: 7, Since: time.Unix(1000, 0).UTC()}

func begun(t interface{ Fatal(...any) }, m *memory) *Writer {
	w, err := Begin(m, someone)
	if err != nil {
		t.Fatal(err)
	}
	return w
}

func TestReadsBackEveryState(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		m := &memory{room: -1}
		w := begun(t, m)
		var last []byte
		texts := rapid.SliceOfN(rapid.SliceOfN(rapid.ByteRange('a', 'd'), 0, 40), 1, 12).Draw(t, "texts")
		for i, text := range texts {
			if err := w.Add(text, Edit{time.Unix(int64(i), 5), "edit"}); err != nil {
				t.Fatal(err)
			}
			last = text
		}
		f := Read(m.data)
		if f.Torn || f.Head != someone || len(f.Edits) != len(texts) || !bytes.Equal(f.Text, last) {
			t.Fatalf("torn %v, %+v, %d edits of %d, %q of %q", f.Torn, f.Head, len(f.Edits), len(texts), f.Text, last)
		}
		if f.Edits[0].Name != "edit" || !f.Edits[0].At.Equal(time.Unix(0, 5)) {
			t.Fatalf("%+v", f.Edits[0])
		}
	})
}

// Wherever a journal is cut off or a byte of it turned, what stands before is
// read and nothing that was never written comes back.
func TestATornEndIsDropped(t *testing.T) {
	m := &memory{room: -1}
	w := begun(t, m)
	ends := []int64{w.end}
	states := [][]byte{nil}
	for _, text := range []string{"ribs = 8\nname = 1\n", "ribs = 9\nname = 1\n", "ribs = 10\nname = 1\n", ""} {
		if err := w.Add([]byte(text), Edit{time.Unix(1, 0), text}); err != nil {
			t.Fatal(err)
		}
		ends, states = append(ends, w.end), append(states, []byte(text))
	}
	for cut := range m.data {
		whole := 0
		for i, e := range ends {
			if int64(cut) >= e {
				whole = i
			}
		}
		if f := Read(m.data[:cut]); len(f.Edits) != whole || !bytes.Equal(f.Text, states[whole]) {
			t.Fatalf("cut at %d: %d edits, %q; %d whole", cut, len(f.Edits), f.Text, whole)
		}
		turned := bytes.Clone(m.data)
		turned[cut] ^= 0x20
		if f := Read(turned); !f.Torn || len(f.Edits) > whole {
			t.Fatalf("byte %d turned: torn %v, %d edits, %d whole before it", cut, f.Torn, len(f.Edits), whole)
		}
	}
}

func TestGoesOnAfterAFullDisk(t *testing.T) {
	m := &memory{room: 300}
	w := begun(t, m)
	if err := w.Add([]byte("one"), Edit{Name: "one"}); err != nil {
		t.Fatal(err)
	}
	if err := w.Add(bytes.Repeat([]byte("x"), 400), Edit{Name: "two"}); err == nil {
		t.Fatal("a full disk, and no error")
	}
	m.room = -1
	if err := w.Add([]byte("three"), Edit{Name: "three"}); err != nil {
		t.Fatal(err)
	}
	if f := Read(m.data); f.Torn || len(f.Edits) != 2 || string(f.Text) != "three" {
		t.Errorf("torn %v, %+v, %q", f.Torn, f.Edits, f.Text)
	}
}

// A save drops the states before it and keeps the one after it in the same
// breath: wherever the disk is full, one of them is there.
func TestSavedNeverLeavesAGap(t *testing.T) {
	for room := 0; room < 600; room++ {
		m := &memory{room: -1}
		w := begun(t, m)
		for _, s := range []string{"one", "two"} {
			if err := w.Add([]byte(s), Edit{Name: s}); err != nil {
				t.Fatal(err)
			}
		}
		m.room = room
		err := w.Saved("file of one", []byte("two"), Edit{Name: "two"})
		f := Read(m.data)
		if string(f.Text) != "two" || err == nil && (len(f.Edits) != 1 || f.Base != "file of one") || err != nil && len(f.Edits) != 2 {
			t.Fatalf("room for %d bytes, %v: %+v, %q", room, err, f.Edits, f.Text)
		}
	}
	m := &memory{room: -1}
	w := begun(t, m)
	if err := w.Add([]byte("one"), Edit{Name: "one"}); err != nil {
		t.Fatal(err)
	}
	if err := w.Saved("file of one", nil); err != nil {
		t.Fatal(err)
	}
	if f := Read(m.data); !f.Clean || len(f.Edits) != 0 || f.Text != nil {
		t.Errorf("%+v", f)
	}
}

func TestALongJournalIsCutAtASave(t *testing.T) {
	m := &memory{room: -1}
	w := begun(t, m)
	for i := range 3 {
		if err := w.Add(bytes.Repeat([]byte{byte('a' + i)}, mostLength/2), Edit{Name: "large"}); err != nil {
			t.Fatal(err)
		}
	}
	if err := w.Saved("file", nil); err != nil || len(m.data) > 1000 {
		t.Errorf("%d bytes are left, %v", len(m.data), err)
	}
	if f := Read(m.data); !f.Clean || f.Head != someone || f.Base != "file" {
		t.Errorf("%+v", f)
	}
}

// What is no journal, or one of a version to come, is not taken for a clean
// one.
func TestForeignFilesAreNotClean(t *testing.T) {
	m := &memory{room: -1}
	begun(t, m)
	turned := bytes.Clone(m.data)
	turned[len(magic)+frame+4] ^= 1
	for name, src := range map[string][]byte{
		"empty": nil, "another file": []byte("precious"), "a version to come": []byte("backspan journal 2\n"),
		"no head": []byte(magic), "a head with a byte turned": turned, "a state without a head": appendRecord([]byte(magic), wholeRecord, editBytes([]Edit{{}}), []byte("x")),
	} {
		if f := Read(src); f.Clean || f.Text != nil {
			t.Errorf("%s: %+v", name, f)
		}
	}
	if !Read(m.data).Clean {
		t.Error("one just begun is not clean")
	}
}

func FuzzRead(f *testing.F) {
	m := &memory{room: -1}
	w := begun(f, m)
	_ = w.Add([]byte("one"), Edit{Name: "one"})
	_ = w.Add([]byte("two"), Edit{Name: "two"})
	f.Add(m.data)
	f.Add([]byte(magic))
	f.Fuzz(func(t *testing.T, src []byte) {
		found := Read(src)
		if found.Clean && found.Torn || (len(found.Edits) == 0) != (found.Text == nil) {
			t.Errorf("%+v", found)
		}
	})
}

// faulty fails at one step; a write is then torn.
type faulty struct {
	memory
	fail, steps int
}

var errFault = errors.New("fault")

func (f *faulty) step() error {
	if f.steps++; f.steps == f.fail {
		return errFault
	}
	return nil
}

func (f *faulty) WriteAt(b []byte, at int64) (int, error) {
	if err := f.step(); err != nil {
		n, _ := f.memory.WriteAt(b[:len(b)/2], at)
		return n, err
	}
	return f.memory.WriteAt(b, at)
}

func (f *faulty) Truncate(n int64) error {
	if err := f.step(); err != nil {
		return err
	}
	return f.memory.Truncate(n)
}

func (f *faulty) Sync() error { return f.step() }

// Whichever step fails, every edit that was taken comes back.
func TestAFaultAtEveryStep(t *testing.T) {
	texts := []string{"one\ntwo\n", "one\ntwo\nthree\n", "one\n", "one\n1\n"}
	for fail := 1; ; fail++ {
		f := &faulty{memory: memory{room: -1}, fail: fail}
		w, err := Begin(f, someone)
		if err != nil {
			continue
		}
		taken := 0
		last := ""
		for _, text := range texts {
			if w.Add([]byte(text), Edit{Name: text}) == nil {
				taken, last = taken+1, text
			}
			_ = w.Sync()
		}
		if got := Read(f.data); len(got.Edits) != taken || string(got.Text) != last {
			t.Errorf("step %d: %d edits of %d, %q of %q", fail, len(got.Edits), taken, got.Text, last)
		}
		if taken < len(texts)-1 {
			t.Errorf("step %d: one fault cost %d edits", fail, len(texts)-taken)
		}
		if f.steps < fail {
			return
		}
	}
}

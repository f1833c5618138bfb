package store

import (
	"bytes"
	"fmt"
	"math"
	"reflect"
	"strings"
	"testing"

	"backspan/model"
	"backspan/model/param"

	"pgregory.net/rapid"
)

func TestRoundTripIsExact(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := drawStudy(t)
		src := Encode(s)
		back, err := Decode("drawn.toml", src)
		if err != nil {
			t.Fatalf("%v in\n%s", err, src)
		}
		if !reflect.DeepEqual(s, back) {
			t.Fatalf("another study came back from\n%s", src)
		}
		if again := Encode(back); !bytes.Equal(src, again) {
			t.Fatalf("wrote\n%s\nthen\n%s", src, again)
		}
		windows := append([]byte("\xef\xbb\xbf"), bytes.ReplaceAll(src, []byte("\n"), []byte("\r\n"))...)
		if other, err := Decode("drawn.toml", windows); err != nil || !reflect.DeepEqual(s, other) {
			t.Fatalf("with a byte order mark and CRLF another study came back, or %v", err)
		}
	})
}

func TestSampleIsStable(t *testing.T) {
	src := Encode(model.Sample())
	back, err := Decode("sample.toml", src)
	if err != nil {
		t.Fatal(err)
	}
	if again := Encode(back); !bytes.Equal(src, again) {
		t.Errorf("wrote\n%s\nthen\n%s", src, again)
	}
	if !bytes.Equal(src, Encode(model.Sample())) {
		t.Error("equal studies, different bytes")
	}
	if !bytes.HasPrefix(src, []byte(heading+"format = 1 ")) {
		t.Errorf("starts with %.200s", src)
	}
}

// Keys must be bare and belong to one thing only, or a file could not be read
// back.
func TestDeclarationsFitAFile(t *testing.T) {
	v := model.NewVariant("A")
	for name, sections := range map[string][]param.Section{"study": model.NewStudy("").Sections(), variantKey: v.Sections()} {
		seen := map[string]bool{formatKey: name == "study", variantKey: name == "study"}
		tables := registerOf(sections).tables
		for _, sec := range sections {
			for _, p := range sec.Params {
				key := join(sec.Key, p.FileKey())
				if seen[key] || tables[key] {
					t.Errorf("%s: the key %s stands for two things", name, key)
				}
				seen[key] = true
				if strings.ContainsFunc(strings.ReplaceAll(key, ".", ""), func(r rune) bool { return !bareKeyRune(r) }) {
					t.Errorf("%s: the key %s is not bare", name, key)
				}
				if r := remark(p); strings.ContainsFunc(r, unseen) {
					t.Errorf("%s: the remark %q breaks its line", key, r)
				}
			}
		}
	}
}

func TestWhatDoesNotApplyIsKept(t *testing.T) {
	v := model.NewVariant("A")
	hidden := func() (param.Param, bool) {
		for _, sec := range v.Sections() {
			for _, p := range sec.Params {
				if (sec.Hidden || !p.Shown()) && p.Kind == param.KindWhole {
					return p, true
				}
			}
		}
		return param.Param{}, false
	}
	p, ok := hidden()
	if !ok {
		t.Skip("nothing is hidden")
	}
	s := model.NewStudy("")
	s.Variants = []model.Variant{v}
	if bytes.Contains(Encode(s), []byte("\n"+p.FileKey()+" = ")) {
		t.Errorf("%s does not apply and is at its default, yet written", p.FileKey())
	}
	if err := p.SetNumber(p.Max); err != nil {
		t.Fatal(err)
	}
	s.Variants[0] = v
	back, err := Decode("x", Encode(s))
	if err != nil {
		t.Fatal(err)
	}
	v = back.Variants[0]
	if p, _ := hidden(); fmt.Sprint(p.FileValue()) != fmt.Sprint(int(p.Max)) {
		t.Errorf("%s came back as %v", p.FileKey(), p.FileValue())
	}
}

func TestSpelling(t *testing.T) {
	for given, want := range map[param.Literal]string{
		"600": "600.0", "2.5": "2.5", "1e-06": "1e-06", "1e+21": "1e+21", "-0": "0.0", "NaN": "nan", "+Inf": "inf", "-Inf": "-inf",
	} {
		if got := float(given); got != want {
			t.Errorf("float(%s) = %s, want %s", given, got, want)
		}
	}
	if s := quote("a\xffb"); s != "\"a\uFFFDb\"" {
		t.Error(s)
	}
	s := sound()
	s.MarginAsked = math.NaN()
	if _, err := Decode("x", Encode(s)); err == nil || !strings.Contains(err.Error(), "not a finite number") {
		t.Errorf("a study with NaN gave %v", err)
	}
}

func BenchmarkDecode(b *testing.B) {
	s := sound()
	for i := range 9 {
		s.Variants = append(s.Variants, model.NewVariant(fmt.Sprint("variant ", i)))
	}
	src := Encode(s)
	b.SetBytes(int64(len(src)))
	for b.Loop() {
		if _, err := Decode("x", src); err != nil {
			b.Fatal(err)
		}
	}
}

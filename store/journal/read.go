package journal

import (
	"bytes"
	"encoding/binary"
	"encoding/json"
	"time"
)

// Head says whose journal it is.
type Head struct {
	Study string    `json:"study"` // file of the study, "" while it has none
	From  string    `json:"from"`  // folder in which a study without a file was begun
	User  string    `json:"user"`
	Host  string    `json:"host"`
	PID   int       `json:"pid"`
	Since time.Time `json:"since"`
	Base  string    `json:"base"` // fingerprint of the study's file when the journal was begun
}

// Found is what a journal holds.
type Found struct {
	Head  Head
	Edits []Edit // oldest first
	Text  []byte // the last state; nil when there is none
	Base  string // fingerprint of the file that the edits started from
	Torn  bool   // the end could not be read
	Clean bool   // a whole head, and nothing that could not be read
}

// Edit is one step that was kept.
type Edit struct {
	At   time.Time
	Name string
}

// Read takes a journal as it was found. What cannot be read ends it.
func Read(src []byte) Found {
	var f Found
	left, ok := bytes.CutPrefix(src, []byte(magic))
	headed := false
	for ok && len(left) > 0 {
		var kind byte
		var body []byte
		if kind, body, left, ok = nextRecord(left); ok {
			headed = headed || kind == headRecord
			ok = headed && f.take(kind, body)
		}
	}
	f.Torn = !ok
	f.Clean = ok && headed
	return f
}

func (f *Found) take(kind byte, body []byte) bool {
	switch kind {
	case headRecord:
		err := json.Unmarshal(body, &f.Head)
		f.Base = f.Head.Base
		return err == nil
	case savedRecord:
		return f.takeSaved(body)
	}
	edits, body, ok := cutEdits(body)
	if !ok || len(edits) == 0 {
		return false
	}
	switch {
	case kind == wholeRecord:
		f.Text = append([]byte{}, body...)
	case kind == deltaRecord && f.Text != nil:
		text, err := applied(f.Text, body)
		if err != nil {
			return false
		}
		f.Text = text
	default:
		return false
	}
	f.Edits = append(f.Edits, edits...)
	return true
}

// takeSaved drops what was before, and takes the state that came with the news.
func (f *Found) takeSaved(body []byte) bool {
	base, body, ok := cutText(body)
	if !ok {
		return false
	}
	edits, text, ok := cutEdits(body)
	if !ok {
		return false
	}
	f.Base, f.Edits, f.Text = base, edits, nil
	if len(edits) > 0 {
		f.Text = append([]byte{}, text...)
	}
	return true
}

func textBytes(s string) []byte { return append(binary.AppendUvarint(nil, uint64(len(s))), s...) }

func cutText(b []byte) (s string, rest []byte, ok bool) {
	length, n := binary.Uvarint(b)
	if n <= 0 || length > uint64(len(b)-n) {
		return "", nil, false
	}
	b = b[n:]
	return string(b[:length]), b[length:], true
}

func editBytes(edits []Edit) []byte {
	b := binary.AppendUvarint(nil, uint64(len(edits)))
	for _, e := range edits {
		b = binary.AppendVarint(b, e.At.UnixNano())
		b = append(b, textBytes(e.Name)...)
	}
	return b
}

func cutEdits(b []byte) (edits []Edit, rest []byte, ok bool) {
	count, n := binary.Uvarint(b)
	if n <= 0 {
		return nil, nil, false
	}
	for b = b[n:]; count > 0; count-- {
		var e Edit
		if e, b, ok = cutEdit(b); !ok {
			return nil, nil, false
		}
		edits = append(edits, e)
	}
	return edits, b, true
}

func cutEdit(b []byte) (e Edit, rest []byte, ok bool) {
	at, n := binary.Varint(b)
	if n <= 0 {
		return e, nil, false
	}
	name, rest, ok := cutText(b[n:])
	return Edit{time.Unix(0, at), name}, rest, ok
}

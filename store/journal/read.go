package journal

import (
	"encoding/binary"
	"encoding/json"
	"strings"
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
}

// Found is what a journal holds.
type Found struct {
	Head  Head
	Edits []Edit // oldest first
	Text  []byte // the last state; nil when there is none
	Torn  bool   // the end was cut off
	whole int64  // bytes that stand whole
}

// Edit is one step that was kept.
type Edit struct {
	At   time.Time
	Name string
}

// Read takes a journal as it was found. What cannot be read ends it.
func Read(src []byte) Found {
	var f Found
	rest, ok := strings.CutPrefix(string(src), magic)
	if !ok {
		f.Torn = len(src) > 0
		return f
	}
	for left := []byte(rest); len(left) > 0; {
		kind, body, after, ok := nextRecord(left)
		if !ok || !f.take(kind, body) {
			f.Torn = true
			break
		}
		left = after
		f.whole = int64(len(src) - len(left))
	}
	f.whole = max(f.whole, int64(len(magic)))
	return f
}

func (f *Found) take(kind byte, body []byte) bool {
	switch kind {
	case headRecord:
		return json.Unmarshal(body, &f.Head) == nil
	case savedRecord:
		f.Edits, f.Text = nil, nil
		return len(body) == 0
	}
	edits, body, ok := cutEdits(body)
	if !ok {
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

func editBytes(edits []Edit) []byte {
	b := binary.AppendUvarint(nil, uint64(len(edits)))
	for _, e := range edits {
		b = binary.AppendVarint(b, e.At.UnixNano())
		b = binary.AppendUvarint(b, uint64(len(e.Name)))
		b = append(b, e.Name...)
	}
	return b
}

func cutEdits(b []byte) (edits []Edit, rest []byte, ok bool) {
	count, n := binary.Uvarint(b)
	if n <= 0 || count == 0 {
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
	b = b[n:]
	length, n := binary.Uvarint(b)
	if n <= 0 || length > uint64(len(b)-n) {
		return e, nil, false
	}
	b = b[n:]
	return Edit{time.Unix(0, at), string(b[:length])}, b[length:], true
}

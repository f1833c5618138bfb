package journal

import (
	"encoding/json"
	"io"
)

// File is what a journal is written to.
type File interface {
	io.WriterAt
	Truncate(size int64) error
	Sync() error
}

// Writer adds to a journal. After a failed write the next one begins where
// the last good record ends.
type Writer struct {
	file File
	head []byte
	end  int64  // of the last whole record
	text []byte // of the last state; nil before the first

	behind bool // something may stand behind the end
}

// Begin makes the file a journal without states.
func Begin(f File, h Head) (*Writer, error) {
	head, err := json.Marshal(h)
	if err != nil {
		return nil, err
	}
	w := &Writer{file: f, head: appendRecord([]byte(magic), headRecord, head)}
	return w, w.restart()
}

// Resume goes on behind what was found in the file, under a new head.
func Resume(f File, h Head, found Found) (*Writer, error) {
	head, err := json.Marshal(h)
	if err != nil {
		return nil, err
	}
	w := &Writer{file: f, head: appendRecord([]byte(magic), headRecord, head), end: found.whole, text: found.Text, behind: true}
	return w, w.add(appendRecord(nil, headRecord, head))
}

// mostLength is how long a journal grows before it is cut at a save.
const mostLength = 4 << 20

// Clear drops all states: they are saved elsewhere. A journal that is not long
// only says so, because cutting a file waits for the disk where writing does
// not.
func (w *Writer) Clear() error {
	w.text = nil
	if w.end > mostLength {
		return w.restart()
	}
	return w.add(appendRecord(nil, savedRecord))
}

func (w *Writer) restart() error {
	w.end, w.text, w.behind = 0, nil, true
	return w.add(w.head)
}

// Add keeps a state and the edits that led to it, one at least.
func (w *Writer) Add(text []byte, edits ...Edit) error {
	kind, body := byte(wholeRecord), text
	if w.text != nil {
		kind, body = deltaRecord, delta(w.text, text)
	}
	if err := w.add(appendRecord(nil, kind, editBytes(edits), body)); err != nil {
		return err
	}
	w.text = append(w.text[:0], text...)
	return nil
}

// add writes a record; the file is cut only where something stands behind the
// end.
func (w *Writer) add(record []byte) error {
	if w.behind {
		if err := w.file.Truncate(w.end); err != nil {
			return err
		}
		w.behind = false
	}
	if _, err := w.file.WriteAt(record, w.end); err != nil {
		w.behind = true
		return err
	}
	w.end += int64(len(record))
	return nil
}

// Sync returns when what was added outlasts a power cut.
func (w *Writer) Sync() error { return w.file.Sync() }

package main

import (
	"bufio"
	"bytes"
	"context"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"os"
	"path/filepath"

	"backspan/model/explore"
	"backspan/store"
	"backspan/store/report"
)

const partFormat = 1

// partHead is the first line of a part file: enough to put the question again.
type partHead struct {
	Format   int             `json:"backspan_part"`
	Program  string          `json:"program"`
	Name     string          `json:"command"`
	Variant  string          `json:"variant"`
	Question json.RawMessage `json:"question"`
	Study    string          `json:"study"` // as a file holds it
	Part     int             `json:"part"`
	Of       int             `json:"of"`
	Total    int             `json:"total"`
}

// same reports whether two parts belong to one question.
func (h partHead) same(o partHead) bool {
	h.Part, o.Part = 0, 0
	a, errA := json.Marshal(h)
	b, errB := json.Marshal(o)
	return errA == nil && errB == nil && bytes.Equal(a, b)
}

// writePart works one part and writes its records, one a line, as they are
// found. A file that is there already is left alone; one that was not finished
// is removed.
func writePart[R any](ctx context.Context, p program, e *exploration, name string, q question[R], a asked[R]) error {
	span, k, n, err := partOf(*e.part, a.total)
	if err != nil {
		return fmt.Errorf("%s: %w", name, err)
	}
	put, err := json.Marshal(q)
	if err != nil {
		return err
	}
	path := *e.out
	if path == "" {
		path = fmt.Sprintf("%s-%d-of-%d.part", name, k, n)
	}
	path = p.inDir(path)
	if err := store.NoStudy(path); err != nil {
		return err
	}
	head := partHead{Format: partFormat, Program: buildName(), Name: name, Variant: e.at.Name, Question: put,
		Study: string(store.Encode(e.study)), Part: k, Of: n, Total: a.total}
	f, err := os.OpenFile(path, os.O_WRONLY|os.O_CREATE|os.O_EXCL, 0o644)
	if err != nil {
		return fmt.Errorf("%s: the part is not written: %w", name, err)
	}
	shown := p.progress(a.what, (span.To-span.From)*a.steps)
	err = fill(ctx, f, head, a, span, shown)
	shown.end()
	if err != nil {
		return errors.Join(fmt.Errorf("%s: part %d of %d is not finished: %w", name, k, n, err), os.Remove(path))
	}
	fmt.Fprintf(p.err, "wrote part %d of %d, %d %s, to %s\n", k, n, shown.now, a.what, report.Printable(path))
	return nil
}

// fill writes a part and closes its file. It says the first thing that went
// wrong: a full disk refuses every step after it too.
func fill[R any](ctx context.Context, f *os.File, head partHead, a asked[R], span explore.Span, shown *progress) error {
	w := bufio.NewWriter(f)
	err := records(ctx, w, head, a, span, shown)
	if err == nil {
		err = w.Flush()
	}
	if err == nil {
		err = f.Sync()
	}
	if closed := f.Close(); err == nil {
		err = closed
	}
	return err
}

func records[R any](ctx context.Context, w io.Writer, head partHead, a asked[R], span explore.Span, shown *progress) error {
	enc := json.NewEncoder(w)
	if err := enc.Encode(head); err != nil {
		return err
	}
	if err := a.run(ctx, span, shown.step, func(r R) error { return enc.Encode(r) }); err != nil {
		return err
	}
	return enc.Encode(partEnd{End: span.To - span.From})
}

// partEnd is the last line: without it the file was cut off.
type partEnd struct {
	End int `json:"records"`
}

func (p program) inDir(path string) string {
	if filepath.IsAbs(path) {
		return path
	}
	return filepath.Join(p.dir, path)
}

// opened is a part file whose head was read.
type partFile struct {
	path string
	head partHead
	dec  *json.Decoder
	file *os.File
}

func openPart(path string) (*partFile, error) {
	if info, err := os.Stat(path); err == nil && !info.Mode().IsRegular() {
		return nil, fmt.Errorf("%s is not an ordinary file; give the file of a part", report.Printable(path)) // a pipe could be waited for without end
	}
	f, err := os.Open(path)
	if err != nil {
		return nil, err
	}
	pf := &partFile{path: report.Printable(path), dec: json.NewDecoder(bufio.NewReader(f)), file: f}
	if err := pf.dec.Decode(&pf.head); err != nil || pf.head.Format == 0 {
		return nil, errors.Join(fmt.Errorf("%s is not a part file", pf.path), f.Close())
	}
	switch h := pf.head; {
	case h.Format > partFormat:
		err = fmt.Errorf("%s was written by a newer Backspan", pf.path)
	case h.Of < 1 || h.Part < 1 || h.Part > h.Of || h.Of > h.Total:
		err = fmt.Errorf("%s calls itself part %d of %d of %d records", pf.path, h.Part, h.Of, h.Total)
	case h.Program != buildName():
		err = fmt.Errorf("%s was found by another build of Backspan (%s); parts must come from one build", pf.path, report.Printable(h.Program))
	}
	if err != nil {
		return nil, errors.Join(err, f.Close())
	}
	return pf, nil
}

// readRecords takes the records of a part; it must hold all of them.
func readRecords[R any](pf *partFile, take func(R)) error {
	span := explore.Part(pf.head.Part, pf.head.Of, pf.head.Total)
	for i := range span.To - span.From {
		var r R
		if err := pf.dec.Decode(&r); err != nil {
			return fmt.Errorf("%s is damaged or cut off at record %d: %w", pf.path, i+1, err)
		}
		take(r)
	}
	var end partEnd
	if err := pf.dec.Decode(&end); err != nil || end.End != span.To-span.From {
		return fmt.Errorf("%s is damaged or cut off at its end", pf.path)
	}
	return nil
}

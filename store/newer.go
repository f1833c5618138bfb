package store

import (
	"fmt"

	"backspan/model"
	"backspan/store/report"
)

// Newer says that a file is of a format that this version knows only in part.
type Newer struct {
	File    string
	Format  int64
	LeftOut Problems // what of it could not be read
}

func (n *Newer) Error() string {
	s := fmt.Sprintf("%s is in format %d, but this Backspan knows formats up to %d. It is left as it is; this is what could be read of it", report.Printable(n.File), n.Format, newest())
	switch k := len(n.LeftOut); k {
	case 0:
		return s + "."
	case 1:
		return s + ", without " + leftOut(n.LeftOut[0]) + "."
	default:
		return fmt.Sprintf("%s, without %d entries: %s and so on.", s, k, leftOut(n.LeftOut[0]))
	}
}

func leftOut(p Problem) string { return fmt.Sprintf("%s in line %d", p.Key, p.Line) }

// Glance reads what it can of a file in a newer format, for looking only; the
// error is then a *Newer beside the study. Of a file in a known format it says
// what Decode does.
func Glance(file string, src []byte) (*model.Study, error) {
	s, err := Decode(file, src)
	if err == nil {
		return s, nil
	}
	text, unreadable := textOf(file, src)
	if unreadable != nil {
		return nil, err
	}
	r := reader{file: file, parsed: parse(file, text)}
	n, ok := r.values[formatKey].(int64)
	if !ok || n <= newest() || !r.whole || r.useless || len(r.faults) > 0 {
		return nil, err
	}
	delete(r.values, formatKey)
	s = r.study()
	if len(s.Faults()) > 0 {
		return nil, err
	}
	return s, &Newer{File: file, Format: n, LeftOut: r.faults.inOrder()}
}

// NewerFormat is the format of a file that this version may not write, 0 for
// one that it may.
func NewerFormat(src []byte) int64 {
	if n := formatOf(src); n > newest() {
		return n
	}
	return 0
}

package store

import (
	"bytes"
	"fmt"
	"strings"
	"unicode/utf8"

	"backspan/model"
	"backspan/model/param"
)

const firstWords = "# Backspan study"

const heading = firstWords + `. The unit of a number is part of its key: "…_mm" is in millimetres.
# A save writes the remarks behind the values anew and keeps comments of your own, above them.
`

// Encode writes a study from its declarations. Equal studies give equal
// bytes. What does not apply to the present choices is written when it is not
// at its default, so that going back on a choice loses nothing.
func Encode(s *model.Study) []byte {
	var w writer
	own := commentsFrom(s.Comments)
	w.WriteString(heading + own.at(formatKey))
	w.line(formatKey, fmt.Sprint(newest()), formatRemark)
	w.sections("", s.Sections(), model.NewStudy("").Sections(), own)
	w.decisions(s.Decisions, own)
	fresh := model.NewVariant("")
	defaults := fresh.Sections()
	last := own.at(model.CommentAtEnd)
	for i := range s.Variants {
		own := commentsFrom(s.Variants[i].Comments)
		w.WriteString("\n" + own.at("") + "[[" + variantKey + "]]\n")
		w.sections(variantKey, s.Variants[i].Sections(), defaults, own)
		last += own.left()
	}
	if last += own.left(); last != "" {
		w.WriteString("\n" + last)
	}
	return w.Bytes()
}

const formatRemark = "of this file"

type writer struct{ bytes.Buffer }

func (w *writer) sections(under string, sections, defaults []param.Section, own comments) {
	for _, sec := range sections {
		written := toWrite(sec, defaults, own)
		if len(written) == 0 && (sec.Key == "" || own.of[sec.Key] == "") {
			continue
		}
		if sec.Key != "" {
			w.WriteString("\n" + own.at(sec.Key) + "[" + join(under, sec.Key) + "]\n")
		}
		for _, p := range written {
			w.WriteString(own.at(join(sec.Key, p.FileKey())))
			w.param(p)
		}
	}
}

func toWrite(sec param.Section, defaults []param.Section, own comments) []param.Param {
	var ps []param.Param
	for _, p := range sec.Params {
		if (sec.Hidden || !p.Shown()) && own.of[join(sec.Key, p.FileKey())] == "" {
			if d, ok := param.Find(defaults, sec.Path(p)); ok && p.Same(d) {
				continue
			}
		}
		ps = append(ps, p)
	}
	return ps
}

func (w *writer) param(p param.Param) {
	switch v := p.FileValue().(type) {
	case param.Literal:
		w.line(p.FileKey(), settled(v, p.Unit), remark(p))
	case string:
		w.line(p.FileKey(), quote(v), remark(p))
	case [][]param.Literal:
		w.rows(p, v)
	case nil:
		none := `""`
		if p.Kind == param.KindTable {
			none = "[]"
		}
		w.line(p.FileKey(), none, remark(p))
	default: // int64 and bool are spelt alike in Go and TOML
		w.line(p.FileKey(), fmt.Sprint(v), remark(p))
	}
}

// remarkColumn is fixed, so that changing one value changes one line.
const remarkColumn = 40

func (w *writer) line(key, value, remark string) {
	s := key + " = " + value
	if remark == "" {
		w.WriteString(s + "\n")
		return
	}
	last := s[strings.LastIndexByte(s, '\n')+1:]
	gap := strings.Repeat(" ", max(remarkColumn-utf8.RuneCountInString(last), 2))
	w.WriteString(s + gap + "# " + remark + "\n")
}

// rows puts a few rows on one line and more on a line each.
func (w *writer) rows(p param.Param, rows [][]param.Literal) {
	const mostOnALine = 3
	lines := make([]string, len(rows))
	for i, row := range rows {
		cells := make([]string, len(row))
		for j, c := range row {
			cells[j] = settled(c, p.Columns[j].Unit)
		}
		lines[i] = "[" + strings.Join(cells, ", ") + "]"
	}
	if len(rows) <= mostOnALine {
		w.line(p.FileKey(), "["+strings.Join(lines, ", ")+"]", remark(p))
		return
	}
	w.line(p.FileKey(), "[", remark(p))
	for _, l := range lines {
		w.WriteString("  " + l + ",\n")
	}
	w.WriteString("]\n")
}

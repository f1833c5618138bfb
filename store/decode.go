package store

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"backspan/model"
)

const formatKey, variantKey = "format", "variant"

// mostVariants bounds the memory that a file can ask for.
const mostVariants = 200

// Decode reads a study strictly. What the file does not name keeps its
// default; one of an older format is read as if it were of the newest. The error is Problems: everything wrong with the file at once.
// file is the name used in them.
func Decode(file string, src []byte) (*model.Study, error) {
	text, unreadable := textOf(file, src)
	if unreadable != nil {
		return nil, Problems{*unreadable}
	}
	r := reader{file: file}
	r.parsed, text = forward(file, text)
	if !r.whole && !likeStudy(text, r.lines) {
		return nil, Problems{{File: file, Line: r.faults[0].Line, Text: "is not a Backspan study: " + noStudy + ", and this line is not TOML"}}
	}
	if r.useless {
		return nil, r.faults.inOrder()
	}
	if r.anotherFormat() {
		return nil, r.faults
	}
	s := r.study()
	if len(r.faults) > 0 {
		return nil, r.faults.inOrder()
	}
	takeComments(s, text, r.lines)
	return s, nil
}

const noStudy = `it has neither a line "format = 1" nor a [[variant]]`

// likeStudy is true for a file that was meant to be a study, broken or not.
func likeStudy(text string, lines *outline) bool {
	return strings.HasPrefix(text, firstWords) || lines.line(path{formatKey}) > 0 || lines.line(path{variantKey}) > 0
}

// reader fills a study from a parsed file.
type reader struct {
	parsed
	file    string
	variant string // in whose table the reader is, in words; empty outside
}

func (r *reader) bad(p path, line int, format string, a ...any) {
	text := fmt.Sprintf(format, a...)
	if r.variant != "" {
		text += " (" + r.variant + ")"
	}
	r.faults = append(r.faults, Problem{File: r.file, Line: line, Key: p.String(), Text: text})
}

func (r *reader) badAt(p path, format string, a ...any) { r.bad(p, r.lines.line(p), format, a...) }

// anotherFormat is true when nothing more can be said about the file, and
// notes why: it is no study, or one of a format that is not known here.
func (r *reader) anotherFormat() bool {
	at := path{formatKey}
	v, given := r.values[formatKey]
	if !given && (!r.whole && r.lines.line(at) > 0) {
		return false // its line is among those that could not be read
	}
	if _, variants := r.values[variantKey]; !given && !variants {
		r.bad(nil, 0, "is not a Backspan study: %s", noStudy)
		return true
	}
	if !given {
		r.bad(at, 1, `the file does not say its format; add the line "format = %d" at its top`+r.misspelt(), newest())
		return false
	}
	n, ok := v.(int64)
	switch {
	case !ok:
		r.badAt(at, "must be a whole number; write format = %d", newest())
		return false
	case n > newest():
		r.faults = nil
		r.badAt(at, "the file is in format %d, but this Backspan reads up to format %d; open it with a newer Backspan; it is left as it is", n, newest())
		return true
	case n < 1:
		r.badAt(at, "there is no format %d; write format = %d", n, newest())
	}
	return false
}

// misspelt names a key that was meant as the format.
func (r *reader) misspelt() string {
	for _, key := range r.keys(r.values, nil) {
		if strings.EqualFold(key, formatKey) {
			return fmt.Sprintf(", or write the %s of line %d in small letters", key, r.lines.line(path{key}))
		}
	}
	return ""
}

func (r *reader) study() *model.Study {
	s := model.NewStudy("")
	known := registerOf(s.Sections())
	for _, key := range r.keys(r.values, nil) {
		if key != formatKey && key != variantKey && key != decisionKey {
			r.entry(known, "", key, r.values[key], path{key})
		}
	}
	r.decisions(s)
	named := r.variants(s)
	if r.whole {
		r.studyFaults(s, named)
	}
	return s
}

// keys lists a table's keys in the order of their lines, so that reading one
// file twice says the same twice.
func (r *reader) keys(t map[string]any, at path) []string {
	keys := make([]string, 0, len(t))
	lines := make(map[string]int, len(t))
	for k := range t {
		keys = append(keys, k)
		lines[k] = r.lines.line(at.with(k))
	}
	slices.SortFunc(keys, func(a, b string) int {
		return cmp.Or(lines[a]-lines[b], strings.Compare(a, b))
	})
	return keys
}

// variants reads every [[variant]] and reports which of them have a name.
func (r *reader) variants(s *model.Study) (named []bool) {
	tables, ok := tablesOf(r.values[variantKey])
	if !ok {
		r.badAt(path{variantKey}, "variants are tables; write [[variant]] with two brackets on either side")
		r.whole = false
		return nil
	}
	if len(tables) > mostVariants {
		r.badAt(path{variantKey, element(mostVariants)}, "the file holds %d variants; a study holds at most %d: part it into several files", len(tables), mostVariants)
		tables = tables[:mostVariants]
	}
	for i, t := range tables {
		v := model.NewVariant("")
		r.oneVariant(&v, i, t)
		s.Variants = append(s.Variants, v)
		named = append(named, v.Name != "")
	}
	return named
}

func (r *reader) oneVariant(v *model.Variant, i int, t map[string]any) {
	at := path{variantKey, element(i)}
	known := registerOf(v.Sections())
	if _, given := t[variantName]; !given && r.whole {
		r.badAt(at, `variant %d has no name; add a line name = "…" under its [[variant]]`, i+1)
	}
	r.variant = fmt.Sprintf("variant %d", i+1)
	if name, ok := t[variantName].(string); ok {
		r.variant = "variant " + excerpt(name)
	}
	for _, key := range r.keys(t, at) {
		r.entry(known, "", key, t[key], at.with(key))
	}
	r.variant = ""
}

const variantName, studyReference = "name", "reference"

// studyFaults are those between the parts of a study: nothing of what they
// are about may be wrong by itself.
func (r *reader) studyFaults(s *model.Study, named []bool) {
	for _, f := range s.Faults() {
		switch {
		case f.Variant >= 0 && (named[f.Variant] || r.blank(f.Variant)):
			at := path{variantKey, element(f.Variant), variantName}
			text := f.Text
			name := s.Variants[f.Variant].Name
			if first := s.Index(name); name != "" && first != f.Variant {
				if line := r.lines.line(path{variantKey, element(first), variantName}); line > 0 {
					text += fmt.Sprintf("; the other one stands in line %d", line)
				}
			}
			r.badAt(at, "%s", text)
		case f.Variant < 0 && f.Key == studyReference && !slices.Contains(named, false):
			r.badAt(path{studyReference}, "%s", f.Text)
		case f.Variant < 0 && f.Key != studyReference:
			r.bad(nil, 0, "%s", f.Text)
		}
	}
}

// blank is true when the variant's name is given, but as empty text.
func (r *reader) blank(i int) bool {
	tables, _ := tablesOf(r.values[variantKey])
	name, ok := tables[i][variantName].(string)
	return ok && name == ""
}

// tablesOf takes the two spellings of an array of tables, [[x]] and
// x = [{…}]. Nothing at all is an empty one.
func tablesOf(v any) ([]map[string]any, bool) {
	switch v := v.(type) {
	case nil:
		return nil, true
	case []map[string]any:
		return v, true
	case []any:
		tables := make([]map[string]any, len(v))
		for i, item := range v {
			t, ok := item.(map[string]any)
			if !ok {
				return nil, false
			}
			tables[i] = t
		}
		return tables, true
	}
	return nil, false
}

package store

import (
	"maps"
	"slices"
	"strconv"
	"strings"

	"backspan/model"
)

// takeComments gives study and variants what a person wrote beside their
// values: by key, what stands above it, inside a value or behind it. What a
// save writes by itself is left out.
func takeComments(s *model.Study, src string, o *outline) {
	fresh := model.NewVariant("")
	study, variants := registerOf(s.Sections()), registerOf(fresh.Sections())
	end := 0
	for _, st := range o.statements {
		variant, key := place(st.path)
		if i, ok := elementOf(st.path, decisionKey); ok && i < len(s.Decisions) {
			key = besideDecision(s.Decisions[i])
		}
		text := above(src[end:st.from])
		if end == 0 {
			text = withoutHeadings(text)
		}
		ours := study
		if variant >= 0 {
			ours = variants
		}
		for _, c := range within(src[st.from:st.to]) {
			if c = ours.beyondRemark(key, c); c != "" {
				text = append(text, c)
			}
		}
		putComment(s, variant, key, text)
		end = st.to
	}
	putComment(s, -1, model.CommentAtEnd, above(src[end:]))
}

// place parts a path into the variant, −1 for the study, and the dotted key.
func place(p path) (variant int, key string) {
	if i, ok := elementOf(p, variantKey); ok {
		return i, strings.Join(p[2:], ".")
	}
	return -1, strings.Join(p, ".")
}

// elementOf is which element of an array of tables a path leads into.
func elementOf(p path, array string) (i int, ok bool) {
	if len(p) < 2 || p[0] != array {
		return 0, false
	}
	number, marked := strings.CutPrefix(p[1], elementMark)
	i, err := strconv.Atoi(number)
	return i, marked && err == nil
}

func putComment(s *model.Study, variant int, key string, lines []string) {
	if len(lines) == 0 {
		return
	}
	to := &s.Comments
	if variant >= 0 && variant < len(s.Variants) {
		to = &s.Variants[variant].Comments
	}
	if *to == nil {
		*to = map[string]string{}
	}
	if before := (*to)[key]; before != "" {
		lines = append([]string{before}, lines...)
	}
	(*to)[key] = strings.Join(lines, "\n")
}

// above takes the comments between two statements, with the blank lines among
// them.
func above(gap string) []string {
	var lines []string
	for _, l := range strings.Split(gap, "\n") {
		lines = append(lines, strings.TrimSpace(l))
	}
	return trimmed(lines)
}

// headings are the lines that a save writes at the top, in this version or in
// one before.
var headings = append(strings.Split(strings.TrimSpace(heading), "\n"),
	`# A save writes these comments anew; what you want to keep in words belongs in "notes".`)

func withoutHeadings(lines []string) []string {
	return trimmed(slices.DeleteFunc(lines, func(l string) bool { return slices.Contains(headings, l) }))
}

// trimmed drops blank lines at either end.
func trimmed(lines []string) []string {
	for len(lines) > 0 && lines[0] == "" {
		lines = lines[1:]
	}
	for len(lines) > 0 && lines[len(lines)-1] == "" {
		lines = lines[:len(lines)-1]
	}
	return lines
}

// within takes the comments inside and behind one statement.
func within(text string) []string {
	var found []string
	for s := (scanner{src: text}); s.pos < len(s.src); {
		switch s.src[s.pos] {
		case '#':
			start := s.pos
			s.toLineEnd()
			found = append(found, strings.TrimSpace(text[start:s.pos]))
		case '"', '\'':
			s.text()
		default:
			s.pos++
		}
	}
	return found
}

// beyondRemark is what of a comment beside a value a person wrote: a save's own
// remark is left out, also one of a version before, which goes on with what is
// allowed after the label.
func (g register) beyondRemark(key, comment string) string {
	ours := formatRemark
	p, ok := g.params[key]
	switch {
	case ok:
		ours = remark(p)
	case key != formatKey:
		return comment
	}
	if tail, ok := strings.CutPrefix(comment, "# "+ours); ok && ours != "" {
		if tail = strings.TrimSpace(tail); tail == "" {
			return ""
		}
		return "# " + tail
	}
	if after, found := strings.CutPrefix(comment, "# "+p.Label); ok && found && remarkedBefore(p, after) {
		return ""
	}
	return comment
}

// comments are those of a study or of a variant while it is written.
type comments struct {
	of      map[string]string
	written map[string]bool
}

func commentsFrom(of map[string]string) comments { return comments{of, map[string]bool{}} }

func (c comments) at(key string) string {
	text := c.of[key]
	if text == "" {
		return ""
	}
	c.written[key] = true
	return text + "\n"
}

// left are the comments on what is not written any more.
func (c comments) left() string {
	text := ""
	for _, key := range slices.Sorted(maps.Keys(c.of)) {
		if !c.written[key] {
			text += c.of[key] + "\n"
		}
	}
	return text
}

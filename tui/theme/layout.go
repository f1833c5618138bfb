package theme

import (
	"math"
	"strings"
	"unicode/utf8"

	"github.com/charmbracelet/x/ansi"
)

// Width is how many cells s takes.
func Width(s string) int {
	if printableASCII(s) {
		return len(s)
	}
	if w, ok := ownWidth(s); ok {
		return w
	}
	return ansi.StringWidth(s)
}

// ownWidth measures what the bench draws itself: inks, ASCII, and signs of
// which each takes one cell by itself. It is false for anything else.
func ownWidth(s string) (w int, ok bool) {
	for i := 0; i < len(s); {
		if s[i] == 0x1b {
			n := strings.IndexByte(s[i:], 'm')
			if !strings.HasPrefix(s[i:], "\x1b[") || n < 0 || strings.Trim(s[i+2:i+n], "0123456789;") != "" {
				return 0, false
			}
			i += n + 1
			continue
		}
		r, n := utf8.DecodeRuneInString(s[i:])
		drawn := r >= ' ' && r < 0x7f || r >= 0x2500 && r < 0x25a0 || r >= 0x2800 && r < 0x2900 || strings.ContainsRune("…°²³·±≤≥→←Δ", r)
		if !drawn {
			return 0, false
		}
		w++
		i += n
	}
	return w, true
}

// Fit cuts or pads plain text to w cells, flush left.
func (t *Theme) Fit(s string, w int) string {
	s = t.Cut(s, w)
	return s + blank(w-Width(s))
}

// Right cuts or pads plain text to w cells, flush right.
func (t *Theme) Right(s string, w int) string {
	s = t.Cut(s, w)
	return blank(w-Width(s)) + s
}

// Cut shortens s, plain or painted, to at most w cells and marks the cut.
func (t *Theme) Cut(s string, w int) string {
	switch {
	case w <= 0:
		return ""
	case Width(s) <= w:
		return s
	}
	return ansi.Truncate(s, w, t.Marks.Cut)
}

// Short shortens plain text to at most w cells by taking out its middle, so
// that what tells apart names that begin alike stays: "Depth, engine m…o rear
// end".
func (t *Theme) Short(s string, w int) string {
	if w <= 0 || Width(s) <= w {
		return t.Cut(s, w)
	}
	room := w - Width(t.Marks.Cut)
	tail := ansi.TruncateLeft(s, Width(s)-room/2, "")
	return t.Cut(ansi.Truncate(s, room-Width(tail), "")+t.Marks.Cut+tail, w)
}

// Label is Short, padded to w cells.
func (t *Theme) Label(s string, w int) string {
	s = t.Short(s, w)
	return s + blank(w-Width(s))
}

// Wrap breaks plain text into lines of at most w cells.
func Wrap(s string, w int) []string {
	if w <= 0 || s == "" {
		return nil
	}
	lines := strings.Split(ansi.Wrap(s, w, ""), "\n")
	for i := range lines {
		lines[i] = strings.TrimRight(lines[i], " ")
	}
	return lines
}

// Heading is a rule of w cells with a title set into it at the left and a note
// at the right. The pane that has the focus has its title in a heavy tab; the
// rest of the rule stays as it is, because every cell that changes has to be
// sent.
func (t *Theme) Heading(title, note string, w int, focus bool) string {
	lead, tail, inked := t.Quiet.Paint(t.Marks.Light+" "), " ", t.Strong
	if focus {
		lead, tail, inked = t.Accent.Paint(t.Marks.Heavy+t.Marks.TabLeft+" "), " "+t.Marks.TabRight, t.Accent
	}
	title = t.Short(title, max(w-6, 0))
	room := w - Width(lead+title+tail)
	if note != "" && room >= Width(note)+4 {
		note = " " + note + " "
	} else {
		note = ""
	}
	rule := max(room-Width(note), 0)
	end := min(rule, 1)
	if focus {
		title += tail
		tail = ""
	}
	return t.Cut(lead+inked.Paint(title)+t.Quiet.Paint(tail+strings.Repeat(t.Marks.Light, rule-end)+note+strings.Repeat(t.Marks.Light, end)), w)
}

// Span is a range with the part of it that is usual and a value in it.
type Span struct{ Min, Max, UsualMin, UsualMax, Value float64 }

// Gauge draws a span in w cells, as text. Empty when there is no range.
func (t *Theme) Gauge(s Span, w int) string {
	if s.Max <= s.Min || w < 5 {
		return ""
	}
	at := func(x float64) int {
		share := (x - s.Min) / (s.Max - s.Min)
		return min(max(int(math.Round(share*float64(w-1))), 0), w-1)
	}
	cells := make([]string, w)
	for i := range cells {
		cells[i] = t.Marks.Outside
	}
	if s.UsualMax > s.UsualMin {
		for i := at(s.UsualMin); i <= at(s.UsualMax); i++ {
			cells[i] = t.Marks.Usual
		}
	}
	cells[at(s.Value)] = t.Marks.Spot
	return strings.Join(cells, "")
}

// Segment is a piece of a row: plain text and its ink.
type Segment struct {
	Ink  Ink
	Text string
}

// Row joins segments. The row under the cursor of the pane with the focus is
// painted as one, so that nothing inside it interrupts the paint.
func (t *Theme) Row(here bool, segs ...Segment) string {
	var b strings.Builder
	if here {
		for _, s := range segs {
			b.WriteString(s.Text)
		}
		return t.Cursor.Paint(b.String())
	}
	for _, s := range segs {
		b.WriteString(s.Ink.Paint(s.Text))
	}
	return b.String()
}

// Beside sets blocks of lines side by side with a rule between. Each block has
// its width; all get h lines.
func (t *Theme) Beside(h int, blocks ...Block) []string {
	lines := make([]string, h)
	rule := t.Quiet.Paint(t.Marks.Column)
	for y := range lines {
		var b strings.Builder
		for i, k := range blocks {
			if i > 0 {
				b.WriteString(rule)
			}
			line := ""
			if y < len(k.Lines) {
				line = k.Lines[y]
			}
			b.WriteString(line)
			if i < len(blocks)-1 {
				b.WriteString(blank(k.Width - Width(line)))
			}
		}
		lines[y] = b.String()
	}
	return lines
}

// Block is some lines, none wider than Width.
type Block struct {
	Width int
	Lines []string
}

// Screen turns lines into a view of exactly the window: not a line too many,
// none too wide, and on an ASCII terminal not a character outside ASCII.
func (t *Theme) Screen(lines []string, w, h int) string {
	if len(lines) > h {
		lines = lines[:h]
	}
	for i, l := range lines {
		if Width(l) > w {
			lines[i] = ansi.Truncate(l, w, "")
		}
		lines[i] = strings.TrimRight(lines[i], " ")
	}
	s := strings.Join(lines, "\n")
	if !t.ASCII {
		return s
	}
	return strings.Map(func(r rune) rune {
		if r > 0x7f {
			return '?'
		}
		return r
	}, s)
}

func blank(n int) string {
	if n <= 0 {
		return ""
	}
	return strings.Repeat(" ", n)
}

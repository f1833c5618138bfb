package report

import (
	"fmt"
	"io"
	"regexp"
	"slices"
	"strings"
	"unicode"

	"github.com/charmbracelet/x/ansi"
)

// grid is a titled table of text.
type grid struct {
	title  string
	points []string // said before the table
	head   []string
	rows   [][]string // a row of one cell is a heading for those that follow
	note   string

	under   bool   // it stands under the table before it
	figures bool   // after what names a row there is one column a variant
	second  string // what the second of the columns that name a row holds; "" where there is only one
	named   bool   // the first column is a name for much text in the last
	sheet   bool   // what, value, unit and where it comes from
	beside  bool   // narrow enough for two halves to stand beside each other
}

// The most columns of variants that paper holds beside each other, and the most
// letters of their cells that half a page holds.
const widest, halfPage = 8, 32

// shortest is a table that is not worth parting.
const shortest = 3

func (g *grid) lead() int {
	if g.second != "" {
		return 2
	}
	return 1
}

func (g *grid) narrow() bool {
	return len(g.rows) > shortest && (g.beside || g.figures && g.letters() <= halfPage)
}

// size is the word for so few columns that a small screen holds them.
func (g *grid) size() string {
	const fewest = 3
	if len(g.head)-g.lead() <= fewest {
		return "few"
	}
	return ""
}

// letters are what the widest cells of the variants need beside each other.
func (g *grid) letters() int {
	sum := 0
	for i := g.lead(); i < len(g.head); i++ {
		most := 0
		for _, word := range strings.Fields(g.head[i]) {
			most = max(most, cellWidth(word))
		}
		for _, r := range g.rows {
			if i < len(r) {
				most = max(most, cellWidth(r[i]))
			}
		}
		sum += most + 1
	}
	return sum
}

// parted is the table in as many as paper needs to hold all its columns.
func (g *grid) parted() []grid {
	variants := len(g.head) - g.lead()
	if !g.figures || variants <= widest {
		return []grid{*g}
	}
	parts := (variants + widest - 1) / widest
	tables := make([]grid, parts)
	for i := range tables {
		from, to := g.lead()+i*variants/parts, g.lead()+(i+1)*variants/parts
		tables[i] = *g
		tables[i].head = slices.Concat(g.head[:g.lead()], g.head[from:to])
		tables[i].rows = make([][]string, len(g.rows))
		for j, r := range g.rows {
			if len(r) == 1 {
				tables[i].rows[j] = r
				continue
			}
			tables[i].rows[j] = slices.Concat(r[:g.lead()], r[from:to])
		}
	}
	return tables
}

func writeGrids(w io.Writer, grids []grid, f Format) error {
	var b strings.Builder
	for i, g := range grids {
		if i > 0 {
			b.WriteString("\n")
		}
		if f == Markdown {
			g.markdown(&b)
		} else {
			g.plain(&b)
		}
	}
	_, err := io.WriteString(w, b.String())
	return err
}

func (g grid) plain(b *strings.Builder) {
	fmt.Fprintf(b, "%s\n", Printable(g.title))
	for _, s := range g.points {
		fmt.Fprintf(b, " %s\n", Printable(s))
	}
	if len(g.rows) > 0 || len(g.points) == 0 {
		fmt.Fprintf(b, "%s\n", strings.Join(g.columns(), "\n"))
	}
	if g.note != "" {
		fmt.Fprintf(b, " %s\n", Printable(g.note))
	}
}

func cellWidth(s string) int { return ansi.StringWidth(Printable(s)) }

func (g grid) markdown(b *strings.Builder) {
	rank := "##"
	if g.under {
		rank = "###"
	}
	fmt.Fprintf(b, "%s %s\n\n", rank, headingText(g.title))
	for _, s := range g.points {
		fmt.Fprintf(b, "* %s\n", itemText(s))
	}
	if len(g.rows) > 0 {
		if len(g.points) > 0 {
			b.WriteString("\n")
		}
		g.lines(b)
	}
	if g.note != "" {
		if len(g.rows)+len(g.points) > 0 {
			b.WriteString("\n")
		}
		fmt.Fprintf(b, "%s\n", cellText(g.note))
	}
}

func (g grid) lines(b *strings.Builder) {
	line := func(cells []string) {
		for _, c := range cells {
			b.WriteString("| " + cellText(c) + " ")
		}
		b.WriteString("|\n")
	}
	line(g.head)
	b.WriteString(strings.Repeat("|---", len(g.head)) + "|\n")
	for _, row := range g.rows {
		if len(row) == 1 && len(g.head) > 1 {
			b.WriteString("| **" + cellText(row[0]) + "** " + strings.Repeat("|  ", len(g.head)-1) + "|\n")
			continue
		}
		line(row)
	}
}

// headingText keeps a name that ends in # whole.
func headingText(s string) string { return strings.ReplaceAll(cellText(s), "#", `\#`) }

// opens is what turns the begin of a line into a heading, a quotation, a list
// or a box to tick.
var opens = regexp.MustCompile(`^([0-9]*)([-#>+=\[]|[.)])`)

// itemText keeps a name that begins a point of a list from opening something
// else there.
func itemText(s string) string { return opens.ReplaceAllString(cellText(s), `$1\$2`) }

// cellText keeps a cell a cell, and a name from anywhere the text that it is:
// no markup, no link, no emphasis.
func cellText(s string) string {
	var b strings.Builder
	runes := []rune(Printable(s) + " ")
	for i, r := range runes[:len(runes)-1] {
		if i > 0 && marks(r, runes[i-1], runes[i+1]) || i == 0 && marks(r, ' ', runes[1]) {
			b.WriteByte('\\')
		}
		b.WriteRune(r)
	}
	return b.String()
}

// marks tells whether Markdown would take a letter for more than itself.
func marks(r, before, after rune) bool {
	switch r {
	case '|', '<', '`', '*', '~':
		return true
	case '\\':
		return after > ' ' && after < unicode.MaxASCII && !wordly(after)
	case ']':
		return strings.ContainsRune("([:", after)
	case '_':
		return !wordly(before) || !wordly(after)
	case '&':
		return after == '#' || wordly(after)
	}
	return false
}

func wordly(r rune) bool { return unicode.IsLetter(r) || unicode.IsDigit(r) }

package report

import (
	"fmt"
	"io"
	"strings"

	"github.com/charmbracelet/x/ansi"
)

// grid is a titled table of text.
type grid struct {
	title string
	head  []string
	rows  [][]string
	note  string
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
	fmt.Fprintf(b, "%s\n%s\n", Printable(g.title), strings.Join(g.columns(), "\n"))
	if g.note != "" {
		fmt.Fprintf(b, " %s\n", Printable(g.note))
	}
}

func cellWidth(s string) int { return ansi.StringWidth(Printable(s)) }

func (g grid) markdown(b *strings.Builder) {
	fmt.Fprintf(b, "## %s\n\n", cellText(g.title))
	line := func(cells []string) {
		for _, c := range cells {
			b.WriteString("| " + cellText(c) + " ")
		}
		b.WriteString("|\n")
	}
	line(g.head)
	b.WriteString(strings.Repeat("|---", len(g.head)) + "|\n")
	for _, row := range g.rows {
		line(row)
	}
	if g.note != "" {
		fmt.Fprintf(b, "\n%s\n", cellText(g.note))
	}
}

// cellText keeps a cell a cell, and a name in angle brackets text.
func cellText(s string) string {
	return strings.NewReplacer("|", "\\|", "<", "\\<").Replace(Printable(s))
}

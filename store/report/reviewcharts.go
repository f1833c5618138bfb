package report

import (
	"strings"

	"backspan/model"
)

// plot is one line of every variant's curves, over each other.
type plot struct {
	title string
	lines []chartLine
}

func (r *Reviewed) charts() []plot {
	var plots []plot
	for i, curves := range r.Curves {
		for j, c := range curves {
			if j >= len(plots) {
				plots = append(plots, plot{title: c.Across.Label + ", " + c.Label})
			}
			plots[j].lines = append(plots[j].lines, chartLine{r.Study.Variants[i].Name, c})
		}
	}
	return plots
}

// plotted is how many points of a line a table tells.
const plotted = 6

// grid tells a chart in figures, for a format that holds no drawing.
func (p plot) grid() grid {
	g := grid{title: p.title, head: []string{"variant", "at points of the line"}}
	for _, l := range p.lines {
		g.rows = append(g.rows, []string{l.name, pointsText(l.curve)})
	}
	return g
}

func pointsText(c model.Curve) string {
	n := len(c.Points)
	if n == 0 {
		return c.Why
	}
	var words []string
	for i := range min(n, plotted) {
		at := c.Points[i*(n-1)/max(min(n, plotted)-1, 1)]
		words = append(words, c.Across.Unit.Text(at.Y)+" at "+c.Along.Unit.Text(at.X))
	}
	return strings.Join(words, "; ")
}

// figure draws a chart, or says why there is none.
func (p *page) figure(c plot) {
	p.WriteString("<figure>\n")
	if drawn, ok := chart(p.mark(), c.title, c.lines); ok {
		p.WriteString(drawn)
		for _, l := range c.lines {
			if len(l.curve.Points) == 0 {
				p.note(l.name + ": " + l.curve.Why)
			}
		}
		p.text("figcaption", c.title)
	} else {
		p.text("figcaption", c.title+": none of the variants has this line")
	}
	p.WriteString("</figure>\n")
}

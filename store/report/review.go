package report

import (
	"io"
	"strings"

	"backspan/model"
	"backspan/store/report/elevation"
)

// Reviewed is all that a review of a study's variants is written from.
type Reviewed struct {
	Study    *model.Study
	Compared model.Comparison
	Curves   [][]model.Curve // of each variant
}

// NewReviewed evaluates every variant of the study for a review.
func NewReviewed(s *model.Study) Reviewed {
	r := Reviewed{Study: s, Compared: model.Compare(s, model.EvaluateAll(s))}
	for i := range s.Variants {
		r.Curves = append(r.Curves, model.Curves(s, &s.Variants[i]))
	}
	return r
}

// Review writes a comparison as one document: drawings and curves where the
// format can hold them, figures, assumptions and cautions.
func Review(w io.Writer, r Reviewed, f Format) error {
	if f == HTML {
		return r.page(w)
	}
	grids := append(r.notes(), r.measures())
	for _, c := range r.charts() {
		grids = append(grids, c.grid())
	}
	return writeGrids(w, append(grids, r.tables()...), f)
}

func (r *Reviewed) title() string { return "Review of " + r.Study.Name }

func (r *Reviewed) page(w io.Writer) error {
	p := newPage(r.title(), 1+len(r.Study.Variants))
	for _, g := range r.notes() {
		p.grid(g)
	}
	p.text("h2", "Side elevations, to one scale")
	r.elevations(p)
	p.grid(r.measures())
	p.text("h2", "Curves")
	for _, c := range r.charts() {
		p.text("h3", c.title)
		if drawn, ok := chart(c.title, c.lines); ok {
			p.WriteString("<figure>\n" + drawn + "</figure>\n")
			continue
		}
		p.note("none of the variants has this line")
	}
	for _, g := range r.tables() {
		p.grid(g)
	}
	return p.end(w)
}

// tables are what both formats hold as text.
func (r *Reviewed) tables() []grid {
	grids := comparisonGrids(r.Compared)
	grids[len(grids)-1].note = ""
	for i, feel := range r.Compared.Splits {
		if i != r.Compared.Reference {
			grids = append(grids, splitGrid(Split{r.reference(), r.Study.Variants[i].Name, feel}))
		}
	}
	return append(grids, r.bands(), r.assumptions(), r.cautions())
}

func (r *Reviewed) reference() string { return r.Compared.Outcomes[r.Compared.Reference].Variant }

// notes are a person's own words, each line a line.
func (r *Reviewed) notes() []grid {
	g := grid{title: r.title() + ": notes", head: []string{"of", "note"}, note: "Compared with " + r.reference() + "."}
	add := func(of, text string) {
		for _, line := range strings.Split(strings.TrimSpace(text), "\n") {
			if line = strings.TrimSpace(line); line != "" {
				g.rows = append(g.rows, []string{of, line})
			}
		}
	}
	add(r.Study.Name, r.Study.Notes)
	for i := range r.Study.Variants {
		add(r.Study.Variants[i].Name, r.Study.Variants[i].Notes)
	}
	return []grid{g}
}

// elevations draws the machines in one plane, so that one scale holds for all.
func (r *Reviewed) elevations(p *page) {
	drawings := make([]elevation.Drawing, len(r.Compared.Outcomes))
	drawn := make([]bool, len(drawings))
	var whole elevation.Box
	for i, o := range r.Compared.Outcomes {
		if drawings[i], drawn[i] = elevation.Side(o); !drawn[i] {
			continue
		}
		if whole.Width() == 0 {
			whole = drawings[i].Whole
		}
		whole = whole.Union(drawings[i].Whole)
	}
	p.WriteString("<div class=\"machines\">\n")
	for i, d := range drawings {
		name := r.Compared.Outcomes[i].Variant
		p.WriteString("<figure>\n")
		if drawn[i] {
			p.WriteString(sideView(name, d, whole))
		}
		p.text("figcaption", name+caption(drawn[i]))
		p.WriteString("</figure>\n")
	}
	p.WriteString("</div>\n")
	p.note("The back is at the left, aft is to the right. Black dot: centre of gravity; white: hang points; grey: hip axis. Dashed: a size that no parameter gives.")
}

func caption(drawn bool) string {
	if drawn {
		return ""
	}
	return ": not drawn, because it cannot be built as set"
}

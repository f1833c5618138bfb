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

// Review writes a comparison as one document: first what decides, then
// drawings and curves where the format can hold them, at the end the complete
// figures, assumptions and sources.
func Review(w io.Writer, r Reviewed, f Format) error {
	if f == HTML {
		return r.page(w)
	}
	if _, err := io.WriteString(w, "# "+headingText(r.title())+"\n\n"+cellText(caution)+"\n\n"); err != nil {
		return err
	}
	grids := append(append(r.opening(), r.measures()), r.log()...)
	grids = append(grids, r.differences()...)
	for _, c := range r.charts() {
		grids = append(grids, c.grid())
	}
	return writeGrids(w, append(grids, r.rest()...), f)
}

func (r *Reviewed) title() string { return "Review of " + r.Study.Name }

func (r *Reviewed) page(w io.Writer) error {
	p := &page{}
	p.warn(caution)
	for _, g := range r.opening() {
		p.grid(g)
	}
	r.elevations(p)
	p.grid(r.measures())
	for _, g := range r.log() {
		p.grid(g)
	}
	for _, g := range r.differences() {
		p.grid(g)
		if g.title == momentTitle {
			p.WriteString(r.moments(p.mark()))
		}
	}
	p.heading("h2", "Curves")
	p.WriteString("<div class=\"charts\">\n")
	for _, c := range r.charts() {
		p.figure(c)
	}
	p.WriteString("</div>\n")
	for _, g := range r.rest() {
		p.grid(g)
	}
	return p.end(w, r.title())
}

// opening is what decides.
func (r *Reviewed) opening() []grid {
	return []grid{r.answer(), r.attention()}
}

// log is what was decided so far, and people's own words.
func (r *Reviewed) log() []grid {
	log := logGrids(r.Compared)
	if len(log) == 0 {
		log = []grid{{title: logTitle, note: "No decision is in the study's log yet."}}
	}
	return append(log, r.notes()...)
}

// differences are what parts the variants.
func (r *Reviewed) differences() []grid {
	moment := grid{title: momentTitle, head: append([]string{"because of"}, r.variants()...), rows: feelRows(r.Compared), figures: true,
		note: "what more or less mass does, and what sitting deeper or closer does; they sum to the difference"}
	if len(r.Compared.Outcomes) < 2 {
		return nil
	}
	differ := grid{title: "Parameters that differ", head: append([]string{"parameter"}, r.variants()...), rows: differingRows(r.Compared), figures: true,
		note: "\"-\": the variant has no such parameter. What ends in \"...\" stands in full at the end."}
	if len(differ.rows) == 0 {
		differ.note = "none: the variants are set alike"
	}
	return []grid{moment, differ}
}

const momentTitle = "Hip moment against the reference: mass or depth"

// rest is what both formats hold as text after the curves.
func (r *Reviewed) rest() []grid {
	grids := append([]grid{r.bands(), r.cautions()}, r.readings()...)
	grids = append(append(grids, r.checks()...), r.splits()...)
	return append(append(append(grids, r.assumptions()...), r.sources()), r.inFull()...)
}

func (r *Reviewed) splits() []grid {
	grids := []grid{{title: "Hip moment piece by piece", note: splitNote}}
	for i, feel := range r.Compared.Splits {
		if i == r.Compared.Reference {
			continue
		}
		g := splitGrid(Split{r.reference(), r.Study.Variants[i].Name, feel})
		g.under = true
		if feel.Known {
			g.note = ""
		}
		grids = append(grids, g)
	}
	if len(grids) == 1 {
		return nil
	}
	return grids
}

func (r *Reviewed) reference() string { return r.Compared.Outcomes[r.Compared.Reference].Variant }

// notes are a person's own words, each line a line; none where nobody wrote
// any.
func (r *Reviewed) notes() []grid {
	g := grid{title: "Notes", head: []string{"of", "note"}}
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
	if len(g.rows) == 0 {
		return nil
	}
	return []grid{g}
}

// elevations draws the machines in one plane, so that one scale holds for all.
func (r *Reviewed) elevations(p *page) {
	drawings := make([]elevation.Drawing, len(r.Compared.Outcomes))
	drawn := make([]bool, len(drawings))
	var whole elevation.Box
	low := 0.0
	for i, o := range r.Compared.Outcomes {
		if drawings[i], drawn[i] = elevation.Side(o); !drawn[i] {
			continue
		}
		if whole.Width() == 0 {
			whole = drawings[i].Whole
		}
		whole = whole.Union(drawings[i].Whole)
		low = min(low, foot(drawings[i]))
	}
	p.heading("h2", "Side elevations, to one scale")
	p.WriteString("<div class=\"machines\">\n")
	for i, d := range drawings {
		name := r.Compared.Outcomes[i].Variant
		p.WriteString("<figure>\n")
		if drawn[i] {
			p.WriteString(sideView(p.mark(), name, d, whole, low))
		}
		p.text("figcaption", name+caption(drawn[i]))
		p.WriteString("</figure>\n")
	}
	p.WriteString("</div>\n")
	p.note(elevationNote)
}

const elevationNote = "The hatched back is at the left, aft is to the right; behind it stand pad, frame, rubber mounts, engine, a fan if there is one, and the drive. " +
	"Heavy upright line: the propeller from the side. Small squares: the guard's hoop, cut; dotted between them: the hoop. Chain lines: the thrust line, and fainter the crank's axis. " +
	"Black dot: centre of gravity; white: hang points; grey: hip axis. Dashed: a size that no parameter gives. Letters: the dimensions of the table."

func caption(drawn bool) string {
	if drawn {
		return ""
	}
	return ": not drawn, because it cannot be built as set"
}

package drawing

import (
	"math"

	"backspan/model/unit"
	"backspan/store/report/elevation"
	"backspan/tui/raster"
	"backspan/tui/theme"
)

// picture is one machine on its canvas.
type picture struct {
	m     *Model
	w, h  int
	chain bool // the pieces' depths have a row
	frame raster.Frame
	on    *raster.Canvas
}

// measures are the dimensions that have a row below the picture.
const measures = 3

// rows are left for the picture itself.
func (p *picture) rows(h int) int {
	h -= measures
	if p.chain {
		h--
	}
	return h
}

// scale finds the largest one at which both machines fit, each on a canvas of
// this size, so that they stand alike.
func (p *picture) scale(hand, ref *subject) {
	whole := p.m.whole
	box, high := hand.box(whole), hand.box(whole).Height()
	if ref != nil {
		box = box.Union(ref.box(whole))
		high = math.Max(high, ref.box(whole).Height())
	}
	rows := p.rows(p.h)
	if !p.m.rear {
		rows-- // for the difference
	}
	p.frame.Column = raster.Fit(box.Width(), high, p.w, max(rows, 1))
	p.frame.Left = box.Min.X
	if p.m.rear {
		p.frame.Left = (box.Min.X+box.Max.X)/2 - p.frame.Column*float64(p.w)/2
	}
}

// draw shows s; ref, if any, is what its plate is measured against, and is
// shown itself as a line where ghost is set.
func (p *picture) draw(s, ref *subject, ghost bool) []string {
	rows := p.rows(p.h)
	if ref != nil && !p.m.rear {
		rows--
	}
	rows = max(rows, 0)
	p.on = raster.New(p.w, rows, p.m.th.ASCII)
	b := s.box(p.m.whole)
	p.frame.Top = b.Max.Y + (float64(rows)*2*p.frame.Column-b.Height())/2
	if ghost && ref != nil && !p.m.rear {
		p.ghost(s, ref)
	}
	p.paths(s)
	p.marks(s)
	p.labels(s)
	lines := p.on.Lines()
	p.on = raster.New(p.w, p.h-rows, p.m.th.ASCII)
	p.dimensions(s, ref)
	return append(lines, p.on.Lines()...)
}

func (p *picture) paths(s *subject) {
	for _, path := range s.drawing.Paths {
		points := make([][2]float64, len(path.Points))
		for i, q := range path.Points {
			points[i] = p.frame.At(q.X, q.Y)
		}
		ink := p.m.ink(path.Tone, path.Stroke)
		if path.Key == "thrust" {
			ink = p.m.th.Accent
		}
		p.on.Path(raster.Pen{Stroke: strokes[path.Stroke], Ink: ink}, points...)
	}
}

// ghost shows where the reference has its plate.
func (p *picture) ghost(s, ref *subject) {
	x, b := ref.outcome.Stack.Depth, s.box(p.m.whole)
	p.on.Path(raster.Pen{Stroke: raster.Dotted, Ink: p.m.th.Quiet}, p.frame.At(x, b.Max.Y), p.frame.At(x, b.Min.Y))
}

// cell is the cell under a place.
func (p *picture) cell(at elevation.Point) (col, row int) {
	q := p.frame.At(at.X, at.Y)
	return int(math.Floor(q[0])), int(math.Floor(q[1]))
}

func (p *picture) marks(s *subject) {
	for _, k := range s.drawing.Marks {
		col, row := p.cell(k.At)
		p.on.Mark(col, row, p.m.sign(k.Kind), p.m.th.Strong)
	}
}

// labels writes words inside their outlines, along or from the top down, and
// the name of the machine.
func (p *picture) labels(s *subject) {
	name := p.m.th.Short(s.name, p.w*3/4)
	p.on.Put(p.w-theme.Width(name), 0, name, p.m.th.Strong)
	for _, l := range s.drawing.Labels {
		col, row := p.cell(l.At)
		n := theme.Width(l.Text)
		wide, high := int(l.Width/p.frame.Column), int(l.Height/p.frame.Column/2)
		switch {
		case l.Width <= 0:
			p.on.Put(col+1, row, l.Text, p.m.th.Quiet)
		case wide >= n+2:
			p.near(col-n/2, row, high/2-1, l.Text)
		case wide >= 2 && high >= n+2:
			p.on.Down(col, row-n/2, l.Text, p.m.th.Quiet)
		}
	}
}

// near puts a word in a row or as near to it as it is free.
func (p *picture) near(col, row, most int, text string) {
	for away := range max(most, 0) + 1 {
		for _, r := range []int{row - away, row + away} {
			if p.on.Put(col, r, text, p.m.th.Quiet) {
				return
			}
		}
	}
}

// dimensions fills the rows below the picture.
func (p *picture) dimensions(s, ref *subject) {
	row, quiet, word := 0, p.m.th.Quiet, theme.Ink{}
	if p.chain {
		for _, d := range s.drawing.Pieces {
			p.piece(row, d)
		}
		row++
	}
	shown := 0
	for _, d := range s.drawing.Dimensions {
		if from, to := p.frame.X(d.From.X), p.frame.X(d.To.X); d.Upright || shown == measures || p.m.rear && (from < 0 || to > float64(p.w)) {
			continue
		}
		p.on.Measure(row, p.frame.X(d.From.X), p.frame.X(d.To.X), d.Letter+" "+length(d.Length()), quiet, word)
		shown++
		row++
	}
	if ref != nil && !p.m.rear {
		p.difference(row, s, ref)
	}
}

// piece is one of the chain: its figure stands there only where there is room.
func (p *picture) piece(row int, d elevation.Dimension) {
	from, to := p.frame.X(d.From.X), p.frame.X(d.To.X)
	text := length(d.Length())
	if room := int(math.Round(to)) - int(math.Round(from)) - 2; theme.Width(d.Label)+1+theme.Width(text) <= room {
		text = d.Label + " " + text
	} else if theme.Width(text) > room {
		text = ""
	}
	p.on.Measure(row, from, to, text, p.m.th.Quiet, theme.Ink{})
}

// difference measures from the first dimension's end of the reference to that of the
// machine in hand.
func (p *picture) difference(row int, s, ref *subject) {
	here, there := s.drawing.Dimensions[0], ref.drawing.Dimensions[0]
	by := here.Length() - there.Length()
	if n := difference(here.Length(), there.Length()); n != "" {
		text := n + " against " + p.m.th.Clean(ref.outcome.Variant)
		end, start := p.frame.X(math.Max(there.To.X, here.To.X)), p.frame.X(math.Min(there.To.X, here.To.X))
		if float64(theme.Width(text)) > math.Max(float64(p.w)-end-2, start-2) {
			text = n
		}
		p.on.Measure(row, p.frame.X(there.To.X), p.frame.X(there.To.X+by), text, p.m.th.Strong, p.m.th.Strong)
		return
	}
	p.on.Put(max(int(p.frame.X(here.From.X)), 0), row, "as deep as the reference", p.m.th.Quiet)
}

// length is a figure in mm.
func length(x float64) string { return unit.Millimetre.Number(x) }

// difference is what two lengths as shown differ by, with its sign; empty when
// they read alike.
func difference(here, there float64) string {
	if length(here) == length(there) {
		return ""
	}
	return unit.Millimetre.Delta(here-there, here)
}

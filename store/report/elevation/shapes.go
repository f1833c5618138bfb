package elevation

import "math"

// Point is a place on the drawing, m: X to the right, Y up.
type Point struct{ X, Y float64 }

// Stroke is how a line is drawn.
type Stroke int

// The strokes.
const (
	Solid  Stroke = iota
	Dashed        // a size that no parameter gives
	Dotted        // what is there but not to be looked at: disc, hoop
	Chain         // an axis
)

// Tone is how much a shape asks to be seen.
type Tone int

// The tones.
const (
	Plain Tone = iota
	Faint
	Main
)

// Path is a line through points.
type Path struct {
	Key    string
	Points []Point
	Stroke Stroke
	Tone   Tone
}

// Label is a word inside the rectangle of Width and Height about At; where it
// does not fit it is left out. One without Width begins at At.
type Label struct {
	Text          string
	At            Point
	Width, Height float64 // m
}

// Mark is a point with a sign of its own.
type Mark struct {
	Kind MarkKind
	At   Point
}

// MarkKind is what stands at a marked point.
type MarkKind string

// The marks.
const (
	Gravity MarkKind = "centre of gravity"
	Hang    MarkKind = "hang point"
	Hip     MarkKind = "hip"
	Axis    MarkKind = "axis"
	Exhaust MarkKind = "exhaust"
)

// Dimension is a length between two places, along X unless Upright.
type Dimension struct {
	Key      string // of the reading with the same value, if there is one
	Letter   string
	Label    string
	From, To Point
	Upright  bool
}

// Length of the dimension, m, negative when To lies before From.
func (d Dimension) Length() float64 {
	if d.Upright {
		return d.To.Y - d.From.Y
	}
	return d.To.X - d.From.X
}

// Box is a part of the drawing plane, m.
type Box struct{ Min, Max Point }

// Width and Height of a box, m.
func (b Box) Width() float64  { return b.Max.X - b.Min.X }
func (b Box) Height() float64 { return b.Max.Y - b.Min.Y }

// Union is the least box around both.
func (b Box) Union(c Box) Box {
	return Box{Point{math.Min(b.Min.X, c.Min.X), math.Min(b.Min.Y, c.Min.Y)}, Point{math.Max(b.Max.X, c.Max.X), math.Max(b.Max.Y, c.Max.Y)}}
}

// Drawing is one view of one machine.
type Drawing struct {
	Paths      []Path
	Labels     []Label
	Marks      []Mark
	Dimensions []Dimension // lettered, in order
	Pieces     []Dimension // one behind the other along the thrust axis; side view only
	Whole      Box         // everything
	Close      Box         // engine and drive
}

func (d *Drawing) path(key string, s Stroke, t Tone, points ...Point) {
	d.Paths = append(d.Paths, Path{key, points, s, t})
}

// rectangle draws a closed box and, if it has a word, writes it inside.
func (d *Drawing) rectangle(key, word string, s Stroke, t Tone, b Box) {
	d.path(key, s, t, b.Min, Point{b.Max.X, b.Min.Y}, b.Max, Point{b.Min.X, b.Max.Y}, b.Min)
	if word != "" {
		d.Labels = append(d.Labels, Label{word, Point{(b.Min.X + b.Max.X) / 2, (b.Min.Y + b.Max.Y) / 2}, b.Width(), b.Height()})
	}
}

func (d *Drawing) mark(kind MarkKind, x, y float64) {
	d.Marks = append(d.Marks, Mark{kind, Point{x, y}})
}

func (d *Drawing) measure(key, label string, from, to Point, upright bool) {
	d.Dimensions = append(d.Dimensions, Dimension{key, string(rune('a' + len(d.Dimensions))), label, from, to, upright})
}

package report

import (
	"strings"

	"backspan/model/unit"
	"backspan/store/report/elevation"
)

// The drawing plane of a side elevation is in mm.
const (
	perMetre   = 1000.0
	wordSize   = 58.0 // 7 points on paper, four machines beside each other
	leastWord  = 34.0 // smaller ones are not read: the note under the drawings tells what they would
	dimensionD = 70.0 // from one line of dimensions to the next
)

var strokes = map[elevation.Stroke]string{elevation.Dashed: "16 9", elevation.Dotted: "4 8", elevation.Chain: "30 8 6 8"}

var tones = map[elevation.Tone]pen{
	elevation.Faint: {colour: "#888", width: 2}, elevation.Plain: {colour: "#222", width: 3}, elevation.Main: {colour: "#000", width: 5},
}

var thin = pen{colour: "#555", width: 1.5}

// sideView draws a side elevation in the plane of whole, which all machines
// that are compared share: they are to one scale. Below the foot there are only
// propeller and guard.
func sideView(id, name string, d elevation.Drawing, whole elevation.Box, foot float64) string {
	below, aside := 0.0, dimensionD/4
	for _, q := range d.Dimensions {
		if q.Upright {
			aside += dimensionD
		} else {
			below += dimensionD
		}
	}
	v := newSVG(id, "Side elevation of "+name, told(d), whole.Min.X*perMetre, -whole.Max.Y*perMetre, whole.Width()*perMetre+aside, max(whole.Height(), whole.Max.Y-foot+(below+1.2*dimensionD)/perMetre)*perMetre)
	for _, q := range d.Paths {
		ink := tones[q.Tone]
		ink.dashes = strokes[q.Stroke]
		points := make([][2]float64, len(q.Points))
		for i, at := range q.Points {
			points[i] = placed(at)
		}
		v.line(ink, points...)
	}
	for _, l := range d.Labels {
		v.label(l)
	}
	for _, m := range d.Marks {
		v.mark(m)
	}
	v.dimensions(d, foot)
	v.scaleBar(whole.Min.X*perMetre+20, -foot*perMetre+below+dimensionD*0.7)
	return v.end()
}

// foot is how low a machine reaches without propeller and guard, m.
func foot(d elevation.Drawing) float64 {
	low := d.Whole.Max.Y
	for _, q := range d.Paths {
		if q.Key == "propeller" || q.Key == "stack.guard" {
			continue
		}
		for _, at := range q.Points {
			low = min(low, at.Y)
		}
	}
	return low
}

// told are the dimensions in words.
func told(d elevation.Drawing) string {
	words := make([]string, len(d.Dimensions))
	for i, q := range d.Dimensions {
		words[i] = q.Letter + " " + q.Label + " " + unit.Millimetre.Text(q.Length())
	}
	return strings.Join(words, "; ")
}

func placed(p elevation.Point) [2]float64 { return [2]float64{p.X * perMetre, -p.Y * perMetre} }

// letter is about the width of one, as a share of its height.
const letter = 0.55

func (v *svg) label(l elevation.Label) {
	at := placed(l.At)
	if size := min(wordSize, l.Width*perMetre/(letter*float64(len(l.Text))), l.Height*perMetre); size >= leastWord {
		v.word(at[0], at[1]+size/3, size, atMiddle, l.Text)
	}
}

var fills = map[elevation.MarkKind]string{elevation.Gravity: "#000", elevation.Hang: "#fff", elevation.Hip: "#bbb"}

func (v *svg) mark(m elevation.Mark) {
	fill, ok := fills[m.Kind]
	if !ok {
		return
	}
	at := placed(m.At)
	v.dot(at[0], at[1], 10, fill)
}

// dimensions stand below the foot of the machines and behind each, one beside the
// other.
func (v *svg) dimensions(d elevation.Drawing, foot float64) {
	x, y := d.Whole.Max.X*perMetre, -foot*perMetre
	for _, q := range d.Dimensions {
		from, to := placed(q.From), placed(q.To)
		if q.Upright {
			x += dimensionD
			v.between([2]float64{x, from[1]}, [2]float64{x, to[1]}, [2]float64{8, 0})
			v.word(x-6, (from[1]+to[1])/2, wordSize, atEnd, q.Letter)
			continue
		}
		y += dimensionD
		v.between([2]float64{from[0], y}, [2]float64{to[0], y}, [2]float64{0, 8})
		v.word((from[0]+to[0])/2, y-6, wordSize, atMiddle, q.Letter)
	}
}

func (v *svg) between(from, to, tick [2]float64) {
	for _, p := range [][2]float64{from, to} {
		v.line(thin, [2]float64{p[0] - tick[0], p[1] - tick[1]}, [2]float64{p[0] + tick[0], p[1] + tick[1]})
	}
	v.line(thin, from, to)
}

func (v *svg) scaleBar(x, y float64) {
	const long = 200.0
	v.between([2]float64{x, y}, [2]float64{x + long, y}, [2]float64{0, 8})
	v.word(x+long+12, y+wordSize/3, wordSize, atStart, "200 mm")
}

package report

import (
	"strings"

	"backspan/model/unit"
	"backspan/store/report/elevation"
)

// The drawing plane of a side elevation is in mm.
const (
	perMetre   = 1000.0
	wordSize   = 40.0
	dimensionD = 60.0  // from one line of dimensions to the next
	wordRoom   = 150.0 // behind the machines, for the words that stand there
)

var strokes = map[elevation.Stroke]string{elevation.Dashed: "16 9", elevation.Dotted: "4 8", elevation.Chain: "30 8 6 8"}

var tones = map[elevation.Tone]pen{
	elevation.Faint: {colour: "#888", width: 2}, elevation.Plain: {colour: "#222", width: 3}, elevation.Main: {colour: "#000", width: 5},
}

var thin = pen{colour: "#555", width: 1.5}

// sideView draws a side elevation in the plane of whole, which all machines
// that are compared share: they are to one scale.
func sideView(id, name string, d elevation.Drawing, whole elevation.Box) string {
	below, aside := dimensionD, wordRoom+dimensionD
	for _, q := range d.Dimensions {
		if q.Upright {
			aside += dimensionD
		} else {
			below += dimensionD
		}
	}
	v := newSVG(id, "Side elevation of "+name, told(d), whole.Min.X*perMetre, -whole.Max.Y*perMetre, whole.Width()*perMetre+aside, whole.Height()*perMetre+below+dimensionD)
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
	v.dimensions(d, whole)
	v.scaleBar(whole.Min.X*perMetre+20, -whole.Min.Y*perMetre+below+dimensionD/2)
	return v.end()
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
	if l.Width == 0 {
		v.word(at[0], at[1]+wordSize/3, wordSize, atStart, l.Text)
		return
	}
	size := min(wordSize, l.Width*perMetre/(letter*float64(len(l.Text))), l.Height*perMetre)
	const least = 9
	if size >= least {
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

// dimensions stand below the machine and behind it, one beside the other.
func (v *svg) dimensions(d elevation.Drawing, whole elevation.Box) {
	x, y := whole.Max.X*perMetre+wordRoom, -whole.Min.Y*perMetre
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

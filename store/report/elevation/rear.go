package elevation

import (
	"math"

	"backspan/model"
	"backspan/model/part"
)

// Rear is the view from behind, looking forward: X is to the pilot's right, Y
// above the hip axis. It is false when the machine could not be built.
func Rear(o model.Outcome) (Drawing, bool) {
	l, s := &o.Layout, &o.Stack
	if len(l.Bodies) == 0 {
		return Drawing{}, false
	}
	d := Drawing{}
	up := l.ThrustUp
	d.disc("stack.guard", Solid, Plain, part.Disc{Up: up, Radius: l.GuardRadius}, part.Disc{Up: up, Radius: l.GuardRadius})
	d.disc("propeller", Dotted, Main, part.Disc{Up: up, Radius: l.PropellerRadius}, part.Disc{Up: up, Radius: l.PropellerRadius})
	for _, b := range l.Bodies {
		if !b.Assumed && b.Key != "propeller" && b.Key != "drive.seal_cover" {
			d.disc(b.Key, Solid, tone(b.Key), b.Low, b.High)
		}
	}
	half := l.TankSide / 2
	tank := Box{Point{-half, l.TankUp - l.TankHeight/2}, Point{half, l.TankUp + l.TankHeight/2}}
	d.rectangle("stack.tank", "tank", Dashed, Faint, tank)
	d.mark(Axis, 0, l.CrankUp)
	d.mark(Axis, 0, up)
	d.mark(Hang, -l.HangSpacing/2, s.HangUp)
	d.mark(Hang, l.HangSpacing/2, s.HangUp)
	d.mark(Hip, 0, 0)
	d.mark(Gravity, 0, s.CGUp)

	across := func(label string, half, y float64) {
		d.measure("", label, Point{-half, y}, Point{half, y}, false)
	}
	across("guard, inside", l.GuardRadius, up)
	across("propeller", l.PropellerRadius, up)
	across("hang point spacing", l.HangSpacing/2, s.HangUp)
	d.measure("", "crank to propeller", Point{0, l.CrankUp}, Point{0, up}, true)
	d.wheels(l)
	d.rearBoxes(l, s.HangUp, tank)
	return d, true
}

func tone(key string) Tone {
	switch key {
	case "engine", "drive.case":
		return Faint
	case "drive.belt":
		return Main
	}
	return Plain
}

// wheels measures what turns against one another. What does the same work has
// the same letter in every machine.
func (d *Drawing) wheels(l *model.Layout) {
	for _, b := range l.Bodies {
		if w, ok := wheels[b.Key]; ok {
			d.Dimensions = append(d.Dimensions, Dimension{Letter: w.letter, Label: w.word,
				From: Point{-b.Low.Radius, b.Low.Up}, To: Point{b.Low.Radius, b.Low.Up}})
		}
	}
}

var wheels = map[string]struct{ letter, word string }{
	"drive.crank_pulley": {"e", "crank pulley, outside"}, "drive.driven_pulley": {"f", "driven pulley, outside"},
	"drive.pinion": {"e", "pinion, over tips"}, "drive.wheel": {"f", "wheel, over tips"},
	"drive.flange": {"g", "propeller plate"}, "drive.hub": {"g", "propeller hub"},
}

// disc draws what two discs and their tangents enclose: in every direction the
// further of the two.
func (d *Drawing) disc(key string, s Stroke, t Tone, low, high part.Disc) {
	const n = 96
	points := make([]Point, n+1)
	for i := range points {
		sin, cos := math.Sincos(2 * math.Pi * float64(i) / n)
		far := low
		if high.Up*sin+high.Radius > low.Up*sin+low.Radius {
			far = high
		}
		points[i] = Point{far.Radius * cos, far.Up + far.Radius*sin}
	}
	d.path(key, s, t, points...)
}

func (d *Drawing) rearBoxes(l *model.Layout, hang float64, tank Box) {
	low, high, wide := math.Inf(1), math.Inf(-1), 0.0
	for _, b := range l.Bodies {
		if b.Assumed || b.Key == "engine" {
			continue
		}
		from, to := span(b)
		low, high = math.Min(low, from), math.Max(high, to)
		wide = math.Max(wide, math.Max(b.Low.Radius, b.High.Radius))
	}
	d.Close = Box{Point{-wide - margin, low - margin/2}, Point{wide + margin, high + margin/2}}
	g := l.GuardRadius + margin
	d.Whole = Box{Point{-g, l.ThrustUp - g}, Point{g, l.ThrustUp + g}}
	side := l.HangSpacing/2 + margin
	d.Whole = d.Whole.Union(Box{Point{-side, -margin}, Point{side, hang + margin}}).Union(tank).Union(d.Close)
}

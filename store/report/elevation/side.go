package elevation

import (
	"math"

	"backspan/model"
)

// words are what bodies are called inside their outlines.
var words = map[string]string{
	"stack.pad": "pad", "stack.frame": "frame", "engine": "engine", "cooling.fan": "fan",
	"drive.driven_pulley": "pulley", "drive.crank_pulley": "pulley", "drive.case": "case", "drive.coupling": "coupling",
	"drive.hub": "hub", "stack.tank": "tank",
}

// margin is free room around a drawing, m.
const margin = 0.03

// Side is the side elevation: X is aft of the back plane, Y above the hip
// axis. It is false when the machine could not be built.
func Side(o model.Outcome) (Drawing, bool) {
	l, s := &o.Layout, &o.Stack
	if len(l.Bodies) == 0 {
		return Drawing{}, false
	}
	d, rear := Drawing{}, rearEnd(l)
	d.path("thrust", Chain, Main, Point{-0.04, l.ThrustUp}, Point{rear + 0.06, l.ThrustUp})
	d.Labels = append(d.Labels, Label{Text: "thrust line", At: Point{rear + 0.065, l.ThrustUp}})
	d.path("crank", Chain, Faint, Point{l.Mount, l.CrankUp}, Point{rear, l.CrankUp})
	d.back(l.StrapUp)
	d.bodies(l)
	d.tank(l)
	d.propeller(l, s.Depth)
	for _, it := range s.Items {
		if it.Key == "stack.exhaust" {
			d.mark(Exhaust, it.X, it.Z)
		}
	}
	d.mark(Hip, -l.HipAhead, 0)
	d.mark(Hang, s.HangAft, s.HangUp)
	d.mark(Gravity, s.CGAft, s.CGUp)

	d.measure("stack.depth", "back to plate", Point{0, l.ThrustUp}, Point{s.Depth, l.ThrustUp}, false)
	d.measure("stack.drive_depth", "mount to plate", Point{l.Mount, l.ThrustUp}, Point{s.Depth, l.ThrustUp}, false)
	d.measure("stack.cg_aft", "centre of gravity aft", Point{0, s.CGUp}, Point{s.CGAft, s.CGUp}, false)
	d.measure("", "crank to propeller", Point{rear, l.CrankUp}, Point{rear, l.ThrustUp}, true)
	d.measure("", "thrust line above hip", Point{rear, 0}, Point{rear, l.ThrustUp}, true)
	d.measure("stack.cg_up", "centre of gravity up", Point{s.CGAft, 0}, Point{s.CGAft, s.CGUp}, true)
	d.measure("", "hang points up", Point{s.HangAft, 0}, Point{s.HangAft, s.HangUp}, true)
	d.measure("", "hang points aft", Point{0, s.HangUp}, Point{s.HangAft, s.HangUp}, false)
	d.pieces(o)
	d.boxes(l, rear, math.Min(-l.HipAhead, s.HangAft), s.CGUp)
	return d, true
}

// back is the pilot's back, hatched like any face that is given.
func (d *Drawing) back(up float64) {
	const step, slant = 0.06, 0.025
	d.path("back", Solid, Main, Point{0, -slant}, Point{0, up})
	for y := 0.0; y <= up; y += step {
		d.path("back", Solid, Faint, Point{0, y}, Point{-slant, y - slant})
	}
}

func (d *Drawing) bodies(l *model.Layout) {
	for _, b := range l.Bodies {
		low, high := span(b)
		t := Plain
		if b.Key == "drive.belt" || b.Key == "drive.pinion" || b.Key == "drive.wheel" {
			t = Faint
		}
		box := Box{Point{b.Front, low}, Point{b.Front + b.Depth, high}}
		if !b.Assumed {
			d.rectangle(b.Key, words[b.Key], Solid, t, box)
			continue
		}
		d.faces(b.Key, words[b.Key], t, box)
	}
}

// faces draws a body of which only the depth is known: its front and its back
// stand, how far they reach is a guess.
func (d *Drawing) faces(key, word string, t Tone, b Box) {
	d.rectangle(key, word, Dashed, t, b)
	d.path(key, Solid, t, b.Min, Point{b.Min.X, b.Max.Y})
	d.path(key, Solid, t, Point{b.Max.X, b.Min.Y}, b.Max)
}

// span is how low and how high a body reaches.
func span(b model.Body) (low, high float64) {
	return math.Min(b.Low.Up-b.Low.Radius, b.High.Up-b.High.Radius), math.Max(b.Low.Up+b.Low.Radius, b.High.Up+b.High.Radius)
}

func rearEnd(l *model.Layout) float64 {
	rear := 0.0
	for _, b := range l.Bodies {
		rear = math.Max(rear, b.Front+b.Depth)
	}
	return rear
}

// tank shows a square tank of the volume and the height, and how full it is.
func (d *Drawing) tank(l *model.Layout) {
	b := Box{Point{l.TankAft - l.TankSide/2, l.TankUp - l.TankHeight/2}, Point{l.TankAft + l.TankSide/2, l.TankUp + l.TankHeight/2}}
	d.rectangle("stack.tank", "tank", Dashed, Plain, b)
	level := b.Min.Y + l.TankFill*l.TankHeight
	d.path("stack.fuel", Dotted, Faint, Point{b.Min.X, level}, Point{b.Max.X, level})
}

// propeller is the disc edge on behind the plate, and the guard's hoop.
func (d *Drawing) propeller(l *model.Layout, plate float64) {
	middle := plate
	for _, b := range l.Bodies {
		if b.Key == "propeller" {
			middle = b.Front + b.Depth/2
		}
	}
	up, r, g := l.ThrustUp, l.PropellerRadius, l.GuardRadius
	d.path("propeller", Solid, Main, Point{middle, up - r}, Point{middle, up + r})
	d.Labels = append(d.Labels, Label{Text: "propeller", At: Point{middle + 0.02, up + 0.85*r}})
	const tube = 0.012
	for _, side := range []float64{-1, 1} {
		y := up + side*(g+tube)
		d.rectangle("stack.guard", "", Solid, Plain, Box{Point{l.GuardAft - tube, y - tube}, Point{l.GuardAft + tube, y + tube}})
	}
	d.path("stack.guard", Dotted, Faint, Point{l.GuardAft, up - g}, Point{l.GuardAft, up + g})
}

// pieces is the chain of depths from the back to the plate, the drive as one.
func (d *Drawing) pieces(o model.Outcome) {
	x := 0.0
	add := func(label string, to float64) {
		if to > x {
			d.Pieces = append(d.Pieces, Dimension{Label: label, From: Point{x, 0}, To: Point{to, 0}})
			x = to
		}
	}
	for _, it := range o.Stack.Items {
		if word := chained[it.Key]; word != "" {
			add(word, it.Front+it.Depth)
		}
	}
	add("drive", o.Stack.Depth)
}

var chained = map[string]string{"stack.pad": "pad", "stack.frame": "frame", "stack.mount": "rubber", "engine": "engine", "cooling.fan": "fan"}

// boxes finds what there is to see. The close view holds the stack's whole
// depth and both axes; how much of what is tall it shows is for the room to say.
func (d *Drawing) boxes(l *model.Layout, rear, ahead, gravity float64) {
	low, high := math.Min(l.CrankUp, l.ThrustUp), math.Max(l.CrankUp, l.ThrustUp)
	low, high = math.Min(low, gravity), math.Max(high, gravity)
	d.Close = Box{Point{-2 * margin, low - margin/2}, Point{rear + 2*margin, high + 2*margin}}
	const tube = 0.03
	g := l.GuardRadius + tube
	d.Whole = Box{Point{ahead - margin, math.Min(l.ThrustUp-g, 0) - margin/2}, Point{rear + 2*margin, l.ThrustUp + g}}
	tank := Box{Point{l.TankAft - l.TankSide/2, l.TankUp - l.TankHeight/2 - margin/2}, Point{l.TankAft + l.TankSide/2, l.TankUp + l.TankHeight/2}}
	d.Whole = d.Whole.Union(tank).Union(d.Close)
}

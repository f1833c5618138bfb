package gear

import (
	"math"

	"backspan/model/coupling"
)

// Held is how the two shafts are held, as it is chosen with the shafts; the
// zero value is a pinion on a shaft of its own and a propeller-side bearing
// that takes the thrust.
type Held struct {
	OnCrank     bool // the pinion is fast on the engine's crank
	ThrustAhead bool // the propeller shaft's engine-side bearing takes the thrust
}

// With is the reduction as it is built when its shafts are so held. A pinion
// fast on the engine's crank has neither coupling nor bearings nor seal of its
// own, whatever is set for them.
func (s Spec) With(h Held) Spec {
	h.OnCrank = h.OnCrank && s.PinionPlace == Overhung
	s.Held = h
	if h.OnCrank {
		s.Coupling, s.PinionSeal = coupling.None(), false
	}
	return s
}

// pinionBearings are the middles of the pinion's two bearings ahead of the
// middle of its face, m. A pinion between its bearings with an offset is the
// nearer to the propeller-side one; an overhung one stands behind both.
func (g *Gear) pinionBearings() (prop, engine float64) {
	span, offset := g.pinionSpan(), g.spec.PinionOffset
	if g.spec.PinionPlace == Overhung {
		return offset, offset + span
	}
	return offset - span/2, offset + span/2
}

// engineWallDepth holds the bearings ahead of the gears: both of an overhung
// pinion, and those that a long span moves out.
func (g *Gear) engineWallDepth() float64 {
	depth := g.bearings.wheelEngine.Width
	if !g.spec.Held.OnCrank {
		_, engine := g.pinionBearings()
		width := g.bearings.pinion.Width
		depth = math.Max(depth, math.Max(width, engine+width/2-g.meshDepth()/2))
	}
	return g.spec.CaseWall + depth
}

// propellerWallDepth holds the bearings behind the gears.
func (g *Gear) propellerWallDepth() float64 {
	return math.Max(g.bearings.wheelPropeller.Width, g.pinionBehind())
}

// pinionBehind is how far pinion shaft and bearing reach behind the gap, m; an
// overhung pinion has neither there.
func (g *Gear) pinionBehind() float64 {
	if g.spec.PinionPlace == Overhung {
		return 0
	}
	prop, _ := g.pinionBearings()
	width := g.bearings.pinion.Width
	return math.Max(width, width/2-prop-g.meshDepth()/2)
}

// pinionSeats are boss, bearing and shaft of the pinion in the wall ahead of
// the gears; the engine's crank brings its own.
func (g *Gear) pinionSeats() []lump {
	b := g.bearings.pinion
	switch {
	case g.spec.Held.OnCrank:
		return nil
	case g.spec.PinionPlace == Overhung:
		return []lump{g.boss(b, 0), g.boss(b, 0), ring(b, 0), ring(b, 0), bar(b.Bore, g.engineWallDepth(), 0)}
	}
	return []lump{g.boss(b, 0), ring(b, 0), bar(b.Bore, g.engineWallDepth(), 0)}
}

// pinionSeatsBehind are those in the wall behind the gears.
func (g *Gear) pinionSeatsBehind() []lump {
	if g.spec.PinionPlace == Overhung {
		return nil
	}
	b := g.bearings.pinion
	return []lump{g.boss(b, 0), ring(b, 0), bar(b.Bore, g.pinionBehind(), 0)}
}

// pinionShaft is how long the pinion's own shaft is beside the teeth, m.
func (g *Gear) pinionShaft() float64 {
	switch {
	case g.spec.Held.OnCrank:
		return 0
	case g.spec.PinionPlace == Overhung:
		return g.engineWallDepth() + g.spec.SideGap
	}
	return g.engineWallDepth() + 2*g.spec.SideGap + g.pinionBehind()
}

// only is a length where there is one.
func only(there bool, length float64) float64 {
	if there {
		return length
	}
	return 0
}

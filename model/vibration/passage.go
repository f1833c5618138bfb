package vibration

import (
	"math"

	"backspan/model/part"
)

// Passage is the largest of the steady swings, m, which a quick passage
// through the mount modes does not reach.
type Passage struct {
	Hub, HubSpeed float64 // of the propeller's hub, and the crank speed of it, rad/s
	InPlane       float64 // of the hub across the thrust axis
	Axial         float64 // of the tips along it: the hub's swing and the disc's rocking
	Pulses        bool    // the engine's torque pulses are counted
}

// passageOrders of the crank are looked at: inertia shakes once and twice a
// turn, a four-stroke's torque between them too.
var passageOrders = [...]float64{0.5, 1, 1.5, 2}

// passage runs the engine up through the modes below the standing speed, with
// the inertia forces and the torque pulses of every order. Source: sum of modes,
// each at its own speed; Rao, from memory.
func (s *system) passage(spec *Spec, d *Duty, cylinder Cylinder) Passage {
	p := Passage{Pulses: d.Crank != nil || spec.StartingCouple.Known}
	hub := d.hub(s.body.centre)
	for k := range s.modes {
		m := &s.modes[k]
		for _, order := range passageOrders {
			speed := m.speed / order
			if speed >= d.Working {
				continue
			}
			much := s.crossing(k, d.shakenAt(spec, cylinder, order, speed, s.body.centre))
			at := m.shape.at(hub)
			if swing := much * math.Sqrt(at.x*at.x+at.y*at.y+at.z*at.z); swing > p.Hub {
				p.Hub, p.HubSpeed = swing, speed
			}
			p.InPlane = math.Max(p.InPlane, much*math.Hypot(at.y, at.z))
			p.Axial = math.Max(p.Axial, much*(math.Abs(at.x)+d.PropellerRadius*math.Hypot(m.shape[4], m.shape[5])))
		}
	}
	return p
}

// shakenAt is all that shakes the body with an order of a crank speed, rad/s.
func (d *Duty) shakenAt(spec *Spec, cylinder Cylinder, order, speed float64, centre place) wave {
	var w wave
	first, second := d.waves(cylinder.At(speed), centre)
	switch order {
	case 1:
		w = first
	case 2:
		w = second
	}
	pulses := d.pulses(spec, speed)
	for _, h := range pulses.Harmonics[:pulses.Count] {
		if h.Order == order {
			torque := d.couple(h)
			w.cos.add(torque.cos)
			w.sin.add(torque.sin)
		}
	}
	return w
}

// pulses are those of the engine without load. A couple that the user gives
// sets their size.
func (d *Duty) pulses(spec *Spec, speed float64) part.Pulsation {
	var p part.Pulsation
	if d.Crank != nil {
		p = d.Crank.Pulsation(0, speed)
	}
	if !spec.StartingCouple.Known {
		return p
	}
	given := spec.StartingCouple.Value
	if p.Count == 0 || !(p.Harmonics[0].Amplitude() > 0) {
		return part.Pulsation{Count: 1, Harmonics: [part.Orders]part.Harmonic{{Order: 1, Sin: given}}}
	}
	scale := given / p.Harmonics[0].Amplitude()
	for i := range p.Harmonics[:p.Count] {
		p.Harmonics[i].Cos *= scale
		p.Harmonics[i].Sin *= scale
	}
	return p
}

package propeller

import "math"

// StationLoad is one cell of one blade at work.
type StationLoad struct {
	Radius, Width float64 // m
	Chord         float64 // m
	Thickness     float64 // m
	Area          float64 // of the section, m²
	BladeAngle    float64 // trim included, rad
	Inflow        float64 // angle of the air to the disc, rad
	Attack        float64 // rad
	StallMargin   float64 // angle of attack left to stall, rad
	Lift, Drag    float64 // coefficients
	Speed         float64 // of the air over the section, m/s
	Reynolds      float64
	Mach          float64
	Along         float64 // force along the shaft, with the thrust, N
	Across        float64 // force against the turn, N
}

// Loading works the propeller at one flow and appends its cells, from root to
// tip, to into[:0]. Their forces, times the number of blades, sum to what At
// gives, but for the drag of the boss. It is empty when the
// propeller does not turn, and does not allocate when into is large enough.
func (p *Propeller) Loading(f Flow, into []StationLoad) []StationLoad {
	into = into[:0]
	if f.Speed <= 0 {
		return into
	}
	w := walk{&f, 1}
	for i := range p.stations {
		s := w.settle(&p.stations[i])
		into = append(into, p.stations[i].load(&s, &f))
	}
	return into
}

// Blades is the number of blades.
func (p *Propeller) Blades() int { return p.spec.Blades }

func (st *station) load(s *settled, f *Flow) StationLoad {
	along, across := s.forces(st, f.Density)
	return StationLoad{
		Radius: st.radius, Width: st.width, Chord: st.chord, Thickness: st.thickness, Area: st.area,
		BladeAngle: st.angle, Inflow: s.phi, Attack: st.angle - s.phi, StallMargin: s.stall - (st.angle - s.phi),
		Lift: s.cl, Drag: s.cd, Speed: s.speed,
		Reynolds: f.Density * s.speed * st.chord / f.Viscosity, Mach: s.speed / f.SoundSpeed,
		Along: along, Across: across,
	}
}

// walk settles stations from root to tip, each started from the one before.
type walk struct {
	flow  *Flow
	ratio float64
}

func (w *walk) settle(st *station) settled {
	s := st.settle(w.flow, w.ratio)
	w.ratio = s.speed / math.Hypot(w.flow.Speed*st.radius, w.flow.Airspeed)
	return s
}

package propeller

import "math"

// Load is one cell of one blade and the air's force on it.
type Load struct {
	Radius, Width float64 // m
	Chord         float64 // m
	Thickness     float64 // greatest, of the section, m
	Area          float64 // of the section, m²
	Along         float64 // force along the shaft, with the thrust, N
	Across        float64 // force against the turn, N
}

// AppendLoads adds the cells of one blade at one flow to dst, from root to
// tip. It solves the flow as At does; with a dst that is long enough it does
// not allocate. A propeller that does not turn adds nothing.
func (p *Propeller) AppendLoads(dst []Load, f Flow) []Load {
	if f.Speed <= 0 {
		return dst
	}
	ratio := 1.0
	for i := range p.stations {
		st := &p.stations[i]
		s := st.settle(&f, ratio)
		ratio = s.speed / math.Hypot(f.Speed*st.radius, f.Airspeed)
		l := Load{Radius: st.radius, Width: st.width, Chord: st.chord, Thickness: st.thick, Area: st.area}
		l.Along, l.Across = s.forces(st, f.Density)
		dst = append(dst, l)
	}
	return dst
}

// Blades is their number.
func (p *Propeller) Blades() int { return p.spec.Blades }

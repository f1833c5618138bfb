package shaft

import (
	"backspan/model/bearing"
	"backspan/model/reading"
	"backspan/model/unit"
)

// CrankPull is a force across the engine's crank, behind its main bearings.
type CrankPull struct {
	Steady   Vector  // N
	Axial    float64 // N, positive forward
	Greatest float64 // size, N
	Behind   float64 // the nearer main bearing's middle, m
}

// CrankForces are those on the engine's two nearest main bearings, N.
type CrankForces struct {
	Near, Far                 Vector // steady
	NearGreatest, FarGreatest float64
	Why                       string // why they are not known
	Absent                    bool   // because nothing pulls there
	axial                     float64
}

// Crank balances the pull on two main bearings a spacing, m, apart. What the
// engine itself puts on them is not in it. Source: statics.
func (p CrankPull) Crank(spacing float64) CrankForces {
	arm := p.Behind / spacing
	return CrankForces{
		Near: Vector{}.plus(p.Steady, 1+arm), Far: Vector{}.plus(p.Steady, -arm),
		NearGreatest: p.Greatest * (1 + arm), FarGreatest: p.Greatest * arm, axial: p.Axial,
	}
}

// Readings are the forces for people.
func (f CrankForces) Readings(rs []reading.Reading) []reading.Reading {
	const how, most = "pull behind the crank over the spacing of its main bearings, without the engine's own forces", "the same under the greatest pull"
	force := func(key, label string, n float64, how string) reading.Reading {
		r := reading.Unless(f.Why, key, label, n, unit.Newton).Lower().How(how).Source(statics)
		r.Absent = f.Absent
		return r
	}
	return append(rs,
		force("crank.load_near", "Nearer main bearing of the crank", f.Near.Size(), how),
		force("crank.load_far", "Farther main bearing of the crank", f.Far.Size(), how),
		force("crank.load_near_greatest", "Nearer main bearing, greatest", f.NearGreatest, most),
		force("crank.load_far_greatest", "Farther main bearing, greatest", f.FarGreatest, most),
	)
}

// Bearings lists the two main bearings; their sizes are the engine's.
func (f CrankForces) Bearings() []bearing.Row {
	if f.Why != "" {
		return nil
	}
	row := func(name string, v Vector, axial float64) bearing.Row {
		return bearing.Row{Name: name, Along: v.Along, Across: v.Across, Axial: axial}
	}
	return []bearing.Row{row("crank, nearer main bearing", f.Near, f.axial), row("crank, farther main bearing", f.Far, 0)}
}

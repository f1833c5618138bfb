package toothedbelt

import (
	"math"

	"backspan/model/param"
	"backspan/model/reading"
	"backspan/model/unit"
)

// leastSpan is the lowest total tension either span falls to in a turn, N.
func (r *Result) leastSpan() float64 {
	return r.StandingTension - math.Max(r.Swing.Most, -r.Swing.Least)/2
}

func (r *Result) swingReadings(rs []reading.Reading) []reading.Reading {
	const twoMasses = "mechanics: crank and propeller as two inertias joined by the belt"
	known := func(x float64) param.Slot { return param.Slot{Known: r.Swing.Known, Value: x} }
	first := param.Slot{Known: r.Swing.Known && r.Swing.First > 0, Value: r.Swing.First}
	noFirst := r.Swing.why()
	if r.Swing.Known {
		noFirst = noStiffness
	}
	factor := 0.0
	if r.Pull > 0 {
		factor = r.Swing.Most / r.Pull
	}
	force := func(key, label string, n float64) reading.Reading {
		return reading.OfSlot(key, label, known(n), unit.Newton, r.Swing.why())
	}
	return append(rs,
		force("toothedbelt.peak_pull", "Pull at peak torque", r.Swing.Most).Lower().
			How("the crank's torque harmonics as the belt carries them, over the pitch radius").Source(twoMasses),
		force("toothedbelt.least_pull", "Least pull in a turn", r.Swing.Least).
			How("as the pull at peak torque; negative where the propeller drives the crank").Source(twoMasses),
		reading.OfSlot("toothedbelt.peak_factor", "Peak pull over mean pull", known(factor), unit.One, r.Swing.why()).Lower().
			How("pull at peak torque over effective pull").Source(twoMasses),
		force("toothedbelt.least_span_tension", "Least span tension in a turn", r.leastSpan()).Higher().
			How("standing tension less half the greatest pull either way; below m v² the span hangs slack").Source(lockedSource),
		force("toothedbelt.tension_for_peak", "Standing tension to stay taut",
			r.StandingTension-r.leastSpan()+r.Tensions.Centrifugal).Lower().
			How("per strand: half the greatest pull either way, and m v²").Source(lockedSource),
		reading.OfSlot("toothedbelt.torsional_frequency", "Torsional frequency over the belt", first, unit.Hertz, noFirst).
			How("two inertias on both spans; each strand stretches over its span and a quarter of the mean arc").Source(twoMasses),
	)
}

// why is why the swing is not known; the zero swing was never sought.
func (s Swing) why() string {
	if s.Why == "" {
		return noPulsation
	}
	return s.Why
}

func (r *Result) ratingReadings(rs []reading.Reading) []reading.Reading {
	source := r.RatingSource
	if source == "" {
		source = "the source of the power table"
	}
	reserve, noReserve := param.Slot{}, r.whyNoRating()
	switch {
	case r.Rating.Known && r.DesignPower > 0:
		reserve = param.Known(r.Rating.Value / r.DesignPower)
	case r.Rating.Known:
		noReserve = noPull
	}
	return append(rs,
		reading.New("toothedbelt.design_power", "Design power", r.DesignPower, unit.Kilowatt).Lower().
			How("service factor times the power at the crank").Source(ruleSource),
		reading.New("toothedbelt.mesh_factor", "Mesh factor", meshFactor(r.TeethInMesh), unit.One).Higher().
			How("1 from six teeth in mesh, 0.2 less for each one missing").Source("ISO 5295; "+ruleSource),
		reading.OfSlot("toothedbelt.power_rating", "Power rating of the belt", r.Rating, unit.Kilowatt, r.whyNoRating()).Higher().
			How("trapezoidal: ISO 5295; curvilinear: the power table, times the factors of length, mesh and width").Source(source),
		reading.OfSlot("toothedbelt.rating_reserve", "Power rating over design power", reserve, unit.One, noReserve).Higher().
			How("power rating over design power").Source(source),
	)
}

// whyNoRating is why there is no rating; the zero result was never rated.
func (r *Result) whyNoRating() string {
	if r.RatingWhy == "" {
		return noTable
	}
	return r.RatingWhy
}

func (r *Result) heatReadings(rs []reading.Reading) []reading.Reading {
	watts := func(key, label string, w float64) reading.Reading {
		return reading.New(key, label, w, unit.Watt).Lower()
	}
	return append(rs,
		watts("toothedbelt.meshing_loss", "Loss in meshing", r.MeshingLoss).
			How("a share of the power, fixed by the efficiency at rated power").Source("estimate: the load's share of the loss"),
		watts("toothedbelt.bending_loss", "Loss in bending", r.BendingLoss).
			How("a constant resistance, fixed by the efficiency at rated power").
			Source("hysteresis in proportion to speed, scaled to the efficiency given"),
		watts("toothedbelt.windage_loss", "Loss in windage", r.WindageLoss).
			How("drag of both faces of the belt, coefficient 0.005").Source("estimate"),
		reading.New("toothedbelt.temperature", "Belt temperature", r.Temperature, unit.Celsius).Lower().
			How("air temperature plus loss over what belt and rims shed; the silencer's radiation is left out").
			Source("from memory: Nu = 0.037 Re^0.8 Pr^(1/3) for belt, 0.133 Re^(2/3) Pr^(1/3) for rims"),
	)
}

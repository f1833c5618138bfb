package carry

import (
	"backspan/model/reading"
	"backspan/model/unit"
)

const (
	noBalance    = "the load hangs so far below the hip that no forward lean balances it"
	noEquivalent = "at the reference depth no mass calls for as much lean"
)

// Readings lists what was found.
func (r Result) Readings(rs []reading.Reading) []reading.Reading {
	rs = r.posture(rs)
	return r.felt(rs)
}

func (r *Result) posture(rs []reading.Reading) []reading.Reading {
	return append(rs,
		reading.New("carry.hip_moment", "Moment at the hip, upright", r.HipMoment, unit.NewtonMetre).Lower().
			How("weight × distance of its centre of gravity behind the hip axis; zero at the balanced lean").Source("statics"),
		r.angle("carry.lean", "Lean to balance, hip alone", r.Lean,
			"trunk angle at which the weights ahead of and behind the hip balance, legs upright"),
		r.angle("carry.lean_ankle", "Lean to balance, ankles alone", r.LeanAnkle,
			"whole body leaning stiffly from the ankles"),
		r.angle("carry.lean_shared", "Trunk lean to balance, shared", r.LeanShared,
			"legs lean by part of the ankle lean, the trunk closes the balance, with the share of the lean at the hip"),
		reading.New("carry.cg_shift", "Common centre of gravity aft", r.CGShift, unit.Millimetre).Lower().
			How("shift of pilot and load together when upright").Source("statics"),
		reading.New("carry.heel_reserve", "Shift that tips over the heels", r.HeelReserve, unit.Millimetre).Higher().
			How("heel behind ankle, and standing centre ahead of it").Source("geometry; estimate"),
	)
}

func (r *Result) felt(rs []reading.Reading) []reading.Reading {
	return append(rs,
		reading.New("carry.equivalent_mass", "Feels like", r.EquivalentMass, unit.Kilogram).Lower().
			How("mass that gives the same upright hip moment at the reference depth, "+unit.Millimetre.Text(r.ReferenceDepth)+
				"; running and lifting follow the true mass, "+unit.Kilogram.Text(r.Mass)).Source("statics"),
		r.leanEquivalent(),
		reading.New("carry.kg_per_cm", "Felt mass per cm of centre aft", r.MassPerDepth, unit.KilogramPerCentimetre).Lower().
			How("rise of the felt mass when the whole centre of gravity moves 1 cm aft").Source("statics"),
		reading.New("carry.strap_pull", "Shoulder strap pull-back", r.StrapPull, unit.Newton).Lower().
			How("weight × centre of gravity behind back / strap height above pad, both shoulders").Source("statics"),
		reading.New("carry.shoulder_force", "Force on each shoulder", r.ShoulderForce, unit.Newton).Lower().
			How("half of pull-back and of the weight not on the hip belt, added as vectors").Source("statics"),
	)
}

func (r *Result) angle(key, label string, a float64, how string) reading.Reading {
	if !r.Balances {
		return reading.Missing(key, label, unit.Degree, noBalance).Lower()
	}
	return reading.New(key, label, a, unit.Degree).Lower().How(how).Source("statics")
}

func (r *Result) leanEquivalent() reading.Reading {
	const key, label = "carry.equivalent_mass_lean", "Feels like, by lean"
	switch {
	case !r.Balances:
		return reading.Missing(key, label, unit.Kilogram, noBalance).Lower()
	case !r.LeanEquivalent:
		return reading.Missing(key, label, unit.Kilogram, noEquivalent).Lower()
	}
	return reading.New(key, label, r.EquivalentMassLean, unit.Kilogram).Lower().
		How("mass that calls for the same balanced lean at the hip, at the reference depth and the same height; the true mass is " +
			unit.Kilogram.Text(r.Mass)).Source("statics")
}

// Checks holds the carried load against its limits. A shift within the share
// marginAsked of the heel reserve is thin.
func (r Result) Checks(cs []reading.Check, marginAsked float64) []reading.Check {
	return append(cs,
		reading.AtMost("carry.cg_shift", "Weight stays over the feet", r.CGShift, r.HeelReserve, marginAsked, unit.Millimetre).
			Source("statics; heel reserve from foot length, estimate").
			Advice("make Pad depth, Frame depth or the drive's depth smaller, or take mass off the rear end"),
		reading.Unrated("carry.equivalent_mass", "Felt mass", "no limit for the load in a short run is known"),
		reading.Unrated("carry.shoulder_force", "Force on each shoulder", "no trustworthy limit for shoulder straps is known"),
	)
}

package carry

import (
	"backspan/model/reading"
	"backspan/model/unit"
)

const (
	outOfReach = "the hands are out of the lifting equation's reach: more than 63 cm ahead of the ankles or 175 cm up"
	noPieces   = "no piece of this machine but engine and propeller has a depth"
)

// Readings lists what was found.
func (b Burden) Readings(rs []reading.Reading) []reading.Reading {
	rs = b.ends(rs)
	rs = b.back(rs)
	rs = b.depths(rs)
	return b.way(rs)
}

func (b *Burden) ends(rs []reading.Reading) []reading.Reading {
	moment := func(key, label string, e End, how string) reading.Reading {
		return reading.New(key, label, e.HipMoment, unit.NewtonMetre).Lower().How(how).Source("statics")
	}
	felt := func(key, label string, e End, how string) reading.Reading {
		return reading.New(key, label, e.EquivalentMass, unit.Kilogram).Lower().How(how + "; the true mass is " + unit.Kilogram.Text(e.Mass)).Source("statics")
	}
	return append(rs,
		moment("carry.hip_moment_full", "Hip moment, full tank", b.Full, "as the upright hip moment, tank full"),
		moment("carry.hip_moment_empty", "Hip moment, empty tank", b.Empty, "as the upright hip moment, tank empty"),
		felt("carry.equivalent_mass_full", "Feels like, full tank", b.Full, "as the felt mass, tank full"),
		felt("carry.equivalent_mass_empty", "Feels like, empty tank", b.Empty, "as the felt mass, tank empty"),
		reading.New("carry.belt_weight", "Weight on the hip belt", b.BeltWeight, unit.Newton).
			How("weight × share on the hip belt; the pull-back of the straps presses the lumbar pad as much").Source("statics"),
	)
}

func (b *Burden) back(rs []reading.Reading) []reading.Reading {
	const source = "statics with one equivalent muscle; lever arms estimates"
	moment := func(key, label string, d Disc, how string) reading.Reading {
		return reading.New(key, label, d.Moment, unit.NewtonMetre).How(how + "; forward positive").Source(source)
	}
	press := func(key, label string, d Disc, how string) reading.Reading {
		return reading.New(key, label, d.Compression, unit.Newton).Lower().How(how + "; to rank machines only").Source(source)
	}
	leaning := moment("carry.back_moment_lean", "Moment at the low back, leaning", b.Leaning, "the same at the lean that balances the hip")
	pressed := press("carry.back_compression_lean", "Low back pressed, leaning", b.Leaning, "the same at the lean that balances the hip")
	if !b.Leans {
		leaning = reading.Missing(leaning.Key, leaning.Label, leaning.Unit, noBalance)
		pressed = reading.Missing(pressed.Key, pressed.Label, pressed.Unit, noBalance).Lower()
	}
	return append(rs,
		moment("carry.back_moment", "Moment at the low back, upright", b.Upright, "weights of upper body and machine about the lowest disc"),
		press("carry.back_compression", "Low back pressed, upright", b.Upright, "weight above the lowest disc and the pull of the muscles that balance it"),
		leaning,
		pressed,
		press("carry.back_compression_bare", "Low back pressed, no machine", b.Unloaded, "the same upright without the machine"),
	)
}

func (b *Burden) depths(rs []reading.Reading) []reading.Reading {
	const per, perLabel = "carry.kg_per_cm_worst", "Felt mass per cm of worst piece"
	const all, allLabel = "carry.depth_felt_worst", "Felt mass of worst piece's depth"
	t, ok := worst(b.Depths)
	if !ok {
		return append(rs,
			reading.Missing(per, perLabel, unit.KilogramPerCentimetre, noPieces).Lower(),
			reading.Missing(all, allLabel, unit.Kilogram, noPieces).Lower(),
		)
	}
	const which = ", whose whole depth costs most, engine and propeller left out"
	return append(rs,
		reading.New(per, perLabel, t.PerDepth, unit.KilogramPerCentimetre).Lower().
			How(t.Label+which+": each cm thinner brings what stands behind it closer, its mass held").Source("statics"),
		reading.New(all, allLabel, t.Felt, unit.Kilogram).Lower().
			How(t.Label+", "+unit.Millimetre.Text(t.Depth)+which+": felt mass per cm × depth").Source("statics"),
	)
}

func (b *Burden) way(rs []reading.Reading) []reading.Reading {
	const ways = "Pandolf 1977, Looney 2019, Huang & Kuo 2014"
	return append(rs,
		reading.New("carry.walk_power_low", "Effort of the walk, at least", b.WalkLow, unit.Watt).Lower().
			How("least of the published ways, at the true mass, without wing and clothing; watts of metabolism").Source(ways),
		reading.New("carry.walk_power_high", "Effort of the walk, at most", b.WalkHigh, unit.Watt).Lower().
			How("greatest of the published ways, at the true mass, without wing and clothing; the rise per kg, measured at 1.25 m/s on the level, is carried to the walking speed by its square").Source(ways),
		b.lift("carry.lift_limit", "Recommended limit of the lift", b.LiftLimit, unit.Kilogram).Higher(),
		b.lift("carry.lift_index", "Lifting index", b.LiftIndex, unit.One).Lower(),
	)
}

func (b *Burden) lift(key, label string, si float64, u unit.Unit) reading.Reading {
	if b.LiftLimit <= 0 {
		return reading.Missing(key, label, u, outOfReach)
	}
	return reading.New(key, label, si, u).
		How("revised lifting equation at the harder end of the lift, the centre of gravity behind the back as reach; true mass over it is the index").
		Source("NIOSH 94-110")
}

// Checks holds the burden against what is known of its limits.
func (b Burden) Checks(cs []reading.Check, marginAsked float64) []reading.Check {
	return append(cs,
		reading.Unrated("carry.back_compression", "Low back pressed",
			"standing still, without the muscles that stiffen the trunk and without the run: good to rank machines, not to judge a back"),
		b.liftCheck(marginAsked),
	)
}

// hardLift is the lifting index past which nearly everybody is at more risk.
const hardLift = 3

func (b *Burden) liftCheck(marginAsked float64) reading.Check {
	const key, label = "carry.lift_index", "Picking it up alone"
	if b.LiftLimit <= 0 {
		return reading.Unrated(key, label, outOfReach)
	}
	return reading.AtMost(key, label, b.LiftIndex, hardLift, marginAsked, unit.One).Warn().
		Source("NIOSH 94-110, 1.4.3: above 1 some people, above 3, some experts hold, nearly all are at more risk of injury").
		Advice("lift it with a second person, raise Hands at the start with a stand, or take mass and depth off")
}

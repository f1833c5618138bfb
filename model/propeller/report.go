package propeller

import (
	"math"

	"backspan/model/reading"
	"backspan/model/unit"
)

// Report is what a propeller shows people: how it stands at full throttle and
// how it flies at trim speed.
type Report struct {
	Static, Trim Point // Trim may be the zero Point when there is none

	StaticInstalled, TrimInstalled float64 // thrust behind body and cage, N

	IdealThrust float64 // of an ideal disc for the static absorbed power, N
	Single      bool    // one blade and a counterweight
	Mass        float64 // kg
	Inertia     float64 // about the shaft, kg·m²
	ThrustBand  float64 // ± share that the standing thrust is worth; 0 when there is none

	ThrustLow, ThrustHigh float64 // static installed thrust by what measured propellers gave, N

	TipMachLimit     float64
	StallMarginAsked float64 // rad
	LeastReynolds    float64 // that the section is known at
	Measured         bool    // the section is given by its own polar
	PastStall        bool    // and its rows go past stall at every Reynolds number

	// Why there is no working point, for a point that is Standing.
	NoStatic, NoTrim string
}

// lacking says why the static figures are missing.
func (r *Report) lacking() string {
	if r.Static.Status == Standing && r.NoStatic != "" {
		return r.NoStatic
	}
	return r.Static.Status.String()
}

// Report gathers the static point and the point at trim speed.
func (p *Propeller) Report(static, trim Point) Report {
	low, high := p.band(&static)
	r := Report{
		Static: static, Trim: trim,
		StaticInstalled: p.Installed(static.Thrust), TrimInstalled: p.Installed(trim.Thrust),
		Mass: p.Mass(), Inertia: p.PolarInertia(), ThrustBand: worth(static.Thrust, low, high),
		ThrustLow: p.Installed(low), ThrustHigh: p.Installed(high), Single: p.spec.Blades == 1,
		TipMachLimit: p.spec.TipMachLimit, StallMarginAsked: p.spec.StallMarginAsked,
		LeastReynolds: p.leastReynolds(),
	}
	if t := p.stations[0].table; t != nil {
		r.Measured, r.PastStall = true, t.pastStall
	}
	if static.Power > 0 {
		r.IdealThrust = IdealThrust(static.Power, static.Flow.Density, p.DiscArea())
	}
	return r
}

// comparedReynolds is the Reynolds number at 0.75 of the radius at which the
// generic sections met a measured propeller well; the one comparison at half
// of it came out worst.
const comparedReynolds = 4e4

// leastReynolds is the least Reynolds number that the section is known at.
func (p *Propeller) leastReynolds() float64 {
	if t := p.stations[0].table; t != nil {
		return math.Exp(t.logReynolds[0])
	}
	return comparedReynolds
}

const (
	compass = "no flat-bottomed section and no Reynolds number above 200 000 was compared, and in most of the comparisons the section's drag was fitted to the same tests"

	measurements = "Deters, Ananda & Selig 2014, and Knight & Hefner, NACA TN-626, compared with this method"
	bladeElement = "blade-element momentum theory, Prandtl's tip factor (Ning 2014); generic section polar, an estimate"
	momentum     = "Rankine and Froude's momentum theory"
)

// Readings are the propeller's figures. Figures of a point outside the model
// are missing, with the reason.
func (r Report) Readings(rs []reading.Reading) []reading.Reading {
	static, trim := worked{r.Static, r.NoStatic}, worked{r.Trim, r.NoTrim}
	rs = append(rs,
		static.read("propeller.static_thrust", "Standing thrust, installed", r.StaticInstalled, unit.Newton).Higher().
			How("full throttle, standing still; isolated thrust less Thrust lost to body and cage").Source(bladeElement),
		static.read("propeller.static_thrust_isolated", "Standing thrust, isolated", static.Thrust, unit.Newton).Higher().
			How("full throttle, standing still, without body and cage").Source(bladeElement),
		static.read("propeller.static_thrust_low", "Standing thrust, low", r.ThrustLow, unit.Newton).Higher().
			How("installed thrust over the most that this model gave too much of on measured propellers, at equal power, or that of figure of merit 0.60 where that is less; "+compass).
			Source(measurements+"; from memory: real propellers reach figures of merit of 0.60 to 0.70"),
		static.read("propeller.static_thrust_high", "Standing thrust, high", r.ThrustHigh, unit.Newton).Higher().
			How("installed thrust over the most that this model gave too little of on measured propellers, at equal power; "+compass).Source(measurements),
		static.read("propeller.absorbed_power", "Power absorbed standing", static.Power, unit.Kilowatt).
			How("torque times speed of rotation").Source(bladeElement),
		static.read("propeller.static_torque", "Shaft torque standing", static.Torque, unit.NewtonMetre).Lower().
			How("sum over the blade of the force across the shaft times radius").Source(bladeElement),
		static.read("propeller.ideal_thrust", "Thrust of an ideal disc", r.IdealThrust, unit.Newton).
			How("the most that any propeller of this diameter gives for the power absorbed standing").Source(momentum),
		static.read("propeller.figure_of_merit", "Figure of merit", static.FigureOfMerit, unit.One).Higher().
			How("ideal over absorbed power, standing, isolated; an upper bound: measured propellers reach less").Source(bladeElement),
		r.tipMachReading().Lower().
			How("tip speed over the speed of sound, full throttle standing").Source("geometry"),
		static.read("propeller.stall_margin", "Stall margin", static.StallMargin, unit.Degree).Higher().
			How("least angle of attack left to stall from 0.5 to 0.95 of the radius, full throttle standing").Source(bladeElement),
		static.read("propeller.reynolds", "Reynolds number of the blade", static.Reynolds, unit.One).
			How("chord times air speed over the section over kinematic viscosity at 0.75 of the radius, full throttle standing").Source("similarity"),
		trim.read("propeller.thrust_at_trim", "Thrust at trim speed, installed", r.TrimInstalled, unit.Newton).Higher().
			How("full throttle at trim speed; isolated thrust less Thrust lost to body and cage").Source(bladeElement),
		trim.read("propeller.efficiency_at_trim", "Efficiency at trim speed", trim.Efficiency, unit.Percent).Higher().
			How("isolated thrust times airspeed over absorbed power, full throttle").Source(bladeElement),
	)
	return r.bodyReadings(rs)
}

// balanced says what of the body is assumed with a single blade.
func (r *Report) balanced() string {
	if !r.Single {
		return ""
	}
	return "; with a counterweight at a fifth of the radius, an estimate, as heavy as balances the blade"
}

func (r *Report) noBand() string {
	switch {
	case r.Static.Status != Valid:
		return r.lacking()
	case r.ThrustBand <= 0:
		return "the propeller gives no thrust standing"
	}
	return ""
}

func (r *Report) bodyReadings(rs []reading.Reading) []reading.Reading {
	return append(rs,
		reading.New("propeller.mass", "Propeller mass", r.Mass, unit.Kilogram).Lower().
			How("as weighed, else volume times Mean density of the blade"+r.balanced()).Source("geometry"),
		reading.New("propeller.inertia", "Propeller inertia about the shaft", r.Inertia, unit.KilogramSquareMetre).Lower().
			How("as measured, else section area times radius squared integrated along the blade"+r.balanced()).Source("geometry"),
		reading.Unless(r.noBand(), "propeller.thrust_band", "Thrust is worth plus or minus", r.ThrustBand, unit.Percent).Lower().
			How("greater deviation of the standing thrust from its low and its high; at a given pitch and speed "+
				"thrust was off by up to 41 % on a wide untwisted blade; "+compass).
			Source(measurements),
	)
}

// tipMachReading follows from speed and size alone, so that it stands outside
// the model too.
func (r *Report) tipMachReading() reading.Reading {
	const key, label = "propeller.tip_mach", "Tip Mach number"
	if r.Static.Status == Standing {
		return reading.Missing(key, label, unit.One, r.lacking())
	}
	return reading.New(key, label, r.Static.TipMach, unit.One)
}

// worked is a point with the reason why it is missing when it is Standing.
type worked struct {
	Point
	why string
}

// read declares a reading of the point, missing when the point is not valid.
func (pt *worked) read(key, label string, si float64, u unit.Unit) reading.Reading {
	switch {
	case pt.Status == Standing && pt.why != "":
		return reading.Missing(key, label, u, pt.why)
	case pt.Status != Valid:
		return reading.Missing(key, label, u, pt.Status.String())
	}
	return reading.New(key, label, si, u)
}

package belt

import (
	"backspan/model/param"
	"backspan/model/reading"
	"backspan/model/unit"
)

// Readings are the result's figures for people.
func (r Result) Readings(rs []reading.Reading) []reading.Reading {
	rs = r.geometryReadings(rs)
	rs = r.offerReadings(rs)
	rs = r.tensionReadings(rs)
	rs = r.settingReadings(rs)
	rs = r.eccentricReadings(rs)
	rs = r.slipReadings(rs)
	rs = r.surgeReadings(rs)
	rs = r.sweepReadings(rs)
	rs = r.resonanceReadings(rs)
	rs = r.heatReadings(rs)
	rs = r.lifeReadings(rs)
	return r.sheetReadings(rs)
}

const (
	openBeltSource = "Shigley's Mechanical Engineering Design, eqs 17-1 and 17-2"
	lockedSource   = "mechanics: a loop at a locked centre keeps the sum of its spans' tensions"
	partLoadSource = "creep with the pull, bending with speed, windage with its cube, scaled to the efficiency given"
	frictionSource = "Euler-Eytelwein with the wedge factor 1/sin 20°"
)

func (r *Result) geometryReadings(rs []reading.Reading) []reading.Reading {
	return append(rs,
		reading.New("belt.length_effective", "Belt length, effective", r.EffectiveLength, unit.Millimetre).
			How("pitch length less 2π line differentials").Source(openBeltSource),
		reading.New("belt.length_pitch", "Belt length, pitch", r.Geometry.Length(), unit.Millimetre).
			How("two spans and two arcs on the pitch diameters").Source(openBeltSource),
		reading.New("belt.wrap_crank", "Wrap on the crank pulley", r.Geometry.CrankWrap(), unit.Degree).Higher().
			How("180° less twice the spans' tilt").Source(openBeltSource),
		reading.New("belt.span", "Free span", r.Geometry.Span(), unit.Millimetre).
			How("centre distance times the cosine of the spans' tilt").Source("geometry"),
		reading.New("belt.face_width", "Pulley face width", r.FaceWidth, unit.Millimetre).Lower().
			How("(ribs − 1) rib pitches and two edges").Source("ISO 9982: rib pitch; edge from memory: ISO 9982"),
		reading.New("belt.mass", "Belt mass", r.BeltMass, unit.Kilogram).Lower().
			How("mass per rib and metre, times ribs and pitch length").Source(massOrigin),
		reading.New("belt.crank_inertia", "Crank pulley inertia", r.CrankInertia, unit.KilogramSquareMetre).
			How("rim, side walls, web and hub about the axis").Source("geometry"),
		reading.New("belt.driven_inertia", "Driven pulley and plate inertia", r.DrivenInertia, unit.KilogramSquareMetre).
			How("rim, side walls, web, hub and propeller plate about the axis").Source("geometry"),
		r.takeUp().How("from where the belt lies unstretched to the standing tension, with the belt's EA").Source(stiffnessOrigin),
		reading.New("belt.setting_rate", "Tension per centre distance", r.SettingRate, unit.NewtonPerMillimetre).Lower().
			How("2 cos(tilt) EA / pitch length, per strand").Source(stiffnessOrigin),
	)
}

func (r *Result) takeUp() reading.Reading {
	const key, label = "belt.take_up", "Take-up to set the tension"
	if !r.TakeUpKnown {
		return reading.Missing(key, label, unit.Millimetre, "the belt would stretch more than the centre distance can take up")
	}
	return reading.New(key, label, r.TakeUp, unit.Millimetre)
}

func (r *Result) tensionReadings(rs []reading.Reading) []reading.Reading {
	tension := func(key, label string, n float64) reading.Reading { return reading.New(key, label, n, unit.Newton) }
	return append(rs,
		tension("belt.static_tension", "Required standing tension", r.RequiredTension).Lower().
			How("per strand: Te/2 (R+1)/(R−1) + m v² at the service factor times the rated power; or, as Load factor says, the mean pull and the pulsation demand with its reserve").
			Source("mechanics: locked centre; design tension ratio from memory: RMA IP-26"),
		tension("belt.standing_tension", "Standing tension as set", r.StandingTension).
			How("per strand: as given, else the required one").Source(lockedSource),
		tension("belt.tension_per_rib", "Standing tension per rib", r.perRib(r.StandingTension)).Lower().
			How("standing tension as set over the ribs").Source("geometry"),
		tension("belt.effective_pull", "Effective pull", r.Pull).Lower().
			How("power over belt speed").Source("mechanics"),
		tension("belt.load_per_rib", "Effective pull per rib", r.perRib(r.Pull)).Lower().
			How("effective pull over the ribs").Source("mechanics"),
		reading.New("belt.power_per_rib", "Power per rib", r.perRib(r.Transmission.PowerIn), unit.Kilowatt).Lower().
			How("power at the crank over the ribs").Source("mechanics"),
		tension("belt.tight_side", "Tight side", r.Tensions.TightSide).Lower().
			How("standing tension plus half the pull").Source(lockedSource),
		tension("belt.slack_side", "Slack side", r.Tensions.SlackSide).
			How("standing tension less half the pull").Source(lockedSource),
		tension("belt.centrifugal_tension", "Centrifugal tension", r.Tensions.Centrifugal).Lower().
			How("belt mass per metre times speed squared").Source("mechanics"),
		tension("belt.shaft_load_standing", "Shaft load, standing", r.Standing.Size()).Lower().
			How("twice the standing tension times the cosine of the spans' tilt").Source("mechanics"),
		tension("belt.shaft_load_running", "Shaft load, running", r.Running.Size()).Lower().
			How("contact tensions added as vectors").Source("mechanics"),
		reading.New("belt.shaft_load_angle", "Shaft load, direction", r.Running.Angle(), unit.Degree).
			How("running, from the line of centres towards the tight span").Source("mechanics"),
		reading.New("belt.overhang_moment", "Bending moment on the crank", r.CrankMoment, unit.NewtonMetre).Lower().
			How("the greater shaft load times the overhang from the crank bearing").Source("mechanics"),
		reading.New("belt.speed", "Belt speed", r.Speed, unit.MetrePerSecond).
			How("on the crank pulley's pitch diameter").Source("geometry"),
		reading.New("belt.span_frequency", "Span frequency, standing", r.SpanFrequency, unit.Hertz).
			How("√(T/m) over twice the free span, at the standing tension as set; a new belt is set higher").Source("mechanics: a string"),
	)
}

func (r *Result) perRib(x float64) float64 {
	if r.Ribs == 0 {
		return 0
	}
	return x / float64(r.Ribs)
}

func (r *Result) slipReadings(rs []reading.Reading) []reading.Reading {
	const noPull = "there is no pull at this point"
	ratio := func(key, label string, s param.Slot, why string) reading.Reading {
		return reading.OfSlot(key, label, s, unit.One, why)
	}
	return append(rs,
		reading.New("belt.arc_factor", "Arc factor", r.ArcFactor, unit.One).Higher().
			How("pull at this wrap over that at 180°, for the same tight side").Source("design tension ratio from memory: RMA IP-26"),
		reading.New("belt.friction_design", "Design friction", r.DesignFriction, unit.One).
			How("logarithm of the design tension ratio over 180°").Source("from memory: RMA IP-26"),
		ratio("belt.friction_used", "Friction in use", r.UsedFriction, "the slack side does not press on the pulley").Lower().
			How("logarithm of the contact tension ratio over the wrap").Source("Euler-Eytelwein"),
		ratio("belt.slip_reserve", "Slip reserve, design friction", r.Reserve.Design, noPull).Higher().
			How("pull at the design tension ratio over the pull here").Source("from memory: RMA IP-26"),
		ratio("belt.slip_reserve_dry", "Slip reserve, dry", r.Reserve.Dry, noPull).Higher().
			How("pull at which the belt skids dry over the pull here").Source(frictionSource),
		ratio("belt.slip_reserve_worn", "Slip reserve, dry and worn", r.Reserve.Worn, noPull).Higher().
			How("dry reserve less the traction lost by wear").Source("Yu, Childs, Dalgarno & Day 1998, Proc IMechE D 212:333"),
		ratio("belt.slip_reserve_wet", "Slip reserve, wet", r.Reserve.Wet, noPull).Higher().
			How("pull at which the belt skids wet over the pull here").Source(frictionSource),
		ratio("belt.slip_reserve_peak", "Slip reserve, dry, peak torque", r.Reserve.Peak, r.noPulsation()).Higher().
			How("pull at which the belt skids dry over the greatest pull of a cycle").Source(frictionSource),
		reading.New("belt.creep", "Creep", r.Creep, unit.Percent).Lower().
			How("effective pull over the belt's EA").Source(stiffnessOrigin),
	)
}

func (r *Result) heatReadings(rs []reading.Reading) []reading.Reading {
	watts := func(key, label string, w float64) reading.Reading {
		return reading.New(key, label, w, unit.Watt).Lower()
	}
	return append(rs,
		watts("belt.creep_loss", "Loss in creep", r.CreepLoss).
			How("power times the speed lost in creep").Source(stiffnessOrigin),
		watts("belt.bending_loss", "Loss in bending", r.BendingLoss).
			How("a constant resistance, fixed by the efficiency at rated power").Source("hysteresis in proportion to speed, scaled to the efficiency given"),
		watts("belt.windage_loss", "Loss in windage", r.WindageLoss).
			How("drag of both faces of the belt, coefficient 0.005").Source("estimate"),
		reading.New("belt.efficiency_half", "Efficiency at half speed", r.EfficiencyHalf, unit.Percent).Higher().
			How("at half the speed and an eighth of the power").Source(partLoadSource),
		reading.New("belt.efficiency_level", "Efficiency in level flight", r.EfficiencyLevel, unit.Percent).Higher().
			How("at the share of power given for level flight, speed after the cube law").Source(partLoadSource),
		reading.New("belt.temperature", "Belt temperature", r.Temperature, unit.Celsius).Lower().
			How("air temperature plus loss over what belt and rims shed; the silencer's radiation is left out").
			Source("from memory: Nu = 0.037 Re^0.8 Pr^(1/3) for belt, 0.133 Re^(2/3) Pr^(1/3) for rims"),
	)
}

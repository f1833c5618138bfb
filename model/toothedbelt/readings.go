package toothedbelt

import (
	"backspan/model/reading"
	"backspan/model/unit"
)

// Readings are the result's figures for people. Three keep the key they have
// for every kind of belt: belt.static_tension, belt.shaft_load_standing and
// belt.shaft_load_running.
func (r Result) Readings(rs []reading.Reading) []reading.Reading {
	rs = r.geometryReadings(rs)
	rs = r.tensionReadings(rs)
	rs = r.swingReadings(rs)
	rs = r.ratingReadings(rs)
	return r.heatReadings(rs)
}

const (
	openBeltSource = "Shigley's Mechanical Engineering Design, eqs 17-1 and 17-2"
	lockedSource   = "mechanics: a loop at a locked centre keeps the sum of its spans' tensions"
	ruleSource     = "Chinese mechanical design handbook, arc-tooth belt drives"
	travelSource   = "from memory: Sack 1954, a travelling string"
	stiffSource    = "mechanics, with the stiffness given"
	noStiffness    = "the belt's stiffness is not given"
)

func (r *Result) geometryReadings(rs []reading.Reading) []reading.Reading {
	length := func(key, label string, m float64) reading.Reading {
		return reading.New(key, label, m, unit.Millimetre)
	}
	const diameter, outside = "ISO 5294: teeth times pitch over π", "ISO 13050; trapezoidal from memory: ISO 5294"
	return append(rs,
		length("toothedbelt.crank_pitch_diameter", "Crank pulley, pitch diameter", r.Geometry.Crank).
			How("teeth times pitch over π").Source(diameter),
		length("toothedbelt.crank_outside_diameter", "Crank pulley, outside diameter", r.CrankOutside).
			How("pitch diameter less two line differentials").Source(outside),
		length("toothedbelt.driven_pitch_diameter", "Driven pulley, pitch diameter", r.Geometry.Driven).
			How("teeth times pitch over π").Source(diameter),
		length("toothedbelt.driven_outside_diameter", "Driven pulley, outside diameter", r.DrivenOutside).
			How("pitch diameter less two line differentials").Source(outside),
		reading.New("toothedbelt.belt_teeth", "Belt teeth, as laid out", float64(r.BeltTeeth), unit.Count).
			How("as given, or the whole belt nearest to the centre distance wanted").Source("geometry"),
		length("toothedbelt.length_pitch", "Belt length, pitch", r.Geometry.Length()).
			How("belt teeth times pitch").Source("geometry"),
		length("toothedbelt.centre_distance", "Centre distance", r.Geometry.CentreDistance).
			How("at which two spans and two arcs come to the belt's length").Source(openBeltSource),
		reading.OfSlot("toothedbelt.centre_shorter", "Centre distance, one tooth less", r.CentreShorter, unit.Millimetre, "with one belt tooth less the pulleys touch").
			How("as the centre distance, with the next shorter belt").Source(openBeltSource),
		reading.OfSlot("toothedbelt.centre_longer", "Centre distance, one tooth more", r.CentreLonger, unit.Millimetre, "there is no belt").
			How("as the centre distance, with the next longer belt").Source(openBeltSource),
		reading.New("toothedbelt.wrap_crank", "Wrap on the crank pulley", r.Geometry.CrankWrap(), unit.Degree).Higher().
			How("180° less twice the spans' tilt").Source(openBeltSource),
		reading.New("toothedbelt.teeth_engaged", "Teeth engaged, smaller pulley", r.TeethEngaged, unit.One).Higher().
			How("teeth times wrap over 360°; whole ones of them count").Source("ISO 5295"),
		length("toothedbelt.span", "Free span", r.Geometry.Span()).
			How("centre distance times the cosine of the spans' tilt").Source("geometry"),
		length("toothedbelt.face_width", "Pulley face width", r.FaceWidth).Lower().
			How("belt width and what the face is wider").Source("geometry"),
		reading.New("toothedbelt.mass", "Belt mass", r.BeltMass, unit.Kilogram).Lower().
			How("mass per width and metre, times width and length").Source(massOrigin),
		reading.New("toothedbelt.crank_inertia", "Crank pulley inertia", r.CrankInertia, unit.KilogramSquareMetre).
			How("rim, side walls, web and hub about the axis").Source("geometry"),
		reading.New("toothedbelt.driven_inertia", "Driven pulley and plate inertia", r.DrivenInertia, unit.KilogramSquareMetre).
			How("rim, side walls, web, hub and propeller plate about the axis").Source("geometry"),
		reading.OfSlot("toothedbelt.take_up", "Take-up to set the tension", r.TakeUp, unit.Millimetre, r.whyNoTakeUp()).
			How("from where the belt lies unstretched to the standing tension").Source(stiffSource),
		reading.OfSlot("toothedbelt.setting_rate", "Tension per centre distance", r.SettingRate, unit.NewtonPerMillimetre, noStiffness).Lower().
			How("2 cos(tilt) EA / pitch length, per strand").Source(stiffSource),
	)
}

func (r *Result) whyNoTakeUp() string {
	if r.StiffnessGiven {
		return "the belt would stretch more than the centre distance can take up"
	}
	return noStiffness
}

func (r *Result) tensionReadings(rs []reading.Reading) []reading.Reading {
	tension := func(key, label string, n float64) reading.Reading { return reading.New(key, label, n, unit.Newton) }
	const slackSpan = "the span hangs slack"
	return append(rs,
		tension("belt.static_tension", "Required standing tension", r.RequiredTension).Lower().
			How("per strand: 0.75 times the pull at the service factor times the rated power, and m v²").Source(ruleSource),
		tension("toothedbelt.standing_tension", "Standing tension as set", r.StandingTension).
			How("per strand: as given, else the required one").Source(lockedSource),
		tension("toothedbelt.effective_pull", "Effective pull", r.Pull).Lower().
			How("power over belt speed").Source("mechanics"),
		reading.New("toothedbelt.pull_per_width", "Effective pull per width", r.perWidth(r.Pull), unit.NewtonPerMillimetre).Lower().
			How("effective pull over the belt's width").Source("mechanics"),
		tension("toothedbelt.tight_side", "Tight side", r.Tensions.TightSide).Lower().
			How("standing tension plus half the pull").Source(lockedSource),
		tension("toothedbelt.slack_side", "Slack side", r.Tensions.SlackSide).
			How("standing tension less half the pull").Source(lockedSource),
		tension("toothedbelt.centrifugal_tension", "Centrifugal tension", r.Tensions.Centrifugal).Lower().
			How("belt mass per metre times speed squared").Source("mechanics"),
		tension("belt.shaft_load_standing", "Shaft load, standing", r.Standing.Size()).Lower().
			How("twice the standing tension times the cosine of the spans' tilt").Source("mechanics"),
		tension("belt.shaft_load_running", "Shaft load, running", r.Running.Size()).Lower().
			How("contact tensions added as vectors").Source("mechanics"),
		reading.New("toothedbelt.shaft_load_angle", "Shaft load, direction", r.Running.Angle(), unit.Degree).
			How("running, from the line of centres towards the tight span").Source("mechanics"),
		reading.New("toothedbelt.overhang_moment", "Bending moment on the crank", r.CrankMoment, unit.NewtonMetre).Lower().
			How("the greater shaft load times the overhang from the crank bearing").Source("mechanics"),
		reading.New("toothedbelt.speed", "Belt speed", r.Speed, unit.MetrePerSecond).
			How("on the crank pulley's pitch diameter").Source("geometry"),
		reading.New("toothedbelt.mesh_frequency", "Mesh frequency", r.MeshFrequency, unit.Hertz).Lower().
			How("crank pulley teeth times crank speed; it leads the belt's noise").Source("geometry"),
		reading.New("toothedbelt.pass_frequency", "Belt pass frequency", r.PassFrequency, unit.Hertz).
			How("belt speed over belt length").Source("geometry"),
		reading.New("toothedbelt.span_frequency", "Span frequency, standing", r.SpanFrequency, unit.Hertz).
			How("√(T/m) over twice the free span, for setting the tension by ear").Source("mechanics: a string"),
		reading.OfSlot("toothedbelt.tight_frequency", "Tight span frequency, running", r.TightFrequency, unit.Hertz, slackSpan).
			How("(c² − v²)/(2 c span) with c = √(T/m)").Source(travelSource),
		reading.OfSlot("toothedbelt.slack_frequency", "Slack span frequency, running", r.SlackFrequency, unit.Hertz, slackSpan).
			How("(c² − v²)/(2 c span) with c = √(T/m)").Source(travelSource),
	)
}

func (r *Result) perWidth(x float64) float64 {
	if r.BeltWidth == 0 {
		return 0
	}
	return x / r.BeltWidth
}

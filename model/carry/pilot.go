package carry

import (
	"backspan/model/param"
	"backspan/model/unit"
)

// Pilot is who carries the machine, and how. Lengths in m, masses in kg.
type Pilot struct {
	Percentile Percentile // whose measures; own measures take the fields below

	Mass     float64
	Stature  float64
	Segments Table

	BackBehindHip  float64 // back plane behind the hip-joint axis
	ReferenceDepth float64 // centre of gravity behind the back that equivalent masses refer to
	HipShare       float64 // of the balancing lean: 0 all at the ankle, 1 all at the hip

	FootLength     float64
	HeelShare      float64 // heel behind the ankle axis, share of the foot length
	StandingCentre float64 // body's centre of gravity ahead of the ankle when standing quietly

	StrapHeight  float64 // shoulder straps above the lumbar pad
	HipBeltShare float64 // share of the weight on the hip belt, 0..1

	Back Back
	Walk Walk
	Lift Lift
}

// DefaultPilot is a man of average build.
func DefaultPilot() Pilot {
	return Pilot{
		Percentile: OwnMeasures, Mass: 85.5, Stature: 1.756, Segments: DeLevaMale,
		BackBehindHip: 0.11, ReferenceDepth: 0.15, HipShare: 0.5,
		FootLength: 0.271, HeelShare: 0.25, StandingCentre: 0.05,
		StrapHeight: 0.42, HipBeltShare: 0.30,
		Back: defaultBack(), Walk: defaultWalk(), Lift: defaultLift(),
	}
}

// Sections lists what a user may set, in the order a form shows it.
func (p *Pilot) Sections() []param.Section {
	return []param.Section{
		{Key: "pilot", Label: "Pilot standing", Params: p.Params()},
		{Key: "pilot.back", Label: "Pilot's back", Params: p.Back.params(),
			Help: "lever arms about the lowest disc of the back, to rank machines with; the same for a body from the table"},
		{Key: "pilot.walk", Label: "Pilot walking", Params: p.Walk.params(),
			Help: "to the field, with the machine on the back"},
		{Key: "pilot.lift", Label: "Pilot lifting", Params: p.Lift.params(),
			Help: "lifting it with both hands, back plane towards the body"},
	}
}

// Params lists what a user may set of the pilot's body, in the order a form
// shows it.
func (p *Pilot) Params() []param.Param {
	own := p.Percentile == OwnMeasures
	return []param.Param{
		param.Choice(&p.Percentile, "percentile", "Measures of", append([]Percentile{OwnMeasures}, Percentiles()...)...).
			From("ANSUR II (2012), percentiles of the public data").
			Help("a body from the table, or the pilot's own measures; nobody is at one percentile in every measure"),
		param.Number(&p.Mass, "mass", "Pilot mass", unit.Kilogram).Within(40, 160).Typical(64, 111).When(own).
			From("ANSUR II (2012), mean of the men").Help("without clothing and equipment"),
		param.Number(&p.Stature, "stature", "Stature", unit.Millimetre).Within(1400, 2100).Typical(1525, 1870).When(own).
			From("ANSUR II (2012), mean of the men"),
		param.Choice(&p.Segments, "segments", "Body segments after", DeLevaMale, DeLevaFemale, Winter).When(own).
			From("de Leva 1996, table 4, some lengths from memory; Winter, table 4.1").
			Help("published table that splits the body into segments"),
		param.Number(&p.BackBehindHip, "back_behind_hip", "Back plane behind hip axis", unit.Millimetre).Within(40, 220).When(own).
			Typical(90, 140).From("estimate").Help("half the buttock depth less what the pad presses in"),
		param.Number(&p.ReferenceDepth, "reference_depth", "Reference depth", unit.Millimetre).Within(20, 400).
			Typical(100, 200).From("common practice, no source").
			Help("centre of gravity behind the back of the machine that equivalent masses compare with"),
		param.Number(&p.HipShare, "hip_share", "Share of the lean at the hip", unit.Percent).Within(0, 100).
			From("estimate").Help("0 leans from the ankles alone, 100 bends at the hip alone"),
		param.Number(&p.FootLength, "foot_length", "Foot length", unit.Millimetre).Within(180, 340).Typical(226, 293).When(own).
			From("ANSUR II (2012), mean of the men").Help("barefoot"),
		param.Number(&p.HeelShare, "heel_share", "Heel behind ankle, of the foot", unit.Percent).Within(10, 40).
			Typical(20, 30).From("estimate").Help("share of the foot length behind the ankle axis"),
		param.Number(&p.StandingCentre, "standing_centre", "Standing centre ahead of ankle", unit.Millimetre).
			Within(0, 120).Typical(40, 60).From("from memory: Winter 1995, 40 to 60 mm").
			Help("where the unloaded body's weight falls when standing quietly"),
		param.Number(&p.StrapHeight, "strap_height", "Straps above lumbar pad", unit.Millimetre).Within(200, 650).
			Typical(380, 450).From("estimate").Help("from the pad's pressure to where the straps pull at the shoulders, for the pilot's own stature; for a body from the table it grows with the stature"),
		param.Number(&p.HipBeltShare, "hip_belt_share", "Weight on the hip belt", unit.Percent).Within(0, 90).
			Typical(20, 40).From("from memory: LaFiandra & Harman 2004, 30 %"),
	}
}

// heelReserve is how far the common centre of gravity may move aft from the
// standing one before the pilot tips over the heels, m.
func (p Pilot) heelReserve() float64 { return p.HeelShare*p.FootLength + p.StandingCentre }

package belt

import (
	"fmt"

	"backspan/model/param"
	"backspan/model/reading"
	"backspan/model/unit"
)

const (
	stringSource  = "mechanics of a string"
	settingSource = "factors from memory: new 1.3 to 1.5, run in 1.0 to 1.1"
)

func (r *Result) offerReadings(rs []reading.Reading) []reading.Reading {
	a := r.Adjustment
	none := "no length on offer there goes round the pulleys clear of one another"
	pair := func(side, words string, o Offer) {
		centre := param.Slot{Value: o.CentreDistance, Known: o.Length.Known}
		rs = append(rs,
			reading.OfSlot("belt.length_"+side, "Next belt on offer, "+words, o.Length, unit.Millimetre, none).
				How("effective length; from the stock given, else preferred numbers within the profile's usual lengths").
				Source("ISO 3, R40; usual lengths from memory: ISO 9982"),
			reading.OfSlot("belt.centre_"+side, "Centre distance for it, "+words, centre, unit.Millimetre, none).
				How("at which that belt lies on both pulleys, by Newton's rule on the exact length").Source(openBeltSource),
		)
	}
	pair("below", "shorter", a.BelowOffer)
	pair("above", "longer", a.AboveOffer)
	return rs
}

func (r *Result) settingReadings(rs []reading.Reading) []reading.Reading {
	a := r.Adjustment
	newton := func(key, label string, n float64) reading.Reading { return reading.New(key, label, n, unit.Newton) }
	hertz := func(key, label string, f float64) reading.Reading { return reading.New(key, label, f, unit.Hertz) }
	const (
		frequency = "√(T/m) over twice the free span at that tension; with the bending stiffness where it is given"
		press     = "4 T δ/span, T raised by what the loop's EA makes of the span's 2δ²/span"
	)
	return append(rs,
		newton("belt.setting_new", "Tension to set, new belt", a.New).How("setting factor times the standing tension, per strand").Source(settingSource),
		newton("belt.setting_run_in", "Tension to set, run-in belt", a.RunIn).How("setting factor times the standing tension, per strand; due after about 20 h, when most of the bedding in is over").Source(settingSource),
		hertz("belt.frequency_new", "Span frequency, new belt", a.FrequencyNew).How(frequency).Source(stringSource),
		hertz("belt.frequency_run_in", "Span frequency, run-in belt", a.FrequencyRunIn).How(frequency).Source(stringSource),
		reading.New("belt.deflection", "Deflection to measure at", a.Deflection, unit.Millimetre).How("1/64 of the free span, at its middle").Source("common practice, no source"),
		newton("belt.deflection_force_new", "Force to deflect, new belt", a.ForceNew).How(press).Source(stringSource),
		newton("belt.deflection_force_run_in", "Force to deflect, run-in belt", a.ForceRunIn).How(press).Source(stringSource),
		newton("belt.tension_growth", "Tension added by warming", a.Growth).Lower().
			How("frame growth over the centre distance times the tension per centre distance; the belt's own growth is left out").Source("mechanics"),
		newton("belt.tension_hot", "Standing tension, warm", r.StandingTension+a.Growth).Lower().How("as set cold, and what warming adds").Source("mechanics"),
		newton("belt.shaft_load_new", "Shaft load, standing, new belt", a.NewLoad).Lower().How("twice the tension to set on a new belt times the cosine of the spans' tilt").Source("mechanics"),
		newton("belt.shaft_load_hot", "Shaft load, standing, warm", a.HotLoad).Lower().How("twice the warm standing tension times the cosine of the spans' tilt").Source("mechanics"),
	)
}

func (r *Result) eccentricReadings(rs []reading.Reading) []reading.Reading {
	a := r.Adjustment
	length := func(key, label string, m float64) reading.Reading { return reading.New(key, label, m, unit.Millimetre) }
	return append(rs,
		length("belt.take_up_needed", "Take-up needed in service", a.TakeUpNeeded).Lower().
			How("length tolerance, stretch at the standing tension and permanent stretch over 2 cos(tilt)").Source("mechanics; tolerance an estimate, permanent stretch from memory"),
		length("belt.eccentric_travel", "Travel of the eccentric", a.Travel).Higher().How("centre distance from 60° before to 60° behind the middle").Source("geometry"),
		length("belt.eccentric_shift", "Sideways shift of the axis", a.Shift).Lower().How("of the propeller axis at either end of the eccentric's travel").Source("geometry"),
		length("belt.eccentric_resolution", "Setting resolution", a.Resolution).Lower().How("centre distance per least turn of the eccentric, at its middle").Source("geometry"),
		reading.New("belt.tension_step", "Tension per setting step", a.TensionStep, unit.Newton).Lower().
			How("setting resolution times tension per centre distance, per strand").Source(stiffnessOrigin),
		reading.New("belt.eccentric_moment", "Moment the clamp must hold", r.clampMoment(), unit.NewtonMetre).Lower().
			How("greatest shaft load known times the eccentric's offset; no self-locking is assumed").Source("mechanics"),
	)
}

// sheetReadings are the limits a pulley and its mounting are made to.
func (r *Result) sheetReadings(rs []reading.Reading) []reading.Reading {
	const pulleys = "ISO 9981:2020 for PK; taken over for the other profiles"
	return append(rs,
		reading.New("belt.sheet_grooves", "Grooves in each pulley", float64(r.Ribs), unit.Count).
			How("as many as ribs; order the belt as "+r.Designation()).Source("geometry"),
		reading.New("belt.sheet_groove_variation", "Groove to groove variation", grooveVariation, unit.Millimetre).How("greatest difference of diameters in one pulley").Source(pulleys),
		reading.New("belt.sheet_run_out", "Run-out, full indicator movement", runOut, unit.Millimetre).How("radial and axial, greatest").Source(pulleys),
		reading.New("belt.sheet_roughness", "Groove roughness Ra", grooveRoughness, unit.Micrometre).How("greatest, on the flanks").Source(pulleys),
		reading.New("belt.sheet_alignment", "Misalignment over the span", r.Adjustment.MisalignmentOffset, unit.Millimetre).
			How("span times the tangent of the misalignment limit").Source("from memory: 0.25 to 0.5°"),
		reading.New("belt.sheet_balance_speed", "Balance in two planes above", balanceSpeed, unit.MetrePerSecond).
			How("belt speed from which pulleys are balanced dynamically; "+r.balance()).Source("from memory: ISO 254"),
	)
}

const (
	grooveVariation = 0.15e-3 // m
	runOut          = 0.25e-3 // m
	grooveRoughness = 3.2e-6  // m
	balanceSpeed    = 30.0    // m/s
)

// balance says whether the pulleys need it at this point.
func (r *Result) balance() string {
	if r.Speed > balanceSpeed {
		return "needed at this point"
	}
	return "not reached at this point"
}

// Designation is the belt in the words it is ordered by: ribs, profile and
// effective length in mm.
func (r Result) Designation() string {
	return fmt.Sprintf("%d %s %.0f", r.Ribs, r.Profile, unit.Millimetre.From(r.EffectiveLength))
}

package belt

import (
	"math"

	"backspan/model/param"
	"backspan/model/unit"
)

// Fatigue is the belt's durability law and what limits its service besides.
type Fatigue struct {
	Strength    param.Slot // per rib: the force that one pass in theory breaks, N
	Exponent    float64
	Bending     param.Slot // per rib: bending force times diameter, N·m
	HalvingStep float64    // warming that halves the life, K
	HalvingFrom float64    // above this temperature, K
	Uncertainty float64    // factor either way
	Cap         float64    // the longest life claimed, s
	Wear        param.Slot // life until the flanks are worn, s
	Known       KnownLife
}

// KnownLife is a belt whose life on another drive is known.
type KnownLife struct {
	Life           param.Slot // s
	Tension        param.Slot // greatest tight side per rib, N
	CrankDiameter  param.Slot // effective, m
	DrivenDiameter param.Slot // effective, m
	CrankSpeed     param.Slot // rad/s
	Length         param.Slot // effective, m
}

func defaultFatigue() Fatigue {
	return Fatigue{
		Exponent: 12.46, HalvingStep: 12, HalvingFrom: 273.15 + 80, Uncertainty: 10, Cap: 500 * 3600,
	}
}

const lawOrigin = "estimate: 3V law of Shigley's tables 17-16 and 17-17, from memory, scaled by cord width to a PK rib; for comparison only"

func (f *Fatigue) params(details bool) []param.Param {
	ps := []param.Param{
		param.Open(&f.Wear, "wear_life", "Belt life by wear", unit.Hour).
			Within(1, 5000).Typical(50, 400).Help("running time until the ribs are worn, where it is known"),
		param.Open(&f.Strength, "fatigue_strength", "Fatigue strength per rib", unit.Newton).
			Within(50, 20000).Typical(800, 2500).Help("constant K of the durability law; empty takes PK 1281 N, other profiles have none").From(lawOrigin),
		param.Number(&f.Exponent, "fatigue_exponent", "Fatigue exponent", unit.One).
			Within(4, 20).Typical(10, 13).Help("exponent b of the durability law").From(lawOrigin),
		param.Open(&f.Bending, "bending_constant", "Bending constant per rib", unit.NewtonMetre).
			Within(0, 200).Typical(4, 12).Help("bending force times pitch diameter; empty takes PK 7.1 N·m, other profiles have none").From(lawOrigin),
		param.Number(&f.HalvingStep, "halving_step", "Warming that halves the life", unit.KelvinDifference).
			Within(5, 40).Typical(10, 15).From("from memory: 10 to 15 K"),
		param.Number(&f.HalvingFrom, "halving_from", "Warming counts above", unit.Celsius).
			Within(20, 150).Typical(70, 90).Help("belt temperature from which the life is halved step by step").From("from memory: about 80 °C"),
		param.Number(&f.Uncertainty, "life_uncertainty", "Uncertainty of the fatigue life", unit.One).
			Within(1, 100).Typical(3, 10).Help("the belt change is set by the life divided by this factor").From("estimate: at least 10 without a known life"),
		param.Number(&f.Cap, "life_cap", "Longest fatigue life claimed", unit.Hour).
			Within(50, 5000).Typical(300, 1000).Help("beyond it wear, heat and oil govern").From("estimate"),
	}
	k := &f.Known
	const whole = "a belt that lasted; all six figures of that drive must be given"
	ps = append(ps,
		param.Open(&k.Life, "known_life", "Known life of a belt", unit.Hour).Within(1, 20000).Help(whole),
		param.Open(&k.Tension, "known_tension", "Its peak tension per rib", unit.Newton).Within(5, 2000).Help(whole),
		param.Open(&k.CrankDiameter, "known_crank_diameter", "Its crank pulley, effective", unit.Millimetre).Within(20, 400).Help(whole),
		param.Open(&k.DrivenDiameter, "known_driven_diameter", "Its driven pulley, effective", unit.Millimetre).Within(20, 400).Help(whole),
		param.Open(&k.CrankSpeed, "known_crank_speed", "Its crank speed", unit.RPM).Within(500, 15000).Help(whole),
		param.Open(&k.Length, "known_length", "Its effective belt length", unit.Millimetre).Within(200, 5000).Help(whole))
	expert(ps, details, "wear_life")
	return ps
}

// law is the durability law of one rib.
type law struct{ strength, exponent, bending float64 }

// perPass is the share of the belt's life that one turn of the loop takes: a
// force peak at each pulley, tension N and pitch diameters m per rib.
// Source: Shigley's Mechanical Engineering Design, eq. 17-27.
func (l law) perPass(tight, crank, driven float64) float64 {
	return l.perPeaks(tight+l.bending/crank, tight+l.bending/driven)
}

// perPeaks is the same for two force peaks, N.
func (l law) perPeaks(first, second float64) float64 {
	return math.Pow(first/l.strength, l.exponent) + math.Pow(second/l.strength, l.exponent)
}

// life is the running time, s, that a damage per pass allows a belt of a
// length, m, at a speed, m/s. Source: Shigley's, eq. 17-28.
func life(perPass, length, speed float64) float64 { return length / (speed * perPass) }

// law is the durability law in force, calibrated where a life is known; false
// where there is none for the profile.
func (f *Fatigue) law(row section) (l law, calibrated, ok bool) {
	l = law{row.fatigueStrength, f.Exponent, row.bendingConstant}
	if f.Strength.Known {
		l.strength = f.Strength.Value
	}
	if f.Bending.Known {
		l.bending = f.Bending.Value
	}
	k := &f.Known
	bends := row.bendingConstant > 0 || f.Bending.Known
	if bends && k.complete() {
		differential := 2 * row.lineDifferential
		crank := k.CrankDiameter.Value + differential
		speed := k.CrankSpeed.Value * crank / 2
		length := k.Length.Value + math.Pi*differential
		// Passes in the known life break one strength's worth: solve for it.
		passes := k.Life.Value * speed / length
		first := k.Tension.Value + l.bending/crank
		second := k.Tension.Value + l.bending/(k.DrivenDiameter.Value+differential)
		l.strength = first * math.Pow(passes*(1+math.Pow(second/first, l.exponent)), 1/l.exponent)
		return l, true, true
	}
	return l, false, bends && l.strength > 0
}

func (k *KnownLife) complete() bool {
	return k.Life.Known && k.Tension.Known && k.CrankDiameter.Known && k.DrivenDiameter.Known && k.CrankSpeed.Known && k.Length.Known
}

// begun reports whether some figure of the known life is given.
func (k *KnownLife) begun() bool {
	return k.Life.Known || k.Tension.Known || k.CrankDiameter.Known || k.DrivenDiameter.Known || k.CrankSpeed.Known || k.Length.Known
}

// heat is how many times faster a belt at a temperature, K, wears out. After
// sixty halvings nothing is left of any life, and the sum stays a number.
func (f *Fatigue) heat(temperature float64) float64 {
	const enough = 60
	return math.Exp2(math.Min(enough, math.Max(0, temperature-f.HalvingFrom)/f.HalvingStep))
}

package belt

import (
	"math"

	"backspan/model/param"
	"backspan/model/part"
)

// Life is how long the belt lasts.
type Life struct {
	Why         string     // why there is no fatigue life; empty when there is one
	Fatigue     float64    // by the durability law over the use, s
	Calibrated  bool       // on a belt whose life is known
	Unfinished  bool       // some but not all figures of a known life are given
	Peak        float64    // greatest tight side per rib at the examined duty, N
	Sensitivity float64    // life divided by this for 10 % more peak tension
	Heat        float64    // how many times faster the belt wears out at its temperature
	Claim       float64    // fatigue life, capped, s
	Dependable  float64    // fatigue life over its uncertainty, capped, s
	Change      float64    // least of dependable life, wear and change interval, s
	Interval    float64    // change interval as given, s
	Wear        param.Slot // s
}

// Why there is no fatigue life.
const (
	noLaw     = "no durability law is known for this profile; calibrate it with a known life and a bending constant"
	noTorque  = "the engine's torque pulsation is not known"
	noPassing = "the belt does not run"
)

// life sums the damage of the use, Palmgren-Miner. Every pass is taken to meet
// the greatest tension of its duty, which is on the safe side.
func (b Belt) life(r Result, at part.Duty, train part.Train, w twin) Life {
	f := &b.spec.Fatigue
	l := Life{Heat: f.heat(r.Temperature), Interval: b.spec.ChangeInterval, Wear: f.Wear, Change: b.spec.ChangeInterval}
	if f.Wear.Known {
		l.Change = math.Min(l.Change, f.Wear.Value)
	}
	byPulsation := b.spec.Pulsing.LoadFactor == ByPulsation
	rule, calibrated, ok := f.law(b.profile)
	switch {
	case !ok:
		l.Why = noLaw
	case byPulsation && train.Crank == nil:
		l.Why = noTorque
	case !(r.Speed > 0):
		l.Why = noPassing
	}
	if l.Why != "" {
		return l
	}
	l.Calibrated, l.Unfinished = calibrated, f.Known.begun() && !calibrated
	perRib := func(tension float64) float64 { return tension / float64(b.spec.Ribs) }
	full := at
	peak := func(at part.Duty) float64 {
		v := b.Run().Speed(at.CrankSpeed)
		if !byPulsation {
			return perRib(b.standing + b.factor*at.Power/v/2)
		}
		if at == full {
			return perRib(r.Pulsation.Surge.Tight)
		}
		p := train.Crank.Pulsation(at.Power, at.CrankSpeed)
		return perRib(b.surge(w, &p, at.CrankSpeed, at.Power/v, b.standing, b.Centrifugal(v)).Tight)
	}
	rate, length := 0.0, b.Run().Length()
	for _, s := range b.spec.Use.spells(at, train.Crank) {
		if !(s.share > 0) || !(s.at.CrankSpeed > 0) {
			continue
		}
		v := b.Run().Speed(s.at.CrankSpeed)
		creep, bending, windage := b.losses.at(s.at.Power, v)
		heat := f.heat(b.Temperature(s.at, creep+bending+windage))
		rate += s.share * heat / life(rule.perPass(peak(s.at), b.Run().Crank, b.Run().Driven), length, v)
	}
	l.Peak = peak(at)
	l.Sensitivity = rule.perPass(1.1*l.Peak, b.Run().Crank, b.Run().Driven) / rule.perPass(l.Peak, b.Run().Crank, b.Run().Driven)
	if !(rate > 0) {
		l.Why = noPassing
		return l
	}
	l.Fatigue = math.Min(1/rate, longest)
	l.Claim = math.Min(l.Fatigue, f.Cap)
	l.Dependable = math.Min(l.Fatigue/f.Uncertainty, f.Cap)
	l.Change = math.Min(l.Change, l.Dependable)
	return l
}

// longest keeps a life that the law puts beyond all use a number, s.
const longest = 1e15

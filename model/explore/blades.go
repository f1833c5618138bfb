package explore

import (
	"errors"
	"fmt"
	"strings"

	"backspan/model"
	"backspan/model/flight"
	"backspan/model/param"
	"backspan/model/propeller"
	"backspan/model/unit"
)

// BladeWish is what a new blade is wanted for; what is not Known comes from
// the variant's own working point at trim, at full throttle.
type BladeWish struct {
	Thrust, Power param.Slot // N isolated, or W at the propeller; not both
	Airspeed      param.Slot // m/s
	Speed         param.Slot // of the propeller, rad/s
	Lift          float64    // section lift coefficient
	LeastChord    param.Slot // m
	GreatestChord param.Slot // m
	Stations      int
}

// BladeFound is a blade and what it does on the machine.
type BladeFound struct {
	Aim           propeller.Aim
	Design        propeller.Design
	Brief         string        // what it is for, in one sentence
	Variant       model.Variant // the machine with the blade, not yet named anew; its notes end with the brief
	Before, After model.Outcome // the machine as it is, and with the blade
}

// usualLeastChord is a tip that a small workshop can build.
const usualLeastChord = 0.025

// Blade designs a blade of least induced loss for a variant and works the
// machine with it.
func Blade(s *model.Study, v *model.Variant, wish BladeWish) (BladeFound, error) {
	f := BladeFound{Before: model.Evaluate(s, v), Variant: v.Clone()}
	var err error
	if f.Aim, err = wish.aim(s, v, f.Before); err != nil {
		return f, err
	}
	if f.Design, err = v.Propeller.Design(f.Aim); err != nil {
		return f, err
	}
	f.Variant.Propeller = f.Design.Blade
	f.Brief = fmt.Sprintf("Blade of least induced loss for %s at %s and %s, lift coefficient %.2f.",
		f.wanted(), unit.RPM.Text(f.Aim.Flow.Speed), unit.KilometrePerHour.Text(f.Aim.Flow.Airspeed), f.Aim.Lift)
	f.Variant.Notes = strings.TrimSpace(f.Variant.Notes + " " + f.Brief)
	f.After = model.Evaluate(s, &f.Variant)
	return f, nil
}

func (f *BladeFound) wanted() string {
	if f.Aim.Thrust > 0 {
		return unit.Newton.Text(f.Aim.Thrust)
	}
	return unit.Kilowatt.Text(f.Aim.Power)
}

// aim fills the wish from the machine as it works now.
func (w BladeWish) aim(s *model.Study, v *model.Variant, now model.Outcome) (propeller.Aim, error) {
	air := s.Site.State()
	aim := propeller.Aim{Thrust: w.Thrust.Value, Power: w.Power.Value, Lift: w.Lift, Stations: w.Stations,
		LeastChord: usualLeastChord, GreatestChord: widest(&v.Propeller),
		Flow: propeller.Flow{Airspeed: w.Airspeed.Value, Speed: w.Speed.Value, Density: air.Density, SoundSpeed: air.SoundSpeed, Viscosity: air.DynamicViscosity}}
	if w.LeastChord.Known {
		aim.LeastChord = w.LeastChord.Value
	}
	if w.GreatestChord.Known {
		aim.GreatestChord = w.GreatestChord.Value
	}
	var lacks []string
	var why error
	fill := func(known bool, to *float64, name string, of func() (float64, error)) {
		if known {
			return
		}
		x, err := of()
		if err != nil {
			lacks, why = append(lacks, name), err
			return
		}
		*to = x
	}
	fill(w.Airspeed.Known, &aim.Flow.Airspeed, "the airspeed", func() (float64, error) { return trimSpeed(s, now) })
	fill(w.Speed.Known, &aim.Flow.Speed, "the propeller's speed", func() (float64, error) {
		return product(now, "match.trim_speed", "drive.output_speed", "engine.speed")
	})
	fill(w.Thrust.Known || w.Power.Known, &aim.Power, "thrust or power", func() (float64, error) {
		return product(now, "match.trim_power", "drive.efficiency", "")
	})
	if len(lacks) > 0 {
		return aim, fmt.Errorf("not given: %s; and the machine as it is has no working point at trim to take it from: %w", strings.Join(lacks, ", "), why)
	}
	return aim, nil
}

// trimSpeed is that of level flight at the machine's mass, whether or not its
// engine can hold it.
func trimSpeed(s *model.Study, now model.Outcome) (float64, error) {
	if now.Stack.MassReady <= 0 {
		return readingOf(now, "flight.trim_speed")
	}
	speed, _ := flight.Level(s.Wing, flight.AllUp(s.Wing, s.Seat, s.Pilot.Measured().Mass, now.Stack.MassReady), s.Site.State().Density)
	return speed, nil
}

// widest is the greatest chord of a blade.
func widest(s *propeller.Spec) float64 {
	if s.Shape != propeller.Stations {
		return s.GreatestChord
	}
	most := 0.0
	for _, row := range s.Rows {
		most = max(most, row[1])
	}
	return most
}

func readingOf(o model.Outcome, key string) (float64, error) {
	r, ok := o.Reading(key)
	switch {
	case !ok:
		return 0, fmt.Errorf("there is no reading %s", key)
	case !r.Known():
		return 0, errors.New(r.Why)
	}
	return r.Value, nil
}

// product is one reading times another, over a third where one is named.
func product(o model.Outcome, key, times, over string) (float64, error) {
	x, err := readingOf(o, key)
	if err != nil {
		return 0, err
	}
	y, err := readingOf(o, times)
	if err != nil || over == "" {
		return x * y, err
	}
	z, err := readingOf(o, over)
	if err != nil {
		return 0, err
	}
	return x * y / z, nil
}

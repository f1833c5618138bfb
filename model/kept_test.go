package model

import (
	"math"
	"strings"
	"testing"

	"backspan/model/param"
	"backspan/model/reading"
)

func changesOf(o Outcome, part string) int {
	n := 0
	for _, c := range o.Changes {
		if c.Part == part {
			n++
		}
	}
	return n
}

// What the drive needs is set with the drive and counts here.
func TestDriveIsKeptByItsOwnFacts(t *testing.T) {
	o := sampleOutcomes(t)
	for name, part := range map[string]string{"Belt 190": "Ribbed belt", "Toothed 190": "Toothed belt", "Gear 190": "Gear oil and seals"} {
		every := value(t, o[name], "drive.change_interval")
		if got, want := changesOf(o[name], part), int(math.Ceil(300/every))-1; got != want {
			t.Errorf("%s: %d changes of %s in 300 h by %g h, want %d", name, got, part, every, want)
		}
	}
	base := evaluated(t, nil)
	dear := evaluated(t, [][2]string{{"drive.ribbed_belt.belt_price", "100"}})
	more := 300 / value(t, base, "drive.change_interval")
	extra := value(t, dear, "upkeep.horizon_cost") - value(t, base, "upkeep.horizon_cost")
	rate := value(t, dear, "drive.upkeep") - value(t, base, "drive.upkeep")
	within(t, "what a dearer belt costs until the horizon", extra, rate*value(t, base, "drive.change_interval")*(math.Ceil(more)-1), 1e-9)
}

func TestDirectDriveHasNothingToChange(t *testing.T) {
	o := evaluated(t, [][2]string{{"drive.kind", "direct"}})
	if len(o.Changes) != 0 {
		t.Errorf("a machine that cannot turn its propeller has %d changes", len(o.Changes))
	}
	if r, _ := o.Reading("upkeep.cost_per_hour"); r.Known() || !strings.Contains(r.Why, "level flight") {
		t.Errorf("%+v", r)
	}
}

// A four-stroke burns no oil with its fuel.
func TestOilGoesWithTheMixture(t *testing.T) {
	s := Sample()
	v := s.Variants[0].Clone()
	cost := func(oil string) float64 {
		p, _ := param.Find(s.Sections(), "use.oil_price")
		if err := p.Set(oil); err != nil {
			t.Fatal(err)
		}
		return value(t, Evaluate(s, &v), "upkeep.fuel_cost")
	}
	if cost("20") <= cost("0") {
		t.Error("oil costs nothing")
	}
	v.Engine.Cycle = "four-stroke"
	if cost("20") != cost("0") {
		t.Error("a four-stroke pays for the mixture's oil")
	}
}

// More use costs more in all and less by the hour is not promised: changes come
// whole. Fuel follows the hours exactly.
func TestFuelFollowsTheHours(t *testing.T) {
	s := Sample()
	fuel := func(hours string) float64 {
		p, _ := param.Find(s.Sections(), "use.hours_per_year")
		if err := p.Set(hours); err != nil {
			t.Fatal(err)
		}
		return value(t, Evaluate(s, &s.Variants[0]), "upkeep.fuel_cost")
	}
	within(t, "fuel of twice the hours", fuel("80"), 2*fuel("40"), 1e-9)
}

func TestSharesOfUseAreChecked(t *testing.T) {
	s := Sample()
	s.Use.IdleShare, s.Use.ClimbShare = 0.5, 0.5001
	for _, c := range Evaluate(s, &s.Variants[0]).Checks {
		if c.Key == "upkeep.shares" && c.Verdict != reading.Fails {
			t.Errorf("%+v", c)
		}
	}
}

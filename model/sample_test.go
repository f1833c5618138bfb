package model

import (
	"testing"

	"backspan/model/cooling"
	"backspan/model/reading"
)

// value is a known reading in its display unit.
func value(t *testing.T, o Outcome, key string) float64 {
	t.Helper()
	r, ok := o.Reading(key)
	if !ok || !r.Known() {
		t.Fatalf("%s: %s has no value: %s", o.Variant, key, r.Why)
	}
	return r.Unit.From(r.Value)
}

func sampleOutcomes(t *testing.T) map[string]Outcome {
	t.Helper()
	s := Sample()
	if fs := s.Faults(); len(fs) > 0 {
		t.Fatal(fs)
	}
	byName := map[string]Outcome{}
	for _, o := range EvaluateAll(s) {
		byName[o.Variant] = o
	}
	return byName
}

func within(t *testing.T, what string, got, want, share float64) {
	t.Helper()
	if got < want*(1-share) || got > want*(1+share) {
		t.Errorf("%s is %.4g, want %.4g within %.0f %%", what, got, want, 100*share)
	}
}

// The depths of a mid-range machine: common practice, no source.
func TestSampleDepthsAreThoseOfTheTrade(t *testing.T) {
	o := sampleOutcomes(t)
	belt, gear := o["Belt 190"], o["Gear 190"]
	within(t, "belt, mount to plate, mm", value(t, belt, "stack.drive_depth"), 230, 0.05)
	within(t, "belt, mount to rear end, mm", value(t, belt, "stack.overall_depth"), 250, 0.05)
	within(t, "gear, mount to plate, mm", value(t, gear, "stack.drive_depth"), 324, 0.05)
	within(t, "gear stage over belt stage", value(t, gear, "drive.depth")/value(t, belt, "drive.depth"), 2, 0.15)
}

// Gear wins efficiency; belt wins mass, depth, price, upkeep and simplicity:
// common practice, no source. Prices in the sample are invented.
func TestSamplePosesTheDilemma(t *testing.T) {
	o := sampleOutcomes(t)
	for _, size := range []string{"80", "190", "300"} {
		belt, gear := o["Belt "+size], o["Gear "+size]
		if value(t, gear, "drive.efficiency") <= value(t, belt, "drive.efficiency") {
			t.Errorf("%s: the gear wastes more than the belt", size)
		}
		for _, key := range []string{"drive.mass", "drive.depth", "drive.price", "drive.upkeep", "drive.wearing_parts", "stack.depth", "carry.hip_moment"} {
			if value(t, gear, key) <= value(t, belt, key) {
				t.Errorf("%s: the belt does not win %s", size, key)
			}
		}
	}
}

// With the same engine the gear machine feels heavier than its extra mass
// alone explains: common practice, no source.
func TestSampleGearFeelsHeavierThanItsMass(t *testing.T) {
	s := Sample()
	c := Compare(s, EvaluateAll(s))
	for i, o := range c.Outcomes {
		ref := c.Outcomes[c.Reference]
		total := value(t, o, "carry.hip_moment") - value(t, ref, "carry.hip_moment")
		if sum := c.Feel[i].FromMass + c.Feel[i].FromDepth; sum-total > 1e-9 || total-sum > 1e-9 {
			t.Errorf("%s: the split sums to %g of %g", o.Variant, sum, total)
		}
		if o.Variant != "Gear 190" {
			continue
		}
		felt := value(t, o, "carry.equivalent_mass") - value(t, ref, "carry.equivalent_mass")
		mass := value(t, o, "stack.mass_ready") - value(t, ref, "stack.mass_ready")
		if felt < 1.5*mass {
			t.Errorf("feels %.2f kg heavier for %.2f kg of mass", felt, mass)
		}
		if c.Feel[i].FromDepth <= c.Feel[i].FromMass {
			t.Errorf("mass moves the hip moment by %.2f, depth by only %.2f N·m", c.Feel[i].FromMass, c.Feel[i].FromDepth)
		}
	}
}

// Drive against drive, with the fan left out of the gear machine: on a small
// engine the share saved by a gear lifts more than its mass costs; on a large
// one it does not, and the belt's load on the crank grows out of proportion.
// Common practice, no source.
func TestSampleGearPaysOnSmallEngines(t *testing.T) {
	gain := map[string]float64{}
	for _, size := range []string{"80", "300"} {
		s := Sample()
		belt, gear := s.Index("Belt "+size), s.Index("Gear "+size)
		s.Variants[gear].Cooling.Kind = cooling.FreeAir
		b, g := Evaluate(s, &s.Variants[belt]), Evaluate(s, &s.Variants[gear])
		gain[size] = value(t, g, "flight.climb_rate") - value(t, b, "flight.climb_rate")
	}
	if gain["80"] <= 0 || gain["300"] >= gain["80"] {
		t.Errorf("climb gained by the gear alone: small %.3f, large %.3f m/s", gain["80"], gain["300"])
	}
	o := sampleOutcomes(t)
	if small, large := o["Belt 80"], o["Belt 300"]; value(t, large, "belt.overhang_moment") < 2*value(t, small, "belt.overhang_moment") {
		t.Error("the large belt does not tell on the crank")
	}
}

// Belt changed about every 100 h: common practice, no source.
func TestSampleBeltInterval(t *testing.T) {
	within(t, "belt change, h", value(t, sampleOutcomes(t)["Belt 190"], "drive.change_interval"), 100, 0.01)
}

func TestSampleMachinesWork(t *testing.T) {
	for name, o := range sampleOutcomes(t) {
		for _, c := range o.Checks {
			if c.Verdict == reading.Fails {
				t.Errorf("%s: %s fails: %s %s", name, c.Label, c.Text(), c.Cure)
			}
		}
	}
}

// coreKeys are the contract with scripts; those marked false belong to
// chapters that this version lacks and must be there, with a reason.
var coreKeys = map[string]bool{
	"engine.power": true, "engine.speed": true, "drive.ratio": true, "drive.efficiency": true, "drive.loss": true, "drive.mass": true,
	"drive.depth": true, "drive.output_speed": true, "drive.turn": true, "propeller.static_thrust": true, "propeller.tip_mach": true,
	"propeller.figure_of_merit": true, "belt.static_tension": true, "belt.shaft_load_standing": true, "belt.shaft_load_running": true,
	"gear.pitting_safety": true, "gear.bending_safety": true, "bearing.life_prop_side": true, "bearing.life_engine_side": true,
	"stack.depth": true, "stack.drive_depth": true, "stack.mass_dry": true, "stack.mass_ready": true, "stack.cg_aft": true,
	"carry.hip_moment": true, "carry.equivalent_mass": true, "carry.lean": true, "flight.climb_rate": true, "flight.level_fuel": true,
	"flight.torque_reaction": true, "flight.gyroscopic_couple": true, "cooling.head_temperature": true, "vibration.torsional_first": true,
	"noise.level_at_150m": true, "upkeep.cost_per_hour": true,
}

func TestEveryCoreReadingIsThere(t *testing.T) {
	known := map[string]bool{}
	for name, o := range sampleOutcomes(t) {
		for key := range coreKeys {
			r, ok := o.Reading(key)
			if !ok {
				t.Errorf("%s: no reading %s", name, key)
			}
			known[key] = known[key] || r.Known()
		}
	}
	for key, expected := range coreKeys {
		if known[key] != expected {
			t.Errorf("%s: some variant has a value: %v, want %v", key, known[key], expected)
		}
	}
}

func TestReadingsAreWellDeclared(t *testing.T) {
	for name, o := range sampleOutcomes(t) {
		seen := map[string]bool{}
		for _, r := range o.Readings {
			if seen[r.Key] {
				t.Errorf("%s: %s stands twice", name, r.Key)
			}
			seen[r.Key] = true
			if r.Label == "" || r.Known() && (r.Method == "" || r.Origin == "") {
				t.Errorf("%s: %s lacks a label, how or source", name, r.Key)
			}
		}
		for _, c := range o.Checks {
			if c.Verdict == reading.NotRated && c.Why == "" || c.Verdict != reading.NotRated && (c.Origin == "" || c.Cure == "") {
				t.Errorf("%s: check %s lacks a why, or a source or advice", name, c.Key)
			}
		}
	}
}

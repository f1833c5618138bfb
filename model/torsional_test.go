package model

import (
	"strconv"
	"testing"

	"backspan/model/drive"
	"backspan/model/internal/anyspec"
	"backspan/model/reading"
)

// Only a gear twists on its teeth as well; they are far stiffer than any
// coupling.
func TestTorsionalFrequencies(t *testing.T) {
	s := Sample()
	for i := range s.Variants {
		v := &s.Variants[i]
		o := Evaluate(s, v)
		second, ok := o.Reading("vibration.torsional_second")
		if !ok || second.Known() != (v.Drive.Kind == drive.Gear) || !second.Known() && second.Why == "" {
			t.Errorf("%s: %+v", v.Name, second)
		}
		if second.Known() && second.Value < 10*value(t, o, "vibration.torsional_first") {
			t.Errorf("%s: second %g Hz", v.Name, second.Value)
		}
	}
}

// A clutch that takes hold above the speed of level flight rubs in it.
func TestClutchInLevelFlight(t *testing.T) {
	gear := [][2]string{{"drive.kind", "gear"}, {"drive.gear.coupling_kind", "centrifugal clutch"}, {"drive.gear.clutch_torque", "60"}}
	o := evaluated(t, gear)
	speed := value(t, o, "match.level_speed")
	for _, tc := range []struct {
		over float64
		want reading.Verdict
	}{{0.6, reading.Holds}, {1.02, reading.Fails}} {
		takeUp := strconv.FormatFloat(tc.over*speed, 'f', 0, 64)
		o := evaluated(t, append(gear, [2]string{"drive.gear.clutch_take_up_speed", takeUp}, [2]string{"drive.gear.clutch_torque_speed", "9000"}))
		if c := anyspec.Check(t, o.Checks, "coupling.level_flight"); c.Verdict != tc.want {
			t.Errorf("taking hold at %s rpm, level flight at %.0f: %s, %s", takeUp, speed, c.Verdict, c.Text())
		}
	}
	o = evaluated(t, append(gear, [2]string{"drive.gear.clutch_torque", ""}))
	if c := anyspec.Check(t, o.Checks, "coupling.level_flight"); c.Verdict != reading.NotRated || c.Why == "" {
		t.Errorf("%+v", c)
	}
	o = evaluated(t, [][2]string{{"drive.kind", "gear"}})
	for _, c := range o.Checks {
		if c.Key == "coupling.level_flight" {
			t.Error("no clutch, yet it grips")
		}
	}
}

// With a clutch the run-up begins where it grips, above the resonance of a soft
// coupling, and the propeller's bolts bear less.
func TestClutchSparesTheBolts(t *testing.T) {
	gear := [][2]string{{"drive.kind", "gear"}, {"drive.gear.coupling_stiffness", "100"}}
	elastic := evaluated(t, gear)
	clutch := evaluated(t, append(gear, [2]string{"drive.gear.coupling_kind", "centrifugal clutch"},
		[2]string{"drive.gear.clutch_torque", "60"}))
	if a, b := value(t, elastic, "bolt.peak_torque"), value(t, clutch, "bolt.peak_torque"); !(b < 0.7*a) {
		t.Errorf("peak %g N·m with an elastic coupling, %g with a clutch", a, b)
	}
	if a, b := value(t, elastic, "drive.idle_propeller_speed"), value(t, clutch, "drive.idle_propeller_speed"); !(a > 100) || b != 0 {
		t.Errorf("at idle %g and %g rpm", a, b)
	}
	if x := value(t, clutch, "coupling.slip_below"); !(x > 3000 && x < 4000) {
		t.Errorf("slips below %g rpm", x)
	}
}

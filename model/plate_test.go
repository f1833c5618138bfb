package model

import (
	"math"
	"testing"

	"backspan/model/drive"
	"backspan/model/reading"
)

// Every kind of drive carries its propeller on bolts; a machine that cannot be
// built owes the same readings.
func TestEveryDriveReportsItsPlate(t *testing.T) {
	for _, change := range [][][2]string{
		nil, {{"drive.kind", "toothed belt"}}, {{"drive.kind", "gear"}}, {{"drive.kind", "direct"}},
		{{"drive.ribbed_belt.centre_distance", "120 mm"}}, {{"propeller.boss_diameter", "240 mm"}},
	} {
		o := evaluated(t, change)
		r, ok := o.Reading("bolt.slip_safety")
		if static, _ := o.Reading("propeller.static_thrust"); !ok || r.Known() != static.Known() {
			t.Errorf("%v: %+v", change, r)
		}
	}
}

// The plate bears the peak that the drive passes, or the factor where none is
// known, never both.
func TestPlatePeakIsTheDrives(t *testing.T) {
	s := Sample()
	for i := range s.Variants {
		o := Evaluate(s, &s.Variants[i])
		want := 1.0
		for _, keys := range [][2]string{{"belt.pull_peak", "belt.effective_pull"}, {"toothedbelt.peak_pull", "toothedbelt.effective_pull"}} {
			if peak, ok := reading.Find(o.Readings, keys[0]); ok && peak.Known() {
				want = peak.Value / value(t, o, keys[1])
			}
		}
		if peak, ok := reading.Find(o.Readings, "gear.run_up_peak"); ok && peak.Known() {
			if got, want := value(t, o, "bolt.peak_torque"), peak.Value*value(t, o, "drive.ratio"); math.Abs(got/want-1) > 1e-6 {
				t.Errorf("%s: peak %g, the gear passes %g", o.Variant, got, want)
			}
			continue
		}
		mean := value(t, o, "bolt.peak_torque") / want
		if torque := 1000 * value(t, o, "propeller.absorbed_power") / (value(t, o, "drive.output_speed") * math.Pi / 30); math.Abs(mean/torque-1) > 1e-6 {
			t.Errorf("%s: peak over mean is not %g: mean %g, propeller %g", o.Variant, want, mean, torque)
		}
	}
}

// Nothing gives in a direct drive: the propeller takes nearly all of the
// engine's pulses, several times the mean of a single cylinder.
func TestDirectDrivePassesTheEnginesPulses(t *testing.T) {
	o := evaluated(t, [][2]string{{"drive.kind", "direct"}, {"propeller.diameter", "750 mm"}, {"propeller.pitch", "300 mm"}})
	if static, _ := o.Reading("propeller.static_thrust"); !static.Known() {
		t.Fatalf("no working point: %s", static.Why)
	}
	torque := 1000 * value(t, o, "propeller.absorbed_power") / (value(t, o, "drive.output_speed") * math.Pi / 30)
	if peak := value(t, o, "bolt.peak_torque") / torque; peak < 2 || peak > 8 {
		t.Errorf("peak over mean %g", peak)
	}
}

// The propeller sits on the drive's own flange: one that the bolts miss fails,
// whatever plate is under their heads.
func TestPlateRestsOnTheDrivesFlange(t *testing.T) {
	for kind, path := range map[string]string{"ribbed belt": "drive.ribbed_belt.flange_diameter", "toothed belt": "drive.toothed_belt.flange_diameter", "gear": "drive.gear.flange_diameter"} {
		for _, tc := range []struct {
			size string
			want reading.Verdict
		}{{"50 mm", reading.Fails}, {"110 mm", reading.Holds}} {
			o := evaluated(t, [][2]string{{"drive.kind", kind}, {path, tc.size}})
			for _, c := range o.Checks {
				if c.Key == "bolt.circle" && c.Verdict != tc.want {
					t.Errorf("%s on a flange of %s: %s", kind, tc.size, c.Verdict)
				}
			}
		}
	}
	for _, kind := range []drive.Kind{drive.RibbedBelt, drive.ToothedBelt, drive.Gear, drive.Direct} {
		v := NewVariant("as it comes")
		v.Drive.Kind = kind
		for _, c := range Evaluate(NewStudy("new"), &v).Checks {
			if (c.Key == "bolt.crush_pressure" || c.Key == "bolt.circle") && c.Verdict == reading.Fails {
				t.Errorf("%s as it comes: %s fails at %s", kind, c.Label, c.Text())
			}
		}
	}
}

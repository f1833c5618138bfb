package model

import (
	"strings"
	"testing"
)

// What cannot turn its propeller makes no noise that could be reckoned.
func TestNoNoiseWithoutAWorkingPoint(t *testing.T) {
	for _, tc := range []struct {
		name, says string
		change     [][2]string
	}{
		{"lugging", "load too heavy", [][2]string{{"drive.kind", "direct"}}},
		{"no drive", "Centre distance", [][2]string{{"drive.ribbed_belt.centre_distance", "120 mm"}}},
		{"no propeller", "boss", [][2]string{{"propeller.boss_diameter", "240 mm"}}},
	} {
		o := evaluated(t, tc.change)
		n := 0
		for _, r := range o.Readings {
			if strings.HasPrefix(r.Key, "noise.") {
				n++
				if r.Known() || !strings.Contains(r.Why, tc.says) {
					t.Errorf("%s: %s is %s: %s", tc.name, r.Key, r.Text(), r.Why)
				}
			}
		}
		if n != 12 {
			t.Errorf("%s: %d readings of noise", tc.name, n)
		}
	}
}

// A machine's edits must be heard where they are heard in the field.
func TestEditsAreHeard(t *testing.T) {
	base := evaluated(t, nil)
	for _, tc := range []struct {
		name   string
		change [][2]string
		moves  map[string]float64 // sign of the change
	}{
		{"deeper pad", [][2]string{{"frame.pad_depth", "60 mm"}}, map[string]float64{"noise.level_at_150m": 0, "noise.level_at_ear": -1}},
		{"third blade, finer", [][2]string{{"propeller.blades", "3"}, {"propeller.pitch", "520 mm"}}, map[string]float64{"noise.tones": -1, "noise.blade_passing": 1}},
		{"slower propeller", [][2]string{{"drive.ribbed_belt.driven_pulley_effective_diameter", "225 mm"}}, map[string]float64{"noise.level_at_150m": -1, "noise.vortex": -1}},
		{"loud exhaust", [][2]string{{"noise.engine_level", "95"}}, map[string]float64{"noise.level_at_150m": 1, "noise.level_at_ear": 1, "noise.tones": 0}},
	} {
		o := evaluated(t, tc.change)
		for key, sign := range tc.moves {
			if d := value(t, o, key) - value(t, base, key); sign*d < 0 || (sign == 0) != (d == 0) {
				t.Errorf("%s: %s moved by %g", tc.name, key, d)
			}
		}
	}
}

// An ultralight made quiet with great effort was heard at 60 dB(A) from 150 m
// at the most engine power; ordinary ones are louder. Source: NTIS record of a
// report of 1989 on the noise of ultralight aircraft. The band is wide, because
// neither propeller nor engine is given there.
func TestSampleIsAsLoudAsUltralightsAre(t *testing.T) {
	for name, o := range sampleOutcomes(t) {
		if l := value(t, o, "noise.level_at_150m"); l < 55 || l > 72 {
			t.Errorf("%s: %.1f dB(A) at 150 m", name, l)
		}
	}
}

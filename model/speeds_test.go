package model

import (
	"math"
	"strings"
	"testing"

	"backspan/model/part"
)

// By hand: 20, 21 and 60 Hz at orders 1 to 3 between 600 and 4000 rpm.
func TestBandsByHand(t *testing.T) {
	rpm := func(n float64) float64 { return n * math.Pi / 30 }
	s := part.SpeedMap{From: rpm(600), To: rpm(4000)}
	addBands(&s, "x", 20, 21, 60)
	want := []part.SpeedBand{
		{Cause: "engine order 1 on x", From: rpm(1020), To: rpm(1449)}, {Cause: "engine order 1 on x", From: rpm(3060), To: rpm(4000)},
		{Cause: "engine order 2 on x", From: rpm(600), To: rpm(724.5)}, {Cause: "engine order 2 on x", From: rpm(1530), To: rpm(2070)},
		{Cause: "engine order 3 on x", From: rpm(1020), To: rpm(1380)},
	}
	if len(s.Bands) != len(want) {
		t.Fatalf("%+v", s.Bands)
	}
	for i, b := range s.Bands {
		if b.Cause != want[i].Cause || math.Abs(b.From-want[i].From) > 1e-9 || math.Abs(b.To-want[i].To) > 1e-9 {
			t.Errorf("%+v, want %+v", b, want[i])
		}
	}
}

// Every kind of drive has a map, whose torsional bands stand about the
// frequency found.
func TestEveryDriveHasASpeedMap(t *testing.T) {
	for name, o := range sampleOutcomes(t) {
		m := o.Speeds
		if len(m.Bands) == 0 || !(m.From < m.Working && m.Working < m.To) {
			t.Errorf("%s: %+v", name, m)
		}
		first, _ := o.Reading("vibration.torsional_first")
		at := 2 * math.Pi * first.Value
		for _, b := range m.Bands {
			if b.Cause == "engine order 1 on crank against propeller" && (b.From > math.Max(m.From, at) || b.To < math.Min(m.To, at)) {
				t.Errorf("%s: %+v does not hold %g rad/s", name, b, at)
			}
		}
	}
	s := Sample()
	v := s.Variants[0].Clone()
	v.Mounts.Places = nil
	for _, b := range Evaluate(s, &v).Speeds.Bands {
		if strings.Contains(b.Cause, "mount") {
			t.Errorf("without mounts: %+v", b)
		}
	}
}

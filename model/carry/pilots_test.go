package carry

import (
	"math"
	"testing"

	"backspan/model/internal/anyspec"
	"backspan/model/reading"
)

func TestLiftVerdicts(t *testing.T) {
	for _, tc := range []struct {
		name   string
		change func(*Lift)
		load   Load
		want   reading.Verdict
	}{
		{"close and from a stand", func(l *Lift) { l.From = 0.6 }, Load{26, 0.1, 0}, reading.Holds},
		{"heavy and deep from the ground", func(l *Lift) { l.From = 0.1 }, Load{38, 0.25, 0}, reading.Thin},
		{"turned half round", func(l *Lift) { l.Turn = math.Pi / 2 }, Load{32, 0.15, 0}, reading.Thin},
		{"poor grip", func(l *Lift) { l.Grip = PoorGrip }, Load{37, 0.13, 0}, reading.Thin},
		{"the same with handles", func(l *Lift) { l.Grip = GoodGrip }, Load{37, 0.13, 0}, reading.Holds},
		{"out of reach", func(*Lift) {}, Load{26, 0.5, 0}, reading.NotRated},
		{"over the head", func(l *Lift) { l.To = 1.8 }, Load{26, 0.1, 0}, reading.NotRated},
	} {
		p := DefaultPilot()
		tc.change(&p.Lift)
		r := Stand(p, tc.load)
		c := anyspec.Check(t, Bear(p, &r, Machine{Ready: tc.load}).Checks(nil, 0), "carry.lift_index")
		if c.Verdict != tc.want {
			t.Errorf("%s: %s %s, want %s", tc.name, c.Verdict, c.Text(), tc.want)
		}
	}
}

func TestGroundAndGradeCost(t *testing.T) {
	last := 0.0
	for _, g := range []Ground{Paved, DirtRoad, LightBrush, HeavyBrush, Swamp, LooseSand} {
		w := Walk{Speed: 1.2, Ground: g}
		low, high := w.Band(80, 30)
		w.Grade = 0.1
		up, steep := w.Band(80, 30)
		if low <= last || up <= low || steep <= high {
			t.Errorf("%s: %g to %g W level, %g to %g W uphill", g, low, high, up, steep)
		}
		last = low
	}
}

// The measured rise holds at its own speed; a slower walk rises by less.
func TestRiseFollowsTheSpeed(t *testing.T) {
	for _, tc := range []struct{ speed, rise float64 }{{1.25, 7.6}, {0.625, 1.9}, {2, 7.6 * 2.56}} {
		w := Walk{Speed: tc.speed, Ground: Paved}
		if got := w.rise(); math.Abs(got-tc.rise) > 1e-12 {
			t.Errorf("%g m/s: %g W/kg, want %g", tc.speed, got, tc.rise)
		}
		if _, high := w.Band(80, 30); high < w.Pandolf(80, 0)+30*tc.rise-1e-9 {
			t.Errorf("%g m/s: the top is %g W", tc.speed, high)
		}
	}
	w := Walk{Speed: 1.25, Ground: Paved}
	if _, high := w.Band(80, 30); math.Abs(high-w.Pandolf(80, 0)-228) > 1e-9 {
		t.Errorf("at the measured speed the top is %g W", high)
	}
}

func TestMeasuredPilots(t *testing.T) {
	if len(measured) != len(Percentiles()) {
		t.Fatalf("%d bodies for %d words", len(measured), len(Percentiles()))
	}
	own := DefaultPilot()
	if own.Measured() != own {
		t.Error("own measures are changed")
	}
	for i, who := range Percentiles() {
		p := DefaultPilot()
		p.Percentile = who
		p = p.Measured()
		if measured[i].who != who || p.Mass == own.Mass || p.HeelShare != own.HeelShare {
			t.Errorf("%s: %+v", who, p)
		}
		if want := own.StrapHeight / own.Stature; math.Abs(p.StrapHeight/p.Stature-want) > 1e-12 || p.StrapHeight == own.StrapHeight {
			t.Errorf("%s has straps at %g m", who, p.StrapHeight)
		}
		if (p.Segments == DeLevaFemale) != (i < 3) {
			t.Errorf("%s has the segments of %s", who, p.Segments)
		}
		for _, q := range p.Params() {
			if hidden := q.Key == "mass" || q.Key == "stature" || q.Key == "segments" || q.Key == "back_behind_hip" || q.Key == "foot_length"; q.Hidden != hidden {
				t.Errorf("%s: %s is hidden: %v", who, q.Key, q.Hidden)
			}
			if x, ok := q.Number(); ok && q.SetNumber(x) != nil {
				t.Errorf("%s: %s is outside its range", who, q.Key)
			}
		}
	}
}

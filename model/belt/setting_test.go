package belt

import (
	"math"
	"testing"

	"backspan/model/param"
	"backspan/model/part"
	"pgregory.net/rapid"
)

func TestNearestLengths(t *testing.T) {
	// The wanted length is 814 mm.
	for _, tc := range []struct {
		name         string
		change       func(*Spec)
		below, above float64 // mm, 0 for none
	}{
		{"preferred numbers", asIs, 800, 850},
		{"stock", func(s *Spec) { s.Stock = []float64{0.7, 0.812, 0.9} }, 812, 900},
		{"nothing shorter in stock", func(s *Spec) { s.Stock = []float64{0.9} }, 0, 900},
		{"a shorter one does not go round", func(s *Spec) { s.Stock = []float64{0.6, 0.9} }, 0, 900},
		{"PL is longer", func(s *Spec) { s.Profile = PL }, 0, 1250},
	} {
		b := build(t, tc.change)
		a := b.Examine(rated(), part.Train{}).Adjustment
		for _, o := range []struct {
			got  Offer
			want float64
		}{{a.BelowOffer, tc.below}, {a.AboveOffer, tc.above}} {
			if o.got.Length.Known != (o.want > 0) || math.Abs(o.got.Length.Value-o.want/1000) > 1e-9 {
				t.Errorf("%s: %+v, want %g mm", tc.name, o.got, o.want)
			}
			if o.want > 0 {
				back := b.Run()
				back.CentreDistance = o.got.CentreDistance
				near(t, tc.name, back.Length()-2*math.Pi*b.profile.lineDifferential, o.want/1000, 1e-9)
			}
		}
	}
}

func TestTablesOfTheForm(t *testing.T) {
	s := Default()
	set := func(key, text string) error {
		for _, p := range s.Params() {
			if p.Key == key {
				return p.Set(text)
			}
		}
		t.Fatalf("no parameter %s", key)
		return nil
	}
	if err := set("stock_lengths", "900; 800"); err == nil {
		t.Error("took lengths out of order")
	}
	if err := set("rating_table", "60 5000 1; 60 4000 1"); err == nil {
		t.Error("took speeds out of order")
	}
	if err := set("rating_table", "60 5000 1; 50 6000 1"); err == nil {
		t.Error("took diameters out of order")
	}
	if set("stock_lengths", "800; 900") != nil || set("rating_table", "60 5000 1.25") != nil || s.Stock[1] != 0.9 || s.Rating.Rows[0][2] != 1250 {
		t.Errorf("%v, %v", s.Stock, s.Rating)
	}
	c := s.Clone()
	c.Stock[0], c.Rating.Rows[0][2] = 1, 1
	if s.Stock[0] != 0.8 || s.Rating.Rows[0][2] != 1250 {
		t.Error("the clone shares its tables")
	}
}

func TestSettingFigures(t *testing.T) {
	b := build(t, asIs)
	r := b.Examine(rated(), part.Train{})
	a := r.Adjustment
	near(t, "new", a.New, 1.4*r.StandingTension, 1e-9)
	near(t, "run in", a.RunIn, 1.05*r.StandingTension, 1e-9)
	// Back from the frequency: T = 4 m span² f².
	span := b.Run().Span()
	near(t, "tension heard", 4*b.MassPerLength()*span*span*a.FrequencyNew*a.FrequencyNew, a.New, 1e-6)
	// A string under a weight: solve the bent span exactly.
	depth := span / 64
	bent := 2 * math.Hypot(span/2, depth)
	tension := a.New + (bent-span)/b.Run().Length()*b.losses.stiffness
	near(t, "force", a.ForceNew, 2*tension*depth/(bent/2), 0.002*a.ForceNew)
	stiff := build(t, func(s *Spec) { s.Setting.BendingStiffness = param.Known(0.8e-3) }).Examine(rated(), part.Train{})
	raised := stiff.SpanFrequency / r.SpanFrequency
	near(t, "stiff span", raised*raised-1, math.Pi*math.Pi/(span*span)*0.8e-3*12/r.StandingTension, 1e-9)
	// 4 mm of tolerance, 0.75 % for good, and the stretch.
	length := b.Run().Length()
	near(t, "take-up", a.TakeUpNeeded*2*math.Cos(b.Run().SpanTilt()), 0.004+0.0075*length+length*r.StandingTension/b.losses.stiffness, 1e-12)
	near(t, "misalignment", a.MisalignmentOffset, span*math.Tan(0.5*math.Pi/180), 1e-12)
}

func TestEccentric(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		e := eccentric{rapid.Float64Range(0, 0.02).Draw(t, "offset"), rapid.Float64Range(0.06, 0.5).Draw(t, "centre")}
		if d := math.Abs(e.at(math.Pi/2) - e.centreDistance); d > 1e-12 {
			t.Errorf("the middle is off by %g", d)
		}
		if got := e.travel(); math.Abs(got-math.Sqrt(3)*e.offset) > 0.05*e.offset+1e-12 {
			t.Errorf("travel %g of offset %g", got, e.offset)
		}
		if got := e.shift(); math.Abs(got-e.offset/2) > 1e-12 {
			t.Errorf("shift %g", got)
		}
	})
}

func TestClampHoldsTheGreatestLoad(t *testing.T) {
	b := build(t, asIs)
	calm, shaken := b.Examine(rated(), part.Train{}), b.Examine(rated(), single())
	near(t, "calm", calm.clampMoment(), calm.Adjustment.NewLoad*0.006, 1e-12)
	if shaken.clampMoment() < calm.clampMoment() {
		t.Error("pulsation took load away")
	}
}

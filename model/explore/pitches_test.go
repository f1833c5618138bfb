package explore

import (
	"math"
	"strings"
	"testing"

	"backspan/model"
	"backspan/model/param"
	"backspan/model/propeller"
	"backspan/model/reading"
	"backspan/model/unit"
)

// The best is the best of those not barred, by asking the model itself.
func TestPitchSearchFindsTheBest(t *testing.T) {
	s := model.Sample()
	for _, goal := range []PitchGoal{BestClimb, BestThrust} {
		for _, name := range []string{"Belt 190", "Gear 80", "Gear 300"} {
			v := &s.Variants[s.Index(name)]
			c, err := Pitches(s, v, 0, 0, 9, goal)
			if err != nil || c.Best < 0 || len(c.Points) != 9 {
				t.Fatalf("%s: %v, %+v", v.Name, err, c)
			}
			best := c.worth(&c.Points[c.Best]).Value
			for j := range c.Points {
				m := v.Clone()
				m.Propeller.Pitch = unit.Millimetre.Settle(c.Points[j].Asked)
				key := map[PitchGoal]string{BestClimb: "flight.climb_rate", BestThrust: "propeller.static_thrust"}[goal]
				r, _ := model.Evaluate(s, &m).Reading(key)
				if got := c.worth(&c.Points[j]); got.Known != r.Known() || math.Abs(got.Value-r.Value) > 1e-9 {
					t.Errorf("%s, %s: %g, the model says %g", v.Name, c.Points[j].Set, got.Value, r.Value)
				}
				if len(c.Points[j].Barred) == 0 && r.Value > best+1e-9 {
					t.Errorf("%s: %s gives %g, more than the best's %g", v.Name, c.Points[j].Set, r.Value, best)
				}
			}
		}
	}
}

// A coarser pitch holds the engine down, and too coarse or too fine is barred
// with the word for it.
func TestPitchSearchBarsWhatTheEngineCannotDo(t *testing.T) {
	s := model.Sample()
	v := &s.Variants[s.Index("Belt 190")]
	v.Engine.SpeedLimit = unit.RPM.SI(9000)
	c, err := Pitches(s, v, 0.3, 1.2, 31, BestClimb)
	if err != nil {
		t.Fatal(err)
	}
	last := math.Inf(1)
	for _, p := range c.Points {
		if p.Static.Known && p.Static.Value > last+1e-6 {
			t.Errorf("%s: the engine turns faster than at a finer pitch", p.Set)
		}
		if p.Static.Known {
			last = p.Static.Value
		}
	}
	first, final := c.Points[0].Barred, c.Points[30].Barred
	if len(first) == 0 || !strings.Contains(strings.Join(first, " "), "over-speeds") || len(final) == 0 || !strings.Contains(final[0], "lugs") {
		t.Errorf("finest barred by %v, coarsest by %v", first, final)
	}
	if c, err := Pitches(s, v, 1.0, 1.2, 5, BestClimb); err != nil || c.Best != -1 || !strings.Contains(c.Reason, "the engine lugs") {
		t.Errorf("%v %s", err, c.Reason)
	}
	if c, err := Pitches(s, v, 0.65, 0.75, 5, BestClimb); err != nil || c.Best != 0 || !strings.Contains(c.Reason, "look further") {
		t.Errorf("%v %s", err, c.Reason)
	}
}

// A blade given by stations is turned by its trim.
func TestPitchSearchTurnsStations(t *testing.T) {
	s := model.Sample()
	v := s.Variants[0].Clone()
	f, err := Blade(s, &v, BladeWish{Lift: 0.6, Stations: 12})
	if err != nil {
		t.Fatal(err)
	}
	c, err := Pitches(s, &f.Variant, 0, 0, 17, BestClimb)
	if err != nil || c.Parameter != "Pitch trim" || c.Best < 0 || c.Points[0].Asked != unit.Degree.SI(-8) {
		t.Fatalf("%v %+v", err, c)
	}
	if f.Variant.Propeller.PitchTrim != 0 {
		t.Error("the search changed the variant it was given")
	}
}

// A blade made for the machine's own working point at trim meets it there.
func TestBladeMeetsItsMachine(t *testing.T) {
	s := model.Sample()
	for i := range s.Variants {
		v := &s.Variants[i]
		f, err := Blade(s, v, BladeWish{Lift: 0.6, Stations: 12})
		if err != nil {
			t.Errorf("%s: %v", v.Name, err)
			continue
		}
		now, _ := f.Before.Reading("match.trim_speed")
		with, _ := f.After.Reading("match.trim_speed")
		if !with.Known() || math.Abs(with.Value/now.Value-1) > 0.01 {
			t.Errorf("%s: the engine turns %s at trim, with the blade %s", v.Name, now.Text(), with.Text())
		}
		if v.Propeller.Shape != propeller.NominalPitch || f.Variant.Propeller.Shape != propeller.Stations {
			t.Errorf("%s: the variant itself was changed", v.Name)
		}
		for _, c := range f.After.Checks {
			if strings.HasPrefix(c.Key, "propeller.") && c.Verdict == reading.Fails {
				t.Errorf("%s: %s %s", v.Name, c.Key, c.Text())
			}
		}
	}
}

func TestBladeSaysWhatIsMissing(t *testing.T) {
	s := model.Sample()
	v := s.Variants[0].Clone()
	p, ok := param.Find(v.Sections(), "propeller.pitch")
	if !ok {
		t.Fatal("no pitch")
	}
	if err := p.Set("1200 mm"); err != nil {
		t.Fatal(err)
	}
	v.Propeller.Diameter = 1.9
	if _, err := Blade(s, &v, BladeWish{Lift: 0.6, Stations: 12}); err == nil || !strings.Contains(err.Error(), "not given: the propeller's speed, thrust or power;") {
		t.Error(err)
	}
	v.Notes = "As first built."
	wish := BladeWish{Lift: 0.6, Stations: 12, Power: param.Known(12e3), Speed: param.Known(200)}
	f, err := Blade(s, &v, wish)
	if err != nil {
		t.Fatalf("all is given, and yet: %v", err)
	}
	usual, _ := f.After.Reading("flight.trim_speed")
	if math.Abs(f.Aim.Flow.Airspeed/usual.Value-1) > 0.01 {
		t.Errorf("aims at %g m/s, trim is %s", f.Aim.Flow.Airspeed, usual.Text())
	}
	if f.Variant.Notes != "As first built. "+f.Brief || !strings.HasPrefix(f.Brief, "Blade of least induced loss for 12.0 kW") {
		t.Errorf("notes %q", f.Variant.Notes)
	}
}

func BenchmarkPitches(b *testing.B) {
	s := model.Sample()
	for b.Loop() {
		if _, err := Pitches(s, &s.Variants[0], 0, 0, 21, BestClimb); err != nil {
			b.Fatal(err)
		}
	}
}

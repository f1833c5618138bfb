package toothedbelt

import (
	"math"
	"strings"
	"testing"

	"backspan/model/internal/anyspec"
	"backspan/model/param"
	"backspan/model/part"
	"backspan/model/reading"
	"backspan/model/unit"
)

func table() []PowerPoint {
	row := func(teeth int, rpm, kw float64) PowerPoint {
		return PowerPoint{Teeth: teeth, Speed: unit.RPM.SI(rpm), Power: unit.Kilowatt.SI(kw)}
	}
	return []PowerPoint{row(24, 4000, 8), row(24, 9000, 12), row(32, 4000, 12), row(32, 8000, 18), row(32, 9000, 20)}
}

func TestPowerTable(t *testing.T) {
	for _, tc := range []struct {
		name  string
		teeth int
		rpm   float64
		kw    float64
		says  string
	}{
		{"on a row", 32, 8000, 18, ""},
		{"between speeds", 32, 6000, 15, ""},
		{"between teeth", 28, 9000, 16, ""},
		{"between both", 26, 6500, 10 + (15.75-10)/4, ""},
		{"first row", 24, 4000, 8, ""},
		{"too few teeth", 20, 6000, 0, "teeth lie outside"},
		{"too many teeth", 40, 6000, 0, "teeth lie outside"},
		{"too slow", 28, 3000, 0, "speed lies outside"},
		{"too fast", 28, 9500, 0, "speed lies outside"},
	} {
		got, err := lookUp(table(), tc.teeth, unit.RPM.SI(tc.rpm))
		switch {
		case tc.says != "":
			if err == nil || !strings.Contains(err.Error(), tc.says) {
				t.Errorf("%s: %v", tc.name, err)
			}
		case err != nil || math.Abs(got-1000*tc.kw) > 1e-8:
			t.Errorf("%s: %g, %v", tc.name, got, err)
		}
	}
}

func TestCurvilinearRatingNeedsATableAndItsSource(t *testing.T) {
	rate := func(change func(*Spec)) Result { return build(t, change).Examine(rated(), part.Train{}) }
	for _, tc := range []struct {
		change func(*Spec)
		says   string
	}{
		{asIs, "give a Power table"},
		{func(s *Spec) { s.PowerTable, s.TableSource = table(), " " }, "Source of the power table"},
		{func(s *Spec) { s.PowerTable, s.TableSource, s.CrankTeeth = table(), "test bench", 34 }, "outside the power table"},
	} {
		r := rate(tc.change)
		if c := anyspec.Check(t, r.Checks(nil, 0.1), "toothedbelt.power_rating"); c.Verdict != reading.NotRated || !strings.Contains(c.Why, tc.says) {
			t.Errorf("%s: %+v", tc.says, c)
		}
		if x, _ := reading.Find(r.Readings(nil), "toothedbelt.power_rating"); x.Known() || !strings.Contains(x.Why, tc.says) {
			t.Errorf("%s: %+v", tc.says, x)
		}
	}
	r := rate(func(s *Spec) { s.PowerTable, s.TableSource, s.LengthFactor = table(), "test bench", 0.9 })
	want := (11.6 + (19-11.6)/2) * 1000 * 0.9 * math.Pow(1.5, 1.14)
	near(t, "rating", r.Rating.Value, want, 1e-6)
	c := anyspec.Check(t, r.Checks(nil, 0.1), "toothedbelt.power_rating")
	near(t, "design power", c.Limit, 27e3, 1e-9)
	if c.Verdict != reading.Fails || c.Origin != "test bench" {
		t.Errorf("%+v", c)
	}
}

func TestTrapezoidalRatingTakesGivenConstants(t *testing.T) {
	trapezoidal := func(s *Spec) {
		s.Section, s.CrankTeeth, s.DrivenTeeth, s.BeltTeeth, s.BeltWidth = H, 18, 51, 64, 0.0762
	}
	r := build(t, trapezoidal).Examine(rated(), part.Train{})
	near(t, "rating", r.Rating.Value, (2100.85-0.448*r.Speed*r.Speed)*r.Speed, 1e-6)
	if c := anyspec.Check(t, r.Checks(nil, 0.1), "toothedbelt.power_rating"); !strings.Contains(c.Origin, "from memory") || c.Verdict != reading.Holds {
		t.Errorf("%+v", c)
	}
	own := build(t, func(s *Spec) {
		trapezoidal(s)
		s.AllowableTension, s.BaseWidth = param.Known(1000), param.Known(0.0381)
	}).Examine(rated(), part.Train{})
	near(t, "rating", own.Rating.Value, (1000*math.Pow(2, 1.14)-0.448*r.Speed*r.Speed)*r.Speed, 1e-6)
	if strings.Contains(own.RatingSource, "from memory") {
		t.Errorf("given constants stand as %q", own.RatingSource)
	}
}

func TestTablesOutOfOrderAreRefused(t *testing.T) {
	s := Default()
	p, ok := param.Find([]param.Section{{Params: s.Params()}}, "power_table")
	if !ok {
		t.Fatal("no power table")
	}
	for typed, says := range map[string]string{
		"24 4000 8": "at least 2", "24 4000 8; 24 4000 9": "in order", "32 4000 8; 24 5000 9": "in order", "24.5 4000 8; 25 4000 9": "whole number",
	} {
		if err := p.Set(typed); err == nil || !strings.Contains(err.Error(), says) {
			t.Errorf("%q: %v", typed, err)
		}
	}
	if err := p.Set("24 4000 8; 24 9000 12; 32 4000 12"); err != nil || len(s.PowerTable) != 3 || s.PowerTable[2].Teeth != 32 {
		t.Errorf("%v, %+v", err, s.PowerTable)
	}
	other := s.Clone()
	other.PowerTable[0].Teeth = 11
	if s.PowerTable[0].Teeth != 24 {
		t.Error("the copy shares its table")
	}
}

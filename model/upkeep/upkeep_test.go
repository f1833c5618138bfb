package upkeep

import (
	"math"
	"slices"
	"strings"
	"testing"
	"unicode/utf8"

	"pgregory.net/rapid"

	"backspan/model/internal/anyspec"
	"backspan/model/param"
	"backspan/model/part"
	"backspan/model/reading"
	"backspan/model/unit"
)

func hours(h float64) float64 { return unit.Hour.SI(h) }

// flown is an invented machine that burns 2, 6 and 4 L/h.
func flown() Machine {
	return Machine{IdleFlow: unit.LitrePerHour.SI(2), ClimbFlow: unit.LitrePerHour.SI(6), CruiseFlow: unit.LitrePerHour.SI(4), Mixture: true,
		Drive: part.Upkeep{Price: 400, ChangeInterval: hours(100), ChangeCost: 55}, DrivePart: "Ribbed belt"}
}

func only(keep func(*Spec)) Spec {
	s := Spec{DriveLabour: hours(1)}
	keep(&s)
	return s
}

// By hand: 300 h; fuel 0.1·2+0.2·6+0.7·4 = 4.2 L/h at 2+10/50 = 2.2; plugs at
// 80, 160, 240 h for 10 and half an hour of work at 40; belts at 100 and 200 h.
func TestCostByHand(t *testing.T) {
	u := Use{HoursPerYear: hours(60), Years: 5, IdleShare: 0.1, ClimbShare: 0.2, FuelPrice: 2, OilPrice: 10, FuelPerOil: 50, LabourRate: unit.CurrencyPerHour.SI(40)}
	s := only(func(s *Spec) { s.Plug = Item{10, hours(0.5), hours(80)} })
	r := Keep(u, &s, flown())
	for _, tc := range []struct {
		key  string
		want float64
	}{
		{"upkeep.mean_fuel", 4.2}, {"upkeep.fuel_cost", 300 * 4.2 * 2.2}, {"upkeep.parts_cost", 3*10 + 2*55}, {"upkeep.labour_cost", 3 * 20},
		{"upkeep.horizon_cost", 300*4.2*2.2 + 140 + 60}, {"upkeep.horizon_with_drive", 300*4.2*2.2 + 200 + 400}, {"upkeep.changes", 5}, {"upkeep.downtime", 3.5},
		{"upkeep.cost_per_hour", 4.2*2.2 + 200.0/300}, {"upkeep.steady_cost_per_hour", 4.2*2.2 + 30.0/80 + 55.0/100},
		{"upkeep.dearest_year", 60*4.2*2.2 + 85},
	} {
		got, ok := reading.Find(r.Readings(nil), tc.key)
		if v := got.Unit.From(got.Value); !ok || math.Abs(v-tc.want) > 1e-9 {
			t.Errorf("%s = %g, want %g", tc.key, v, tc.want)
		}
	}
	m := flown()
	m.Mixture = false
	if four := Keep(u, &s, m); math.Abs(four.FuelCost-300*4.2*2) > 1e-9 {
		t.Errorf("without oil the fuel costs %g", four.FuelCost)
	}
}

func TestChangesAreWholeAndInOrder(t *testing.T) {
	s, u := Default(), DefaultUse()
	s.Others = [][]float64{{25, hours(1), hours(70)}}
	r := Keep(u, &s, flown())
	if !slices.IsSortedFunc(r.Changes, func(a, b Change) int { return int(a.At - b.At) }) {
		t.Error("out of order")
	}
	for _, c := range r.Changes {
		if c.At >= u.Hours() || c.At <= 0 {
			t.Errorf("%s at %g h", c.Part, c.At/3600)
		}
	}
	// A part that falls due at the horizon is not changed for the next owner.
	u.Years = 5
	u.HoursPerYear = hours(60)
	s = only(func(s *Spec) { s.TopEnd = Item{150, 0, hours(150)} })
	m := flown()
	m.Drive = part.Upkeep{}
	if r := Keep(u, &s, m); len(r.Changes) != 1 {
		t.Errorf("%d changes within 300 h by 150 h", len(r.Changes))
	}
	if r := Keep(u, &s, m); r.Due != 150 || r.PartsCost != 150 {
		t.Errorf("%g due at the horizon, %g before it", r.Due, r.PartsCost)
	}
	u.HoursPerYear = hours(60.1)
	if r := Keep(u, &s, m); r.Due != 0 {
		t.Errorf("%g due at the horizon of 300.5 h", r.Due)
	}
	if r := Keep(u, &s, m); len(r.Changes) != 2 {
		t.Errorf("%d changes within 300.5 h by 150 h", len(r.Changes))
	}
}

// A different owner's horizon must change the cost by steps, not by shares.
func TestCostRisesBySteps(t *testing.T) {
	s := only(func(s *Spec) { s.TopEnd = Item{150, 0, hours(150)} })
	m := flown()
	m.Drive = part.Upkeep{}
	u := DefaultUse()
	cost := func(years float64) float64 {
		u.Years = years
		r := Keep(u, &s, m)
		return r.PartsCost
	}
	if a, b, c := cost(1), cost(2.4), cost(2.6); a != 0 || b != 0 || c != 150 {
		t.Errorf("%g, %g, %g", a, b, c)
	}
}

// At the best age the cost is what a failure costs more times the rate of
// failing there (Barlow and Proschan), and it is dearer on either side.
func TestBestAgeIsBest(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a := Age{Shape: rapid.Float64Range(1.3, 8).Draw(t, "shape"), Scale: rapid.Float64Range(10, 5000).Draw(t, "scale"),
			Planned: rapid.Float64Range(1, 100).Draw(t, "planned")}
		a.Failed = a.Planned * rapid.Float64Range(1.5, 30).Draw(t, "ratio")
		best := a.Best()
		if !best.Known {
			t.Skip("run to failure")
		}
		rate := a.Rate(best.Value)
		hazard := a.Shape / a.Scale * math.Pow(best.Value/a.Scale, a.Shape-1)
		if want := (a.Failed - a.Planned) * hazard; math.Abs(rate-want) > 1e-6*want {
			t.Fatalf("rate %g, want %g", rate, want)
		}
		if rate > a.Rate(0.9*best.Value) || rate > a.Rate(1.1*best.Value) || rate > a.RunRate()*(1+1e-9) {
			t.Fatalf("cheaper elsewhere: %g h", best.Value)
		}
	})
}

func TestAdviceNeedsLifeData(t *testing.T) {
	s, u := Default(), DefaultUse()
	if r := Keep(u, &s, flown()); r.TopEnd.Best.Known || !strings.Contains(r.TopEnd.Why, "Weibull") {
		t.Errorf("%+v", r.TopEnd)
	}
	s.TopEndLife = Life{Shape: param.Known(3), Scale: param.Known(hours(200)), Extra: 960}
	r := Keep(u, &s, flown()) // 150 + 3 h at 30 = 240 planned, 1200 failed: 1 to 5
	if got := unit.Hour.From(r.TopEnd.Best.Value); math.Abs(got-100) > 1 {
		t.Errorf("best at %g h, want about 100", got)
	}
	if got := intervalCheck(t, r); !got.Past || !strings.Contains(got.Cure, "shorten") {
		t.Errorf("150 h is past the best interval: %s, %s", got.Verdict, got.Cure)
	}
	early := s
	early.TopEnd.Interval = hours(30)
	if got := intervalCheck(t, Keep(u, &early, flown())); !got.Past || !strings.Contains(got.Cure, "lengthen") {
		t.Errorf("30 h is far before the best interval: %s, %s", got.Verdict, got.Cure)
	}
	near := s
	near.TopEnd.Interval = r.TopEnd.Best.Value * 1.1
	if got := intervalCheck(t, Keep(u, &near, flown())); got.Verdict != reading.Holds {
		t.Errorf("a tenth past the best costs little: %s", got.Text())
	}
	s.TopEndLife.Shape = param.Known(0.9)
	if r := Keep(u, &s, flown()); r.TopEnd.Best.Known || !strings.Contains(r.TopEnd.Why, "fails") {
		t.Errorf("a part that does not wear out: %+v", r.TopEnd)
	}
}

func intervalCheck(t *testing.T, r Result) reading.Check {
	t.Helper()
	return anyspec.Check(t, r.Checks(nil), "upkeep.top_end_interval")
}

// At both ends of the range the cost is a twentieth above the best, within it
// less; a part that may as well run to failure has no late end.
func TestRangeOfGoodAges(t *testing.T) {
	a := Age{Shape: 3, Scale: 200, Planned: 240, Failed: 1200}
	best := a.Best().Value
	early, late := a.around(best)
	if !early.Known || !late.Known || !(early.Value < best && best < late.Value) {
		t.Fatalf("%+v to %+v about %g", early, late, best)
	}
	for _, age := range []float64{early.Value, late.Value} {
		if got := a.Rate(age) / a.Rate(best); math.Abs(got-1.05) > 1e-3 {
			t.Errorf("%g h costs %g of the best", age, got)
		}
	}
	a.Failed = 260
	if _, late := a.around(a.Best().Value); late.Known {
		t.Errorf("a failure hardly dearer than a change: late end at %g", late.Value)
	}
}

// A list that is cut says so, and the sums are those of all changes.
func TestCutListStillAddsUp(t *testing.T) {
	u, s, m := DefaultUse(), only(func(*Spec) {}), flown()
	m.Drive.ChangeInterval = hours(300.0 / 30000)
	r := Keep(u, &s, m)
	if len(r.Changes) != longest || r.Count != 29999 || r.PartsCost != 29999*55 {
		t.Errorf("%d listed of %d for %g", len(r.Changes), r.Count, r.PartsCost)
	}
	if x, _ := reading.Find(r.Readings(nil), "upkeep.changes"); !strings.Contains(x.Method, "ends after 20000") {
		t.Errorf("%s", x.Method)
	}
}

func TestSharesMustLeaveTime(t *testing.T) {
	u, s := DefaultUse(), Default()
	u.IdleShare, u.ClimbShare = 0.5, 0.51
	r := Keep(u, &s, flown())
	if c := r.Checks(nil)[0]; c.Verdict != reading.Fails {
		t.Errorf("%+v", c)
	}
}

func TestDeclarations(t *testing.T) {
	u, s := DefaultUse(), Default()
	seen := map[string]bool{}
	for _, p := range append(u.Params(), s.Params()...) {
		if err := p.Set(p.Editable()); err != nil {
			t.Error(err)
		}
		if seen[p.Key] || utf8.RuneCountInString(p.Label) > 34 || p.Guidance == "" {
			t.Errorf("%s: label %q, help %q", p.Key, p.Label, p.Guidance)
		}
		seen[p.Key] = true
	}
	keys := map[string]bool{}
	for _, r := range (&Result{}).Readings(nil) {
		if keys[r.Key] || utf8.RuneCountInString(r.Label) > 34 || r.Method == "" || r.Origin == "" || r.Known() {
			t.Errorf("reading %+v", r)
		}
		keys[r.Key] = true
	}
}

func TestCloneSharesNothing(t *testing.T) {
	s := Default()
	s.Others = [][]float64{{1, 2, 3}}
	c := s.Clone()
	c.Others[0][0] = 9
	if s.Others[0][0] != 1 {
		t.Error("the rows are shared")
	}
}

func TestAnyUpkeepIsFinite(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		u, s, m := DefaultUse(), Default(), flown()
		anyspec.Set(t, u.Params(), nil)
		anyspec.Set(t, s.Params(), map[string]anyspec.Own{"others": anyspec.OneOf("", "20 1 40; 300 5 250")})
		m.Drive.ChangeInterval = hours(rapid.Float64Range(0, 500).Draw(t, "interval"))
		r := Keep(u, &s, m)
		for _, x := range r.Readings(nil) {
			anyspec.Finite(t, x.Key, x.Value)
		}
		for _, x := range r.Checks(nil) {
			anyspec.Finite(t, x.Key, x.Value)
			anyspec.Finite(t, x.Key+" margin", x.Margin)
		}
	})
}

func BenchmarkKeep(b *testing.B) {
	u, s, m := DefaultUse(), Default(), flown()
	known := Life{Shape: param.Known(3), Scale: param.Known(hours(200)), Extra: 300}
	for name, life := range map[string]Life{"plain": {}, "with life data": known} {
		s.TopEndLife, s.BigEndLife, s.DriveLife = life, life, life
		b.Run(name, func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				sink = Keep(u, &s, m)
			}
		})
	}
}

var sink Result

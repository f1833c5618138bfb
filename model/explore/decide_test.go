package explore

import (
	"math"
	"testing"

	"backspan/model"
	"backspan/model/reading"
	"backspan/model/unit"
)

func oneMachine(name string, thrust, mass float64) model.Outcome {
	return model.Outcome{Variant: name, Readings: []reading.Reading{
		reading.New("a.thrust", "Thrust", thrust, unit.Newton).Higher(),
		reading.New("a.mass", "Mass", mass, unit.Kilogram).Lower(),
		reading.New("a.colour", "Colour", thrust, unit.Count),
	}}
}

// Worked by hand. Of two machines, one pushes best and the other weighs least,
// so that the scores are the weights; the first wins while 1.2·p > q, p and q
// anywhere from 0.5 to 1.5: the area of that part of the square is 0.6625.
func TestDecideByHand(t *testing.T) {
	two := []model.Outcome{oneMachine("strong", 600, 25), oneMachine("light", 500, 20)}
	s := Decide(two, []Criterion{{"a.thrust", 1.2}, {"a.mass", 1}})
	if s[0].Variant != 0 || math.Abs(s[0].Score-1.2/2.2) > 1e-12 || math.Abs(s[1].Score-1/2.2) > 1e-12 {
		t.Errorf("%+v", s)
	}
	if math.Abs(s[0].First-0.6625) > 0.004 || math.Abs(s[0].First+s[1].First-1) > 1e-9 {
		t.Errorf("first in %.4f and %.4f of the weightings, want 0.6625 and the rest", s[0].First, s[1].First)
	}
	three := append(two, oneMachine("middle", 575, 21))
	s = Decide(three, []Criterion{{"a.thrust", 1}, {"a.mass", 1}})
	if s[0].Variant != 2 || math.Abs(s[0].Score-(0.75+0.8)/2) > 1e-12 {
		t.Errorf("%+v", s)
	}
	// 0.75 p + 0.8 q is beaten by p only when q < 0.3125 p, by q only when p < 4/15 q.
	if s[0].First < 0.99 {
		t.Errorf("%+v", s)
	}
}

func TestDecideWhatDoesNotCount(t *testing.T) {
	two := []model.Outcome{oneMachine("strong", 600, 25), oneMachine("light", 500, 20)}
	for _, of := range [][]Criterion{nil, {{"a.colour", 5}}, {{"a.thrust", 0}}, {{"no.such", 1}}} {
		if s := Decide(two, of); s != nil {
			t.Errorf("%v: %+v", of, s)
		}
	}
	if s := Decide(nil, []Criterion{{"a.thrust", 1}}); s != nil {
		t.Errorf("%+v", s)
	}
	two[0].Readings[1] = reading.Missing("a.mass", "Mass", unit.Kilogram, "not weighed")
	s := Decide(two, []Criterion{{"a.mass", 1}})
	if s[0].Variant != 1 || s[0].Score != 1 || s[1].Score != 0 || len(s[1].Lacking) != 1 || s[1].Lacking[0] != "Mass" || len(s[0].Lacking) != 0 {
		t.Errorf("%+v", s)
	}
}

func TestDecideOnTheSample(t *testing.T) {
	outcomes := model.EvaluateAll(model.Sample())
	s := Decide(outcomes, []Criterion{{"stack.mass_ready", 1}})
	for i := 1; i < len(s); i++ {
		a, _ := outcomes[s[i-1].Variant].Reading("stack.mass_ready")
		b, _ := outcomes[s[i].Variant].Reading("stack.mass_ready")
		if a.Value > b.Value {
			t.Errorf("%s is heavier than %s and stands before it", outcomes[s[i-1].Variant].Variant, outcomes[s[i].Variant].Variant)
		}
	}
	if s[0].Score != 1 || s[len(s)-1].Score != 0 || math.Abs(s[0].First-1) > 1e-9 {
		t.Errorf("%+v", s)
	}
}

func BenchmarkDecide(b *testing.B) {
	outcomes := model.EvaluateAll(model.Sample())
	of := []Criterion{{"stack.mass_ready", 1}, {"stack.depth", 2}, {"flight.climb_rate", 1}, {"propeller.static_thrust", 1}, {"carry.equivalent_mass", 1}}
	for b.Loop() {
		if Decide(outcomes, of) == nil {
			b.Fatal("nothing decided")
		}
	}
}

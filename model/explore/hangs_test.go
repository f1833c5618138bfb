package explore

import (
	"context"
	"math"
	"testing"

	"backspan/model"
	"backspan/model/reading"
)

// Each figure is what evaluating the machine with the stepped number gives.
func TestHangsIsWhatAStepDoes(t *testing.T) {
	s := model.Sample()
	v := &s.Variants[s.Index("Belt 190")]
	y, err := Look(context.Background(), s, v, nil)
	if err != nil {
		t.Fatal(err)
	}
	h, ok := y.Hangs("propeller.pitch", false, []string{"stack.depth", "flight.climb_rate"})
	if !ok || len(h.Moved) < 20 || h.Step != "1 %" {
		t.Fatalf("%v: %d readings by %s", ok, len(h.Moved), h.Step)
	}
	up := s.Clone()
	up.Variants[0].Propeller.Pitch *= 1.01
	then := model.Evaluate(up, &up.Variants[0])
	if len(h.First) != 2 || h.First[0].Reading.Key != "stack.depth" || h.First[0].More.Change.Value != 0 || h.First[1].More.Change.Value == 0 {
		t.Errorf("of what was asked for first: %+v", h.First)
	}
	for i, m := range h.Moved {
		r, _ := then.Reading(m.Reading.Key)
		if want := r.Value - m.Reading.Value; math.Abs(m.More.Change.Value-want) > 1e-9*math.Abs(m.Reading.Value) {
			t.Errorf("%s moves by %g, want %g", m.Reading.Key, m.More.Change.Value, want)
		}
		if i > 0 && m.weight > h.Moved[i-1].weight {
			t.Errorf("%s stands behind one that moves less", m.Reading.Key)
		}
	}
	if _, ok := y.Hangs("drive.kind", false, nil); ok {
		t.Error("a word was stepped")
	}
	if _, ok := y.Hangs("site.altitude", true, nil); !ok {
		t.Error("nothing hangs on the altitude")
	}
}

// A check just inside its limit turns when a step takes it past.
func TestHangsTellsWhatTurns(t *testing.T) {
	s := model.Sample()
	v := &s.Variants[0]
	o := model.Evaluate(s, v)
	c, ok := checkOf(o, "propeller.tip_mach")
	if !ok {
		t.Fatal("there is no such check")
	}
	s.MarginAsked = 1 - c.Value/c.Limit - 1e-5 // it holds by a hair
	y, err := Look(context.Background(), s, v, nil)
	if err != nil {
		t.Fatal(err)
	}
	h, _ := y.Hangs("propeller.diameter", false, nil)
	for _, turned := range h.Turned {
		if turned.Check.Key == c.Key && turned.Check.Verdict == reading.Holds && (turned.More == reading.Thin || turned.Less == reading.Thin) {
			return
		}
	}
	t.Errorf("no step of the diameter turns %s: %v", c.Key, h.Turned)
}

package param

import (
	"errors"
	"fmt"
	"math"
	"strings"
	"testing"

	"backspan/model/unit"
)

type colour string

type sample struct {
	Length float64
	Count  int
	Colour colour
	On     bool
	Note   string
	Test   Slot
	Curve  [][]float64
}

func (s *sample) params() map[string]Param {
	ps := map[string]Param{}
	for _, p := range []Param{
		Number(&s.Length, "length", "Length", unit.Millimetre).Within(20, 200).Typical(55, 80),
		Whole(&s.Count, "count", "Count").Within(2, 20),
		Choice(&s.Colour, "colour", "Colour", colour("red"), colour("blue green")),
		Toggle(&s.On, "on", "On"),
		Text(&s.Note, "note", "Note"),
		Open(&s.Test, "test", "Test", unit.Celsius).Within(-40, 300),
		Table(func() [][]float64 { return s.Curve }, func(r [][]float64) { s.Curve = r }, "curve", "Curve",
			Column{Label: "speed", Unit: unit.RPM, Min: 0, Max: 2e4}, Column{Label: "power", Unit: unit.Kilowatt, Min: 0, Max: 100}).
			Rows(2).Rule(func(rows [][]float64) error {
			for i := 1; i < len(rows); i++ {
				if rows[i][0] <= rows[i-1][0] {
					return fmt.Errorf("row %d: speed must rise from row to row", i+1)
				}
			}
			return nil
		}),
	} {
		ps[p.Key] = p
	}
	return ps
}

func fresh() *sample {
	return &sample{Length: 0.062, Count: 8, Colour: "red", Curve: [][]float64{}}
}

func TestSetAndShow(t *testing.T) {
	for _, tc := range []struct{ key, typed, shows, edits string }{
		{"length", "2.5 in", "63.5 mm", "63.5"}, {"length", "62,25", "62.25 mm", "62.25"},
		{"count", "12", "12", "12"}, {"colour", "Blue Green", "blue green", "blue green"},
		{"on", "y", "yes", "yes"}, {"note", "  as built ", "as built", "as built"},
		{"test", "185", "185 °C", "185"}, {"test", "", "not given", ""},
		{"curve", "4000 5.2; 5000 7,1", "2 rows", "4000 5.2; 5000 7.1"}, {"curve", "", "not given", ""},
	} {
		p := fresh().params()[tc.key]
		if err := p.Set(tc.typed); err != nil {
			t.Errorf("%s: Set(%q): %v", tc.key, tc.typed, err)
		}
		if p.Show() != tc.shows || p.Editable() != tc.edits {
			t.Errorf("%s: typed %q, shows %q, edits %q", tc.key, tc.typed, p.Show(), p.Editable())
		}
		if err := p.Set(p.Editable()); err != nil {
			t.Errorf("%s: does not take its own text %q: %v", tc.key, p.Editable(), err)
		}
	}
}

func TestRefusalKeepsTheOldValue(t *testing.T) {
	for _, tc := range []struct{ key, typed, says string }{
		{"length", "5", "5 mm is outside 20 to 200 mm"}, {"length", "nan", "not a number"}, {"length", "3 kg", "is a mass"},
		{"length", "", "not a number"},
		{"count", "1", "outside 2 to 20"}, {"count", "3.5", "not a whole number"},
		{"colour", "green", "red or blue green"}, {"on", "maybe", "neither yes nor no"}, {"test", "900", "outside -40 to 300 °C"},
		{"curve", "4000 5.2", "at least 2"}, {"curve", "4000 5.2; 4000 6", "must rise"}, {"curve", "4000; 5000 7", "row 1 has 1 numbers"},
		{"curve", "4000 5.2; 5000 700", "row 2, power"},
	} {
		s := fresh()
		p := s.params()[tc.key]
		before := p.Show()
		err := p.Set(tc.typed)
		var r *Refusal
		if !errors.As(err, &r) || !strings.Contains(err.Error(), tc.says) {
			t.Errorf("%s: Set(%q) = %v, want a refusal with %q", tc.key, tc.typed, err, tc.says)
		}
		if p.Show() != before {
			t.Errorf("%s: refused, yet changed from %s to %s", tc.key, before, p.Show())
		}
	}
}

func TestSetFile(t *testing.T) {
	for _, tc := range []struct {
		key  string
		v    any
		says string // empty when it must be taken
	}{
		{"length", 62.5, ""}, {"length", int64(62), ""}, {"length", "62", `found the text "62"`}, {"length", math.NaN(), "not a finite number"},
		{"length", math.Inf(1), "not a finite number"}, {"length", 900.0, "outside 20 to 200 mm"},
		{"count", int64(0), "0 is outside 2 to 20"}, {"count", 8.0, "give a whole number"},
		{"on", true, ""}, {"on", int64(1), "give true or false"}, {"colour", "mauve", "red or blue green"}, {"note", int64(3), "text in quotes"},
		{"curve", []any{[]any{4000.0, 5.0}, []any{int64(5000), 7.0}}, ""}, {"curve", []any{4000.0}, "row 1 must hold 2 numbers"},
		{"curve", []any{[]any{4000.0, math.NaN()}, []any{5000.0, 7.0}}, "not a finite number"}, {"curve", "x", "a list of rows"},
	} {
		err := fresh().params()[tc.key].SetFile(tc.v)
		if (err == nil) != (tc.says == "") || err != nil && !strings.Contains(err.Error(), tc.says) {
			t.Errorf("%s: SetFile(%v) = %v, want %q", tc.key, tc.v, err, tc.says)
		}
	}
}

func TestFileKeysCarryUnits(t *testing.T) {
	ps := fresh().params()
	for key, want := range map[string]string{"length": "length_mm", "count": "count", "test": "test_c", "curve": "curve_rpm_kw", "on": "on"} {
		if got := ps[key].FileKey(); got != want {
			t.Errorf("%s: file key %s, want %s", key, got, want)
		}
	}
}

func TestStep(t *testing.T) {
	s := fresh()
	ps := s.params()
	for range 3 {
		if err := ps["length"].Step(1); err != nil {
			t.Fatal(err)
		}
	}
	if got := ps["length"].Editable(); got != "65" {
		t.Errorf("three fine steps from 62 gave %s", got)
	}
	s.Length = 0.06225
	_ = ps["length"].Step(1)
	if got := ps["length"].Editable(); got != "63.25" {
		t.Errorf("a step from 62.25 gave %s", got)
	}
	if err := ps["length"].Step(1000); err == nil || ps["length"].Editable() != "63.25" {
		t.Errorf("a step out of range gave %v, %s", err, ps["length"].Editable())
	}
	_ = ps["colour"].Step(-1)
	if s.Colour != "blue green" {
		t.Errorf("the choice went to %s", s.Colour)
	}
	if err := ps["test"].Step(1); err == nil {
		t.Error("stepped an empty value")
	}
}

func TestSetNumberTakesOnlyWholeCounts(t *testing.T) {
	s := fresh()
	if err := s.params()["count"].SetNumber(9.5); err == nil || s.Count != 8 {
		t.Errorf("took 9.5: %v, %d", err, s.Count)
	}
	if err := s.params()["length"].SetNumber(math.NaN()); err == nil || s.Length != 0.062 {
		t.Errorf("took NaN: %v, %g", err, s.Length)
	}
}

func TestFindByPath(t *testing.T) {
	s := fresh()
	secs := []Section{{Key: "part.sub", Params: []Param{s.params()["length"]}}}
	if p, ok := Find(secs, "part.sub.length"); !ok || p.Key != "length" {
		t.Error("not found")
	}
}

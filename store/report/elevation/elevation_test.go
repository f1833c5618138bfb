package elevation

import (
	"math"
	"testing"

	"backspan/model"
	"backspan/model/drive"
)

func outcomes(t *testing.T) []model.Outcome {
	t.Helper()
	s := model.Sample()
	direct := s.Variants[0].Clone()
	direct.Name, direct.Drive.Kind = "Direct", drive.Direct
	hung := s.Variants[1].Clone()
	hung.Name, hung.Drive.PropellerAxis = "Gear below", drive.Below
	s.Variants = append(s.Variants, direct, hung)
	return model.EvaluateAll(s)
}

func near(t *testing.T, what string, got, want float64) {
	t.Helper()
	if !(math.Abs(got-want) <= 1e-9) {
		t.Errorf("%s: %g, want %g", what, got, want)
	}
}

// A dimension that names a reading has the reading's value.
func TestDimensionsAreReadings(t *testing.T) {
	for _, o := range outcomes(t) {
		named := 0
		side, ok := Side(o)
		if !ok {
			t.Fatalf("%s is not drawn", o.Variant)
		}
		for _, d := range side.Dimensions {
			if d.Key == "" {
				continue
			}
			named++
			r, _ := o.Reading(d.Key)
			near(t, o.Variant+" "+d.Label, d.Length(), r.Value)
		}
		if named < 4 {
			t.Errorf("%s: only %d dimensions are readings", o.Variant, named)
		}
		near(t, o.Variant+" crank to propeller", side.Dimensions[3].Length(), o.Layout.ThrustUp-o.Layout.CrankUp)
	}
}

// The pieces stand behind one another without a gap, from the back to the plate.
func TestPiecesMakeTheDepth(t *testing.T) {
	for _, o := range outcomes(t) {
		d, _ := Side(o)
		x := 0.0
		for _, p := range d.Pieces {
			near(t, o.Variant+" front of "+p.Label, p.From.X, x)
			x = p.To.X
		}
		near(t, o.Variant+" plate", x, o.Stack.Depth)
	}
}

// reach is how far a path of the drawing goes.
func reach(d Drawing, key string) Box {
	b := Box{Point{math.Inf(1), math.Inf(1)}, Point{math.Inf(-1), math.Inf(-1)}}
	for _, p := range d.Paths {
		if p.Key != key {
			continue
		}
		for _, q := range p.Points {
			b = b.Union(Box{q, q})
		}
	}
	return b
}

func TestRearShowsDiametersAndTheWayBetween(t *testing.T) {
	for _, o := range outcomes(t) {
		d, ok := Rear(o)
		if !ok {
			t.Fatalf("%s is not drawn", o.Variant)
		}
		near(t, o.Variant+" guard", reach(d, "stack.guard").Width(), 2*o.Layout.GuardRadius)
		near(t, o.Variant+" propeller", reach(d, "propeller").Height(), 2*o.Layout.PropellerRadius)
		clearance, _ := o.Reading("stack.tip_clearance")
		near(t, o.Variant+" tip clearance", reach(d, "stack.guard").Max.Y-reach(d, "propeller").Max.Y, clearance.Value)
	}
}

// The outline of a belt is as long as the belt: what two circles and their outer
// tangents enclose. Source: geometry of the open belt, as in model/pulley.
func TestBeltOutlineIsTheBelt(t *testing.T) {
	o := outcomes(t)[0]
	d, _ := Rear(o)
	length := 0.0
	for _, p := range d.Paths {
		for i := 1; p.Key == "drive.belt" && i < len(p.Points); i++ {
			length += math.Hypot(p.Points[i].X-p.Points[i-1].X, p.Points[i].Y-p.Points[i-1].Y)
		}
	}
	for _, b := range o.Layout.Bodies {
		if b.Key != "drive.belt" {
			continue
		}
		c, r := math.Abs(b.High.Up-b.Low.Up), b.High.Radius-b.Low.Radius
		want := 2*math.Sqrt(c*c-r*r) + math.Pi*(b.High.Radius+b.Low.Radius) + 2*r*math.Asin(r/c)
		if math.Abs(length-want) > 2e-3*want {
			t.Errorf("outline %g m, belt %g m", length, want)
		}
		return
	}
	t.Error("no belt")
}

// What is seen lies inside the whole view, and the close view inside it too.
func TestWholeHoldsEverything(t *testing.T) {
	for _, o := range outcomes(t) {
		for name, draw := range map[string]func(model.Outcome) (Drawing, bool){"side": Side, "rear": Rear} {
			d, _ := draw(o)
			inside := func(what string, p Point) {
				if p.X < d.Whole.Min.X || p.X > d.Whole.Max.X || p.Y < d.Whole.Min.Y || p.Y > d.Whole.Max.Y {
					t.Errorf("%s, %s: %s at %v is outside %v", o.Variant, name, what, p, d.Whole)
				}
			}
			for _, p := range d.Paths {
				for _, q := range p.Points {
					inside(p.Key, q)
				}
			}
			for _, k := range d.Marks {
				inside(string(k.Kind), k.At)
			}
			inside("close view", d.Close.Min)
			inside("close view", d.Close.Max)
		}
	}
}

func TestNothingIsDrawnOfWhatCannotBeBuilt(t *testing.T) {
	if _, ok := Side(model.Outcome{}); ok {
		t.Error("a side elevation of nothing")
	}
	if _, ok := Rear(model.Outcome{}); ok {
		t.Error("a rear view of nothing")
	}
}

// A mark on every machine: the letters of what does the same are the same.
func TestLettersMeanTheSame(t *testing.T) {
	of := map[string]string{}
	for _, o := range outcomes(t) {
		d, _ := Rear(o)
		taken := map[string]bool{}
		for _, k := range d.Dimensions {
			if taken[k.Letter] {
				t.Errorf("%s: %s stands twice", o.Variant, k.Letter)
			}
			taken[k.Letter] = true
			if was, known := of[k.Label]; known && was != k.Letter {
				t.Errorf("%s is %s and %s", k.Label, was, k.Letter)
			}
			of[k.Label] = k.Letter
		}
	}
}

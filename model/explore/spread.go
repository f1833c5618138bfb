package explore

import (
	"fmt"
	"math"

	"backspan/model/reading"
	"backspan/model/unit"
)

// Shape is how a spread is distributed, in the word a person types.
type Shape string

// The shapes. Where only limits are known, even is the one to take (JCGM
// 100:2008, 4.3.7); where the middle is likelier, triangular (4.3.9).
const (
	Even       Shape = "even"
	Triangular Shape = "triangular"
	Normal     Shape = "normal"
)

// limitsOfNormal is how many standard deviations ± stands for when a normal
// spread is given by it: 95 % lie inside.
const limitsOfNormal = 2

// Spread is a doubt: in a parameter, around its middle, or in the method of a
// reading, as a factor around 1 or as an amount around 0.
type Spread struct {
	Dial   Dial            // of a parameter; no path for a reading
	Of     reading.Reading // of a reading
	Factor bool            // multiplies the reading
	Shape  Shape
	Middle float64 // SI
	Half   float64 // half the width, SI; of a normal spread the standard deviation
}

// Label is that of what is spread.
func (s Spread) Label() string {
	if s.ofReading() {
		return s.Of.Label + ", method"
	}
	return s.Dial.Label
}

// Key is that of what is spread.
func (s Spread) Key() string {
	if s.ofReading() {
		return s.Of.Key
	}
	return s.Dial.Path
}

func (s Spread) ofReading() bool { return s.Dial.Path == "" }

// Deviation is the standard deviation, SI. Source: JCGM 100:2008, 4.3.7 and
// 4.3.9.
func (s Spread) Deviation() float64 {
	switch s.Shape {
	case Even:
		return s.Half / math.Sqrt(3)
	case Triangular:
		return s.Half / math.Sqrt(6)
	case Normal:
	}
	return s.Half
}

// Text says the spread in words.
func (s Spread) Text() string {
	amount := func(si float64) string {
		u := s.unit()
		x := fmt.Sprintf("%.4g", u.Difference(si))
		if u.Symbol == "" {
			return x
		}
		return x + " " + u.Symbol
	}
	if s.Factor {
		amount = func(share float64) string { return fmt.Sprintf("%.4g %%", 100*share) }
	}
	if s.Shape == Normal {
		return "normal, standard deviation " + amount(s.Half)
	}
	return string(s.Shape) + " ±" + amount(s.Half)
}

func (s Spread) unit() unit.Unit {
	if s.ofReading() {
		return s.Of.Unit
	}
	return s.Dial.Unit
}

// take draws one value.
func (s Spread) take(d *draw) float64 {
	switch s.Shape {
	case Even:
		return s.Middle + s.Half*(2*d.share()-1)
	case Triangular:
		return s.Middle + s.Half*(d.share()-d.share())
	case Normal:
	}
	return s.Middle + s.Half*d.normal()
}

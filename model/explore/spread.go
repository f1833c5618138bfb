package explore

import (
	"fmt"
	"math"
	"strings"

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

// Spread reads "KEY=±0.05 mm", "KEY=±2 %", "KEY=54.9 mm..55.2 mm" or "KEY=sd
// 0.02 mm", with the shape behind it: even unless said. A share with % is of
// the value itself, unless that is in % already. KEY is a parameter or a
// reading.
func (b Base) Spread(text string) (Spread, error) {
	key, spelt, _ := strings.Cut(text, "=")
	s, value, err := b.doubtful(strings.TrimSpace(key))
	if err != nil {
		return s, err
	}
	words := strings.TrimSpace(spelt)
	s.Shape = Even
	for _, shape := range []Shape{Even, Triangular, Normal} {
		if rest, ok := strings.CutSuffix(words, string(shape)); ok {
			words, s.Shape = strings.TrimRight(rest, ", "), shape
		}
	}
	switch {
	case strings.Contains(words, ".."):
		return s.between(words)
	case math.IsNaN(value):
		return s, fmt.Errorf("%s has no value to spread around; set it, or give its limits as %s=FROM..TO", s.Label(), s.Key())
	}
	amount, isDeviation := strings.CutPrefix(words, "sd ")
	for _, mark := range []string{"±", "+-", "+/-"} {
		amount = strings.TrimPrefix(amount, mark)
	}
	if s.Half, s.Factor, err = s.amount(amount, value); err != nil {
		return s, fmt.Errorf("%s: %w; write a spread as ±0.05 mm, ±2 %%, sd 0.02 mm or 54.9..55.2 mm, with triangular or normal behind it", s.Label(), err)
	}
	switch {
	case isDeviation:
		s.Shape = Normal
	case s.Shape == Normal:
		s.Half /= limitsOfNormal
	}
	s.Middle = value
	if s.ofReading() {
		s.Middle = 0
		if s.Factor {
			s.Middle = 1
		}
	}
	return s, nil
}

// doubtful finds what has the doubt, and its value.
func (b Base) doubtful(key string) (s Spread, value float64, err error) {
	d, noParam := b.Dial(key)
	if noParam == nil {
		if d.Kind != 0 {
			return s, 0, fmt.Errorf("%s is a count or a word, which has no spread; sweep over it instead", d.Label)
		}
		return Spread{Dial: d}, d.Now, nil
	}
	r, err := b.Reading(key)
	if err != nil {
		return s, 0, noParam
	}
	if !r.Known() {
		return s, 0, fmt.Errorf("%s has no value here: %s", r.Label, r.Why)
	}
	return Spread{Of: r}, r.Value, nil
}

func (s Spread) between(words string) (Spread, error) {
	if s.ofReading() {
		return s, fmt.Errorf("%s is a reading; give its doubt as ±5 %% or ±3 %s", s.Of.Label, s.Of.Unit.Symbol)
	}
	lo, hi, n, _, err := s.Dial.readRange(words)
	if err != nil {
		return s, err
	}
	if n > 0 || lo >= hi {
		return s, fmt.Errorf("%s: give the lower limit, then the higher, without \"/n\"", s.Dial.Label)
	}
	s.Middle, s.Half = (lo+hi)/2, (hi-lo)/2
	if s.Shape == Normal {
		s.Half /= limitsOfNormal
	}
	return s, nil
}

// amount reads half a width; share tells that it multiplies a reading.
func (s Spread) amount(text string, value float64) (half float64, share bool, err error) {
	u := s.unit()
	text = strings.TrimSpace(text)
	if number, percent := strings.CutSuffix(text, "%"); percent && u.Symbol != "%" {
		half, err = parse(number, unit.One)
		half /= 100
		if share = s.ofReading(); !share {
			half *= math.Abs(value)
		}
	} else {
		var zero float64
		if half, err = parse(text, u); err == nil {
			zero, err = parse("0 "+strings.TrimLeft(text, numberLetters), u)
		}
		half -= zero
	}
	if err == nil && half <= 0 {
		err = fmt.Errorf("a spread is more than nothing")
	}
	return half, share, err
}

package explore

import (
	"fmt"
	"math"
	"strings"

	"backspan/model/param"
	"backspan/model/unit"
)

// Spread reads "KEY=±0.05 mm", "KEY=±2 %", "KEY=54.9 mm..55.2 mm" or "KEY=sd
// 0.02 mm", with the shape behind it: even unless said. A share with % is of
// the value itself, unless that is in % already; of a temperature or a level
// there is none. KEY is a parameter or a reading.
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
	r, isReading := b.outcome.Reading(key)
	if !isReading || b.HasParameter(key) {
		d, err := b.Dial(key)
		switch {
		case err != nil:
			return s, 0, err
		case d.Kind != param.KindNumber:
			return s, 0, fmt.Errorf("%s is a count or a word, which has no spread; sweep over it instead", d.Label)
		}
		return Spread{Dial: d}, d.Now, nil
	}
	r.Unit = b.priced(r.Unit)
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
		if !Sharable(u) {
			return 0, false, fmt.Errorf("a share of a figure in %s has no meaning; give it in %s", u.Symbol, u.Symbol)
		}
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

package unit

import (
	"errors"
	"fmt"
	"math"
	"strconv"
	"strings"
)

// Parse reads a quantity as a person types it and returns it in SI: a number
// with a decimal point or comma, a fraction ("3/8", "1 3/8"), then an optional
// unit of u's dimension. Without a unit the number is in u.
//
// The error is a sentence that says what was wrong and what to type instead.
func Parse(text string, u Unit) (float64, error) {
	number, symbol := split(text)
	if number == "" {
		return 0, fmt.Errorf("%q is not a number; type for example %s", text, example(u))
	}
	x, err := parseNumber(number)
	if err != nil {
		return 0, err
	}
	if symbol != "" {
		if u, err = find(symbol, u.Dimension); err != nil {
			return 0, err
		}
	}
	si := u.SI(x)
	if math.IsInf(si, 0) || math.IsNaN(si) {
		return 0, fmt.Errorf("%q is too large a number", text)
	}
	return si, nil
}

// split parts "3/8 in" into "3/8" and "in". Only a digit, sign, separator or
// exponent belongs to the number, so "nan" and "inf" leave no number at all.
func split(text string) (number, symbol string) {
	text = strings.ReplaceAll(strings.TrimSpace(text), "\u2212", "-")
	end := 0
	for i := 0; i < len(text); i++ {
		c := text[i]
		switch {
		case c >= '0' && c <= '9':
			end = i + 1
			continue
		case strings.IndexByte("+-.,/ \u00a0", c) >= 0:
			continue
		case (c == 'e' || c == 'E') && end > 0 && exponentFollows(text[i+1:]):
			continue
		}
		break
	}
	return strings.TrimSpace(text[:end]), strings.TrimSpace(strings.TrimLeft(text[end:], "."))
}

func exponentFollows(s string) bool {
	s = strings.TrimLeft(s, "+-")
	return s != "" && s[0] >= '0' && s[0] <= '9'
}

func parseNumber(s string) (float64, error) {
	whole, fraction, mixed := strings.Cut(s, " ")
	if mixed && strings.Contains(fraction, "/") && !strings.Contains(whole, "/") {
		w, err := decimal(whole)
		if err != nil {
			return 0, err
		}
		f, err := quotient(strings.TrimSpace(fraction))
		return w + math.Copysign(f, w), err
	}
	return quotient(s)
}

func quotient(s string) (float64, error) {
	top, bottom, isFraction := strings.Cut(s, "/")
	a, err := decimal(strings.TrimSpace(top))
	if err != nil || !isFraction {
		return a, err
	}
	b, err := decimal(strings.TrimSpace(bottom))
	if err != nil {
		return 0, err
	}
	if b == 0 {
		return 0, fmt.Errorf("%q divides by zero", s)
	}
	return a / b, nil
}

func decimal(s string) (float64, error) {
	if strings.Contains(s, ",") {
		if strings.Contains(s, ".") || strings.Count(s, ",") > 1 {
			return 0, fmt.Errorf("%q: write numbers without thousands separators", s)
		}
		s = strings.Replace(s, ",", ".", 1)
	}
	x, err := strconv.ParseFloat(s, 64)
	if errors.Is(err, strconv.ErrRange) {
		return 0, fmt.Errorf("%q is too large a number", s)
	}
	if err != nil {
		return 0, fmt.Errorf("%q is not a number", s)
	}
	return x, nil
}

func find(symbol string, d Dimension) (Unit, error) {
	var elsewhere Dimension
	for _, u := range all {
		if !spelt(u, symbol) {
			continue
		}
		if u.Dimension == d {
			return u, nil
		}
		elsewhere = u.Dimension
	}
	if elsewhere != "" {
		return Unit{}, fmt.Errorf("%q is %s, but this is %s; use %s", symbol, elsewhere, d, symbols(d))
	}
	return Unit{}, fmt.Errorf("unknown unit %q; use %s", symbol, symbols(d))
}

func spelt(u Unit, symbol string) bool {
	if u.Symbol == symbol {
		return true
	}
	for _, s := range spellings[u.Symbol] {
		if s == symbol {
			return true
		}
	}
	return strings.EqualFold(u.Symbol, symbol) && unambiguous(u)
}

// unambiguous is false for the units whose case carries meaning: "MPa" is not
// "mPa", "K" is not "k".
func unambiguous(u Unit) bool { return len(u.Symbol) > 1 && u.Dimension != Pressure }

func symbols(d Dimension) string {
	var s []string
	for _, u := range Of(d) {
		if u.Symbol != "" {
			s = append(s, u.Symbol)
		}
	}
	if len(s) == 0 {
		return "no unit"
	}
	return strings.Join(s, ", ")
}

func example(u Unit) string {
	if u.Symbol == "" {
		return `"2.5"`
	}
	return fmt.Sprintf(`"62" or "62 %s"`, u.Symbol)
}

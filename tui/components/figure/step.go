package figure

import (
	"fmt"
	"math"
	"strings"

	"backspan/model/unit"
)

// Percent is a share in percent, with its sign and two figures at least.
func Percent(x float64) string {
	x *= 100
	decimals := 2
	if a := math.Abs(x); a >= 10 {
		decimals = 0
	} else if a >= 1 {
		decimals = 1
	}
	s := fmt.Sprintf("%+.*f", decimals, x)
	if strings.Trim(s, "+-0.") == "" {
		return "0"
	}
	return s
}

// Step is a small change in a unit, with its sign and as many figures as it needs;
// of a percentage in points.
func Step(si float64, u unit.Unit, currency string) string {
	s := u.Delta(si, u.SI(0))
	if si == 0 {
		s = "0"
	}
	symbol := u.Symbol
	if symbol == unit.Percent.Symbol {
		symbol = "pt"
	}
	return Money(strings.TrimSpace(s+" "+symbol), u, currency)
}

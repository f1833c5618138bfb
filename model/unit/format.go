package unit

import (
	"math"
	"strconv"
	"strings"
)

// Number formats an SI value in this unit for people, without the symbol: the
// unit's significant figures at least, whole numbers in full.
func (u Unit) Number(si float64) string {
	x := u.From(si)
	n := u.decimals(x)
	return strconv.FormatFloat(noMinusZero(x, n), 'f', n, 64)
}

// Text formats an SI value in this unit with its symbol.
func (u Unit) Text(si float64) string { return u.label(u.Number(si)) }

// Delta formats the difference of two SI values in this unit, with its sign
// and with as many decimals as the larger of it and the value like would show.
func (u Unit) Delta(si, like float64) string {
	d := u.Difference(si)
	n := u.decimals(math.Max(math.Abs(d), math.Abs(u.From(like))))
	s := strconv.FormatFloat(noMinusZero(d, n), 'f', n, 64)
	if !strings.HasPrefix(s, "-") {
		s = "+" + s
	}
	return s
}

// Exact is the shortest decimal number that reads back, through SI, to the
// same bits as si: what a file holds and what a form lets a person edit.
func (u Unit) Exact(si float64) string {
	x := u.From(si)
	for digits := 1; digits <= 17; digits++ {
		s := strconv.FormatFloat(x, 'g', digits, 64)
		if back, err := strconv.ParseFloat(s, 64); err == nil && u.SI(back) == si {
			return plain(back)
		}
	}
	for _, y := range neighbours(x) {
		if u.SI(y) == si {
			return plain(y)
		}
	}
	return plain(x)
}

// neighbours are the numbers a few units in the last place around x: the way
// into SI and back may miss by that much.
func neighbours(x float64) []float64 {
	var ys []float64
	lo, hi := x, x
	for range 4 {
		lo, hi = math.Nextafter(lo, math.Inf(-1)), math.Nextafter(hi, math.Inf(1))
		ys = append(ys, lo, hi)
	}
	return ys
}

// Settle returns the SI value nearest to si that a decimal number in this unit
// can reach, so that what is kept is what a file gives back. Where a short
// number lies within the rounding of a conversion it is taken: 2 7/8 in is
// 73.025 mm, not 73.02499999999999.
func (u Unit) Settle(si float64) float64 {
	const noise = 1e-15
	x := u.From(si)
	short, err := strconv.ParseFloat(strconv.FormatFloat(x, 'g', 13, 64), 64)
	if err == nil && math.Abs(short-x) <= noise*(math.Abs(x)+math.Abs(u.Shift)) {
		return u.SI(short)
	}
	exact, err := strconv.ParseFloat(u.Exact(si), 64)
	if err != nil {
		return si
	}
	return u.SI(exact)
}

func plain(x float64) string {
	if a := math.Abs(x); x != 0 && (a < 1e-5 || a >= 1e15) {
		return strconv.FormatFloat(x, 'g', -1, 64)
	}
	return strconv.FormatFloat(x, 'f', -1, 64)
}

func (u Unit) label(number string) string {
	switch u.Symbol {
	case "":
		return number
	case "°":
		return number + u.Symbol
	}
	return number + " " + u.Symbol
}

// decimals gives x its significant figures; the size of x before rounding
// decides, so that 99.96 shows as 100.0 at most once.
func (u Unit) decimals(x float64) int {
	figures := max(u.Figures, 1)
	if x == 0 || math.IsNaN(x) || math.IsInf(x, 0) {
		return 0
	}
	return min(max(figures-1-int(math.Floor(math.Log10(math.Abs(x)))), 0), 9)
}

func noMinusZero(x float64, decimals int) float64 {
	if math.Abs(x) < 0.5*math.Pow10(-decimals) {
		return 0
	}
	return x
}

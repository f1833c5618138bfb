package explore

import (
	"fmt"
	"math"
	"strconv"
	"strings"

	"backspan/model/unit"
)

// MostLevels is how many values one parameter may take in a sweep.
const MostLevels = 10_000

const usualLevels = 11

// numberLetters are what a number may begin with before its unit.
const numberLetters = "+-\u22120123456789.,/ "

// Axis is a dial and the values it takes.
type Axis struct {
	Dial
	Levels []float64
}

// Axis reads "KEY=55 mm..80 mm/11", evenly from the first to the last in so
// many values, or a list, "KEY=62, 65 mm, 70". A count without "/n" takes
// every whole number. Where numbers have decimal commas the list is parted by
// semicolons. A key alone takes its usual range, or all its words.
func (b Base) Axis(text string) (Axis, error) {
	key, spelt, _ := strings.Cut(text, "=")
	d, err := b.Dial(strings.TrimSpace(key))
	if err != nil {
		return Axis{}, err
	}
	a := Axis{Dial: d}
	spelt = strings.TrimSpace(spelt)
	lo, hi, n, ranged, err := d.readRange(spelt)
	switch {
	case err != nil:
	case ranged:
		a.Levels, err = d.evenly(lo, hi, n)
	default:
		a.Levels, err = d.list(spelt)
	}
	return a, err
}

// Range is the least and the greatest value of a "KEY=from..to" for a question
// that finds its own values between them; a key alone gives its usual range.
func (b Base) Range(text string) (d Dial, lo, hi float64, err error) {
	key, spelt, _ := strings.Cut(text, "=")
	if d, err = b.Dial(strings.TrimSpace(key)); err != nil {
		return d, 0, 0, err
	}
	lo, hi, n, ranged, err := d.readRange(strings.TrimSpace(spelt))
	switch {
	case err != nil:
	case !ranged || d.Worded():
		err = fmt.Errorf("%s: give the range to look in, for example %s=%s..%s", d.Label, d.Path, d.Text(d.Usual[0]), d.Text(d.Usual[1]))
	case n != 0:
		err = fmt.Errorf("%s: give the range alone, without \"/%d\"", d.Label, n)
	case lo == hi:
		err = fmt.Errorf("%s: the range from %s to %s holds one value only", d.Label, d.Text(lo), d.Text(hi))
	}
	return d, math.Min(lo, hi), math.Max(lo, hi), err
}

// readRange reads "from..to" and "from..to/n"; n is 0 where it is not given.
func (d Dial) readRange(text string) (lo, hi float64, n int, ranged bool, err error) {
	if text == "" {
		return d.Usual[0], d.Usual[1], 0, true, nil
	}
	from, to, ranged := strings.Cut(text, "..")
	if !ranged {
		return 0, 0, 0, false, nil
	}
	if i := strings.LastIndexByte(to, '/'); i >= 0 {
		count, notCount := strconv.Atoi(strings.TrimSpace(to[i+1:]))
		if notCount == nil {
			if count < 2 || count > MostLevels {
				return 0, 0, 0, true, fmt.Errorf("%s: give 2 to %d values, not %d", d.Label, MostLevels, count)
			}
			n, to = count, to[:i]
		}
	}
	symbol := strings.TrimLeft(to, numberLetters)
	if !d.Worded() && strings.TrimLeft(from, numberLetters) == "" {
		from += " " + symbol
	}
	if lo, err = d.parse(from); err == nil {
		hi, err = d.parse(to)
	}
	return lo, hi, n, true, err
}

// evenly is n values from lo to hi; of counts and words each once.
func (d Dial) evenly(lo, hi float64, n int) ([]float64, error) {
	if n == 0 {
		n = usualLevels
		if d.Stepped() {
			n = int(math.Abs(hi-lo)) + 1
		}
	}
	if n > MostLevels {
		return nil, fmt.Errorf("%s: %d values are too many; give a shorter range or \"/n\"", d.Label, n)
	}
	var levels []float64
	for i := range n {
		x := lo
		if n > 1 {
			x += (hi - lo) * float64(i) / float64(n-1)
		}
		if i == n-1 {
			x = hi
		}
		if d.Stepped() {
			x = math.Round(x)
		} else {
			x = d.Unit.Settle(short(x, d.Unit))
		}
		if len(levels) == 0 || levels[len(levels)-1] != x {
			levels = append(levels, x)
		}
	}
	return levels, nil
}

// short drops what arithmetic adds behind the twelfth figure.
func short(si float64, u unit.Unit) float64 {
	x, err := strconv.ParseFloat(strconv.FormatFloat(u.From(si), 'g', 12, 64), 64)
	if err != nil {
		return si
	}
	return u.SI(x)
}

func (d Dial) list(text string) ([]float64, error) {
	parting := ","
	if strings.Contains(text, ";") {
		parting = ";"
	}
	words := strings.Split(text, parting)
	if len(words) > MostLevels {
		return nil, fmt.Errorf("%s: %d values are too many; give up to %d", d.Label, len(words), MostLevels)
	}
	if d.Worded() && parting == "," {
		words = d.whole(words)
	}
	levels := make([]float64, len(words))
	for i, w := range words {
		x, err := d.parse(w)
		if err != nil {
			return nil, err
		}
		levels[i] = x
	}
	return levels, nil
}

// whole puts together again the options that hold a comma themselves.
func (d Dial) whole(words []string) []string {
	var out []string
	for i := 0; i < len(words); {
		n := 1
		for k := len(words) - i; k > 1; k-- {
			if _, err := d.place(strings.Join(words[i:i+k], ",")); err == nil {
				n = k
				break
			}
		}
		out = append(out, strings.Join(words[i:i+n], ","))
		i += n
	}
	return out
}

package explore

import (
	"fmt"
	"math"
	"strconv"
	"strings"

	"backspan/model/param"
	"backspan/model/unit"
)

// Dial is a parameter that a question turns. Its values travel as numbers: a
// quantity in SI, a count, the place of a word among the Options.
type Dial struct {
	Path    string // "drive.ribbed_belt.ribs"
	Label   string
	Kind    param.Kind
	Unit    unit.Unit
	Options []string // of a choice; "no" and "yes" of a toggle
	Now     float64  // as the base has it; NaN where it is not given
	Min     float64  // allowed, in SI
	Max     float64
	Usual   [2]float64 // usual range in SI, else the allowed one
}

// Dial is the parameter with that path. Text and tables cannot be turned.
func (b Base) Dial(path string) (Dial, error) {
	p, full, err := b.param(path)
	if err != nil {
		return Dial{}, err
	}
	d := Dial{Path: full, Label: p.Label, Kind: p.Kind, Unit: b.priced(p.Unit), Now: math.NaN()}
	switch p.Kind {
	case param.KindNumber, param.KindWhole:
		d.Min, d.Max = p.Unit.SI(p.Min), p.Unit.SI(p.Max)
		d.Usual = [2]float64{d.Min, d.Max}
		if p.TypicalMax > p.TypicalMin {
			d.Usual = [2]float64{p.Unit.SI(p.TypicalMin), p.Unit.SI(p.TypicalMax)}
		}
		if x, ok := p.Number(); ok {
			d.Now = x
		}
	case param.KindChoice, param.KindToggle:
		d.Options = p.Options
		if p.Kind == param.KindToggle {
			d.Options = []string{"no", "yes"}
		}
		d.Max = float64(len(d.Options) - 1)
		d.Usual = [2]float64{0, d.Max}
		d.Now, _ = d.place(p.Editable())
	case param.KindText, param.KindTable:
		return Dial{}, fmt.Errorf("%s (%s) is not a number and not a choice, so it cannot be varied", p.Label, full)
	}
	return d, nil
}

// Stepped reports whether only whole numbers make sense: counts and words.
func (d Dial) Stepped() bool { return d.Kind != param.KindNumber }

// Worded reports whether the values are words.
func (d Dial) Worded() bool { return d.Options != nil }

// Text is a value as a person reads it, with its unit.
func (d Dial) Text(x float64) string {
	if d.Worded() {
		return d.Bare(x)
	}
	s := d.Bare(x)
	switch d.Unit.Symbol {
	case "":
		return s
	case "°":
		return s + d.Unit.Symbol
	}
	return s + " " + d.Unit.Symbol
}

// Bare is a value without its unit, in it.
func (d Dial) Bare(x float64) string {
	if d.Worded() {
		return d.Options[int(x)]
	}
	return strconv.FormatFloat(d.Unit.From(x), 'g', 10, 64)
}

// parse reads one value as a person types it; without a unit it is in the
// parameter's own.
func (d Dial) parse(text string) (float64, error) {
	if d.Worded() {
		return d.place(text)
	}
	x, err := parse(text, d.Unit)
	switch {
	case err != nil:
		return 0, fmt.Errorf("%s: %w", d.Label, err)
	case x < d.Min-slack(d.Min, d.Max) || x > d.Max+slack(d.Min, d.Max):
		return 0, fmt.Errorf("%s: %s is outside %s to %s", d.Label, d.Text(x), d.Text(d.Min), d.Text(d.Max))
	case d.Stepped() && x != math.Trunc(x):
		return 0, fmt.Errorf("%s: %s is not a whole number", d.Label, text)
	}
	return x, nil
}

func slack(lo, hi float64) float64 { return 1e-12 * math.Max(math.Abs(lo), math.Abs(hi)) }

func (d Dial) place(word string) (float64, error) {
	for i, o := range d.Options {
		if strings.EqualFold(o, strings.TrimSpace(word)) {
			return float64(i), nil
		}
	}
	return 0, fmt.Errorf("%s: %q is not a choice; give one of: %s", d.Label, strings.TrimSpace(word), strings.Join(d.Options, ", "))
}

func (d Dial) turn(p param.Param, x float64) error {
	if d.Worded() {
		return p.Set(d.Options[int(x)])
	}
	return p.SetNumber(x)
}

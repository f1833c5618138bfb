package param

import (
	"fmt"
	"math"
	"strconv"
	"strings"

	"backspan/model/unit"
)

// Refusal says why a value was not taken. The bound value is unchanged.
type Refusal struct {
	Param  Param
	Given  string
	Reason string
	Kept   string
}

func (r *Refusal) Error() string {
	s := fmt.Sprintf("%s: %s", r.Param.Label, r.Reason)
	if r.Kept != "" {
		s += "; kept " + r.Kept
	}
	return s
}

func (p Param) refuse(given, format string, a ...any) error {
	return &Refusal{Param: p, Given: given, Reason: fmt.Sprintf(format, a...), Kept: p.Show()}
}

// Set takes what a person typed. On error the old value stays and the error,
// a *Refusal, says what is allowed.
func (p Param) Set(text string) error {
	text = strings.TrimSpace(text)
	switch p.Kind {
	case KindNumber:
		if text == "" && p.Optional {
			p.bind.set(Slot{})
			return nil
		}
		si, err := unit.Parse(text, p.Unit)
		if err != nil {
			return p.refuse(text, "%v", err)
		}
		return p.SetNumber(si)
	case KindWhole:
		return p.setWhole(text)
	case KindChoice:
		return p.setChoice(text)
	case KindToggle:
		return p.setToggle(text)
	case KindTable:
		rows, err := p.parseRows(text)
		if err != nil {
			return p.refuse(text, "%v", err)
		}
		return p.setRows(rows)
	}
	p.bind.set(text)
	return nil
}

// SetNumber takes a number in SI, for sweeps and for stepping: a quantity, an
// open quantity, or a count, which must then be whole.
func (p Param) SetNumber(si float64) error {
	if p.Kind == KindWhole {
		if si != math.Trunc(si) {
			return p.refuse(short(si), "%s is not a whole number; give %s", short(si), p.Range())
		}
		return p.setCount(int(si))
	}
	if p.Kind != KindNumber {
		return p.refuse(short(si), "takes %s, not a number", p.Range())
	}
	if !within(p.Unit.From(si), p.Min, p.Max) {
		given := exactly(si, p.Unit)
		return p.refuse(given, "%s is outside %s", given, p.Range())
	}
	if p.Optional {
		p.bind.set(Known(p.Unit.Settle(si)))
	} else {
		p.bind.set(p.Unit.Settle(si))
	}
	return nil
}

// exactly spells a refused value in full: rounded, 200.0001 mm would read as
// the very limit it breaks.
func exactly(si float64, u unit.Unit) string {
	s := short(u.From(si))
	if x, err := strconv.ParseFloat(s, 64); err != nil || !near(u.SI(x), si) {
		s = u.Exact(si)
	}
	if u.Symbol != "" {
		s += " " + u.Symbol
	}
	return s
}

func near(x, y float64) bool { return math.Abs(x-y) <= 1e-12*math.Max(math.Abs(x), math.Abs(y)) }

// within also refuses NaN. A range end reached through the rounding of a
// conversion counts as inside.
func within(x, lo, hi float64) bool {
	slack := 1e-12 * math.Max(math.Abs(lo), math.Abs(hi))
	return x >= lo-slack && x <= hi+slack
}

func (p Param) setWhole(text string) error {
	n, err := strconv.Atoi(text)
	if err != nil {
		return p.refuse(text, "%q is not a whole number; give %s", text, p.Range())
	}
	return p.setCount(n)
}

func (p Param) setCount(n int) error {
	if float64(n) < p.Min || float64(n) > p.Max {
		return p.refuse(strconv.Itoa(n), "%d is outside %s", n, p.Range())
	}
	p.bind.set(n)
	return nil
}

func (p Param) setChoice(text string) error {
	for _, o := range p.Options {
		if strings.EqualFold(o, text) {
			p.bind.set(o)
			return nil
		}
	}
	return p.refuse(text, "%q is not a choice; give %s", text, p.Range())
}

func (p Param) setToggle(text string) error {
	switch strings.ToLower(text) {
	case "yes", "y", "true", "on", "1":
		p.bind.set(true)
	case "no", "n", "false", "off", "0":
		p.bind.set(false)
	default:
		return p.refuse(text, "%q is neither yes nor no", text)
	}
	return nil
}

// Step moves the value by n fine steps: a round figure near a hundredth of
// the usual range, one for counts, the next option for choices.
func (p Param) Step(n int) error {
	switch p.Kind {
	case KindWhole:
		v, _ := p.Number()
		return p.setCount(int(v) + n)
	case KindChoice:
		return p.stepChoice(n)
	case KindToggle:
		p.bind.set(!p.bind.get().(bool))
		return nil
	case KindNumber:
		si, ok := p.Number()
		if !ok {
			return p.refuse("", "nothing to step from; type a value first")
		}
		step := p.FineStep()
		x := p.Unit.From(si) + float64(n)*step
		x, _ = strconv.ParseFloat(strconv.FormatFloat(x, 'f', stepDecimals(step), 64), 64)
		return p.SetNumber(p.Unit.SI(x))
	}
	return p.refuse("", "cannot be stepped; type a value")
}

// stepDecimals keeps two figures below the step, so that a value between
// steps is not pulled onto them.
func stepDecimals(step float64) int { return max(2-int(math.Floor(math.Log10(step))), 0) }

// FineStep is the size of one step, in the parameter's unit.
func (p Param) FineStep() float64 {
	width := p.TypicalMax - p.TypicalMin
	if width <= 0 {
		width = p.Max - p.Min
	}
	if width <= 0 {
		return 1
	}
	return math.Pow10(int(math.Floor(math.Log10(width / 20))))
}

func (p Param) stepChoice(n int) error {
	now := p.bind.get().(string)
	for i, o := range p.Options {
		if o == now {
			p.bind.set(p.Options[((i+n)%len(p.Options)+len(p.Options))%len(p.Options)])
			return nil
		}
	}
	p.bind.set(p.Options[0])
	return nil
}

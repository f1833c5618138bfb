package explore

import (
	"context"
	"math"

	"backspan/model"
	"backspan/model/param"
	"backspan/model/reading"
)

// trial steps one number by whole fine steps one way, on a machine of its own.
type trial struct {
	survey  *Survey
	machine *machine
	param   param.Param // of the number, in the machine
	number  number
	key     string
	way     float64
	growth  float64 // of the steps in the search
}

// cure searches for the nearest cure.
func (t trial) cure(ctx context.Context) *Cure {
	t, ok := t.begin()
	if !ok {
		return nil
	}
	n, ok := t.nearest(ctx)
	if !ok {
		return nil
	}
	o, text, shown, ok := t.at(n)
	if !ok {
		return nil
	}
	y, m := t.survey, t.number
	c := &Cure{Path: m.Path, Section: m.Section, Label: m.Label, Origin: m.Origin, From: m.Set, To: shown, Text: text, Steps: n,
		Worse: worsened(y.before, o, t.key), share: float64(n) * m.fine / m.size * m.share}
	c.Check, _ = checkOf(o, t.key)
	return c
}

// room is how many steps lie between the present value and the end of the range.
func (t trial) room() int {
	width := t.number.max - t.number.now
	if t.way < 0 {
		width = t.number.now - t.number.min
	}
	const rounding = 1e-9
	return int(math.Floor(width/t.number.fine + rounding))
}

// begin gives the trial a machine.
func (t trial) begin() (trial, bool) {
	t.machine = newMachine(t.survey.study, t.survey.variant)
	p, found := param.Find(t.machine.variant.Sections(), t.number.Path)
	t.param = p
	return t, found
}

// at is the machine n steps on, and the value as text and with its unit. The
// outcome holds until the next step.
func (t trial) at(n int) (o model.Outcome, text, shown string, ok bool) {
	o, err := t.machine.stepped(t.param, func() error {
		err := t.param.Step(int(t.way) * n)
		text, shown = t.param.Editable(), t.param.Show()
		return err
	})
	return o, text, shown, err == nil
}

// better reports whether the check reads no worse than v after n steps.
func (t trial) better(n int, v reading.Verdict) bool {
	o, _, _, ok := t.at(n)
	if !ok {
		return false
	}
	c, ok := checkOf(o, t.key)
	return ok && c.Verdict != reading.NotRated && !c.Verdict.Worse(v)
}

// nearest is the least number of steps after which the check holds, or, of one
// that fails, no longer fails.
func (t trial) nearest(ctx context.Context) (int, bool) {
	if n, ok := t.reach(ctx, reading.Holds); ok {
		return n, true
	}
	if t.survey.check(t.survey.at, t.key).verdict == reading.Fails {
		return t.reach(ctx, reading.Thin)
	}
	return 0, false
}

func (t trial) reach(ctx context.Context, v reading.Verdict) (int, bool) {
	room := t.room()
	below, above := 0, 0
	for n := 1; n <= room && ctx.Err() == nil; {
		if t.better(n, v) {
			above = n
			break
		}
		below = n
		if n == room {
			break
		}
		n = min(max(n+1, int(float64(n)*t.growth)), room)
	}
	if above == 0 {
		return 0, false
	}
	for above-below > 1 && ctx.Err() == nil {
		if mid := (above + below) / 2; t.better(mid, v) {
			above = mid
		} else {
			below = mid
		}
	}
	return above, true
}

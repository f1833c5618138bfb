package explore

import (
	"context"
	"runtime"
	"sync"
	"sync/atomic"

	"backspan/model"
	"backspan/model/param"
	"backspan/model/reading"
)

// Subject is what a question is about: a reading or a check, by its key.
type Subject struct {
	Check bool
	Key   string
}

// Survey is what a small step of each number, up and down, does to every
// reading and check of a variant. Words, switches and tables are not tried, nor
// what does not apply to the machine.
type Survey struct {
	study   *model.Study
	variant *model.Variant
	before  model.Outcome
	at      figures
	probes  []probe
}

// figures is what the questions need of an outcome.
type figures struct {
	readings map[string]param.Slot
	checks   map[string]judged
}

// judged is a check: its room to the limit as a share of the limit, or in SI
// where the limit is zero.
type judged struct {
	room         param.Slot
	value, limit float64
	verdict      reading.Verdict
}

// side is what became of the machine after one step.
type side struct {
	figures
	why string // the step could not be taken
}

// probe is one number, stepped both ways.
type probe struct {
	number
	more, less side
}

// Tried is how many numbers were stepped.
func (y *Survey) Tried() int { return len(y.probes) }

// Before is the outcome from which the steps were taken.
func (y *Survey) Before() model.Outcome { return y.before }

// Look steps every number of a variant, and those shared by all, both ways. s
// and v must not be changed meanwhile, nor while the Survey is asked. progress,
// if any, is called from several goroutines. The error is that of ctx.
func Look(ctx context.Context, s *model.Study, v *model.Variant, progress func(done, total int)) (*Survey, error) {
	o := evaluated(s, v)
	y := &Survey{study: s, variant: v, before: o, at: figuresOf(o)}
	for _, n := range numbers(s, v) {
		y.probes = append(y.probes, probe{number: n})
	}
	total := 2 * len(y.probes)
	err := atOnce(ctx, total, progress, func(i int) {
		p := &y.probes[i/2]
		if i%2 == 0 {
			p.more = y.step(p.number, 1)
		} else {
			p.less = y.step(p.number, -1)
		}
	})
	if err != nil {
		return nil, err
	}
	return y, nil
}

func (y *Survey) step(n number, sign float64) side {
	o, err := y.with(n, n.unit.SI(n.now+sign*n.size))
	if err != nil {
		return side{why: "the range ends"}
	}
	return side{figures: figuresOf(o)}
}

// with evaluates the variant with one number set to another value, SI.
func (y *Survey) with(n number, si float64) (model.Outcome, error) {
	s, v := *y.study, y.variant.Clone()
	p, _ := param.Find(sections(&s, &v, n.Shared), n.Path)
	if err := p.SetNumber(si); err != nil {
		return model.Outcome{}, err
	}
	return evaluated(&s, &v), nil
}

// evaluated shields the worker from a fault of the model: such a machine has no
// figures.
func evaluated(s *model.Study, v *model.Variant) (o model.Outcome) {
	defer func() {
		if recover() != nil {
			o = model.Outcome{Variant: v.Name}
		}
	}()
	return model.Evaluate(s, v)
}

func figuresOf(o model.Outcome) figures {
	f := figures{make(map[string]param.Slot, len(o.Readings)), make(map[string]judged, len(o.Checks))}
	for _, r := range o.Readings {
		if r.Known() {
			f.readings[r.Key] = param.Known(r.Value)
		}
	}
	for _, c := range o.Checks {
		f.checks[c.Key] = judgedOf(c)
	}
	return f
}

func judgedOf(c reading.Check) judged {
	j := judged{value: c.Value, limit: c.Limit, verdict: c.Verdict}
	switch {
	case !c.Valued:
	case c.Limit != 0:
		j.room = param.Known(c.Margin)
	case c.Side == reading.Most:
		j.room = param.Known(-c.Value)
	default:
		j.room = param.Known(c.Value)
	}
	return j
}

// atOnce does n jobs on all processors until ctx ends.
func atOnce(ctx context.Context, n int, progress func(done, total int), do func(i int)) error {
	var next, done atomic.Int64
	var wait sync.WaitGroup
	for range min(runtime.GOMAXPROCS(0), n) {
		wait.Go(func() {
			for ctx.Err() == nil {
				i := int(next.Add(1)) - 1
				if i >= n {
					return
				}
				do(i)
				if d := int(done.Add(1)); progress != nil {
					progress(d, n)
				}
			}
		})
	}
	wait.Wait()
	return ctx.Err()
}

package explore

import (
	"context"

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

	readingAt, checkAt map[string]int // where a key stands in figures
}

// figures is what the questions need of an outcome, in the order in which the
// base has its readings and checks.
type figures struct {
	readings []param.Slot
	checks   []judged
}

// judged is a check: its room to the limit as a share of the limit, or in SI
// where the limit is zero.
type judged struct {
	there        bool
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
// and v must not be changed meanwhile, nor while the Survey is asked. progress
// may be nil. The error is that of ctx.
func Look(ctx context.Context, s *model.Study, v *model.Variant, progress func(done, total int)) (*Survey, error) {
	y := &Survey{study: s, variant: v, before: evaluated(s, v, model.Outcome{})}
	y.index()
	y.at = y.figuresOf(y.before)
	for _, n := range numbers(s, v) {
		y.probes = append(y.probes, probe{number: n})
	}
	total := 2 * len(y.probes)
	err := each(ctx, Span{0, total}, y.stepping, func(i int, found side) error {
		if p := &y.probes[i/2]; i%2 == 0 {
			p.more = found
		} else {
			p.less = found
		}
		tell(progress, i+1, total)
		return nil
	})
	if err != nil {
		return nil, err
	}
	return y, nil
}

func tell(progress func(done, total int), done, total int) {
	if progress != nil {
		progress(done, total)
	}
}

func (y *Survey) index() {
	y.readingAt, y.checkAt = map[string]int{}, map[string]int{}
	for i, r := range y.before.Readings {
		y.readingAt[r.Key] = i
	}
	for i, c := range y.before.Checks {
		y.checkAt[c.Key] = i
	}
}

// stepping is one processor's own machine, on which the i-th step is taken and
// taken back: up when i is even.
func (y *Survey) stepping() func(i int) side {
	m := newMachine(y.study, y.variant)
	params := make([]param.Param, len(y.probes))
	own, shared := m.variant.Sections(), m.study.Sections()
	for i, p := range y.probes {
		from := own
		if p.Shared {
			from = shared
		}
		params[i], _ = param.Find(from, p.Path)
	}
	return func(i int) side {
		n, p := y.probes[i/2].number, params[i/2]
		o, err := m.stepped(p, func() error { return p.SetNumber(n.unit.SI(n.now + float64(1-2*(i%2))*n.size)) })
		if err != nil {
			return side{why: "the range ends"}
		}
		return side{figures: y.figuresOf(o)}
	}
}

// evaluated shields the worker from a fault of the model: such a machine has no
// figures. It writes over the lists of an outcome that is no longer needed.
func evaluated(s *model.Study, v *model.Variant, spent model.Outcome) (o model.Outcome) {
	defer func() {
		if recover() != nil {
			o = model.Outcome{Variant: v.Name}
		}
	}()
	return model.Reevaluate(s, v, spent)
}

func (y *Survey) figuresOf(o model.Outcome) figures {
	f := figures{make([]param.Slot, len(y.before.Readings)), make([]judged, len(y.before.Checks))}
	for i, r := range o.Readings {
		same := i < len(f.readings) && y.before.Readings[i].Key == r.Key
		if at, ok := place(i, same, r.Key, y.readingAt); ok && r.Known() {
			f.readings[at] = param.Known(r.Value)
		}
	}
	for i, c := range o.Checks {
		same := i < len(f.checks) && y.before.Checks[i].Key == c.Key
		if at, ok := place(i, same, c.Key, y.checkAt); ok {
			f.checks[at] = judgedOf(c)
		}
	}
	return f
}

// place is where a key stands in the base: most often where it stands now.
func place(i int, same bool, key string, of map[string]int) (at int, ok bool) {
	if same {
		return i, true
	}
	at, ok = of[key]
	return at, ok
}

// reading is the figure of a reading, unknown when there is none.
func (y *Survey) reading(f figures, key string) param.Slot {
	if i, ok := y.readingAt[key]; ok && i < len(f.readings) {
		return f.readings[i]
	}
	return param.Slot{}
}

// check is what was found of a check; it is not there when nothing was.
func (y *Survey) check(f figures, key string) judged {
	if i, ok := y.checkAt[key]; ok && i < len(f.checks) {
		return f.checks[i]
	}
	return judged{}
}

func judgedOf(c reading.Check) judged {
	j := judged{there: true, value: c.Value, limit: c.Limit, verdict: c.Verdict}
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

package explore

import (
	"cmp"
	"math"
	"slices"

	"backspan/model/reading"
)

// Moved is a reading that a step of a number moves.
type Moved struct {
	Reading    reading.Reading // as it is now
	More, Less Effect          // of a step up, and of one down, in SI
	weight     float64
}

// Turned is a check whose verdict a step of a number turns.
type Turned struct {
	Check      reading.Check // as it is now
	More, Less reading.Verdict
}

// Hang is what hangs on a number.
type Hang struct {
	Step   string  // in words: "1 %", "1 mm"
	First  []Moved // the readings asked for, moved or not
	Moved  []Moved // the others that move
	Turned []Turned
}

// Hangs finds what a small step of a number moves: the readings, those first that
// move by the largest share of themselves, and the checks whose verdict turns.
// first are the keys of readings told in any case, and apart. ok is false of what was not stepped: a word, a table, an empty slot, or what
// does not apply to the machine.
func (y *Survey) Hangs(path string, shared bool, first []string) (h Hang, ok bool) {
	i := slices.IndexFunc(y.probes, func(p probe) bool { return p.Path == path && p.Shared == shared })
	if i < 0 {
		return Hang{}, false
	}
	p := y.probes[i]
	h.Step = p.step
	for _, key := range first {
		if r, known := y.before.Reading(key); known {
			h.First = append(h.First, y.moved(p, r))
		}
	}
	for _, r := range y.before.Readings {
		if m := y.moved(p, r); slices.Contains(first, r.Key) {
			continue
		} else if m.weight > least || m.More.Why == none || m.Less.Why == none {
			h.Moved = append(h.Moved, m)
		}
	}
	slices.SortStableFunc(h.Moved, func(a, b Moved) int { return cmp.Compare(b.weight, a.weight) })
	for _, c := range y.before.Checks {
		t := Turned{Check: c, More: y.verdict(p.more, c), Less: y.verdict(p.less, c)}
		if t.More != c.Verdict || t.Less != c.Verdict {
			h.Turned = append(h.Turned, t)
		}
	}
	return h, true
}

// moved is what the steps of a number do to a reading. One that has no figure
// now is told of only where a step gives it none either: not at all.
func (y *Survey) moved(p probe, r reading.Reading) Moved {
	m := Moved{Reading: r}
	if !r.Known() {
		return m
	}
	of := Subject{Key: r.Key}
	m.More, m.Less = y.effect(p.more, of, r.Value), y.effect(p.less, of, r.Value)
	most := math.Max(math.Abs(m.More.Change.Value), math.Abs(m.Less.Change.Value))
	if r.Value != 0 {
		m.weight = most / math.Abs(r.Value)
	} else if most > 0 {
		m.weight = 2 * least // of nothing there is no share: it is told last
	}
	return m
}

// verdict is a check's after a step; as it is now where the step was not taken.
func (y *Survey) verdict(s side, c reading.Check) reading.Verdict {
	if found := y.check(s.figures, c.Key); s.why == "" && found.there {
		return found.verdict
	}
	return c.Verdict
}

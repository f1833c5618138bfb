package explore

import (
	"fmt"
	"strings"

	"backspan/model/reading"
)

// Wishes is a search as a person puts it, in words.
type Wishes struct {
	Free            []string // "KEY", "KEY=55 mm..80 mm", "KEY=55..80/26", "KEY=a, b"
	Goals           []string // "KEY", "KEY=less", "KEY=more"
	AtLeast, AtMost []string // "KEY=600 N"
}

// The bounds of a search's effort.
const (
	mostPopulation, mostGenerations, mostRuns = 2000, 100_000, 1000
	mostFree                                  = 40
)

// NewSearch reads the wishes.
func NewSearch(b Base, w Wishes, e Effort) (Search, error) {
	s := Search{Base: b, Effort: e}
	if err := e.sound(); err != nil {
		return s, err
	}
	if len(w.Free) == 0 || len(w.Free) > mostFree {
		return s, fmt.Errorf("give 1 to %d parameters that are free, not %d", mostFree, len(w.Free))
	}
	for _, text := range w.Free {
		f, err := b.Free(text)
		if err != nil {
			return s, err
		}
		for _, other := range s.Free {
			if other.Path == f.Path {
				return s, fmt.Errorf("%s is given twice", f.Label)
			}
		}
		s.Free = append(s.Free, f)
	}
	if err := s.readGoals(w.Goals); err != nil {
		return s, err
	}
	if err := s.readLimits(w.AtLeast, reading.Least); err != nil {
		return s, err
	}
	return s, s.readLimits(w.AtMost, reading.Most)
}

func (e Effort) sound() error {
	for _, f := range []struct {
		name        string
		n, lo, most int
	}{
		{"designs in the population", e.Population, 4, mostPopulation}, {"generations", e.Generations, 1, mostGenerations}, {"runs", e.Runs, 1, mostRuns},
	} {
		if f.n < f.lo || f.n > f.most {
			return fmt.Errorf("give %d to %d %s, not %d", f.lo, f.most, f.name, f.n)
		}
	}
	return nil
}

// Free reads a parameter and where it may be. Counts, words, lists and ranges
// with "/n" become levels.
func (b Base) Free(text string) (Free, error) {
	a, err := b.Axis(text)
	if err != nil {
		return Free{}, err
	}
	_, spelt, _ := strings.Cut(text, "=")
	ranged := strings.TrimSpace(spelt) == "" || strings.Contains(spelt, "..")
	if a.Stepped() || !ranged {
		return Free{Dial: a.Dial, Levels: a.Levels}, nil
	}
	if _, _, n, _, _ := a.readRange(strings.TrimSpace(spelt)); n > 0 {
		return Free{Dial: a.Dial, Levels: a.Levels}, nil
	}
	_, lo, hi, err := b.Range(text)
	return Free{Dial: a.Dial, Low: lo, High: hi}, err
}

func (s *Search) readGoals(goals []string) error {
	if len(goals) == 0 {
		return fmt.Errorf("give at least one goal, for example stack.depth=less")
	}
	for _, text := range goals {
		g, err := s.Base.Goal(text)
		if err != nil {
			return err
		}
		for _, other := range s.Goals {
			if other.Key == g.Key {
				return fmt.Errorf("the goal %s is given twice", g.Label)
			}
		}
		s.Goals, s.readings = append(s.Goals, g), append(s.readings, g.Reading)
	}
	return nil
}

// Goal reads "KEY", "KEY=less" or "KEY=more".
func (b Base) Goal(text string) (Goal, error) {
	key, way, _ := strings.Cut(text, "=")
	r, err := b.Reading(strings.TrimSpace(key))
	if err != nil {
		return Goal{}, err
	}
	g := Goal{Reading: r}
	switch way = strings.TrimSpace(way); {
	case way == "more" || way == "" && r.Better == reading.Higher:
		g.More = true
	case way == "less" || way == "" && r.Better == reading.Lower:
	case way == "":
		return g, fmt.Errorf("%s is not better either way; write %s=less or %s=more", r.Label, r.Key, r.Key)
	default:
		return g, fmt.Errorf("%s: %q is neither less nor more", r.Label, way)
	}
	return g, nil
}

func (s *Search) readLimits(limits []string, side reading.Side) error {
	for _, text := range limits {
		l, err := s.Base.Limit(text, side)
		if err != nil {
			return err
		}
		s.Limits, s.readings = append(s.Limits, l), append(s.readings, l.Reading)
	}
	return nil
}

// Limit reads "KEY=600 N" as a limit on that side.
func (b Base) Limit(text string, side reading.Side) (Limit, error) {
	key, value, _ := strings.Cut(text, "=")
	r, err := b.Reading(strings.TrimSpace(key))
	if err != nil {
		return Limit{}, err
	}
	x, err := parse(value, r.Unit)
	if err != nil {
		return Limit{}, fmt.Errorf("%s %s: %w", r.Label, side, err)
	}
	return Limit{r, side, x}, nil
}

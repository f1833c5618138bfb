package desk

import (
	"errors"
	"slices"

	"backspan/model"
)

// Decide enters a decision at the end of the study's log. The error is a
// sentence; the log then stays as it was.
func (d *Desk) Decide(e model.Decision) error {
	return d.log(func(s *model.Study) (string, error) {
		s.Decisions = append(s.Decisions, e)
		return "decide: " + brief(e.Text), e.Check()
	})
}

// Reword puts another date or text in place of decision i.
func (d *Desk) Reword(i int, e model.Decision) error {
	return d.log(func(s *model.Study) (string, error) {
		if i < 0 || i >= len(s.Decisions) || s.Decisions[i] == e {
			return "", nil
		}
		s.Decisions[i] = e
		return "reword decision: " + brief(e.Text), e.Check()
	})
}

// Strike takes decision i out of the log.
func (d *Desk) Strike(i int) error {
	return d.log(func(s *model.Study) (string, error) {
		if i < 0 || i >= len(s.Decisions) {
			return "", errors.New("there is no decision to strike out")
		}
		text := s.Decisions[i].Text
		s.Decisions = slices.Delete(s.Decisions, i, i+1)
		return "strike out decision: " + brief(text), nil
	})
}

func (d *Desk) log(change func(*model.Study) (string, error)) error {
	return d.do(Place{Variant: Shared}, change)
}

package desk

import (
	"fmt"
	"slices"

	"backspan/model"
	"backspan/model/param"
)

// Try adds a copy of variant i behind it with one parameter set, under that
// name or the next free one, and takes it in hand: one edit.
func (d *Desk) Try(i int, name, path, text string) error {
	if err := d.has(i); err != nil {
		return err
	}
	err := d.do(Place{Variant: i}, func(s *model.Study) (string, error) {
		v := s.Variants[i].Clone()
		p, ok := param.Find(v.Sections(), path)
		if !ok {
			return "", fmt.Errorf("there is nothing to set here any more")
		}
		if err := p.Set(text); err != nil {
			return "", err
		}
		v.Name = s.FreeName(name)
		s.Variants = slices.Insert(s.Variants, i+1, v)
		return "try as " + v.Name, nil
	})
	if err == nil {
		d.land(i + 1)
	}
	return err
}

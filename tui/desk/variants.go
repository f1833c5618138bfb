package desk

import (
	"fmt"
	"slices"

	"backspan/model"
)

// Duplicate adds a copy of variant i behind it, under a free name, and takes
// it in hand.
func (d *Desk) Duplicate(i int) error {
	return d.insert(i+1, func(s *model.Study) model.Variant {
		v := s.Variants[i].Clone()
		v.Name = s.FreeName(v.Name)
		return v
	}, "duplicate as", "")
}

// Add adds a variant with every parameter at its default behind the one in
// hand, and takes it in hand.
func (d *Desk) Add() error {
	at := min(d.Selected+1, len(d.study.Variants))
	return d.insert(at, func(s *model.Study) model.Variant { return model.NewVariant(s.FreeName("New variant")) }, "add", "")
}

// Adopt adds a variant that was found behind variant i, under its name or the
// next free one, and takes it in hand: one edit.
func (d *Desk) Adopt(i int, found model.Variant) error {
	return d.insert(i+1, func(s *model.Study) model.Variant {
		v := found.Clone()
		v.Name = s.FreeName(v.Name)
		return v
	}, "take as", "")
}

// insert names the edit by a verb, the variant's name and what follows it.
func (d *Desk) insert(at int, make func(*model.Study) model.Variant, verb, rest string) error {
	if err := d.has(at - 1); err != nil && at > 0 {
		return err
	}
	err := d.do(Place{Variant: max(at-1, 0)}, func(s *model.Study) (string, error) {
		v := make(s)
		s.Variants = slices.Insert(s.Variants, at, v)
		if len(s.Variants) == 1 {
			s.Reference = v.Name
		}
		return verb + " " + v.Name + rest, nil
	})
	if err == nil {
		d.land(at)
	}
	return err
}

// Rename gives variant i another name; the reference follows.
func (d *Desk) Rename(i int, name string) error {
	if err := d.has(i); err != nil {
		return err
	}
	return d.do(Place{i, "name"}, func(s *model.Study) (string, error) {
		old := s.Variants[i].Name
		if err := s.Rename(i, name); err != nil {
			return "", err
		}
		if s.Variants[i].Name == old {
			return "", nil
		}
		return "rename " + old + " → " + s.Variants[i].Name, nil
	})
}

// Delete removes variant i. When it was the reference, the first one left
// takes its place.
func (d *Desk) Delete(i int) error {
	if err := d.has(i); err != nil {
		return err
	}
	return d.do(Place{Variant: i}, func(s *model.Study) (string, error) {
		name, was := s.Variants[i].Name, s.ReferenceIndex() == i
		s.Variants = slices.Delete(s.Variants, i, i+1)
		if was {
			s.Reference = ""
			if len(s.Variants) > 0 {
				s.Reference = s.Variants[0].Name
			}
		}
		return "delete " + name, nil
	})
}

// Move shifts variant i by one place, up (−1) or down (+1), and stays with it.
// At the ends nothing happens.
func (d *Desk) Move(i, by int) error {
	j := i + by
	if d.has(i) != nil || d.has(j) != nil {
		return nil
	}
	err := d.do(Place{Variant: i}, func(s *model.Study) (string, error) {
		s.Reference = s.Variants[s.ReferenceIndex()].Name
		s.Variants[i], s.Variants[j] = s.Variants[j], s.Variants[i]
		if by < 0 {
			return "move up " + s.Variants[j].Name, nil
		}
		return "move down " + s.Variants[j].Name, nil
	})
	if err == nil {
		d.land(j)
	}
	return err
}

// MakeReference makes variant i the one that the others are compared with.
func (d *Desk) MakeReference(i int) error {
	if err := d.has(i); err != nil {
		return err
	}
	return d.do(Place{Variant: i}, func(s *model.Study) (string, error) {
		old, name := s.Variants[s.ReferenceIndex()].Name, s.Variants[i].Name
		if s.Reference == name {
			return "", nil
		}
		s.Reference = name
		if old == name {
			return "reference " + name, nil
		}
		return "reference " + old + " → " + name, nil
	})
}

func (d *Desk) has(i int) error {
	if i < 0 || i >= len(d.study.Variants) {
		return fmt.Errorf("there is no such variant; choose one of the %d in the list", len(d.study.Variants))
	}
	return nil
}

package model

import (
	"backspan/model/param"
	"backspan/model/unit"
)

// Difference is a parameter that is set differently on two sides.
type Difference struct {
	Section, Path, Label string
	Unit                 unit.Unit
	From, To             string
	Idle                 bool // on one side at least it does not apply, as things are chosen
}

// Differences lists what two sets of sections of one kind set differently,
// what does not apply to the present choices included.
func Differences(from, to []param.Section) []Difference {
	type side struct {
		param.Param
		applies bool
	}
	there := map[string]side{}
	for _, s := range to {
		for _, p := range s.Params {
			there[s.Path(p)] = side{p, !s.Hidden && !p.Hidden}
		}
	}
	var ds []Difference
	for _, s := range from {
		for _, p := range s.Params {
			path := s.Path(p)
			q, ok := there[path]
			if !ok || p.Same(q.Param) {
				continue
			}
			ds = append(ds, Difference{Section: s.Label, Path: path, Label: p.Label, Unit: p.Unit, From: shown(p), To: shown(q.Param),
				Idle: s.Hidden || p.Hidden || !q.applies})
		}
	}
	return ds
}

package model

import (
	"slices"

	"backspan/model/carry"
	"backspan/model/param"
	"backspan/model/reading"
	"backspan/model/unit"
)

// Comparison lays the variants side by side. Every row has one cell a
// variant, in the study's order.
type Comparison struct {
	Study      string
	Currency   string
	Reference  int // index of the variant the others are compared with
	Outcomes   []Outcome
	Parameters []ParameterRow // those that differ first
	Readings   []ReadingRow
	Checks     []CheckRow
	Feel       []Feel      // a variant against the reference
	Splits     []PieceFeel // the same piece by piece
	Decisions  []Decision  // the study's log
}

// ParameterRow is one parameter across the variants.
type ParameterRow struct {
	Section string
	Path    string
	Label   string
	Unit    unit.Unit
	Cells   []string // "" where the parameter does not apply
	Differs bool
}

// ReadingRow is one reading across the variants.
type ReadingRow struct {
	Key   string
	Label string
	Cells []reading.Reading // a reading without Key where a variant has none
}

// CheckRow is one check across the variants.
type CheckRow struct {
	Key   string
	Label string
	Cells []reading.Check // a check without Key where a variant has none
}

// Feel splits the difference in upright hip moment from the reference into
// what more mass does and what more depth does; the two sum exactly. It is not
// Known when one of the two machines could not be built.
type Feel struct {
	Known     bool
	FromMass  float64 // N·m
	FromDepth float64 // N·m
}

// Compare lays out outcomes that Evaluate found for the study's variants, in
// the study's order.
func Compare(s *Study, outcomes []Outcome) Comparison {
	c := Comparison{Study: s.Name, Currency: s.Currency, Reference: s.ReferenceIndex(), Outcomes: outcomes,
		Parameters: parameterRows(s), Decisions: s.Decisions}
	var readings ledger[ReadingRow]
	var checks ledger[CheckRow]
	for i, o := range outcomes {
		for _, r := range o.Readings {
			readings.row(r.Key, func() *ReadingRow {
				return &ReadingRow{Key: r.Key, Label: r.Label, Cells: make([]reading.Reading, len(outcomes))}
			}).Cells[i] = r
		}
		for _, k := range o.Checks {
			checks.row(k.Key, func() *CheckRow {
				return &CheckRow{Key: k.Key, Label: k.Label, Cells: make([]reading.Check, len(outcomes))}
			}).Cells[i] = k
		}
	}
	c.Readings, c.Checks = readings.rows(), checks.rows()
	for i := range outcomes {
		c.Feel = append(c.Feel, feel(s, outcomes[c.Reference].Load, outcomes[i].Load))
		c.Splits = append(c.Splits, SplitFeel(s, &outcomes[c.Reference], &outcomes[i]))
	}
	return c
}

func feel(s *Study, reference, load carry.Load) Feel {
	if reference.Mass <= 0 || load.Mass <= 0 {
		return Feel{}
	}
	mass, depth := s.Pilot.Measured().Split(reference, load)
	return Feel{Known: true, FromMass: mass, FromDepth: depth}
}

func parameterRows(s *Study) []ParameterRow {
	var rows ledger[ParameterRow]
	wanted := map[string]bool{}
	for i := range s.Variants {
		for _, sec := range s.Variants[i].Sections() {
			if sec.Key == "" || sec.Hidden {
				continue
			}
			for _, p := range sec.Params {
				if p.Hidden {
					continue
				}
				path := sec.Path(p)
				wanted[path] = wanted[path] || p.Shown()
				rows.row(path, func() *ParameterRow {
					return &ParameterRow{Section: sec.Label, Path: path, Label: p.Label, Unit: p.Unit, Cells: make([]string, len(s.Variants))}
				}).Cells[i] = shown(p)
			}
		}
	}
	all := differingFirst(rows.rows())
	return slices.DeleteFunc(all, func(r ParameterRow) bool { return !r.Differs && !wanted[r.Path] })
}

// shown is a parameter's value in full: rows of a table must be compared, not
// counted.
func shown(p param.Param) string {
	if p.Kind == param.KindTable {
		return p.Editable()
	}
	return p.Show()
}

func differingFirst(rows []ParameterRow) []ParameterRow {
	var differing, same []ParameterRow
	for _, r := range rows {
		r.Differs = differ(r.Cells)
		if r.Differs {
			differing = append(differing, r)
		} else {
			same = append(same, r)
		}
	}
	return append(differing, same...)
}

// differ compares the variants in which the parameter applies: a belt's ribs
// do not differ because a gear has none.
func differ(cells []string) bool {
	first := ""
	for _, cell := range cells {
		switch {
		case cell == "" || cell == first:
		case first == "":
			first = cell
		default:
			return true
		}
	}
	return false
}

package main

import (
	"flag"
	"fmt"
	"strings"

	"backspan/model"
	"backspan/store/report"
)

// split prints where a difference in feel comes from: mass or depth, piece by
// piece.
func (p program) split(args []string) int {
	fs := flag.NewFlagSet("split", flag.ContinueOnError)
	var pair words
	fs.Var(&pair, "variant", "given twice: from the first variant to the second")
	from := fs.String("from", "", "variant to start from; the reference when left out")
	to := fs.String("to", "", "variant to arrive at; every other one when left out")
	s, f, status, done := p.opened(fs, args)
	if done {
		return status
	}
	if len(pair) > 0 {
		if len(pair) != 2 || *from != "" || *to != "" {
			return p.cannot(fmt.Errorf("split: give --variant twice, or --from and --to"))
		}
		*from, *to = pair[0], pair[1]
	}
	splits, err := splits(s, *from, *to)
	if err == nil {
		err = report.Splits(p.out, s.Name, splits, f)
	}
	if err != nil {
		return p.cannot(err)
	}
	return statusFine
}

// splits divides the differences from one variant, or the reference, to
// another, or all others.
func splits(s *model.Study, from, to string) ([]report.Split, error) {
	start := s.ReferenceIndex()
	if from != "" {
		start = s.Index(from)
	}
	if start < 0 {
		return nil, noVariant(s, from)
	}
	if to != "" && s.Index(to) < 0 {
		return nil, noVariant(s, to)
	}
	a := model.Evaluate(s, &s.Variants[start])
	var found []report.Split
	for i := range s.Variants {
		if to == "" && i == start || to != "" && s.Variants[i].Name != to {
			continue
		}
		b := model.Evaluate(s, &s.Variants[i])
		found = append(found, report.Split{From: a.Variant, To: b.Variant, Feel: model.SplitFeel(s, &a, &b)})
	}
	if len(found) == 0 {
		return nil, fmt.Errorf("split: the study has one variant only; add another to compare it with")
	}
	return found, nil
}

func noVariant(s *model.Study, name string) error {
	var all []string
	for _, v := range s.Variants {
		all = append(all, v.Name)
	}
	return fmt.Errorf("there is no variant \"%s\"; name one of: %s", report.Printable(name), report.Printable(strings.Join(all, ", ")))
}

package main

import (
	"flag"
	"fmt"

	"backspan/model"
	"backspan/store"
	"backspan/store/report"
)

func (p program) diff(args []string) int {
	fs := flag.NewFlagSet("diff", flag.ContinueOnError)
	var variants words
	fs.Var(&variants, "variant", "give it twice: the variants of one study to compare")
	format := formatFlag(fs)
	rest, status, done := p.parse(fs, args, 2)
	if done {
		return status
	}
	f, err := report.ParseFormat(*format)
	if err != nil {
		return p.cannot(err)
	}
	cs, err := p.contrasts(rest, variants)
	if err == nil {
		err = report.Contrasts(p.out, cs, f)
	}
	if err != nil {
		return p.cannot(err)
	}
	for _, c := range cs {
		if !c.Nothing() {
			return statusFails
		}
	}
	return statusFine
}

func (p program) contrasts(files []string, variants []string) ([]report.Contrast, error) {
	switch {
	case len(variants) == 2 && len(files) < 2:
		s, _, err := findIn(store.NewFolder(p.dir), first(files))
		if err == nil {
			s, err = only(s, variants, false)
		}
		if err != nil {
			return nil, err
		}
		from, to := &s.Variants[0], &s.Variants[len(s.Variants)-1]
		return []report.Contrast{{Contrast: model.ContrastOf(from, to), From: from.Name, To: to.Name, Currencies: [2]string{s.Currency, s.Currency}}}, nil
	case len(variants) == 0 && len(files) == 2:
		folder := store.NewFolder(p.dir)
		a, _, err := findIn(folder, files[0])
		if err != nil {
			return nil, err
		}
		b, _, err := findIn(folder, files[1])
		if err != nil {
			return nil, err
		}
		return ofStudies(a, b, files), nil
	}
	return nil, fmt.Errorf("diff: give two files, or --variant twice")
}

func ofStudies(a, b *model.Study, files []string) []report.Contrast {
	var cs []report.Contrast
	for _, c := range model.Contrasts(a, b) {
		cs = append(cs, report.Contrast{Contrast: c, From: files[0], To: files[1], Currencies: [2]string{a.Currency, b.Currency}})
	}
	return cs
}

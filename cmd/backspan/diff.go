package main

import (
	"flag"
	"fmt"
	"slices"

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
		if len(c.Differences) > 0 || c.Note != "" {
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
		c := ofVariants("Variant "+variants[0]+" against "+variants[1], &s.Variants[0], &s.Variants[len(s.Variants)-1])
		c.Currency = s.Currency
		return []report.Contrast{c}, nil
	case len(variants) == 0 && len(files) == 2:
		folder := store.NewFolder(p.dir)
		a, err := folder.Open(files[0])
		if err != nil {
			return nil, err
		}
		b, err := folder.Open(files[1])
		if err != nil {
			return nil, err
		}
		return ofStudies(a, b, files), nil
	}
	return nil, fmt.Errorf("diff: give two files, or --variant twice")
}

func ofVariants(title string, a, b *model.Variant) report.Contrast {
	ds := slices.DeleteFunc(model.Differences(a.Sections(), b.Sections()), func(d model.Difference) bool { return d.Path == "name" })
	return report.Contrast{Title: title, From: a.Name, To: b.Name, Differences: ds}
}

// ofStudies compares what the studies share and the variants of one name.
func ofStudies(a, b *model.Study, files []string) []report.Contrast {
	cs := []report.Contrast{{Title: "Study", Differences: model.Differences(a.Sections(), b.Sections())}}
	for i := range a.Variants {
		v, title := &a.Variants[i], "Variant "+a.Variants[i].Name
		if j := b.Index(v.Name); j >= 0 {
			cs = append(cs, ofVariants(title, v, &b.Variants[j]))
		} else {
			cs = append(cs, report.Contrast{Title: title, Note: "only in " + files[0]})
		}
	}
	for i := range b.Variants {
		if name := b.Variants[i].Name; a.Index(name) < 0 {
			cs = append(cs, report.Contrast{Title: "Variant " + name, Note: "only in " + files[1]})
		}
	}
	for i := range cs {
		cs[i].From, cs[i].To, cs[i].Currency = files[0], files[1], a.Currency
	}
	return cs
}

package main

import (
	"flag"
	"fmt"

	"backspan/model"
	"backspan/model/param"
	"backspan/model/unit"
	"backspan/store/report"
)

const teethListed = 15

// teeth looks for pairs of gears for a variant.
func (p program) teeth(args []string) int {
	fs := flag.NewFlagSet("teeth", flag.ContinueOnError)
	variant := fs.String("variant", "", "the variant whose gear is changed; without it the reference or the first with a gear")
	ratio := fs.String("ratio", "", "wanted, as 2.9; without it that of the variant's gear")
	centre := fs.String("centre-distance", "", "wanted, as \"80 mm\" or \"3.1 in\"; without it the variant's, where one is given")
	tolerance := fs.String("tolerance", "2 %", "of the ratio, either way")
	reach := fs.String("centre-tolerance", "0.1 mm", "of the centre distance, where no profile shift meets it")
	var modules words
	fs.Var(&modules, "module", "as \"2 mm\"; may be given several times; without it the variant's, and at a centre distance the standard ones near it")
	s, f, status, done := p.opened(fs, args)
	if done {
		return status
	}
	ask, err := teethAsk(*variant, *ratio, *centre, *tolerance, *reach)
	if err == nil {
		ask.Modules, err = lengths("module", modules)
	}
	if err != nil {
		return p.cannot(err)
	}
	found, err := model.SearchTeeth(s, ask)
	if err == nil {
		err = report.Teeth(p.out, found, f)
	}
	if err != nil {
		return p.cannot(err)
	}
	return statusFine
}

func teethAsk(variant, ratio, centre, tolerance, reach string) (ask model.TeethAsk, err error) {
	ask = model.TeethAsk{Variant: variant, Rows: teethListed}
	if ask.Ratio, err = slot("ratio", ratio, unit.One); err != nil {
		return ask, err
	}
	if ask.CentreDistance, err = slot("centre-distance", centre, unit.Millimetre); err != nil {
		return ask, err
	}
	for _, x := range []struct {
		to         *float64
		name, text string
		unit       unit.Unit
	}{{&ask.Tolerance, "tolerance", tolerance, unit.Percent}, {&ask.CentreTolerance, "centre-tolerance", reach, unit.Millimetre}} {
		if *x.to, err = unit.Parse(x.text, x.unit); err != nil {
			return ask, fmt.Errorf("teeth: --%s: %w", x.name, err)
		}
	}
	return ask, nil
}

// slot reads an option that may be left out.
func slot(name, text string, u unit.Unit) (param.Slot, error) {
	if text == "" {
		return param.Slot{}, nil
	}
	x, err := unit.Parse(text, u)
	if err != nil {
		return param.Slot{}, fmt.Errorf("teeth: --%s: %w", name, err)
	}
	return param.Known(x), nil
}

func lengths(name string, texts []string) (all []float64, err error) {
	for _, text := range texts {
		x, err := unit.Parse(text, unit.Millimetre)
		if err != nil {
			return nil, fmt.Errorf("teeth: --%s: %w", name, err)
		}
		all = append(all, x)
	}
	return all, nil
}

package main

import (
	"flag"
	"fmt"

	"backspan/model/propeller"
	"backspan/store"
)

// polar reads a section's polar from a CSV file into a variant.
func (p program) polar(args []string) int {
	fs := flag.NewFlagSet("polar", flag.ContinueOnError)
	variant := fs.String("variant", "", "the variant whose propeller takes it; without it the reference")
	file := fs.String("csv", "", "file with the columns alpha (degrees), cl, cd and Re")
	s, status, done := p.toChange(fs, args)
	if done {
		return status
	}
	if *file == "" {
		return p.cannot(fmt.Errorf("polar: name the file, for example: backspan polar my.toml --csv section.csv"))
	}
	i, err := pick(s.Study, *variant)
	if err != nil {
		return p.cannot(err)
	}
	rows, err := store.ReadPolar(*file)
	if err != nil {
		return p.cannot(err)
	}
	v := &s.Variants[i]
	v.Propeller.Polar, v.Propeller.Family = rows, propeller.OwnPolar
	if err := p.save(s, fmt.Sprintf("%d rows of %s are the section of %s", len(rows), *file, v.Name)); err != nil {
		return p.cannot(err)
	}
	return statusFine
}

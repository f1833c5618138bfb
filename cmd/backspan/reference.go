package main

import (
	"flag"

	"backspan/model"
	"backspan/model/param"
	"backspan/store/report"
)

func (p program) params(args []string) int {
	fs := flag.NewFlagSet("params", flag.ContinueOnError)
	format := formatFlag(fs)
	if _, status, done := p.parse(fs, args, 0); done {
		return status
	}
	f, err := report.ParseFormat(*format)
	if err == nil {
		err = report.Parameters(p.out, everyParameter(), f)
	}
	if err != nil {
		return p.cannot(err)
	}
	return statusFine
}

const formatName = "format"

func formatFlag(fs *flag.FlagSet) *string {
	return fs.String(formatName, string(report.Table), "table, json, csv or markdown")
}

// everyParameter is every section of a study and of a variant, at its default;
// a variant's stand under "variant", as in the file. What a decision is made of
// stands last.
func everyParameter() []param.Section {
	v := model.NewVariant("")
	sections := model.NewStudy("").Sections()
	for _, s := range v.Sections() {
		s.Key = "variant." + s.Key
		if s.Key == "variant." {
			s.Key = "variant"
		}
		sections = append(sections, s)
	}
	return append(sections, new(model.Decision).Section())
}

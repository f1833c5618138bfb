package main

import (
	"flag"
	"strings"

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

// formatFlag declares the formats of a command; without any, all.
func formatFlag(fs *flag.FlagSet, formats ...report.Format) *string {
	if len(formats) == 0 {
		formats = report.Formats[:]
	}
	last := len(formats) - 1
	var words []string
	for _, f := range formats[:last] {
		words = append(words, string(f))
	}
	return fs.String("format", string(report.Table), strings.Join(words, ", ")+" or "+string(formats[last]))
}

// everyParameter is every section of a study and of a variant, at its default;
// a variant's stand under "variant", as in the file.
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
	return sections
}

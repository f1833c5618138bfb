package main

import (
	"bytes"
	"errors"
	"flag"
	"fmt"

	"backspan/store/report"
)

// review writes a comparison as one document.
func (p program) review(args []string) int {
	fs := flag.NewFlagSet("report", flag.ContinueOnError)
	var variants words
	fs.Var(&variants, "variant", "only this variant beside the reference; may be given several times")
	d := documentFlags(fs, "html or markdown; without it html")
	s, status, done := p.toChange(fs, args)
	if done {
		return status
	}
	f, err := report.ParsePaper(*d.format, report.HTML, report.Markdown)
	if err == nil && *d.out == "" {
		err = errors.New("name the file to write, for example: --out review.html")
	}
	if err != nil {
		return p.cannot(fmt.Errorf("report: %w", err))
	}
	kept, err := only(s.Study, variants, true)
	if err != nil {
		return p.cannot(err)
	}
	var b bytes.Buffer
	if err := report.Review(&b, report.NewReviewed(kept), f); err != nil {
		return p.cannot(err)
	}
	return p.deliver(d, b.Bytes())
}

package main

import (
	"bytes"
	"flag"
	"fmt"
	"os"
	"path/filepath"
	"time"

	"backspan/model"
	"backspan/store"
	"backspan/store/report"
)

// document is what a command that writes a page may be told.
type document struct {
	format, out *string
	force       *bool
}

func documentFlags(fs *flag.FlagSet, formats string) document {
	return document{
		format: fs.String("format", "", formats),
		out:    fs.String("out", "", "the file to write"),
		force:  fs.Bool("force", false, "write over a file that is there already"),
	}
}

// deliver writes a finished document to its file, or prints it where none was
// named.
func (p program) deliver(d document, data []byte) int {
	if *d.out == "" {
		if _, err := p.out.Write(data); err != nil {
			return p.cannot(err)
		}
		return statusFine
	}
	if err := store.WriteDocument(p.inDir(*d.out), data, *d.force); err != nil {
		return p.cannot(err)
	}
	fmt.Fprintf(p.err, "wrote %s\n", report.Printable(*d.out))
	return statusFine
}

// sheet writes what the workshop needs to build one variant.
func (p program) sheet(args []string) int {
	fs := flag.NewFlagSet("sheet", flag.ContinueOnError)
	variant := fs.String("variant", "", "the machine to be built; without it the reference")
	d := documentFlags(fs, "table, markdown or html; without it table")
	s, status, done := p.toChange(fs, args)
	if done {
		return status
	}
	f, err := report.ParsePaper(*d.format, report.Table, report.Markdown, report.HTML)
	if err != nil {
		return p.cannot(fmt.Errorf("sheet: %w", err))
	}
	i, err := pick(s.Study, *variant)
	if err != nil {
		return p.cannot(err)
	}
	o := model.Evaluate(s.Study, &s.Variants[i])
	var b bytes.Buffer
	if err := report.BuildSheet(&b, s.Study, &s.Variants[i], &o, printing(s.path), f); err != nil {
		return p.cannot(err)
	}
	return p.deliver(d, b.Bytes())
}

// printing is today, and the state of the study's file.
func printing(path string) report.Printing {
	of := "the built-in sample"
	if path != "" {
		of = filepath.Base(path)
		if info, err := os.Stat(path); err == nil {
			of += ", saved " + info.ModTime().Format("2006-01-02 15:04")
		}
	}
	return report.Printing{Date: time.Now().Format(time.DateOnly), Of: of + "; backspan " + buildName()}
}

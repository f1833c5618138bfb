package main

import (
	"errors"
	"flag"
	"fmt"
	"path/filepath"
	"slices"
	"strings"

	"backspan/model"
	"backspan/store"
	"backspan/store/report"
)

// findIn reads the study at path; without a path, the only study in the
// folder; without one there, the sample. The path is empty for the sample.
func findIn(folder *store.Folder, path string) (*model.Study, string, error) {
	if path == "" {
		entries, err := folder.List()
		if err != nil {
			return nil, "", err
		}
		switch len(entries) {
		case 0:
			return model.Sample(), "", nil
		case 1:
			path = entries[0].Path
		default:
			return nil, "", fmt.Errorf("there are %d studies here; name one of: %s", len(entries), files(entries))
		}
	}
	s, err := folder.Open(path)
	var newer *store.Newer
	if errors.As(err, &newer) {
		err = tooNew(path, newer.Format)
	}
	return s, path, err
}

// tooNew refuses to change a file of a format that this version does not know.
func tooNew(path string, format int64) error {
	return fmt.Errorf("%s is in format %d; use a newer Backspan, or look at what this one can read of it: backspan open %s",
		report.Printable(path), format, report.Printable(path))
}

func files(entries []store.Entry) string {
	var names []string
	for _, e := range entries {
		names = append(names, report.Printable(e.File))
	}
	return strings.Join(names, ", ")
}

func (p program) compare(args []string) int {
	fs := flag.NewFlagSet("compare", flag.ContinueOnError)
	brief := fs.Bool("brief", false, "only what decides, best and worst marked, and the checks that fail or are thin")
	fs.String(formatName, string(report.Table), "table, json, csv or markdown; with --brief table or markdown")
	c, f, status, done := p.evaluated(fs, args)
	if done {
		return status
	}
	write := report.Comparison
	if *brief {
		write = report.Brief
	}
	if err := write(p.out, c, f); err != nil {
		return p.cannot(err)
	}
	return statusFine
}

func (p program) check(args []string) int {
	c, f, status, done := p.evaluated(flag.NewFlagSet("check", flag.ContinueOnError), args)
	if done {
		return status
	}
	if err := report.Checks(p.out, c, f); err != nil {
		return p.cannot(err)
	}
	for _, o := range c.Outcomes {
		if o.Fails() {
			return statusFails
		}
	}
	return statusFine
}

func (p program) tables(args []string) int {
	fs := flag.NewFlagSet("tables", flag.ContinueOnError)
	fs.String(formatName, string(report.Table), "table, csv or markdown")
	c, f, status, done := p.evaluated(fs, args)
	if done {
		return status
	}
	err := fmt.Errorf("tables: these are written as table, csv or markdown; the figures in json are those of check")
	if f != report.JSON {
		err = report.VariantTables(p.out, c, f)
	}
	if err != nil {
		return p.cannot(err)
	}
	return statusFine
}

// evaluated reads the command line of compare, check and tables and computes.
func (p program) evaluated(fs *flag.FlagSet, args []string) (c model.Comparison, f report.Format, status int, done bool) {
	var variants words
	fs.Var(&variants, "variant", "only this variant; may be given several times")
	s, f, status, done := p.opened(fs, args)
	if done {
		return c, f, status, true
	}
	s, err := only(s, variants, fs.Name() == "compare")
	if err != nil {
		return c, f, p.cannot(err), true
	}
	return model.Compare(s, model.EvaluateAll(s)), f, statusFine, false
}

// opened reads the command line of a command that prints figures of a study,
// and the study.
func (p program) opened(fs *flag.FlagSet, args []string) (s *model.Study, f report.Format, status int, done bool) {
	if fs.Lookup(formatName) == nil {
		formatFlag(fs)
	}
	o, status, done := p.toChange(fs, args)
	if done {
		return nil, f, status, true
	}
	f, err := report.ParseFormat(fs.Lookup(formatName).Value.String())
	if err != nil {
		return nil, f, p.cannot(err), true
	}
	return o.Study, f, statusFine, false
}

// only keeps the named variants, in the order named; where differences are
// asked for, behind the reference that they are reckoned from.
func only(s *model.Study, names []string, differences bool) (*model.Study, error) {
	if len(names) == 0 {
		return s, nil
	}
	kept := s.Clone()
	kept.Variants = nil
	if r := s.ReferenceIndex(); differences && r >= 0 && !slices.Contains(names, s.Variants[r].Name) {
		kept.Variants = append(kept.Variants, s.Variants[r])
	}
	for _, name := range names {
		i := s.Index(name)
		if i < 0 {
			return nil, noVariant(s, name)
		}
		if !slices.ContainsFunc(kept.Variants, func(v model.Variant) bool { return v.Name == name }) {
			kept.Variants = append(kept.Variants, s.Variants[i])
		}
	}
	return kept, nil
}

func (p program) newStudy(args []string) int {
	return p.write("new", args, func(path string) *model.Study {
		name := strings.TrimSuffix(filepath.Base(path), filepath.Ext(path))
		s := model.NewStudy(name)
		s.Variants = []model.Variant{model.NewVariant("First")}
		s.Reference = "First"
		return s
	})
}

func (p program) sample(args []string) int {
	return p.write("sample", args, func(string) *model.Study { return model.Sample() })
}

func (p program) write(name string, args []string, study func(path string) *model.Study) int {
	rest, status, done := p.parse(flag.NewFlagSet(name, flag.ContinueOnError), args, 1)
	if done {
		return status
	}
	if len(rest) == 0 {
		return p.cannot(fmt.Errorf("%s: name the file to write, for example: backspan %s my.toml", name, name))
	}
	path := rest[0]
	if !filepath.IsAbs(path) {
		path = filepath.Join(p.dir, path)
	}
	note, err := store.NewFolder(filepath.Dir(path)).Create(path, study(path))
	if err != nil {
		return p.cannot(err)
	}
	fmt.Fprintf(p.err, "wrote %s\n", report.Printable(rest[0]))
	if note != "" {
		fmt.Fprintln(p.err, note)
	}
	return statusFine
}

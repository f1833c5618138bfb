package main

import (
	"encoding/json"
	"errors"
	"flag"
	"fmt"
	"slices"

	"backspan/store"
	"backspan/store/report"
)

// merge puts the parts of one question together and shows it as if it had been
// worked whole.
func (p program) merge(args []string) int {
	fs := flag.NewFlagSet("merge", flag.ContinueOnError)
	format := formatFlag(fs)
	rest, status, done := p.parse(fs, args, mostParts)
	if done {
		return status
	}
	f, err := report.ParseFormat(*format)
	if err != nil {
		return p.cannot(err)
	}
	files, err := p.parts(rest)
	defer func() {
		for _, pf := range files {
			_ = pf.file.Close()
		}
	}()
	if err != nil {
		return p.cannot(fmt.Errorf("merge: %w", err))
	}
	merger, known := mergers[files[0].head.Name]
	if !known {
		return p.cannot(fmt.Errorf("merge: %s holds a part of %q, which this version does not know", files[0].path, report.Printable(files[0].head.Name)))
	}
	status, err = merger(p, files, f)
	if err != nil {
		return p.cannot(fmt.Errorf("merge: %w", err))
	}
	return status
}

const mostParts = 10_000

// parts opens the files and puts them in order; together they must be whole.
func (p program) parts(paths []string) (files []*partFile, err error) {
	if len(paths) == 0 {
		return nil, errors.New("name the part files, for example: backspan merge sweep-*.part")
	}
	for _, path := range paths {
		pf, err := openPart(p.inDir(path))
		if err != nil {
			return files, err
		}
		files = append(files, pf)
	}
	slices.SortFunc(files, func(a, b *partFile) int { return a.head.Part - b.head.Part })
	want := 1
	for i, pf := range files {
		switch {
		case !pf.head.same(files[0].head):
			return files, fmt.Errorf("%s and %s are not parts of one question", files[0].path, pf.path)
		case i > 0 && pf.head.Part == files[i-1].head.Part:
			return files, fmt.Errorf("part %d is given twice: %s and %s", pf.head.Part, files[i-1].path, pf.path)
		case pf.head.Part != want:
			return files, fmt.Errorf("part %d of %d is missing", want, pf.head.Of)
		}
		want++
	}
	if of := files[0].head.Of; len(files) != of {
		return files, fmt.Errorf("part %d of %d is missing", want, of)
	}
	return files, nil
}

// mergers know the records of each command.
var mergers = map[string]func(p program, files []*partFile, f report.Format) (int, error){
	"sweep":     mergeOf[sweepQuestion],
	"solve":     mergeOf[solveQuestion],
	"search":    mergeOf[searchQuestion],
	"tolerance": mergeOf[toleranceQuestion],
}

func mergeOf[Q question[R], R any](p program, files []*partFile, f report.Format) (int, error) {
	head := files[0].head
	s, err := store.Decode(files[0].path, []byte(head.Study))
	if err != nil {
		return 0, err
	}
	i := s.Index(head.Variant)
	if i < 0 {
		return 0, fmt.Errorf("%s names a variant that its study does not have", files[0].path)
	}
	var q Q
	if err := json.Unmarshal(head.Question, &q); err != nil {
		return 0, fmt.Errorf("%s: its question cannot be read: %w", files[0].path, err)
	}
	a, err := q.put(s, &s.Variants[i])
	if err != nil {
		return 0, fmt.Errorf("%s: %w", files[0].path, err)
	}
	if a.total != head.Total {
		return 0, fmt.Errorf("%s holds %d records of a question that has %d", files[0].path, head.Total, a.total)
	}
	rs := make([]R, 0, a.total)
	for _, pf := range files {
		if err := readRecords(pf, func(r R) { rs = append(rs, r) }); err != nil {
			return 0, err
		}
	}
	return show(p, a, rs, f), nil
}

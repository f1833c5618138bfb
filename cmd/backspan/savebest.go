package main

import (
	"bytes"
	"errors"
	"fmt"
	"path/filepath"
	"strings"

	"backspan/model"
	"backspan/model/explore"
	"backspan/store"
	"backspan/store/report"
)

const mostSaved = 50

// maySave says before the work begins why its answer could not be saved.
func (e *exploration) maySave(n int) error {
	switch {
	case n == 0:
		return nil
	case n < 0 || n > mostSaved:
		return fmt.Errorf("save 1 to %d designs as variants, not %d", mostSaved, n)
	case *e.part != "":
		return errors.New("a part has no answer to save; search whole, or without --save-as-variants")
	case e.path == "":
		return errors.New("there is no study file to save variants in; make one first: backspan sample my.toml")
	}
	return nil
}

// saveBest adds designs of the answer to the study's file, under the hold that
// editing takes, unless somebody changed the file meanwhile.
func (p program) saveBest(e *exploration, q searchQuestion, runs []explore.Run, n int) error {
	path := report.Printable(e.path)
	release, err := p.holdAlone(e.path)
	if err != nil {
		return fmt.Errorf("%s: not saved: %w", path, err)
	}
	defer release()
	folder := store.NewFolder(filepath.Dir(e.path))
	s, err := folder.Open(e.path)
	if err != nil {
		return err
	}
	if !bytes.Equal(store.Encode(s), store.Encode(e.study)) {
		return fmt.Errorf("%s: not saved: the file was changed while the search ran", path)
	}
	names, err := addBest(s, e.at, q, runs, n)
	if err != nil {
		return fmt.Errorf("%s: not saved: %w", path, err)
	}
	note, err := folder.Save(e.path, s)
	if err != nil {
		return err
	}
	fmt.Fprintf(p.err, "saved in %s: %s\n", path, report.Printable(strings.Join(names, ", ")))
	if note != "" {
		fmt.Fprintln(p.err, note)
	}
	return nil
}

func addBest(s *model.Study, v *model.Variant, q searchQuestion, runs []explore.Run, n int) (names []string, err error) {
	search, err := q.ask(s, v)
	if err != nil {
		return nil, err
	}
	best, allowed := search.Best(runs)
	for _, c := range evenly(best, n) {
		found, err := search.Found(c.At, allowed)
		if err != nil {
			return nil, err
		}
		found.Name = s.FreeName(found.Name)
		s.Variants = append(s.Variants, found)
		names = append(names, found.Name)
	}
	return names, nil
}

// evenly is n of the designs, both ends among them.
func evenly(cs []explore.Candidate, n int) []explore.Candidate {
	if n >= len(cs) {
		return cs
	}
	if n == 1 {
		return cs[len(cs)/2 : len(cs)/2+1]
	}
	few := make([]explore.Candidate, n)
	for i := range few {
		few[i] = cs[i*(len(cs)-1)/(n-1)]
	}
	return few
}

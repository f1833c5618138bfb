package keymap

import (
	"strings"
	"testing"
)

func places() []Place {
	m := Default()
	return []Place{m.AtVariants(), m.AtParts(), m.AtForm(), m.AtReadings(), m.AtChecks(), m.AtEditor(), m.AtPicker(),
		m.AtSideBySide(), m.AtStudies(), m.AtKeys(), m.AtQuestion()}
}

func TestNoKeyMeansTwoThingsInOnePlace(t *testing.T) {
	for _, p := range places() {
		meaning := map[string]string{}
		for _, k := range p.All() {
			if k.Help().Desc == "" {
				t.Errorf("%s: the key %v says nothing", p.Name, k.Keys())
			}
			for _, name := range k.Keys() {
				if was, taken := meaning[name]; taken {
					t.Errorf("%s: %s means %q and %q", p.Name, name, was, k.Help().Desc)
				}
				meaning[name] = k.Help().Desc
			}
		}
	}
}

func TestFooterFits(t *testing.T) {
	more := Default().Everywhere.Keys
	for _, p := range places() {
		for w := 60; w < 220; w++ {
			f := p.Footer(w, more)
			if len(f) > w {
				t.Errorf("%s: %d cells in %d: %s", p.Name, len(f), w, f)
			}
			if p.Too != nil && !strings.HasSuffix(f, "? keys") {
				t.Errorf("%s: the footer does not end with where the rest is: %s", p.Name, f)
			}
		}
	}
}

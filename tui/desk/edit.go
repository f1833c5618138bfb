package desk

import (
	"fmt"

	"backspan/model"
	"backspan/model/param"
)

// Sections lists what can be set for a variant, or with Shared for all of
// them, without what does not apply. It is for looking only.
func (d *Desk) Sections(variant int) []param.Section {
	if d.declaredFor != d.study {
		d.declaredFor, d.declared = d.study, map[int][]param.Section{}
	}
	shown, known := d.declared[variant]
	if !known {
		shown = applying(d.study, variant)
		d.declared[variant] = shown
	}
	return shown
}

func applying(study *model.Study, variant int) []param.Section {
	var shown []param.Section
	for _, sec := range sections(study, variant) {
		if !sec.Hidden {
			shown = append(shown, sec)
		}
	}
	return shown
}

func sections(s *model.Study, variant int) []param.Section {
	switch {
	case variant == Shared:
		return s.Sections()
	case variant >= 0 && variant < len(s.Variants):
		return s.Variants[variant].Sections()
	}
	return nil
}

// Set takes what a person typed for a parameter. The error is a sentence; the
// old value then stays.
func (d *Desk) Set(variant int, path, text string) error {
	switch {
	case variant != Shared && path == "name":
		return d.Rename(variant, text)
	case variant == Shared && path == "reference":
		return d.MakeReference(d.study.Index(text))
	}
	return d.alter(variant, path, func(p param.Param) error { return p.Set(text) })
}

// Step moves a parameter by n fine steps.
func (d *Desk) Step(variant int, path string, n int) error {
	if variant == Shared && path == "reference" {
		return d.stepReference(n)
	}
	return d.alter(variant, path, func(p param.Param) error { return p.Step(n) })
}

func (d *Desk) alter(variant int, path string, change func(param.Param) error) error {
	return d.do(Place{variant, path}, func(s *model.Study) (string, error) {
		p, ok := param.Find(sections(s, variant), path)
		if !ok {
			return "", fmt.Errorf("there is nothing to set here any more")
		}
		old, was := p.Editable(), shown(p)
		if err := change(p); err != nil {
			return "", err
		}
		if p.Editable() == old {
			return "", nil
		}
		if now := shown(p); now != was {
			return fmt.Sprintf("%s %s → %s", p.Label, was, now), nil
		}
		return p.Label + " changed", nil // a table of as many rows, a long text with another end
	})
}

// shown is a value for the name of an edit: short, and never nothing.
func shown(p param.Param) string { return brief(p.Show()) }

func brief(s string) string {
	const most = 32
	r := []rune(s)
	switch {
	case len(r) == 0:
		return "empty"
	case len(r) > most:
		return string(r[:most-1]) + "…"
	}
	return s
}

func (d *Desk) stepReference(n int) error {
	count := len(d.study.Variants)
	if count == 0 {
		return fmt.Errorf("there is no variant to refer to yet")
	}
	return d.MakeReference(((d.study.ReferenceIndex()+n)%count + count) % count)
}

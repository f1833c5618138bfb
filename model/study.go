package model

import (
	"fmt"
	"slices"
	"strings"

	"backspan/model/air"
	"backspan/model/carry"
	"backspan/model/cooling"
	"backspan/model/drive"
	"backspan/model/engine"
	"backspan/model/flight"
	"backspan/model/noise"
	"backspan/model/param"
	"backspan/model/propeller"
	"backspan/model/safety"
	"backspan/model/stack"
	"backspan/model/unit"
	"backspan/model/upkeep"
	"backspan/model/vibration"
)

// Study is one file: what all variants share, and the variants.
type Study struct {
	Name        string
	Notes       string
	Reference   string  // name of the variant the others are compared with
	Currency    string  // of every price in the study
	MarginAsked float64 // share of a limit below which a check reads thin
	// How many of the states saved before are kept beside the file.
	VersionsKept int
	Site         air.Spec
	Pilot        carry.Pilot
	Seat         flight.Seat
	Wing         flight.Wing
	Listener     noise.Listener
	Use          upkeep.Use
	Decisions    []Decision // oldest first
	Variants     []Variant
	// What a person wrote beside the values in the file, by file key. It is
	// carried along and never changed.
	Comments map[string]string
}

// CommentAtEnd is the place in Comments of what stands behind the last value of
// the file.
const CommentAtEnd = "#end"

// Variant is one complete machine.
type Variant struct {
	Name      string
	Notes     string
	Engine    engine.Spec
	Cooling   cooling.Spec
	Drive     drive.Spec
	Propeller propeller.Spec
	Frame     stack.Spec
	Tank      stack.Tank
	Noise     noise.Spec
	Upkeep    upkeep.Spec
	Mounts    vibration.Spec
	Safety    safety.Spec

	Comments map[string]string // as those of the study
}

// NewStudy is a study without variants, every shared given at its default.
func NewStudy(name string) *Study {
	return &Study{Name: name, Currency: "EUR", MarginAsked: 0.1, VersionsKept: 5,
		Site: air.Default(), Pilot: carry.DefaultPilot(), Seat: flight.DefaultSeat(), Wing: flight.DefaultWing(), Listener: noise.DefaultListener(),
		Use: upkeep.DefaultUse()}
}

// NewVariant is a machine with every parameter at its default.
func NewVariant(name string) Variant {
	return Variant{Name: name, Engine: engine.Default(), Cooling: cooling.Default(), Drive: drive.Default(),
		Propeller: propeller.Default(), Frame: stack.Default(), Tank: stack.DefaultTank(), Noise: noise.Default(),
		Upkeep: upkeep.Default(), Mounts: vibration.Default(), Safety: safety.Default()}
}

// Clone is a copy that shares nothing with s.
func (s *Study) Clone() *Study {
	c := *s
	c.Decisions = slices.Clone(s.Decisions)
	c.Variants = make([]Variant, len(s.Variants))
	for i := range s.Variants {
		c.Variants[i] = s.Variants[i].Clone()
	}
	return &c
}

// Clone is a copy that shares nothing with v.
func (v *Variant) Clone() Variant {
	c := *v
	c.Engine = v.Engine.Clone()
	c.Drive = v.Drive.Clone()
	c.Propeller = v.Propeller.Clone()
	c.Upkeep = v.Upkeep.Clone()
	c.Mounts = v.Mounts.Clone()
	return c
}

// Sections lists what a user may set for the whole study.
func (s *Study) Sections() []param.Section {
	sections := []param.Section{
		{Key: "", Label: "Study", Params: []param.Param{
			param.Text(&s.Name, "name", "Name"),
			param.Text(&s.Reference, "reference", "Reference variant").Help("the variant that the others are compared with"),
			param.Text(&s.Currency, "currency", "Currency").Help("of every price in this study"),
			param.Number(&s.MarginAsked, "margin_asked", "Margin asked", unit.Percent).Within(0, 100).Typical(5, 20).
				Help("a check that holds by less than this share of its limit reads thin"),
			param.Whole(&s.VersionsKept, "versions_kept", "Versions kept").Within(0, 99).
				Help("how many of the states saved before are kept beside the file, as NAME.toml.1 and so on"),
			param.Text(&s.Notes, "notes", "Notes"),
		}},
		{Key: "site", Label: "Site", Params: s.Site.Params()},
	}
	sections = append(sections, s.Pilot.Sections()...)
	return append(sections,
		param.Section{Key: "seat", Label: "Pilot seated", Params: s.Seat.Params()},
		param.Section{Key: "listener", Label: "Noise heard", Params: s.Listener.Params()},
		param.Section{Key: "wing", Label: "Wing", Params: s.Wing.Params()},
		param.Section{Key: "use", Label: "Use", Help: "how the machine is used, and what fuel and work cost", Params: s.Use.Params()})
}

// Sections lists what a user may set for one variant, in the order in which
// the power flows and then in which the weight hangs.
func (v *Variant) Sections() []param.Section {
	sections := []param.Section{
		{Key: "", Label: "Variant", Params: []param.Param{
			param.Text(&v.Name, "name", "Name"),
			param.Text(&v.Notes, "notes", "Notes"),
		}},
		{Key: "engine", Label: "Engine", Params: v.Engine.Params()},
		{Key: "cooling", Label: "Cooling", Params: v.Cooling.Params()},
		{Key: "cooling.head", Label: "Cylinder and head", Params: v.Cooling.HeadParams(),
			Help: "where they stand in the propeller's inflow, their fins and their heat; one measured head temperature is worth all estimates"},
	}
	sections = append(sections, v.Drive.Sections("drive")...)
	sections = append(sections, param.Section{Key: "propeller", Label: "Propeller", Params: v.Propeller.Params()})
	sections = append(sections, v.Frame.Sections()...)
	return append(sections, param.Section{Key: "tank", Label: "Fuel tank", Params: v.Tank.Params()},
		param.Section{Key: "noise", Label: "Noise", Params: v.Noise.Params()},
		param.Section{Key: "mounts", Label: "Rubber mounts", Params: v.Mounts.Params(),
			Help: "on which engine, drive and propeller swing; their depth and mass are the frame's"},
		param.Section{Key: "upkeep", Label: "Upkeep", Params: v.Upkeep.Params(),
			Help: "parts that are changed on schedule; what the drive needs is set with the drive"},
		param.Section{Key: "safety", Label: "Cautions", Params: v.Safety.Params(),
			Help: "what keeps people from the propeller and from hot parts; cautions, no proof of safety"})
}

// Index finds a variant by name; −1 when there is none.
func (s *Study) Index(name string) int {
	return slices.IndexFunc(s.Variants, func(v Variant) bool { return v.Name == name })
}

// ReferenceIndex is the variant that the others are compared with: the named
// one, or the first when the name fits none. −1 when there are no variants.
func (s *Study) ReferenceIndex() int {
	if i := s.Index(s.Reference); i >= 0 || len(s.Variants) == 0 {
		return i
	}
	return 0
}

// Rename gives variant i another name and keeps the reference pointing at it.
// The name must be one line, not blank and not taken.
func (s *Study) Rename(i int, name string) error {
	name = strings.TrimSpace(name)
	if err := s.nameFits(i, name); err != nil {
		return err
	}
	if s.Reference == s.Variants[i].Name {
		s.Reference = name
	}
	s.Variants[i].Name = name
	return nil
}

func (s *Study) nameFits(i int, name string) error {
	switch j := s.Index(name); {
	case name == "":
		return fmt.Errorf("a variant needs a name; type one")
	case strings.ContainsFunc(name, func(r rune) bool { return r < ' ' || r == 0x7f }):
		return fmt.Errorf("a variant's name is one line of plain text")
	case j >= 0 && j != i:
		return fmt.Errorf("the name %q is taken by another variant; type a different one", name)
	}
	return nil
}

// FreeName is name, or name with the first number that makes it free.
func (s *Study) FreeName(name string) string {
	free := name
	for n := 2; s.Index(free) >= 0; n++ {
		free = fmt.Sprintf("%s %d", name, n)
	}
	return free
}

// Fault is something wrong between parameters that are each in range.
type Fault struct {
	Key     string // "reference", "variant.name"
	Variant int    // which variant, −1 for the study
	Text    string // what is wrong and what to do
}

func (f Fault) Error() string { return f.Key + ": " + f.Text }

// Faults lists what keeps a study from being compared: no variants, two of one
// name, a reference that does not exist.
func (s *Study) Faults() []Fault {
	var fs []Fault
	if len(s.Variants) == 0 {
		return []Fault{{"variant", -1, "the study has no variants; add at least one [[variant]]"}}
	}
	for i := range s.Variants {
		if err := s.nameFits(i, s.Variants[i].Name); err != nil {
			fs = append(fs, Fault{"variant.name", i, err.Error()})
		}
	}
	if s.Reference != "" && s.Index(s.Reference) < 0 {
		fs = append(fs, Fault{"reference", -1, fmt.Sprintf("there is no variant named %q; name one of: %s", s.Reference, s.names())})
	}
	return fs
}

func (s *Study) names() string {
	names := make([]string, len(s.Variants))
	for i, v := range s.Variants {
		names[i] = fmt.Sprintf("%q", v.Name)
	}
	return strings.Join(names, ", ")
}

package drive

import (
	"backspan/model/belt"
	"backspan/model/gear"
	"backspan/model/param"
)

// Kind is a kind of drive.
type Kind string

// The kinds of drive.
const (
	RibbedBelt Kind = "ribbed belt"
	Gear       Kind = "gear"
	Direct     Kind = "direct"
)

// Side says where the propeller axis lies, seen from the crank axis.
type Side string

// The sides.
const (
	Above Side = "above crank"
	Below Side = "below crank"
)

// Spec is what a user sets. The kinds that are not chosen keep their values,
// so that trying another kind loses nothing.
type Spec struct {
	Kind          Kind
	PropellerAxis Side
	RibbedBelt    belt.Spec
	Gear          gear.Spec
	Direct        HubSpec
}

// Default is a ribbed belt with the propeller axis above the crank.
func Default() Spec {
	return Spec{Kind: RibbedBelt, PropellerAxis: Above, RibbedBelt: belt.Default(), Gear: gear.Default(), Direct: DefaultHub()}
}

// Sections lists what a user may set; key is the path of the drive's table.
func (s *Spec) Sections(key string) []param.Section {
	return []param.Section{
		{Key: key, Label: "Drive", Params: []param.Param{
			param.Choice(&s.Kind, "kind", "Kind of drive", RibbedBelt, Gear, Direct).
				Help("a gear wastes less and lasts longer; a belt is lighter, shallower and cheaper"),
			param.Choice(&s.PropellerAxis, "propeller_axis", "Propeller axis", Above, Below).
				When(s.Kind != Direct).Help("where the propeller axis lies, seen from the crank"),
		}},
		{Key: key + ".ribbed_belt", Label: "Ribbed belt", Params: s.RibbedBelt.Params(), Hidden: s.Kind != RibbedBelt},
		{Key: key + ".gear", Label: "Gear", Params: s.Gear.Params(), Hidden: s.Kind != Gear},
		{Key: key + ".direct", Label: "Direct", Params: s.Direct.Params(), Hidden: s.Kind != Direct},
	}
}

// AxisRise is how far the propeller axis lies above the crank axis, m;
// negative when below.
func (s Spec) AxisRise(d Drive) float64 {
	if s.PropellerAxis == Below {
		return -d.AxisOffset()
	}
	return d.AxisOffset()
}

package drive

import (
	"math"

	"backspan/model/belt"
	"backspan/model/bolt"
	"backspan/model/coupling"
	"backspan/model/gear"
	"backspan/model/gearshaft"
	"backspan/model/param"
	"backspan/model/pulley"
	"backspan/model/shaft"
	"backspan/model/toothedbelt"
)

// Kind is a kind of drive.
type Kind string

// The kinds of drive.
const (
	RibbedBelt  Kind = "ribbed belt"
	ToothedBelt Kind = "toothed belt"
	Gear        Kind = "gear"
	Direct      Kind = "direct"
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
	ToothedBelt   toothedbelt.Spec
	Support       shaft.Spec // of a belt's driven pulley and the propeller
	Gear          gear.Spec
	GearShafts    gearshaft.Spec
	Direct        HubSpec
	Plate         bolt.Spec // on which every kind carries its propeller
}

// Belt reports whether the kind is a belt: its driven pulley turns on an axle
// of the builder's own.
func (k Kind) Belt() bool { return k == RibbedBelt || k == ToothedBelt }

// Clone is a copy that shares nothing with s.
func (s Spec) Clone() Spec {
	s.RibbedBelt = s.RibbedBelt.Clone()
	s.ToothedBelt = s.ToothedBelt.Clone()
	return s
}

// Default is a ribbed belt with the propeller axis above the crank.
func Default() Spec {
	return Spec{Kind: RibbedBelt, PropellerAxis: Above, RibbedBelt: belt.Default(), ToothedBelt: toothedbelt.Default(),
		Support: shaft.Default(), Gear: gear.Default(), GearShafts: gearshaft.Default(), Direct: DefaultHub(), Plate: bolt.Default()}
}

// Sections lists what a user may set; key is the path of the drive's table.
func (s *Spec) Sections(key string) []param.Section {
	return []param.Section{
		{Key: key, Label: "Drive", Params: []param.Param{
			param.Choice(&s.Kind, "kind", "Kind of drive", RibbedBelt, ToothedBelt, Gear, Direct).
				Help("a gear wastes less and lasts longer; a belt is lighter, shallower and cheaper"),
			param.Choice(&s.PropellerAxis, "propeller_axis", "Propeller axis", Above, Below).
				When(s.Kind != Direct).Help("where the propeller axis lies, seen from the crank"),
		}},
		{Key: key + ".ribbed_belt", Label: "Ribbed belt", Params: s.RibbedBelt.Params(), Hidden: s.Kind != RibbedBelt},
		{Key: key + ".toothed_belt", Label: "Toothed belt", Params: s.ToothedBelt.Params(), Hidden: s.Kind != ToothedBelt},
		{Key: key + ".support", Label: "Bearings and axle", Params: s.Support.Params(), Hidden: !s.Kind.Belt()},
		{Key: key + ".gear", Label: "Gear", Params: s.Gear.Params(), Hidden: s.Kind != Gear},
		{Key: key + ".gear_shafts", Label: "Gear shafts", Params: s.GearShafts.Params(s.Gear.PinionPlace == gear.Overhung), Hidden: s.Kind != Gear},
		{Key: key + ".direct", Label: "Direct", Params: s.Direct.Params(), Hidden: s.Kind != Direct},
		{Key: key + ".propeller_bolts", Label: "Propeller bolts", Params: s.Plate.Params()},
	}
}

// BuiltGear is the gear as it is built with the shafts chosen for it.
func (s *Spec) BuiltGear() gear.Spec {
	return s.Gear.With(gear.Held{OnCrank: s.GearShafts.PinionOn == gearshaft.EngineCrank, ThrustAhead: s.GearShafts.WheelLocating == shaft.EngineSide})
}

// Flange is the drive's own, on which the propeller is bolted; the hub of a
// direct drive has none beside the plate.
func (s *Spec) Flange() bolt.Flange {
	switch s.Kind {
	case RibbedBelt:
		return bolt.Flange{Diameter: param.Known(s.RibbedBelt.FlangeDiameter), Name: pulley.FlangeLabel}
	case ToothedBelt:
		return bolt.Flange{Diameter: param.Known(s.ToothedBelt.FlangeDiameter), Name: pulley.FlangeLabel}
	case Gear:
		return bolt.Flange{Diameter: param.Known(s.Gear.FlangeDiameter), Name: gear.FlangeLabel}
	case Direct:
	}
	return bolt.Flange{}
}

// coupledCrank reports whether a coupling is chosen that a pinion fast on the
// engine's crank leaves no place for.
func (s *Spec) coupledCrank() (onCrank, coupled bool) {
	return s.Kind == Gear && s.BuiltGear().Held.OnCrank, s.Gear.Coupling.Kind != coupling.Rigid
}

// seatFits compares the driven pulley's bearing seat with the bearings chosen.
func (s Spec) seatFits() bool {
	const play = 0.1e-3 // m; a fit is named in hundredths, a wrong bearing misses by millimetres
	seat := s.RibbedBelt.BearingSeat
	if s.Kind == ToothedBelt {
		seat = s.ToothedBelt.BearingSeat
	}
	prop, _ := s.Support.PropSideBearing.DeepGroove()
	engine, _ := s.Support.EngineSideBearing.DeepGroove()
	return math.Abs(seat-math.Max(prop.Outside, engine.Outside)) <= play
}

// AxisRise is how far the propeller axis lies above the crank axis, m;
// negative when below.
func (s Spec) AxisRise(d Drive) float64 {
	if s.PropellerAxis == Below {
		return -d.AxisOffset()
	}
	return d.AxisOffset()
}

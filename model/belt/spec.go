package belt

import (
	"slices"

	"backspan/model/param"
	"backspan/model/pulley"
)

// Spec is what a builder sets of a ribbed belt stage. SI throughout. Copies
// share the tables; see Clone.
type Spec struct {
	Profile        Profile
	Ribs           int
	CrankDiameter  float64 // effective, m
	DrivenDiameter float64 // effective, m
	CentreDistance float64 // m

	ServiceFactor   float64    // on the rated power, for the standing tension
	TractionRatio   float64    // design tension ratio at 180° of wrap
	StandingTension param.Slot // per strand as set, N; empty takes the required one
	DryFriction     float64    // rubber on metal, before wedging
	WetFriction     float64    // same, wet or oily
	RatedEfficiency float64    // at rated power and speed
	TemperatureMax  float64    // the compound bears, K

	Stock    []float64 // effective lengths on offer, m; none takes the preferred numbers
	Rating   Rating
	Setting  Setting
	Pulsing  Pulsing
	Fatigue  Fatigue
	Use      Use
	Details  bool    // show every parameter in a form
	WornLoss float64 // share of the dry skid pull that wear takes

	LineDifferential param.Slot // effective to pitch radius, m; empty takes the profile's
	MassPerRib       param.Slot // kg/m; empty takes the profile's
	StiffnessPerRib  param.Slot // EA, N; empty takes the profile's

	pulley.Build // outside diameters are the effective ones
	pulley.Upkeep
}

// Default is a twelve-rib PK stage for a single two-stroke of about 15 kW.
func Default() Spec {
	return Spec{
		Profile: PK, Ribs: 12,
		CrankDiameter: 0.065, DrivenDiameter: 0.206, CentreDistance: 0.180,
		ServiceFactor: 1.4, TractionRatio: 4, DryFriction: 0.30, WetFriction: 0.15,
		RatedEfficiency: 0.97, TemperatureMax: 273.15 + 120, WornLoss: 0.1,
		Setting: defaultSetting(), Pulsing: defaultPulsing(), Fatigue: defaultFatigue(), Use: defaultUse(),
		Build:  pulley.DefaultBuild(),
		Upkeep: pulley.Upkeep{Price: 420, BeltPrice: 35, ChangeLabour: 25, ChangeInterval: 100 * 3600},
	}
}

// Clone is a copy that shares nothing with s.
func (s *Spec) Clone() Spec {
	c := *s
	c.Stock = slices.Clone(s.Stock)
	c.Rating.Rows = slices.Clone(s.Rating.Rows)
	return c
}

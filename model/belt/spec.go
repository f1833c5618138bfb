package belt

import (
	"slices"

	"backspan/model/param"
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

	Clearance       float64 // engine drive face to pulley, m
	SideWall        float64 // thickness of each, m
	SideWallHeight  float64 // above the effective diameter, m
	RimThickness    float64 // mean metal below the effective diameter, m
	WebThickness    float64 // m
	WebCutOut       float64 // share of the driven pulley's web removed
	HubWall         float64 // around bore and bearing seat, m
	CrankBore       float64 // diameter, m
	BearingSeat     float64 // diameter inside the driven pulley, m
	FlangeDiameter  float64 // of the propeller plate, m
	FlangeThickness float64 // of the propeller plate, m
	PulleyDensity   float64 // kg/m³
	AxleMass        float64 // bearings, axle and bolts, kg
	CarrierMass     float64 // carrier and tensioner, kg
	BearingToFace   float64 // first crank bearing, mid-width, to the engine's drive face, m

	Price          float64 // of the stage
	BeltPrice      float64 // of one belt
	ChangeLabour   float64 // of one belt change
	ChangeInterval float64 // between belt changes, s
}

// Default is a twelve-rib PK stage for a single two-stroke of about 15 kW.
func Default() Spec {
	return Spec{
		Profile: PK, Ribs: 12,
		CrankDiameter: 0.065, DrivenDiameter: 0.206, CentreDistance: 0.180,
		ServiceFactor: 1.4, TractionRatio: 4, DryFriction: 0.30, WetFriction: 0.15,
		RatedEfficiency: 0.97, TemperatureMax: 273.15 + 120, WornLoss: 0.1,
		Setting: defaultSetting(), Pulsing: defaultPulsing(), Fatigue: defaultFatigue(), Use: defaultUse(),
		Clearance: 0.004, SideWall: 0.003, SideWallHeight: 0.003, RimThickness: 0.005,
		WebThickness: 0.004, WebCutOut: 0.3, HubWall: 0.006, CrankBore: 0.020, BearingSeat: 0.047,
		FlangeDiameter: 0.095, FlangeThickness: 0.008, PulleyDensity: 2700,
		AxleMass: 0.6, CarrierMass: 0.7, BearingToFace: 0.010,
		Price: 420, BeltPrice: 35, ChangeLabour: 25, ChangeInterval: 100 * 3600,
	}
}

// Clone is a copy that shares nothing with s.
func (s *Spec) Clone() Spec {
	c := *s
	c.Stock = slices.Clone(s.Stock)
	c.Rating.Rows = slices.Clone(s.Rating.Rows)
	return c
}

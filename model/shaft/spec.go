package shaft

import (
	"backspan/model/bearing"
	"backspan/model/param"
)

// Axle says whether the axle turns with the propeller.
type Axle string

// The two builds.
const (
	StandsStill Axle = "stands still" // bearings inside the driven wheel
	Turns       Axle = "turns"        // bearings in a case
)

// Side is one of the two bearings.
type Side string

// The sides.
const (
	PropSide   Side = "propeller side"
	EngineSide Side = "engine side"
)

// Spec is what a builder sets. SI throughout.
type Spec struct {
	Axle              Axle
	PropSideBearing   bearing.Size
	EngineSideBearing bearing.Size
	PropSideDynamic   param.Slot // ratings of a data sheet, N; the table's when empty
	PropSideStatic    param.Slot
	EngineSideDynamic param.Slot
	EngineSideStatic  param.Slot
	PropSidePlace     float64 // middle of the bearing ahead of the propeller plate, m
	Spacing           float64 // between the bearings' middles, m
	Locating          Side    // the bearing that takes the thrust

	HousingGrowth float64 // of what the outer rings sit in, per 100 K

	bearing.Service
	Lubricant         bearing.Lubricant
	Viscosity         float64 // of the oil, running, m²/s
	Contamination     float64 // eC
	ApplicationFactor float64 // on the bearing loads

	AxleDiameter         float64 // where the wheel sits on it or where it is held, m
	AxleBore             float64 // m
	Held                 float64 // a standing axle, ahead of the engine-side bearing, m
	Tensile              float64 // strength, Pa
	Yield                float64 // strength, Pa
	Surface              Surface
	EnduranceReliability float64
	BendingConcentration float64
	TorsionConcentration float64
	NotchSensitivity     float64
	Criterion            Criterion
	SafetyAsked          float64
}

// Default is a standing axle of 25 mm inside the pulley of a belt stage for
// about 15 kW.
func Default() Spec {
	return Spec{
		Axle: StandsStill, PropSideBearing: "6005", EngineSideBearing: "6005",
		PropSidePlace: 0.022, Spacing: 0.030, Locating: PropSide, HousingGrowth: 100 * bearing.AluminiumExpansion, Service: bearing.DefaultService(bearing.TurningBore),
		Lubricant: bearing.Grease, Viscosity: 2e-5, Contamination: 0.2, ApplicationFactor: 1.2,
		AxleDiameter: 0.025, AxleBore: 0.010, Held: 0.012, Tensile: 1000e6, Yield: 800e6,
		Surface: Machined, EnduranceReliability: 0.814,
		BendingConcentration: 2.7, TorsionConcentration: 2.2, NotchSensitivity: 0.8,
		Criterion: Goodman, SafetyAsked: 1.5,
	}
}

// InboardFace is the face of the engine-side bearing that looks at the engine,
// ahead of the propeller plate, m.
func (s *Spec) InboardFace() float64 {
	b, _ := s.EngineSideBearing.DeepGroove()
	return s.PropSidePlace + s.Spacing + b.Width/2
}

// bearings are those of both sides, with the ratings that the builder gives; ok
// is false where one is not listed.
func (s *Spec) bearings() (prop, engine bearing.DeepGroove, ok bool) {
	prop, listed := s.PropSideBearing.DeepGroove()
	engine, ok = s.EngineSideBearing.DeepGroove()
	return prop.WithRatings(s.PropSideDynamic, s.PropSideStatic), engine.WithRatings(s.EngineSideDynamic, s.EngineSideStatic), ok && listed
}

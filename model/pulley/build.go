package pulley

import (
	"backspan/model/param"
	"backspan/model/unit"
)

// Build is how the pulleys and what carries them are made. SI throughout. The
// outside diameter is the one a kind of belt names, its effective diameter or
// that over the teeth.
type Build struct {
	Clearance       float64 // engine drive face to pulley, m
	SideWall        float64 // thickness of each, m
	SideWallHeight  float64 // above the outside diameter, m
	RimThickness    float64 // mean metal below the outside diameter, m
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
}

// FlangeLabel names FlangeDiameter on a form.
const FlangeLabel = "Propeller plate diameter"

// DefaultBuild is light aluminium pulleys for a single of about 15 kW.
func DefaultBuild() Build {
	return Build{
		Clearance: 0.004, SideWall: 0.003, SideWallHeight: 0.003, RimThickness: 0.005,
		WebThickness: 0.004, WebCutOut: 0.3, HubWall: 0.006, CrankBore: 0.020, BearingSeat: 0.047,
		FlangeDiameter: 0.110, FlangeThickness: 0.008, PulleyDensity: 2700,
		AxleMass: 0.6, CarrierMass: 0.7, BearingToFace: 0.010,
	}
}

// Form is what the pulleys of one kind of belt are declared by: words for the
// help and the ends of the ranges, lengths in mm.
type Form struct {
	Diameter string // that the rim is measured from, as "effective diameter"
	Gaps     string // that the mean metal of the rim evens out, as "grooves"

	SideWall      string  // what a side wall is for; may be empty
	UsualSideWall float64 // the least
	MostRim       float64
	UsualRim      float64 // the most
	LeastBore     float64
	LeastSeat     float64
}

// Params lists what a builder may set of pulleys of a form, in the order a form
// shows it.
func (b *Build) Params(f Form) []param.Param {
	const estimate = "estimate"
	return []param.Param{
		param.Number(&b.Clearance, "clearance", "Clearance, engine to pulley", unit.Millimetre).
			Within(0, 60).Typical(3, 8).From(estimate),
		param.Number(&b.SideWall, "side_wall", "Pulley side wall, each", unit.Millimetre).
			Within(0, 10).Typical(f.UsualSideWall, 4).Help(f.SideWall).From(estimate),
		param.Number(&b.SideWallHeight, "side_wall_height", "Side wall height", unit.Millimetre).
			Within(0, 15).Typical(2, 5).Help("above the " + f.Diameter).From(estimate),
		param.Number(&b.RimThickness, "rim_thickness", "Pulley rim thickness", unit.Millimetre).
			Within(1, f.MostRim).Typical(4, f.UsualRim).Help("mean metal below the " + f.Diameter + ", " + f.Gaps + " evened out").From(estimate),
		param.Number(&b.WebThickness, "web_thickness", "Pulley web thickness", unit.Millimetre).
			Within(1, 20).Typical(3, 6).Help("the driven pulley's web stands behind its face and adds to the depth").From(estimate),
		param.Number(&b.WebCutOut, "web_cut_out", "Driven pulley web cut out", unit.Percent).
			Within(0, 90).Typical(0, 60).Help("share of the web removed to save mass").From(estimate),
		param.Number(&b.HubWall, "hub_wall", "Hub wall", unit.Millimetre).
			Within(1, 20).Typical(4, 8).Help("metal around the crank bore and the bearing seat").From(estimate),
		param.Number(&b.CrankBore, "crank_bore", "Crank pulley bore", unit.Millimetre).
			Within(f.LeastBore, 60).Typical(15, 25).From(estimate),
		param.Number(&b.BearingSeat, "bearing_seat", "Bearing seat in driven pulley", unit.Millimetre).
			Within(f.LeastSeat, 120).Typical(40, 65).Help("outside diameter of the bearings").From(estimate),
		param.Number(&b.FlangeDiameter, "flange_diameter", FlangeLabel, unit.Millimetre).
			Within(30, 250).Typical(75, 130).Help("the pulley's own plate, on which the propeller is bolted; it bears no more than it covers").From(estimate),
		param.Number(&b.FlangeThickness, "flange_thickness", "Propeller plate thickness", unit.Millimetre).
			Within(2, 40).Typical(6, 12).From(estimate),
		param.Number(&b.PulleyDensity, "pulley_density", "Pulley material density", unit.KilogramPerCubicMetre).
			Within(1000, 8000).Typical(2700, 2850).Help("aluminium 2700 kg/m³").From("common practice, no source"),
		param.Number(&b.AxleMass, "axle_mass", "Bearings, axle and bolts", unit.Kilogram).
			Within(0, 5).Typical(0.4, 1).From(estimate),
		param.Number(&b.CarrierMass, "carrier_mass", "Carrier and tensioner", unit.Kilogram).
			Within(0, 5).Typical(0.4, 1.2).From(estimate),
		param.Number(&b.BearingToFace, "bearing_to_face", "Crank bearing to drive face", unit.Millimetre).
			Within(0, 150).Typical(6, 25).From(estimate).
			Help("middle of the crank's last bearing to the engine's drive face; fan, clearance and half the pulley overhang it further"),
	}
}

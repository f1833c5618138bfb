package toothedbelt

import (
	"backspan/model/param"
	"backspan/model/unit"
)

func (s *Spec) buildParams() []param.Param {
	const estimate = "estimate"
	return []param.Param{
		param.Number(&s.Clearance, "clearance", "Clearance, engine to pulley", unit.Millimetre).
			Within(0, 60).Typical(3, 8).From(estimate),
		param.Number(&s.FaceAllowance, "face_allowance", "Pulley face beyond belt width", unit.Millimetre).
			Within(0, 15).Typical(1, 4).From(estimate),
		param.Number(&s.SideWall, "side_wall", "Pulley side wall, each", unit.Millimetre).
			Within(0, 10).Typical(1.5, 4).Help("the flange that keeps the belt on the pulley").From(estimate),
		param.Number(&s.SideWallHeight, "side_wall_height", "Side wall height", unit.Millimetre).
			Within(0, 15).Typical(2, 5).Help("above the outside diameter").From(estimate),
		param.Number(&s.RimThickness, "rim_thickness", "Pulley rim thickness", unit.Millimetre).
			Within(1, 15).Typical(4, 8).Help("mean metal below the outside diameter, tooth gaps evened out").From(estimate),
		param.Number(&s.WebThickness, "web_thickness", "Pulley web thickness", unit.Millimetre).
			Within(1, 20).Typical(3, 6).Help("the driven pulley's web stands behind its face and adds to the depth").From(estimate),
		param.Number(&s.WebCutOut, "web_cut_out", "Driven pulley web cut out", unit.Percent).
			Within(0, 90).Typical(0, 60).Help("share of the web removed to save mass").From(estimate),
		param.Number(&s.HubWall, "hub_wall", "Hub wall", unit.Millimetre).
			Within(1, 20).Typical(4, 8).Help("metal around the crank bore and the bearing seat").From(estimate),
		param.Number(&s.CrankBore, "crank_bore", "Crank pulley bore", unit.Millimetre).
			Within(3, 60).Typical(15, 25).From(estimate),
		param.Number(&s.BearingSeat, "bearing_seat", "Bearing seat in driven pulley", unit.Millimetre).
			Within(10, 120).Typical(40, 65).Help("outside diameter of the bearings").From(estimate),
		param.Number(&s.FlangeDiameter, "flange_diameter", "Propeller plate diameter", unit.Millimetre).
			Within(30, 250).Typical(75, 110).From(estimate),
		param.Number(&s.FlangeThickness, "flange_thickness", "Propeller plate thickness", unit.Millimetre).
			Within(2, 40).Typical(6, 12).From(estimate),
		param.Number(&s.PulleyDensity, "pulley_density", "Pulley material density", unit.KilogramPerCubicMetre).
			Within(1000, 8000).Typical(2700, 2850).Help("aluminium 2700 kg/m³").From("common practice, no source"),
		param.Number(&s.AxleMass, "axle_mass", "Bearings, axle and bolts", unit.Kilogram).
			Within(0, 5).Typical(0.4, 1).From(estimate),
		param.Number(&s.CarrierMass, "carrier_mass", "Carrier and tensioner", unit.Kilogram).
			Within(0, 5).Typical(0.4, 1.2).From(estimate),
		param.Number(&s.BearingToFace, "bearing_to_face", "Crank bearing to drive face", unit.Millimetre).
			Within(0, 150).Typical(6, 25).From(estimate).
			Help("middle of the crank's last bearing to the engine's drive face; fan, clearance and half the pulley overhang it further"),
	}
}

package gear

import (
	"backspan/model/bearing"
	"backspan/model/param"
	"backspan/model/unit"
)

// Params lists what a user may set, in the order a form shows it.
func (s *Spec) Params() []param.Param {
	ps := s.toothParams()
	ps = append(ps, s.strengthParams()...)
	ps = append(ps, s.oilParams()...)
	ps = append(ps, s.Coupling.Params()...)
	ps = append(ps, s.shaftParams()...)
	ps = append(ps, s.caseParams()...)
	return append(ps, s.heatAndMoneyParams()...)
}

func (s *Spec) toothParams() []param.Param {
	return []param.Param{
		param.Number(&s.Module, "module", "Module", unit.Millimetre).Within(1, 5).Typical(1.5, 3).
			Help("Normal module of the teeth; both gears share it."),
		param.Whole(&s.PinionTeeth, "pinion_teeth", "Pinion teeth").Within(9, 40).Typical(17, 24).
			Help("Teeth of the gear on the crank side."),
		param.Whole(&s.WheelTeeth, "wheel_teeth", "Wheel teeth").Within(12, 150).Typical(45, 75).
			Help("Teeth of the gear on the propeller side; best without a common factor with the pinion's."),
		param.Number(&s.FaceWidth, "face_width", "Face width", unit.Millimetre).Within(6, 60).Typical(15, 30).
			Help("Width over which both gears touch."),
		param.Number(&s.HelixAngle, "helix_angle", "Helix angle", unit.Degree).Within(0, 35).Typical(0, 20).
			Help("At the reference cylinder; 0 gives spur teeth, which push nothing along the shafts."),
		param.Number(&s.PressureAngle, "pressure_angle", "Pressure angle", unit.Degree).Within(14.5, 25).Typical(20, 25).
			Help("Normal pressure angle of the basic rack; 20 unless the cutter says otherwise."),
		param.Number(&s.PinionShift, "pinion_shift", "Pinion profile shift", unit.One).Within(-0.6, 1.2).Typical(0, 0.5).
			Help("In modules; positive thickens the root and thins the tip."),
		param.Number(&s.WheelShift, "wheel_shift", "Wheel profile shift", unit.One).Within(-1, 1.5).Typical(-0.2, 0.5).
			When(!s.CentreDistance.Known).Help("In modules; follows from the centre distance when that is given."),
		param.Open(&s.CentreDistance, "centre_distance", "Centre distance", unit.Millimetre).Within(20, 400).Typical(65, 100).
			Help("Between the two shafts; leave empty to let it follow from the profile shifts."),
		param.Choice(&s.Rack, "rack", "Basic rack", ProfileA, ProfileC, ProfileD).From("from memory: ISO 53").
			Help("A is the usual one, C has a smaller fillet, D a deeper root for ground teeth."),
		param.Open(&s.Backlash, "backlash", "Normal backlash", unit.Millimetre).Within(0, 1).Typical(0.08, 0.25).
			Help("Smallest play between the flanks at 20 °C, as drawn."),
		param.Number(&s.Roughness, "roughness", "Flank roughness, Ra", unit.Micrometre).Within(0.1, 4).Typical(0.3, 1).
			Help("Mean of both gears' flanks; ground teeth reach 0.4 to 0.8."),
		param.Number(&s.CentreTolerance, "centre_tolerance", "Centre distance, plus or minus", unit.Micrometre).Within(0, 200).Typical(10, 40).
			From("from memory: ISO 286-2, js7: 12.5 µm from 30 to 50 mm, 15 up to 80 mm, 17.5 up to 120 mm").Help("For the build sheet: what the case may miss; the teeth are cut thinner so that the backlash stays."),
		param.Number(&s.SpanTolerance, "span_tolerance", "Base tangent length, tolerance", unit.Micrometre).Within(0, 200).Typical(15, 50).
			From("common practice, no source").Help("For the build sheet: how far each gear's base tangent length may fall below its greatest."),
	}
}

func (s *Spec) oilParams() []param.Param {
	return []param.Param{
		param.Choice(&s.Lubricant, "lubricant", "Kind of oil", Mineral, PAO, Polyglycol).
			Help("Sets the friction in the mesh; synthetic oils rub less."),
		param.Number(&s.ViscosityAt40, "oil_viscosity_40", "Oil viscosity at 40 °C", unit.SquareMillimetrePerSecond).
			Within(10, 1000).Typical(68, 220).From("ISO 3448 for the grade VG 100").
			Help("The ISO VG number of the oil."),
		param.Number(&s.ViscosityAt100, "oil_viscosity_100", "Oil viscosity at 100 °C", unit.SquareMillimetrePerSecond).
			Within(2, 100).Typical(8, 26).From("estimate").Help("From the oil's data sheet."),
		param.Number(&s.OilDensity, "oil_density", "Oil density", unit.KilogramPerCubicMetre).
			Within(750, 1100).Typical(830, 900).From("from memory: 850 synthetic, 870 mineral").
			Help("At running temperature."),
		param.Number(&s.OilVolume, "oil_volume", "Oil volume", unit.CubicCentimetre).Within(2, 1000).Typical(8, 120).
			From("estimate").Help("What is filled in; Oil that the dip asks for says how much stands in the case at rest with the gear dipping so deep."),
		param.Choice(&s.DippingGear, "dipping_gear", "Gear that dips", DipPinion, DipWheel).
			Help("With the propeller above the crank the pinion sits lowest; choose the wheel for a case with a trough under it."),
		param.Number(&s.DipDepth, "dip_depth", "Dip depth", unit.Millimetre).Within(0, 40).Typical(4, 10).
			Help("How far the tips of the dipping gear reach below the oil level at rest."),
		param.Number(&s.OilTemperatureLimit, "oil_temperature_limit", "Oil temperature limit", unit.Celsius).
			Within(60, 180).Typical(95, 120).From("from memory: 95 to 100 mineral, 120 synthetic oil; 100 NBR, 150 FKM seals").
			Help("The lower of what oil and seals stand for long."),
		param.Number(&s.OilBaseLife, "oil_base_life", "Oil life, cool", unit.Hour).Within(50, 20000).Typical(1000, 8000).
			From("common practice, no source: 2500 mineral, two to three times that synthetic").
			Help("Running hours up to Oil life, cool up to; ten kelvin more halve them."),
		param.Number(&s.OilBaseTemperature, "oil_base_temperature", "Oil life, cool up to", unit.Celsius).Within(40, 120).Typical(80, 95).
			From("common practice, no source").Help("Above this temperature of the oil its life falls."),
		param.Number(&s.OilTilt, "oil_tilt", "Greatest tilt fore and aft", unit.Degree).Within(0, 60).Typical(20, 40).
			From("estimate").Help("Of the case against the level oil, standing, seated and in a climb."),
	}
}

func (s *Spec) shaftParams() []param.Param {
	sizes := bearing.Sizes()
	return []param.Param{
		param.Choice(&s.PinionHand, "pinion_hand", "Hand of the pinion's helix", RightHand, LeftHand).When(s.HelixAngle > 0).
			Help("The wheel has the other hand. With the crank's turn it settles which way the teeth push the propeller shaft; let them push against the thrust."),
		param.Choice(&s.PinionBearings, "pinion_bearings", "Pinion bearings", sizes...).
			Help("Deep-groove ball bearing on both sides of the pinion."),
		param.Choice(&s.WheelEngineBearing, "wheel_engine_bearing", "Wheel bearing, engine side", sizes...).
			Help("Ahead of the wheel; which bearing takes the thrust is said with the gear shafts."),
		param.Choice(&s.WheelPropellerBearing, "wheel_propeller_bearing", "Wheel bearing, propeller side", sizes...).
			Help("Behind the wheel, nearer to the propeller."),
		param.Number(&s.BearingOilFactor, "bearing_oil_factor", "Bearing oil drag factor", unit.One).Within(0.5, 6).Typical(1.5, 2).
			From("from memory: f0 1.5 to 2 with splash oil").Help("Palmgren's f0 for ball bearings."),
		param.Toggle(&s.PinionSeal, "pinion_seal", "Seal on the pinion shaft").
			Help("Needed when the coupling runs dry; a seal on the fast shaft costs power."),
		param.Choice(&s.SealMaterial, "seal_material", "Seal rubber", NBR, FKM).
			Help("FKM stands more heat and speed and rubs more."),
		param.Number(&s.SealWidth, "seal_width", "Seal width", unit.Millimetre).Within(3, 20).Typical(7, 8).
			From("estimate").Help("Depth of the propeller shaft's seal."),
	}
}

func (s *Spec) caseParams() []param.Param {
	const estimate = "estimate"
	return []param.Param{
		param.Number(&s.CaseWall, "case_wall", "Case wall", unit.Millimetre).Within(1.5, 12).Typical(3, 5).
			From(estimate).Help("Aluminium: 4 to 5 sand cast, 2.5 to 3.5 die cast, 3 to 4 milled."),
		param.Number(&s.BossWall, "boss_wall", "Bearing boss wall", unit.Millimetre).Within(3, 20).Typical(6, 8).
			From(estimate).Help("Metal around each bearing seat."),
		param.Number(&s.SideGap, "side_gap", "Gap beside the gears", unit.Millimetre).Within(1, 20).Typical(2, 4).
			From(estimate).Help("From each face of the gears to the case."),
		param.Number(&s.TipGap, "tip_gap", "Gap around the gears", unit.Millimetre).Within(2, 30).Typical(5, 10).
			From(estimate).Help("From the tips to the case wall."),
		param.Number(&s.CoverDepth, "cover_depth", "Seal cover depth", unit.Millimetre).Within(0, 30).Typical(3, 6).
			From(estimate).Help("Lip and cover in front of and behind the propeller shaft's seal."),
		param.Number(&s.WebFactor, "web_factor", "Wheel web factor", unit.One).Within(0.3, 1).Typical(0.55, 0.65).
			From(estimate).Help("Mass of the wheel over that of a solid disc; 1 is not lightened."),
		param.Number(&s.FlangeDiameter, "flange_diameter", FlangeLabel, unit.Millimetre).Within(50, 200).Typical(90, 130).
			Help("Of the shaft's own flange, on which the propeller is bolted; it bears no more than it covers."),
		param.Number(&s.FlangeThickness, "flange_thickness", "Propeller flange thickness", unit.Millimetre).Within(4, 40).Typical(8, 12).
			Help("From the seal cover to the propeller plate."),
		param.Choice(&s.FlangeMaterial, "flange_material", "Propeller flange material", Aluminium, Steel).
			Help("Sets the flange's mass."),
		param.Number(&s.FinFactor, "fin_factor", "Fin factor", unit.One).Within(1, 5).Typical(1, 2.5).
			From(estimate).Help("Cooling surface over the plain outside of the case, fin efficiency included."),
	}
}

func (s *Spec) heatAndMoneyParams() []param.Param {
	return []param.Param{
		param.Number(&s.StillCooling, "still_cooling", "Heat transfer in still air", unit.WattPerSquareMetreKelvin).
			Within(5, 30).Typical(12, 18).From("from memory: 12 to 18").Help("From the case's outside to air at rest."),
		param.Number(&s.StreamCooling, "stream_cooling", "Heat transfer at 10 m/s", unit.WattPerSquareMetreKelvin).
			Within(15, 100).Typical(35, 50).From("estimate").Help("From the case's outside to a stream of 10 m/s."),
		param.Number(&s.EngineCaseTemperature, "engine_case_temperature", "Engine case temperature", unit.Celsius).
			Within(-20, 200).Typical(90, 130).From("from memory: 90 to 130").Help("Where the unit is bolted on; it may heat the oil."),
		param.Number(&s.MountConductance, "mount_conductance", "Conductance to the engine case", unit.WattPerKelvin).
			Within(0, 30).Typical(1, 6).From("estimate").Help("Heat through the bolted joint per kelvin; 0 is insulated."),
		param.Number(&s.Price, "price", "Price of the unit", unit.Currency).Within(0, 100000).Typical(300, 1500).
			From("invented").Help("To buy or make the whole reduction."),
		param.Number(&s.ChangeInterval, "change_interval", "Oil and seal interval", unit.Hour).Within(1, 2000).Typical(25, 100).
			From("common practice, no source").Help("Running time between changes; the first comes after a few hours of running in, which leave metal in the oil."),
		param.Number(&s.ChangeCost, "change_cost", "Cost of one change", unit.Currency).Within(0, 10000).Typical(10, 60).
			From("invented").Help("Oil, seals and labour, in money; the labour does not follow Labour rate of Use."),
	}
}

package cooling

import (
	"backspan/model/param"
	"backspan/model/unit"
)

const (
	estimate = "estimate"
	naca     = "from memory: NACA Report 612"
	metals   = "from memory: handbook values of cast and wrought aluminium"
)

// Params lists what a user may set about the kind of cooling, in the order a
// form shows it.
func (s *Spec) Params() []param.Param {
	ps := []param.Param{
		param.Choice(&s.Kind, "kind", "Cooling", FreeAir, Baffled, Fan, Liquid).
			Help("what carries the cylinder's heat away"),
		param.Number(&s.InflowShare, "inflow_share", "Inflow that reaches the drive", unit.Percent).
			Within(5, 150).Typical(40, 90).From(estimate).
			Help("share of the propeller's inflow speed; pilot, frame and the calm near the hub take the rest"),
	}
	ps = append(ps, s.fan()...)
	return append(ps, s.liquid()...)
}

// HeadParams lists what a user may set about cylinder and head: what was
// measured, where they stand, their fins and the heat they take.
func (s *Spec) HeadParams() []param.Param {
	ps := append(s.measured(), s.place()...)
	ps = append(ps, s.finned()...)
	return append(ps, s.heat()...)
}

func (s *Spec) fan() []param.Param {
	fan, baffled := s.Kind == Fan, s.Kind == Baffled
	return []param.Param{
		param.Number(&s.BaffleMass, "baffle_mass", "Baffle mass", unit.Kilogram).
			Within(0, 2).Typical(0.1, 0.3).From(estimate).When(baffled).
			Help("sheets that hold the air to the lee side of the cylinder"),
		param.Number(&s.BaffleGain, "baffle_gain", "Cooling gained by baffles", unit.Percent).
			Within(100, 200).Typical(110, 130).From(estimate).When(baffled || fan).
			Help("heat transfer of the fins with baffles or a fan's shroud, as a share of that without"),
		param.Number(&s.FanDepth, "fan_depth", "Fan and shroud depth", unit.Millimetre).
			Within(5, 150).Typical(35, 60).From(estimate).When(fan).
			Help("along the thrust axis, between engine and drive"),
		param.Number(&s.FanMass, "fan_mass", "Fan and shroud mass", unit.Kilogram).
			Within(0, 6).Typical(0.8, 1.5).From(estimate).When(fan).
			Help("everything that a free-air cylinder does without"),
		param.Number(&s.FanPowerShare, "fan_power_share", "Fan's share of crank power", unit.Percent).
			Within(0, 15).Typical(1.5, 2.5).From(estimate).When(fan).
			Help("taken before the drive"),
		param.Number(&s.FanPressure, "fan_pressure", "Fan pressure", unit.Pascal).
			Within(100, 4000).Typical(600, 1500).From(estimate).When(fan).
			Help("what it costs to push the air through shroud and fins"),
		param.Number(&s.FanEfficiency, "fan_efficiency", "Fan efficiency", unit.Percent).
			Within(5, 80).Typical(35, 55).From(estimate).When(fan).
			Help("air power over shaft power, shroud included"),
	}
}

func (s *Spec) liquid() []param.Param {
	liquid := s.Kind == Liquid
	return []param.Param{
		param.Number(&s.LiquidMass, "liquid_mass", "Liquid cooling mass", unit.Kilogram).
			Within(0, 10).Typical(1.8, 2.6).From(estimate).When(liquid).
			Help("radiator, coolant, pump and hoses, filled"),
		param.Number(&s.PumpPowerShare, "pump_power_share", "Pump's share of crank power", unit.Percent).
			Within(0, 5).Typical(0.2, 0.6).From(estimate).When(liquid).Help("taken before the drive"),
		param.Number(&s.RadiatorAft, "radiator_aft", "Radiator behind mount face", unit.Millimetre).
			Within(-300, 500).Typical(0, 150).When(liquid).
			Help("centre of gravity of the filled circuit, aft of the engine's mount face"),
		param.Number(&s.RadiatorUp, "radiator_up", "Radiator above crank axis", unit.Millimetre).
			Within(-600, 600).Typical(-250, 250).When(liquid).
			Help("centre of gravity of the filled circuit; negative is below"),
		param.Number(&s.RadiatorFace, "radiator_face", "Radiator face area", unit.SquareCentimetre).
			Within(50, 3000).Typical(300, 900).From(estimate).When(liquid).Help("that the air flows through"),
		param.Number(&s.RadiatorUnits, "radiator_units", "Radiator's transfer units at 5 m/s", unit.One).
			Within(0.1, 4).Typical(0.7, 1.5).From(estimate).When(liquid).
			Help("conductance over the heat that the air can take; falls with the root of the air speed"),
		param.Number(&s.JacketCoefficient, "jacket_coefficient", "Heat transfer to the coolant", unit.WattPerSquareMetreKelvin).
			Within(500, 30000).Typical(3000, 10000).From(estimate).When(liquid).Help("from the metal of cylinder and head"),
		param.Number(&s.CoolantLimit, "coolant_limit", "Coolant temperature allowed", unit.Celsius).
			Within(60, 140).Typical(95, 115).From(estimate).When(liquid).Help("short of boiling at the cap's pressure"),
		param.Number(&s.RadiatorMassPerFace, "radiator_mass_per_face", "Radiator mass over face area", unit.KilogramPerSquareMetre).
			Within(2, 40).Typical(8, 16).From(estimate).When(liquid).Help("of the filled core"),
		param.Number(&s.CircuitMass, "circuit_mass", "Pump, hoses and coolant in them", unit.Kilogram).
			Within(0.1, 5).Typical(0.7, 1.4).From(estimate).When(liquid).Help("all of the circuit but the radiator"),
	}
}

func (s *Spec) place() []param.Param {
	return []param.Param{
		param.Open(&s.CylinderAft, "cylinder_aft", "Cylinder behind mount face", unit.Millimetre).
			Within(-50, 500).Typical(40, 130).
			Help("middle of the fins; the engine's centre of gravity where not given"),
		param.Number(&s.CylinderReach, "cylinder_reach", "Crank axis to middle of fins", unit.Millimetre).
			Within(30, 350).Typical(90, 170).From(estimate).Help("along the cylinder"),
		param.Number(&s.CylinderLean, "cylinder_lean", "Cylinder leans from upright by", unit.Degree).
			Within(-180, 180).Typical(-180, 180).Help("0 stands up, 90 lies to the right seen from behind, 180 hangs down"),
		param.Number(&s.Passage, "passage", "Inflow that reaches the cylinder", unit.Percent).
			Within(5, 150).Typical(60, 95).From(estimate).
			Help("pilot and frame take the rest; the calm ahead of the hub is reckoned apart"),
		param.Number(&s.CaseShade, "case_shade", "Air kept off by a gear case", unit.Percent).
			Within(0, 95).Typical(15, 50).From(estimate).
			Help("counts where the drive is a gear and the cylinder stands in the propeller's inflow"),
		param.Number(&s.PulleyShade, "pulley_shade", "Air kept off behind a pulley", unit.Percent).
			Within(0, 95).Typical(5, 30).From(estimate).
			Help("off the fins that the driven pulley of a belt covers, as the propeller sees them; how many it covers follows from both places"),
	}
}

func (s *Spec) finned() []param.Param {
	return []param.Param{
		param.Open(&s.RootRadius, "root_radius", "Radius under the fins", unit.Millimetre).
			Within(15, 120).Typical(25, 55).Help("0.6 of the bore where not given; estimate"),
		param.Open(&s.FinHeight, "fin_height", "Fin height", unit.Millimetre).
			Within(5, 80).Typical(20, 50).Help("0.6 of the bore, at most 45 mm, where not given; estimate"),
		param.Open(&s.FinnedLength, "finned_length", "Finned length", unit.Millimetre).
			Within(30, 500).Typical(100, 220).Help("cylinder and head along the bore; 2.65 of the bore where not given; estimate"),
		param.Number(&s.FinPitch, "fin_pitch", "Fin pitch", unit.Millimetre).
			Within(5, 25).Typical(7, 12).From(estimate).Help("from fin to fin"),
		param.Number(&s.FinThickness, "fin_thickness", "Fin thickness", unit.Millimetre).
			Within(0.8, 4).Typical(1.5, 3).From(estimate).Help("mean of root and tip"),
		param.Number(&s.FinConductivity, "fin_conductivity", "Conductivity of the fins", unit.WattPerMetreKelvin).
			Within(30, 400).Typical(120, 190).From(metals).Help("cast aluminium 120 to 160, wrought 160 to 190, grey iron about 50"),
	}
}

func (s *Spec) heat() []param.Param {
	return []param.Param{
		param.Number(&s.GasTemperature, "gas_temperature", "Effective gas temperature", unit.Celsius).
			Within(300, 1200).Typical(450, 700).From(naca + ", 1150 °F for four-stroke heads; a two-stroke's may be lower").
			Help("to which the head would rise without any cooling"),
		param.Number(&s.StatedAt, "heat_stated_at", "Heat share holds at a head of", unit.Celsius).
			Within(60, 280).Typical(150, 230).From(estimate).
			Help("a hotter head takes less heat from the gas than the engine's Heat from cylinder and head says"),
		param.Number(&s.OtherWays, "other_ways", "Heat that does not pass the fins", unit.Percent).
			Within(0, 90).Typical(20, 60).From(estimate).
			Help("into crankcase, mount, exhaust flange and fresh charge"),
		param.Number(&s.PowerExponent, "power_exponent", "Exponent of heat over power", unit.One).
			Within(0.3, 1.2).Typical(0.55, 0.8).From(naca).Help("how the gas's heat grows with power"),
		param.Number(&s.Scatter, "scatter", "Scatter before a measurement", unit.Percent).
			Within(5, 200).Typical(40, 80).From(estimate).
			Help("of gas side over air side; the band of head temperature follows from it"),
		param.Number(&s.ScatterLeft, "scatter_left", "Scatter after one measurement", unit.Percent).
			Within(1, 100).Typical(8, 20).From(estimate).Help("gauge, mixture, dirt and day"),
		param.Number(&s.HotDay, "hot_day", "Hot day", unit.Celsius).
			Within(10, 55).Typical(30, 42).From(estimate).Help("air temperature of the standing run that is checked"),
		param.Number(&s.HeadLimit, "head_limit", "Head temperature allowed", unit.Celsius).
			Within(100, 350).Typical(200, 260).From("from memory: 200 to 250 °C at the plug for aluminium heads").
			Help("the engine maker's figure where there is one"),
	}
}

func (s *Spec) measured() []param.Param {
	return []param.Param{
		param.Open(&s.MeasuredHead, "measured_head", "Measured head temperature", unit.Celsius).
			Within(60, 400).Typical(150, 260).
			Help("under the plug, steady, this machine standing at full throttle; stand clear of the propeller and hold the machine fast"),
		param.Open(&s.MeasuredAir, "measured_air", "Air temperature at that reading", unit.Celsius).
			Within(-30, 55).Typical(5, 35).Help("in the shade, away from the machine"),
	}
}

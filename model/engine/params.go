package engine

import (
	"backspan/model/param"
	"backspan/model/part"
	"backspan/model/unit"
)

const (
	invented     = "invented"
	estimate     = "estimate"
	fuelStandard = "from memory: EN 228"
	fuelBands    = "from memory: Heywood; Blair"
	burning      = "from memory: Heywood"
)

// Params lists what a user may set, in the order a form shows it.
func (s *Spec) Params() []param.Param {
	ps := append(s.size(), s.curve()...)
	ps = append(ps, s.running()...)
	ps = append(ps, s.body()...)
	return append(ps, s.pulsation()...)
}

func (s *Spec) size() []param.Param {
	return []param.Param{
		param.Choice(&s.Cycle, "cycle", "Working cycle", TwoStroke, FourStroke).
			Help("A two-stroke fires every turn of the crank, a four-stroke every second turn."),
		param.Whole(&s.Cylinders, "cylinders", "Cylinders").Within(1, 4).From(invented),
		param.Number(&s.Bore, "bore", "Bore", unit.Millimetre).Within(30, 110).Typical(50, 75).From(invented),
		param.Number(&s.Stroke, "stroke", "Stroke", unit.Millimetre).Within(25, 110).Typical(45, 65).From(invented),
	}
}

func (s *Spec) curve() []param.Param {
	concept := s.CurveSource == Concept
	low, high := s.Cycle.typicalPressure()
	return []param.Param{
		param.Choice(&s.CurveSource, "curve_source", "Source of the curve", Measured, Concept).
			Help("A measured full-throttle curve, or a shape scaled to a mean effective pressure."),
		param.Table(s.rows, s.setRows, "power_curve", "Power curve",
			param.Column{Label: "speed", Unit: unit.RPM, Min: 500, Max: 20000},
			param.Column{Label: "power", Unit: unit.Kilowatt, Min: 0.1, Max: 100}).
			Rows(2).Rule(func(rows [][]float64) error { return rising(len(rows), func(i int) float64 { return rows[i][0] }) }).
			Help("Full throttle at the crank, in the correction standard's reference air.").From(invented).When(!concept),
		param.Number(&s.MeanEffectivePressure, "mean_effective_pressure", "Mean pressure at peak power", unit.Bar).
			Within(2, 16).Typical(low/1e5, high/1e5).Help("Brake mean effective pressure in the reference air.").
			From(fuelBands).When(concept),
		param.Number(&s.PeakPowerSpeed, "peak_power_speed", "Speed of peak power", unit.RPM).
			Within(3000, 14000).Typical(5000, 9000).From(invented).When(concept),
		param.Choice(&s.Shape, "shape", "Shape of the curve", Broad, TunedPipe).
			Help("A tuned pipe adds a hump of torque at the speed of peak power.").When(concept),
		param.Number(&s.PipeGain, "pipe_gain", "Torque added by the pipe", unit.Percent).
			Within(0, 150).Typical(20, 80).Help("At the speed of peak power, as a share of the broad curve's torque.").
			From(estimate).When(concept && s.Shape == TunedPipe),
		param.Number(&s.PipeWidth, "pipe_width", "Width of the pipe's hump", unit.Percent).
			Within(10, 30).Typical(15, 20).Help("Share of the speed of peak power.").
			From(estimate).When(concept && s.Shape == TunedPipe),
		param.Choice(&s.Correction, "correction", "Air correction standard", SAEJ1349, ISO1585).
			Help("Carries the power from the standard's reference air (99 kPa dry, 25 °C) to the site."),
	}
}

func (s *Spec) running() []param.Param {
	low, high := s.Cycle.typicalFuel()
	return []param.Param{
		param.Number(&s.SpeedLimit, "speed_limit", "Highest allowed speed", unit.RPM).
			Within(3000, 20000).Typical(6000, 10000).Help("Of the crank, for a short time.").From(invented),
		param.Number(&s.IdleSpeed, "idle_speed", "Idle speed", unit.RPM).Within(500, 3000).Typical(1500, 2200).From(invented),
		param.Number(&s.SpecificFuel, "specific_fuel", "Specific fuel at peak power", unit.GramPerKilowattHour).
			Within(200, 900).Typical(low, high).Help("Full throttle, in the reference air.").From(fuelBands),
		param.Number(&s.FrictionPressure, "friction_pressure", "Friction mean pressure", unit.Bar).
			Within(0.2, 4).Typical(0.8, 2).Help("Sets how much fuel the engine burns at part load.").From(estimate),
		param.Number(&s.HeatingValue, "heating_value", "Heating value of the fuel", unit.MegajoulePerKilogram).
			Within(38, 46).Typical(43, 44).Help("Lower heating value.").From(fuelStandard),
		param.Number(&s.FuelDensity, "fuel_density", "Fuel density", unit.KilogramPerLitre).
			Within(0.68, 0.8).Typical(0.72, 0.775).From(fuelStandard),
		param.Number(&s.CylinderHeatShare, "cylinder_heat_share", "Heat from cylinder and head", unit.Percent).
			Within(20, 150).Typical(45, 80).Help("Share of the brake power that cooling air must carry away.").From(estimate),
	}
}

func (s *Spec) body() []param.Param {
	return []param.Param{
		param.Number(&s.Mass, "mass", "Engine mass", unit.Kilogram).Within(1, 80).Typical(8, 20).
			Help("With carburettor, ignition and starter, without exhaust and fuel.").From(invented),
		param.Number(&s.DepthToDrive, "depth_to_drive", "Mount face to drive face", unit.Millimetre).
			Within(20, 350).Typical(90, 180).Help("From the frame's mount to the face that carries the drive.").From(invented),
		param.Number(&s.DepthToRearEnd, "depth_to_rear_end", "Mount face to rear end", unit.Millimetre).
			Within(20, 500).Typical(120, 260).Help("To the rearmost point of the engine, beside the drive.").From(invented),
		param.Number(&s.CGAft, "cg_aft", "Centre of gravity behind mount", unit.Millimetre).
			Within(0, 500).Typical(50, 120).From(invented),
		param.Number(&s.CGAboveCrank, "cg_above_crank", "Centre of gravity above crank", unit.Millimetre).
			Within(-250, 300).Typical(0, 80).Help("Negative when the cylinder hangs down.").From(invented),
		param.Number(&s.OutsideRadius, "outside_radius", "Outside radius", unit.Millimetre).
			Within(40, 300).Typical(90, 160).Help("Half the engine's width across; gives its own inertia.").From(estimate),
		param.Choice(&s.Turns, "turns", "Crank turns, seen from behind", part.Clockwise, part.Anticlockwise).
			Help("Looking forward at the propeller. One pair of gears makes the propeller turn the other way, a belt the same way."),
		param.Number(&s.CrankInertia, "crank_inertia", "Inertia of crank and flywheel", unit.KilogramSquareMetre).
			Within(0.0001, 0.1).Typical(0.001, 0.005).Help("About the crank axis, without the drive.").From(estimate),
		param.Open(&s.MainSpacing, "main_bearing_spacing", "Crank main bearings, spacing", unit.Millimetre).
			Within(10, 400).Typical(40, 110).Help("Between the middles of the two nearest to the drive; with it the pull of a belt or an overhung pinion on them is worked out."),
		param.Open(&s.FaceToMain, "drive_face_to_main_bearing", "Drive face to nearer main bearing", unit.Millimetre).
			Within(0, 150).Typical(6, 25).Help("To the middle of the crank's last bearing, for a pinion on the crank; a belt stage has its own Crank bearing to drive face."),
	}
}

func (s *Spec) pulsation() []param.Param {
	return []param.Param{
		param.Number(&s.CompressionRatio, "compression_ratio", "Compression ratio", unit.One).
			Within(5, 16).Typical(8, 12).Help("Over the whole stroke, also of a two-stroke; shapes the pulsation of torque only.").From(estimate),
		param.Number(&s.BurnStart, "burn_start", "Start of burning", unit.Degree).
			Within(-60, 10).Typical(-30, -10).Help("Crank angle after top dead centre; negative is before it.").From(estimate),
		param.Number(&s.BurnDuration, "burn_duration", "Duration of burning", unit.Degree).
			Within(15, 110).Typical(40, 70).Help("Crank angle; a long one makes the torque softer.").From(estimate),
		param.Number(&s.BurnShape, "burn_shape", "Wiebe exponent of burning", unit.One).
			Within(0.5, 5).Typical(1.5, 3).Help("A high one makes the burning start slowly.").From(burning),
		param.Number(&s.RodLength, "rod_length", "Length of connecting rod", unit.Millimetre).
			Within(60, 300).Typical(90, 125).Help("Between the centres of its eyes.").From(estimate),
		param.Number(&s.ReciprocatingMass, "reciprocating_mass", "Reciprocating mass per cylinder", unit.Kilogram).
			Within(0.02, 1.5).Typical(0.1, 0.35).Help("Piston, rings, pin and about a third of the connecting rod.").From(estimate),
	}
}

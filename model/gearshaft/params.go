package gearshaft

import (
	"slices"

	"backspan/model/bearing"
	"backspan/model/param"
	"backspan/model/shaft"
	"backspan/model/unit"
)

// Params lists what a builder may set, in the order a form shows it; overhung
// says that the gear's pinion stands outside its bearings.
func (s *Spec) Params(overhung bool) []param.Param {
	carrier := param.Choice(&s.PinionOn, "pinion_on", "Overhung pinion sits on", OwnShaft, EngineCrank).When(overhung).
		Help("On the crank its bearings are the engine's own and no coupling or clutch has a place: give the engine's Crank main bearings, spacing, to see the forces on them.")
	return slices.Concat([]param.Param{carrier}, s.bearingParams(), s.Service.Params(), s.seatParams(), s.seatFigures(), s.steelParams(), s.notchParams())
}

const (
	estimate = "estimate"
	invented = "invented"
)

func (s *Spec) bearingParams() []param.Param {
	return []param.Param{
		param.Choice(&s.WheelLocating, "wheel_locating_bearing", "Locating bearing, prop. shaft", shaft.PropSide, shaft.EngineSide).
			Help("The one bearing that takes thrust and tooth force of the propeller shaft; the other must be free to slide."),
		param.Choice(&s.PinionLocating, "pinion_locating_bearing", "Locating bearing, pinion", shaft.EngineSide, shaft.PropSide).
			Help("The one bearing that takes the pinion's axial tooth force."),
		bearing.OwnRating(&s.WheelPropDynamic, "wheel_propeller_dynamic", "Own dynamic, wheel, prop. side"),
		bearing.OwnRating(&s.WheelPropStatic, "wheel_propeller_static", "Own static, wheel, prop. side"),
		bearing.OwnRating(&s.WheelEngineDynamic, "wheel_engine_dynamic", "Own dynamic, wheel, eng. side"),
		bearing.OwnRating(&s.WheelEngineStatic, "wheel_engine_static", "Own static, wheel, eng. side"),
		bearing.OwnRating(&s.PinionDynamic, "pinion_dynamic", "Own dynamic rating, pinion"),
		bearing.OwnRating(&s.PinionStatic, "pinion_static", "Own static rating, pinion"),
		param.Choice(&s.Lubricant, "lubricant", "Lubricant of the bearings", bearing.Oil, bearing.Grease).
			Help("Sets the speed that the bearings bear; the film is reckoned with the gear's own oil."),
		param.Number(&s.Contamination, "contamination_factor", "Contamination factor", unit.One).
			Within(0, 0.5).Typical(0.1, 0.3).From("from memory: 0.1 to 0.3 with the wear debris of gears in the oil").
			Help("ISO 281; lower is dirtier."),
		param.Number(&s.ApplicationFactor, "bearing_load_factor", "Bearing load factor", unit.One).
			Within(1, 3).Typical(1.1, 1.5).From(estimate).Help("Times the bearing loads, for what shakes them besides the engine's pulses, which are counted apart."),
	}
}

func (s *Spec) seatParams() []param.Param {
	fits := []Fit{Splined, Keyed, Tapered, Integral}
	return []param.Param{
		param.Choice(&s.Coupling.Fit, "coupling_fit", "Coupling held by", fits...).Help("How the coupling sits on the pinion shaft."),
		param.Choice(&s.Wheel.Fit, "wheel_fit", "Wheel held by", fits...).Help("How the wheel sits on the propeller shaft; the seat is as long as the face is wide."),
		param.Choice(&s.Flange.Fit, "flange_fit", "Flange held by", fits...).Help("How the propeller flange sits on its shaft."),
		param.Number(&s.CouplingSeatLength, "coupling_seat_length", "Coupling seat, length", unit.Millimetre).
			Within(3, 100).Typical(12, 30).From(estimate).Help("Along the pinion shaft, ahead of the case."),
		param.Number(&s.FlangeSeatLength, "flange_seat_length", "Flange seat, length", unit.Millimetre).
			Within(3, 100).Typical(10, 30).From(estimate).Help("Along the propeller shaft, from the propeller plate ahead; the flange's hub may reach into the seal cover."),
		param.Number(&s.CouplingStep, "coupling_seat_step", "Coupling seat, step down", unit.Millimetre).
			Within(0, 20).Typical(0, 5).From(estimate).Help("By how much the coupling seat's diameter is less than the bearing's bore."),
		param.Number(&s.WheelStep, "wheel_seat_step", "Wheel seat, step up", unit.Millimetre).
			Within(0, 30).Typical(2, 8).From(estimate).Help("By how much the wheel seat's diameter is more than the bore of the propeller-side bearing."),
		param.Number(&s.FlangeStep, "flange_seat_step", "Flange seat, step down", unit.Millimetre).
			Within(0, 20).Typical(0, 5).From(estimate).Help("By how much the flange seat's diameter is less than that bore."),
	}
}

func (s *Spec) seatFigures() []param.Param {
	const pressure = "estimate: about half the hub's yield strength"
	return []param.Param{
		param.Number(&s.Coupling.Pressure, "coupling_pressure_allowed", "Hub pressure allowed, coupling", unit.Megapascal).
			Within(20, 1000).Typical(80, 250).From(pressure).When(s.Coupling.Fit.bears()).Help("On key or spline flanks, under the greatest torque."),
		param.Number(&s.Wheel.Pressure, "wheel_pressure_allowed", "Hub pressure allowed, wheel", unit.Megapascal).
			Within(20, 1000).Typical(80, 250).From(pressure).When(s.Wheel.Fit.bears()).Help("On key or spline flanks, under the greatest torque."),
		param.Number(&s.Flange.Pressure, "flange_pressure_allowed", "Hub pressure allowed, flange", unit.Megapascal).
			Within(20, 1000).Typical(80, 250).From(pressure).When(s.Flange.Fit.bears()).Help("On key or spline flanks, under the greatest torque; aluminium bears about half of what steel does."),
		param.Number(&s.KeyYield, "key_yield", "Yield strength of the keys", unit.Megapascal).
			Within(150, 1200).Typical(300, 500).From(invented).When(s.any(Keyed)).Help("Their shear strength is taken as 0.577 of it."),
		param.Number(&s.SplineModule, "spline_module", "Spline module", unit.Millimetre).
			Within(0.5, 5).Typical(0.8, 2).When(s.any(Splined)).Help("Of all splines here; 30° involute."),
		param.Number(&s.SplineShare, "spline_share", "Spline flanks that carry", unit.Percent).
			Within(10, 100).Typical(50, 75).From("from memory: half to three quarters").When(s.any(Splined)).Help("The others miss by the errors of cutting."),
		param.Number(&s.TaperRatio, "taper_ratio", "Taper, length per diameter", unit.One).
			Within(3, 50).Typical(5, 16).When(s.any(Tapered)).Help("10 is a taper of 1 in 10 of the diameter."),
		param.Number(&s.TaperFriction, "taper_friction", "Friction in the taper", unit.One).
			Within(0.05, 0.3).Typical(0.1, 0.15).From("from memory: dry steel 0.12 to 0.15").When(s.any(Tapered)).Help("Free of oil when fitted."),
		s.nut(&s.Coupling, "coupling", "coupling"), s.nut(&s.Wheel, "wheel", "wheel"), s.nut(&s.Flange, "flange", "flange"),
	}
}

func (s *Spec) nut(t *Seat, key, name string) param.Param {
	return param.Number(&t.NutForce, key+"_nut_force", "Taper nut's force, "+name, unit.Kilonewton).
		Within(1, 300).Typical(15, 60).From(estimate).When(t.Fit == Tapered).Help("With which the tightened nut pulls the part onto its taper.")
}

// bears reports whether flanks carry the torque.
func (f Fit) bears() bool { return f == Keyed || f == Splined }

func (s *Spec) any(f Fit) bool { return s.Coupling.Fit == f || s.Wheel.Fit == f || s.Flange.Fit == f }

func (s *Spec) steelParams() []param.Param {
	return []param.Param{
		param.Number(&s.PinionTensile, "pinion_tensile_strength", "Tensile strength, pinion shaft", unit.Megapascal).
			Within(300, 2000).Typical(700, 1200).From(invented).Help("Of the steel's core as heat-treated."),
		param.Number(&s.PinionYield, "pinion_yield_strength", "Yield strength, pinion shaft", unit.Megapascal).
			Within(200, 1800).Typical(500, 1000).From(invented).Help("Of the steel's core as heat-treated."),
		param.Number(&s.WheelTensile, "wheel_tensile_strength", "Tensile strength, prop. shaft", unit.Megapascal).
			Within(300, 2000).Typical(700, 1200).From(invented).Help("Of the steel as heat-treated."),
		param.Number(&s.WheelYield, "wheel_yield_strength", "Yield strength, prop. shaft", unit.Megapascal).
			Within(200, 1800).Typical(500, 1000).From(invented).Help("Of the steel as heat-treated."),
		param.Choice(&s.Surface, "shaft_surface", "Surface of the shafts", shaft.Ground, shaft.Machined, shaft.HotRolled, shaft.Forged).
			From("from memory: Marin's surface factors").Help("At the shoulders and seats where a crack would start."),
		param.Number(&s.EnduranceReliability, "endurance_reliability", "Endurance reliability factor", unit.One).
			Within(0.6, 1).Typical(0.75, 1).From("from memory: 0.814 for 99 %, 1 for 50 %").
			Help("Lowers the endurance limit to what most specimens reach."),
		param.Choice(&s.Criterion, "fatigue_criterion", "Fatigue criterion", shaft.Goodman, shaft.Soderberg, shaft.Gerber, shaft.ASMEElliptic).
			Help("Soderberg is the most careful, Gerber and ASME elliptic the closest to tests."),
		param.Number(&s.SafetyAsked, "shaft_safety_asked", "Shaft safety asked", unit.One).
			Within(1, 5).Typical(1.5, 3).From(estimate).Help("Least safety of either shaft against fatigue and against yield."),
		param.Number(&s.SeatSafetyAsked, "seat_safety_asked", "Seat safety asked", unit.One).
			Within(1, 5).Typical(1.2, 3).From(estimate).Help("Least safety of key, spline or taper under the greatest torque."),
	}
}

func (s *Spec) notchParams() []param.Param {
	pair := func(n *Notch, key, name, from, help string) []param.Param {
		return []param.Param{
			param.Number(&n.Bending, key+"_bending_concentration", "Notch in bending, "+name, unit.One).Within(1, 6).Typical(1, 3).From(from).Help(help + " Factor of stress concentration."),
			param.Number(&n.Torsion, key+"_torsion_concentration", "Notch in torsion, "+name, unit.One).Within(1, 6).Typical(1, 3).From(from).Help(help + " Factor of stress concentration."),
		}
	}
	return slices.Concat(
		pair(&s.Shoulder, "shoulder", "shoulder", "from memory: fillet of a tenth of the diameter 1.7 and 1.5, sharp 2.7 and 2.2", "At the shoulders beside the bearings and of a part of one piece with the shaft."),
		pair(&s.Keyway, "keyway", "key", "from memory: end-milled keyseat 2.14 and 3.0", "At a keyseat."),
		pair(&s.Toothed, "spline", "teeth", estimate, "At the roots of splines and of the pinion's teeth."),
		pair(&s.Pressed, "taper", "taper", estimate, "At the edge of a hub that is pulled onto a taper."),
		[]param.Param{param.Number(&s.NotchSensitivity, "notch_sensitivity", "Notch sensitivity", unit.One).
			Within(0, 1).Typical(0.7, 1).From(estimate).Help("1 is the safe side; steels with small fillets have less.")},
	)
}

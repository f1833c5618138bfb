package shaft

import (
	"slices"

	"backspan/model/bearing"
	"backspan/model/param"
	"backspan/model/unit"
)

// Params lists what a builder may set, in the order a form shows it.
func (s *Spec) Params() []param.Param {
	return slices.Concat(s.placeParams(), s.Service.Params(), s.axleParams())
}

const estimate = "estimate"

func (s *Spec) placeParams() []param.Param {
	sizes := bearing.Sizes()
	return []param.Param{
		param.Choice(&s.Axle, "axle", "Axle", StandsStill, Turns).
			Help("A standing axle carries the bearings inside the driven wheel, whose outer rings then need the tight fit; a turning axle runs in bearings in a case and bends to and fro once a turn."),
		param.Choice(&s.PropSideBearing, "prop_side_bearing", "Bearing, propeller side", sizes...).
			From(bearing.RatingOrigin).Help("Deep-groove ball bearing nearer to the propeller."),
		param.Choice(&s.EngineSideBearing, "engine_side_bearing", "Bearing, engine side", sizes...).
			From(bearing.RatingOrigin).Help("Deep-groove ball bearing nearer to the engine."),
		bearing.OwnRating(&s.PropSideDynamic, "prop_side_dynamic", "Own dynamic rating, propeller side"),
		bearing.OwnRating(&s.PropSideStatic, "prop_side_static", "Own static rating, propeller side"),
		bearing.OwnRating(&s.EngineSideDynamic, "engine_side_dynamic", "Own dynamic rating, engine side"),
		bearing.OwnRating(&s.EngineSideStatic, "engine_side_static", "Own static rating, engine side"),
		param.Number(&s.PropSidePlace, "prop_side_place", "Plate to propeller-side bearing", unit.Millimetre).
			Within(0, 200).Typical(15, 50).From(estimate).
			Help("From the propeller plate's face to the middle of the bearing ahead of it."),
		param.Number(&s.Spacing, "bearing_spacing", "Bearing spacing", unit.Millimetre).
			Within(5, 300).Typical(20, 80).From(estimate).Help("Between the middles of the two bearings."),
		param.Choice(&s.Locating, "locating_bearing", "Locating bearing", PropSide, EngineSide).
			Help("The one bearing that takes the thrust; the other must be free to slide."),
		param.Number(&s.HousingGrowth, "housing_growth", "Growth of hub or case per 100 K", unit.Percent).
			Within(0, 1).Typical(0.11, 0.27).From("from memory: aluminium 0.23, magnesium 0.26, steel 0.115 %").
			Help("For the build sheet: what the outer rings sit in grows more than they do when it warms, and loosens them."),
		param.Choice(&s.Lubricant, "lubricant", "Lubricant of the bearings", bearing.Grease, bearing.Oil).
			Help("Sets the speed that the bearings bear."),
		param.Number(&s.Viscosity, "running_viscosity", "Oil viscosity, running", unit.SquareMillimetrePerSecond).
			Within(1, 1000).Typical(10, 40).From("from memory: an ISO VG 100 mineral oil has 19.5 at 80 °C").
			Help("Of the oil, or of the grease's base oil, at the bearings' running temperature."),
		param.Number(&s.Contamination, "contamination_factor", "Contamination factor", unit.One).
			Within(0, 0.3).Typical(0.1, 0.3).From("from memory: 0.1 to 0.3 with the dirt that a small drive lives in").
			Help("ISO 281; lower is dirtier."),
		param.Number(&s.ApplicationFactor, "application_factor", "Application factor", unit.One).
			Within(1, 3).Typical(1.1, 1.5).From(estimate).
			Help("Times the steady bearing loads, for what shakes them."),
	}
}

func (s *Spec) axleParams() []param.Param {
	const concentration = "from memory: sharp shoulder 2.7 bending, 2.2 torsion; fillet of a tenth of the diameter 1.7 and 1.5"
	return []param.Param{
		param.Number(&s.AxleDiameter, "axle_diameter", "Axle diameter", unit.Millimetre).
			Within(10, 50).Typical(15, 30).Help("Where a standing axle is held, or where the wheel sits on a turning one; at the bearings it is their bore."),
		param.Number(&s.AxleBore, "axle_bore", "Axle bore", unit.Millimetre).
			Within(0, 45).Typical(0, 15).Help("0 is a solid axle."),
		param.Number(&s.Held, "axle_held", "Bearing to where axle is held", unit.Millimetre).
			Within(0, 100).Typical(6, 20).From(estimate).When(s.Axle == StandsStill).
			Help("From the middle of the engine-side bearing ahead to the face that holds the standing axle."),
		param.Number(&s.Tensile, "tensile_strength", "Tensile strength of the axle", unit.Megapascal).
			Within(300, 2000).Typical(600, 1100).From("invented").Help("Of the steel as heat-treated."),
		param.Number(&s.Yield, "yield_strength", "Yield strength of the axle", unit.Megapascal).
			Within(200, 1800).Typical(400, 900).From("invented").Help("Of the steel as heat-treated."),
		param.Choice(&s.Surface, "axle_surface", "Axle surface", Ground, Machined, HotRolled, Forged).
			From(surfaceOrigin()).Help("At the shoulder or groove where a crack would start."),
		param.Number(&s.EnduranceReliability, "endurance_reliability", "Endurance reliability factor", unit.One).
			Within(0.6, 1).Typical(0.75, 1).From("from memory: 0.814 for 99 %, 1 for 50 %").
			Help("Lowers the endurance limit to what most specimens reach."),
		param.Number(&s.BendingConcentration, "bending_concentration", "Stress concentration, bending", unit.One).
			Within(1, 6).Typical(1.7, 2.7).From(concentration).Help("At shoulder, groove or keyseat, in bending."),
		param.Number(&s.TorsionConcentration, "torsion_concentration", "Stress concentration, torsion", unit.One).
			Within(1, 6).Typical(1.5, 2.2).From(concentration).When(s.Axle == Turns).
			Help("At shoulder, groove or keyseat, in torsion."),
		param.Number(&s.NotchSensitivity, "notch_sensitivity", "Notch sensitivity", unit.One).
			Within(0, 1).Typical(0.7, 1).From(estimate).Help("1 is the safe side; steels with small fillets have less."),
		param.Choice(&s.Criterion, "fatigue_criterion", "Fatigue criterion", Goodman, Soderberg, Gerber, ASMEElliptic).
			Help("Soderberg is the most careful, Gerber and ASME elliptic the closest to tests."),
		param.Number(&s.SafetyAsked, "axle_safety_asked", "Axle safety asked", unit.One).
			Within(1, 5).Typical(1.5, 3).From(estimate).Help("Least safety of the axle against fatigue and against yield."),
	}
}

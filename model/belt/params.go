package belt

import (
	"slices"

	"backspan/model/param"
	"backspan/model/pulley"
	"backspan/model/unit"
)

// Params lists what a builder may set, in the order a form shows it.
func (s *Spec) Params() []param.Param {
	return slices.Concat(s.driveParams(), s.Pulsing.params(s.Details), s.sectionParams(), s.stockParams(), s.Setting.params(s.Details),
		s.Rating.params(), s.Use.params(), s.Fatigue.params(s.Details), s.Build.Params(grooved), s.Upkeep.Params())
}

func (s *Spec) driveParams() []param.Param {
	return []param.Param{
		param.Choice(&s.Profile, "profile", "Profile", PJ, PK, PL, PM).
			Help("rib form after ISO 9982; PK suits this size of engine"),
		param.Whole(&s.Ribs, "ribs", "Ribs").Within(2, 20).Typical(6, 12),
		param.Number(&s.CrankDiameter, "crank_pulley_effective_diameter", "Crank pulley, effective diameter", unit.Millimetre).
			Within(20, 200).Typical(55, 80).Help("over the belt's effective line, not the pitch line"),
		param.Number(&s.DrivenDiameter, "driven_pulley_effective_diameter", "Driven pulley, effective diameter", unit.Millimetre).
			Within(20, 400).Typical(140, 220).Help("over the belt's effective line, not the pitch line"),
		param.Number(&s.CentreDistance, "centre_distance", "Centre distance", unit.Millimetre).
			Within(60, 500).Typical(140, 220).Help("between the pulley axes; the belt length follows"),
		param.Number(&s.ServiceFactor, "service_factor", "Service factor", unit.One).
			Within(1, 2.5).Typical(1.2, 1.6).Help("times the rated power gives the power the tension is set for").
			From("estimate: 1.4 for a single two-stroke turning a propeller"),
		param.Number(&s.TractionRatio, "traction_ratio", "Design tension ratio at 180°", unit.One).
			Within(2, 8).Typical(3.5, 5).Help("tight over slack contact tension that a design may count on").
			From("from memory: 4 for ribbed belts, RMA IP-26; 5 is the classical V-belt value"),
		param.Open(&s.StandingTension, "standing_tension", "Standing tension per strand", unit.Newton).
			Within(10, 5000).Typical(400, 1200).Help("as set at standstill; empty takes the required one"),
		param.Number(&s.DryFriction, "dry_friction", "Friction, dry belt", unit.One).
			Within(0.1, 0.8).Typical(0.25, 0.35).Help("rubber on metal before wedging in the grooves").
			From("from memory: 0.25 to 0.35"),
		param.Number(&s.WetFriction, "wet_friction", "Friction, wet belt", unit.One).
			Within(0.05, 0.5).Typical(0.12, 0.2).Help("rubber on metal before wedging, wet or oily").
			From("from memory: 0.12 to 0.2"),
		param.Number(&s.WornLoss, "worn_loss", "Traction lost by wear", unit.Percent).
			Within(0, 60).Typical(5, 20).Help("share of the dry skid pull that a worn belt has lost").
			From("Yu, Childs, Dalgarno & Day 1998, Proc IMechE D 212:333: about 10 % of the greatest traction after 250 h, PK").Apart(!s.Details),
		param.Number(&s.RatedEfficiency, "rated_efficiency", "Efficiency at rated power", unit.Percent).
			Within(80, 99.5).Typical(95.5, 98.5).Help("fixes the running resistance, so part load comes out worse").
			From("estimate: between 95 % for new V-belts and 97 to 99 % for toothed belts, University of Connecticut training text"),
		param.Number(&s.TemperatureMax, "temperature_limit", "Belt temperature limit", unit.Celsius).
			Within(50, 200).Typical(80, 120).Help("what the rubber compound bears in service").
			From("from memory: 80 to 100 °C chloroprene, 120 °C EPDM"),
	}
}

func (s *Spec) sectionParams() []param.Param {
	return []param.Param{
		param.Open(&s.LineDifferential, "line_differential", "Line differential", unit.Millimetre).
			Within(0, 10).Typical(1.2, 4).Help("effective to pitch radius; empty takes PJ 1.2, PK 2, PL 3, PM 4 mm").
			From(differentialOrigin),
		param.Open(&s.MassPerRib, "mass_per_rib", "Belt mass per rib", unit.GramPerMetre).
			Within(2, 300).Typical(8, 40).Help("per metre of belt; empty takes PJ 8.5, PK 17.5, PL 35, PM 115 g/m").
			From(massOrigin),
		param.Open(&s.StiffnessPerRib, "stiffness_per_rib", "Belt stiffness EA per rib", unit.Kilonewton).
			Within(2, 400).Typical(12, 80).Help("force per unit stretch; empty takes PJ 18.4, PK 28, PL 37, PM 73.9 kN, polyester cord; aramid is 2 to 3 times that").
			From(stiffnessOrigin),
	}
}

// grooved is the form of the pulleys.
var grooved = pulley.Form{
	Diameter: "effective diameter", Gaps: "grooves",
	UsualSideWall: 2, MostRim: 9, UsualRim: 7, LeastBore: 8, LeastSeat: 15,
}

func (s *Spec) stockParams() []param.Param {
	return []param.Param{
		param.Table(s.stockRows, s.setStock, "stock_lengths", "Lengths in stock",
			param.Column{Label: "effective length", Unit: unit.Millimetre, Min: 100, Max: 20000}).
			Rule(risingLengths).Help("belts that can be had; empty takes the preferred numbers R40 of ISO 3 within the profile's usual lengths"),
		param.Toggle(&s.Details, "details", "Show expert parameters").
			Help("constants from memory and estimates that a designer may replace by better ones"),
	}
}

package toothedbelt

import (
	"slices"

	"backspan/model/param"
	"backspan/model/pulley"
	"backspan/model/unit"
)

// Params lists what a builder may set, in the order a form shows it.
func (s *Spec) Params() []param.Param {
	return slices.Concat(s.driveParams(), s.sectionParams(), s.tableParams(), s.buildParams(), s.Upkeep.Params())
}

func (s *Spec) driveParams() []param.Param {
	return []param.Param{
		param.Choice(&s.Section, "section", "Belt section", H8M, MXL, XL, L, H, XH, XXH).
			Help("H8M is 8 mm pitch with curvilinear teeth and suits this size of engine; the others have trapezoidal teeth"),
		param.Whole(&s.CrankTeeth, "crank_teeth", "Crank pulley teeth").Within(10, 80).Typical(24, 40),
		param.Whole(&s.DrivenTeeth, "driven_teeth", "Driven pulley teeth").Within(10, 200).Typical(56, 112),
		param.Number(&s.BeltWidth, "belt_width", "Belt width", unit.Millimetre).
			Within(3, 130).Typical(20, 50).Help("ISO 13050 lists 20, 30, 50 and 85 mm for H8M"),
		param.Choice(&s.LaidOutBy, "laid_out_by", "Laid out by", ByBeltTeeth, ByCentreDistance).
			Help("the belt's teeth fix the centre distance, or a wanted centre distance picks the nearest whole belt"),
		param.Whole(&s.BeltTeeth, "belt_teeth", "Belt teeth").Within(20, 400).Typical(80, 140).
			Help("the belt's length in teeth; the centre distance follows").When(s.LaidOutBy != ByCentreDistance),
		param.Number(&s.CentreDistance, "centre_distance", "Centre distance wanted", unit.Millimetre).
			Within(60, 500).Typical(140, 220).Help("between the pulley axes; the nearest whole belt moves it a little").
			When(s.LaidOutBy == ByCentreDistance),
		param.Number(&s.ServiceFactor, "service_factor", "Service factor", unit.One).
			Within(1, 2.5).Typical(1.6, 2).Help("times the power gives the power that tension and rating must cover").
			From("estimate: 1.6 to 2.0 for a single two-stroke, since a toothed belt cannot slip"),
		param.Open(&s.StandingTension, "standing_tension", "Standing tension per strand", unit.Newton).
			Within(10, 5000).Typical(400, 1200).Help("as set at standstill; empty takes the required one"),
		param.Number(&s.RatedEfficiency, "rated_efficiency", "Efficiency at rated power", unit.Percent).
			Within(80, 99.5).Typical(97, 99).Help("fixes the running resistance, so part load comes out worse").
			From("estimate: 97 to 99 %, University of Connecticut training text"),
		param.Number(&s.LoadLossShare, "load_loss_share", "Loss that grows with load", unit.Percent).
			Within(0, 100).Typical(30, 70).Help("share of the rated loss, windage left out; the rest follows the belt's speed alone").
			From("estimate"),
		param.Number(&s.TemperatureMax, "temperature_limit", "Belt temperature limit", unit.Celsius).
			Within(50, 200).Typical(80, 120).Help("what the rubber compound bears in service").
			From("from memory: 80 to 100 °C chloroprene, 120 °C EPDM"),
		param.Open(&s.SpeedMax, "speed_limit", "Belt speed limit", unit.MetrePerSecond).
			Within(5, 120).Help("of the belt and pulleys you mean to use; empty leaves the speed unrated"),
	}
}

func (s *Spec) sectionParams() []param.Param {
	trapezoidal := s.Section.Trapezoidal()
	return []param.Param{
		param.Open(&s.LineDifferential, "line_differential", "Line differential", unit.Millimetre).
			Within(0, 3).Typical(0.25, 1.6).
			Help("outside to pitch radius of a pulley; empty takes H8M and H 0.686, MXL and XL 0.254, L 0.381, XH 1.397, XXH 1.524 mm").
			From(differentialOrigin),
		param.Open(&s.MassPerMillimetre, "mass_per_mm_width", "Belt mass per mm of width", unit.GramPerMetre).
			Within(0.2, 40).Typical(1, 20).
			Help("per metre of belt; empty takes MXL 1.09, XL 2.32, L 3.74, H8M 5.5, H 5.88, XH 14.6, XXH 19.5 g/m").
			From(massOrigin),
		param.Open(&s.StiffnessPerMillimetre, "stiffness_per_mm_width", "Belt stiffness EA per mm of width", unit.Kilonewton).
			Within(0.5, 100).Help("force per unit stretch; empty leaves take-up unrated and takes the belt as rigid at peak torque"),
		param.Number(&s.LossFactor, "loss_factor", "Loss factor of the belt", unit.One).
			Within(0.02, 0.5).Typical(0.1, 0.15).Help("damping of the belt as a spring; used when its stiffness is given").
			From("estimate: 0.1 to 0.15"),
		param.Open(&s.AllowableTension, "allowable_tension", "Allowable tension, base width", unit.Newton).
			Within(1, 20000).Help("empty takes MXL 27, XL 50.17, L 244.46, H 2100.85, XH 4048.9, XXH 6398.03 N").
			From(allowableOrigin).When(trapezoidal),
		param.Open(&s.BaseWidth, "base_width", "Base width of that tension", unit.Millimetre).
			Within(3, 150).Help("empty takes MXL 6.4, XL 9.5, L 25.4, H 76.2, XH 101.6, XXH 127 mm").
			From(allowableOrigin).When(trapezoidal),
	}
}

func (s *Spec) tableParams() []param.Param {
	curvilinear := !s.Section.Trapezoidal()
	return []param.Param{
		param.Table(s.rows, s.setRows, "power_table", "Power table",
			param.Column{Label: "crank teeth", Unit: unit.Count, Min: 10, Max: 80},
			param.Column{Label: "crank speed", Unit: unit.RPM, Min: 1, Max: 20000},
			param.Column{Label: "power", Unit: unit.Kilowatt, Min: 0.001, Max: 1000}).
			Rows(2).Rule(tableInOrder).
			Help("rated power at the table's belt width; without it curvilinear teeth are not rated").When(curvilinear),
		param.Text(&s.TableSource, "power_table_source", "Source of the power table").
			Help("where the table stands; without it the table is not used").When(curvilinear),
		param.Number(&s.TableWidth, "power_table_width", "Belt width of the power table", unit.Millimetre).
			Within(3, 150).Typical(20, 20).From("common practice, no source").When(curvilinear),
		param.Number(&s.LengthFactor, "length_factor", "Length factor of the power table", unit.One).
			Within(0.5, 1.5).Typical(0.8, 1.2).Help("from the table's source for this belt length; 1 leaves the table as it is").
			From("estimate").When(curvilinear),
	}
}

// toothed is the form of the pulleys.
var toothed = pulley.Form{
	Diameter: "outside diameter", Gaps: "tooth gaps", SideWall: "the flange that keeps the belt on the pulley",
	UsualSideWall: 1.5, MostRim: 15, UsualRim: 8, LeastBore: 3, LeastSeat: 10,
}

// buildParams has the face after the clearance, where it adds to the depth.
func (s *Spec) buildParams() []param.Param {
	return slices.Insert(s.Build.Params(toothed), 1,
		param.Number(&s.FaceAllowance, "face_allowance", "Pulley face beyond belt width", unit.Millimetre).
			Within(0, 15).Typical(1, 4).From("estimate"))
}

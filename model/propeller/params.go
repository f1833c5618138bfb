package propeller

import (
	"fmt"

	"backspan/model/param"
	"backspan/model/unit"
)

// Params lists what a user may set, in the order a form shows it.
func (s *Spec) Params() []param.Param {
	return append(append(append(s.bladeParams(), s.sectionParams()...), s.bodyParams()...), s.useParams()...)
}

func (s *Spec) bladeParams() []param.Param {
	nominal := s.Shape != Stations
	return []param.Param{
		param.Whole(&s.Blades, "blades", "Blades").Within(1, 6).Typical(2, 4).
			Help("1 is a single blade with a counterweight: what carries it is then not rated"),
		param.Number(&s.Diameter, "diameter", "Diameter", unit.Millimetre).Within(600, 2000).Typical(1000, 1400),
		param.Choice(&s.Shape, "shape", "Blade given by", NominalPitch, Stations).
			Help("nominal pitch and an outline, or chord and angle at stations along the blade"),
		param.Number(&s.Pitch, "pitch", "Nominal pitch", unit.Millimetre).Within(200, 1200).Typical(450, 800).
			Help("advance in one turn without slip, the same at every radius").When(nominal),
		param.Choice(&s.Planform, "planform", "Planform", Tapered, Elliptic, BroadTip).
			Help("outline outboard of the greatest chord").When(nominal),
		param.Number(&s.RootChord, "root_chord", "Root chord", unit.Millimetre).Within(20, 250).Typical(50, 110).
			Help("at the hub cut-out radius").When(nominal),
		param.Number(&s.GreatestChord, "greatest_chord", "Greatest chord", unit.Millimetre).Within(30, 250).Typical(80, 140).When(nominal),
		param.Number(&s.TipChord, "tip_chord", "Tip chord", unit.Millimetre).Within(5, 200).Typical(25, 80).When(nominal),
		param.Number(&s.GreatestAt, "greatest_chord_at", "Greatest chord, share of radius", unit.Percent).Within(20, 70).Typical(30, 50).
			Help("radius of the greatest chord as a share of the tip radius").When(nominal),
		s.rowsParam().When(!nominal),
		param.Number(&s.PitchTrim, "pitch_trim", "Pitch trim", unit.Degree).Within(-8, 8).Typical(-3, 3).
			Help("turns the whole blade, positive to coarser pitch"),
		param.Number(&s.HubRadius, "hub_radius", "Hub cut-out radius", unit.Millimetre).Within(50, 250).Typical(60, 120).
			Help("where the lifting part of the blade begins"),
		param.Toggle(&s.HubLoss, "hub_loss", "Loss at the hub").
			Help("lift falls to nothing at the cut-out; say no behind a closed spinner"),
	}
}

func (s *Spec) rowsParam() param.Param {
	return param.Table(func() [][]float64 { return cloneRows(s.Rows) }, func(rows [][]float64) { s.Rows = rows }, "stations", "Blade stations",
		param.Column{Label: "share of radius", Unit: unit.One, Min: 0.05, Max: 1},
		param.Column{Label: "chord", Unit: unit.Millimetre, Min: 2, Max: 300},
		param.Column{Label: "blade angle", Unit: unit.Degree, Min: -5, Max: 75}).
		Rows(4).Rule(radiusRises).
		Help("from root to tip; inside the first and outside the last row the blade is held as there")
}

func radiusRises(rows [][]float64) error {
	for i := 1; i < len(rows); i++ {
		if rows[i][0] <= rows[i-1][0] {
			return fmt.Errorf("row %d: the share of radius must rise from row to row", i+1)
		}
	}
	return nil
}

func (s *Spec) sectionParams() []param.Param {
	own, guess := s.Family == OwnFigures, "estimate"
	return []param.Param{
		param.Choice(&s.Family, "section", "Blade section", FlatBottomed, ThinSection, OwnFigures, OwnPolar).
			Help("generic polars with stall are estimates; own polar takes measured or computed rows").From(guess),
		s.polarParam().When(s.Family == OwnPolar),
		param.Number(&s.Own.ZeroLiftAngle, "zero_lift_angle", "Zero-lift angle", unit.Degree).Within(-8, 0).From(guess).When(own),
		param.Number(&s.Own.LiftSlope, "lift_slope", "Lift slope per radian", unit.One).Within(4.5, 6.8).From(guess).When(own),
		param.Number(&s.Own.GreatestLift, "greatest_lift", "Greatest lift coefficient", unit.One).Within(1, 2).
			Help("at a Reynolds number of one million").From(guess).When(own),
		param.Number(&s.Own.LeastLift, "least_lift", "Least lift coefficient", unit.One).Within(-1.5, -0.3).From(guess).When(own),
		param.Number(&s.Own.LeastDrag, "least_drag", "Least drag coefficient", unit.One).Within(0.004, 0.03).
			Help("at a Reynolds number of one million").From(guess).When(own),
		param.Number(&s.Own.LeastDragLift, "least_drag_lift", "Lift coefficient of least drag", unit.One).Within(0, 0.9).From(guess).When(own),
		param.Number(&s.Own.DragRise, "drag_rise", "Drag rise with lift squared", unit.One).Within(0, 0.03).From(guess).When(own),
		param.Number(&s.Own.DragReynolds, "drag_reynolds_exponent", "Drag exponent of Reynolds number", unit.One).Within(-0.6, 0).
			Help("-0.2 for a turbulent boundary layer").From(guess).When(own),
		param.Number(&s.Own.SeparationDrag, "separation_drag", "Separation drag before stall", unit.One).Within(0, 0.4).From(guess).When(own),
		param.Number(&s.RootThickness, "root_thickness", "Root thickness to chord", unit.Percent).Within(8, 40).Typical(14, 25).From(guess),
		param.Number(&s.TipThickness, "tip_thickness", "Tip thickness to chord", unit.Percent).Within(5, 20).Typical(8, 13).From(guess),
	}
}

// PolarColumns are the columns of a measured polar, with what each may hold.
func PolarColumns() []param.Column {
	return []param.Column{
		{Label: "angle of attack", Unit: unit.Degree, Min: -60, Max: 60},
		{Label: "lift", Unit: unit.One, Min: -3, Max: 4},
		{Label: "drag", Unit: unit.One, Min: 0.001, Max: 3},
		{Label: "Reynolds number", Unit: unit.One, Min: 1e3, Max: 1e8},
	}
}

func (s *Spec) polarParam() param.Param {
	return param.Table(func() [][]float64 { return cloneRows(s.Polar) }, func(rows [][]float64) { s.Polar = rows }, "polar", "Section polar", PolarColumns()...).
		Rows(leastPolarRows).Rule(PolarFits).
		Help("two-dimensional, low Mach number; lowest Reynolds number first, from below zero lift past stall; \"backspan polar\" reads a CSV file")
}

func (s *Spec) bodyParams() []param.Param {
	return []param.Param{
		param.Number(&s.BossDiameter, "boss_diameter", "Boss diameter", unit.Millimetre).Within(50, 250).Typical(90, 130),
		param.Number(&s.BossThickness, "boss_thickness", "Boss thickness", unit.Millimetre).Within(8, 100).Typical(20, 50).
			Help("from the propeller plate to the boss's aft face"),
		param.Number(&s.Density, "density", "Mean density of the blade", unit.KilogramPerCubicMetre).Within(200, 2000).Typical(500, 1500).
			Help("of the whole body: wood, or shell and core together").From("estimate"),
		param.Open(&s.Mass, "mass", "Mass, weighed", unit.Kilogram).Within(0.1, 10).
			Help("leave empty to have it found from volume and density"),
		param.Open(&s.Inertia, "inertia", "Inertia about the shaft, measured", unit.KilogramSquareMetre).Within(0.001, 2).
			Help("leave empty to have it integrated along the blade"),
	}
}

func (s *Spec) useParams() []param.Param {
	return []param.Param{
		param.Number(&s.HubDrag, "hub_drag", "Drag coefficient of the boss", unit.One).Within(0, 1.5).
			Help("of its face in the propeller's inflow: 1.1 bare, 0.2 under a spinner").From("from memory: drag of a disc across the wind"),
		param.Number(&s.InstallationLoss, "installation_loss", "Thrust lost to body and cage", unit.Percent).Within(0, 30).Typical(5, 15).
			Help("share of the isolated thrust that a pusher behind pilot and cage does not give").From("from memory: range uncertain"),
		param.Number(&s.TipMachLimit, "tip_mach_limit", "Tip Mach number allowed", unit.One).Within(0.3, 0.9).Typical(0.5, 0.65).
			Help("for noise").From("common practice, no source"),
		param.Number(&s.StallMarginAsked, "stall_margin_asked", "Stall margin asked", unit.Degree).Within(0, 10).Typical(2, 5).
			From("common practice, no source"),
		param.Choice(&s.BalanceGrade, "balance_grade", "Balance grade of the propeller", G1, G2, G6, G16, G40).From(BalanceStandard + ", G 6.3 as for fans").
			Help("For the build sheet: mm/s of the centre of mass round the axis, at the highest speed that the engine is allowed."),
		param.Number(&s.TrackingLimit, "tracking_limit", "Tracking of the blades, at most", unit.Millimetre).Within(0.1, 20).Typical(1.5, 3).
			Help("for the build sheet: how far one tip may pass ahead of the other").From("common practice, no source"),
	}
}

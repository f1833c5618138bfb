package bolt

import (
	"slices"

	"backspan/model/param"
	"backspan/model/unit"
)

const (
	practice = "common practice, no source"
	estimate = "estimate"
)

// Params lists what a builder may set, in the order a form shows it.
func (s *Spec) Params() []param.Param {
	return slices.Concat(s.boltParams(), s.tighteningParams(), s.hubParams(), s.dutyParams())
}

func (s *Spec) boltParams() []param.Param {
	return []param.Param{
		param.Whole(&s.Count, "count", "Propeller bolts").Within(3, 16).Typical(4, 8).From(practice).
			Help("Bolts through the propeller's hub into the plate."),
		param.Choice(&s.Size, "size", "Bolt size", M5, M6, M8, M10, M12).From(practice).Help("Metric coarse thread."),
		param.Choice(&s.Class, "property_class", "Property class", Class8, Class10, Class12).
			From(classOrigin()).Help("Yield strength 640, 940 or 1100 MPa."),
		param.Number(&s.BoltCircle, "bolt_circle", "Bolt circle", unit.Millimetre).
			Within(30, 200).Typical(50, 120).From(practice).Help("Diameter of the circle through the bolts' middles."),
	}
}

func (s *Spec) tighteningParams() []param.Param {
	const lowest = "The lowest to be expected, since it gives the greatest preload."
	return []param.Param{
		param.Number(&s.ThreadFriction, "thread_friction", "Friction in the thread", unit.One).
			Within(0.04, 0.4).Typical(0.08, 0.16).From("from memory: VDI 2230, 0.08 to 0.16 lightly oiled").Help(lowest),
		param.Number(&s.HeadFriction, "head_friction", "Friction under the head", unit.One).
			Within(0.04, 0.4).Typical(0.08, 0.16).From("from memory: VDI 2230, 0.08 to 0.16 lightly oiled").Help(lowest),
		param.Open(&s.TighteningTorque, "tightening_torque", "Tightening torque", unit.NewtonMetre).
			Within(0.5, 150).Typical(5, 50).From("computed: what a wooden hub of 110 mm bears under six M8").
			Help("Leave empty to tighten to the yield utilisation instead."),
		param.Number(&s.YieldUse, "yield_use", "Yield used in tightening", unit.Percent).
			Within(20, 90).Typical(50, 90).From("from memory: VDI 2230, 90 %").When(!s.TighteningTorque.Known).
			Help("Share of the yield strength that tension and twist of tightening use together."),
		param.Number(&s.TighteningFactor, "tightening_factor", "Tightening factor", unit.One).
			Within(1, 4).Typical(1.4, 2.5).From("from memory: VDI 2230, 1.6 to 2 with a torque wrench").
			Help("Greatest over least preload of bolts tightened in the same way."),
		param.Number(&s.WrenchError, "wrench_error", "Torque wrench, plus or minus", unit.Percent).
			Within(0, 30).Typical(4, 10).From("from memory: ISO 6789, 4 to 6 %").Help("For the build sheet: how far the torque itself may be off."),
		param.Number(&s.SettlingLoss, "settling_loss", "Preload lost by settling", unit.Percent).
			Within(0, 30).Typical(5, 15).From("estimate: 10 to 15 %").Help("Share of the least preload that goes as the surfaces bed in."),
		param.Number(&s.SeasonLoss, "season_loss", "Preload lost by drying wood", unit.Percent).
			Within(0, 60).Typical(10, 40).From(estimate).When(s.Hub == Wood).
			Help("Share of the least preload that warmth and dry air take between two tightenings; a hub that dries out may lose most of it."),
	}
}

func (s *Spec) hubParams() []param.Param {
	return []param.Param{
		param.Choice(&s.Hub, "hub_material", "Hub material", Wood, Composite, Metal).
			Help("What the plate presses on; a composite blade on a wooden hub block counts as wood."),
		param.Number(&s.HubFriction, "hub_friction", "Friction of hub on plate", unit.One).
			Within(0.05, 0.6).Typical(0.15, 0.3).From("estimate: 0.20 to 0.25 for wood or composite on metal").When(s.Hub != Metal).
			Help("Varnish and oil lower it."),
		param.Number(&s.MetalFlange, "metal_friction", "Friction of metal hub on plate", unit.One).
			Within(0.05, 0.4).Typical(0.1, 0.2).From("from memory: 0.15 dry machined metal").When(s.Hub == Metal).
			Help("Oil lowers it."),
		param.Whole(&s.Surfaces, "friction_surfaces", "Friction surfaces").Within(1, 4).Typical(1, 2).
			Help("Surfaces that carry the torque: 1 where the front plate only rides along on the bolts."),
		param.Number(&s.WoodCrush, "wood_crush_allowed", "Pressure allowed on wood", unit.Megapascal).
			Within(0.5, 100).Typical(4, 12).From("from memory: USDA Wood Handbook, across the grain beech and birch 7, maple 10 MPa").When(s.Hub == Wood).
			Help("Across the grain."),
		param.Open(&s.OtherCrush, "hub_crush_allowed", "Pressure allowed on the hub", unit.Megapascal).
			Within(0.5, 1000).Typical(10, 200).When(s.Hub != Wood).
			Help("From the propeller's maker; without it the crush pressure is not rated."),
		param.Number(&s.Plate, "plate_diameter", "Plate diameter", unit.Millimetre).
			Within(40, 250).Typical(70, 140).Help("Of the loose plate under the bolt heads, or of the hub's face in a direct drive; the least of it, the drive's own flange and the propeller's boss counts."),
		param.Number(&s.Bore, "plate_bore", "Bore of hub and plate", unit.Millimetre).
			Within(0, 150).Typical(0, 50).Help("The larger of the two."),
	}
}

func (s *Spec) dutyParams() []param.Param {
	return []param.Param{
		param.Number(&s.PeakOverMean, "peak_over_mean_torque", "Peak over mean propeller torque", unit.One).
			Within(1, 10).Typical(3, 7).From("estimate: a single cylinder through a stiff drive").
			Help("Used only where what the drive passes is not known."),
		param.Number(&s.SlipAsked, "slip_safety_asked", "Slip safety asked", unit.One).
			Within(1, 5).Typical(1.5, 2.5).From("from memory: VDI 2230, 1.8 where the torque changes").
			Help("Slip torque over peak torque; less is thin, below 1 the hub slips."),
	}
}

package coupling

import (
	"slices"

	"backspan/model/param"
	"backspan/model/unit"
)

// Params lists what a user may set, in the order a form shows it.
func (s *Spec) Params() []param.Param {
	return slices.Concat(s.bodyParams(), s.springParams(), s.clutchParams())
}

func (s *Spec) bodyParams() []param.Param {
	return []param.Param{
		param.Choice(&s.Kind, "coupling_kind", "Coupling to the crank", Rigid, Elastic, Clutch).
			Help("A clutch lets the engine idle without the propeller; the other kinds turn it whenever the engine turns, also at the start."),
		param.Number(&s.Depth, "coupling_depth", "Coupling depth", unit.Millimetre).Within(0, 120).Typical(20, 45).
			From("common practice, no source").Help("From the engine's drive face to the case: a centrifugal clutch and its bell, or a damper."),
		param.Number(&s.Mass, "coupling_mass", "Coupling mass", unit.Kilogram).Within(0, 5).Typical(0.4, 1).
			From("estimate").Help("Clutch or damper with its bell and housing."),
		param.Open(&s.EngineInertia, "coupling_engine_inertia", "Coupling inertia, engine half", unit.KilogramSquareMetre).
			Within(0, 0.1).Typical(1e-4, 2e-3).Help("Of what turns with the crank, such as a clutch's shoes; empty takes half of a solid disc of 90 mm of the coupling's mass."),
		param.Open(&s.DriveInertia, "coupling_drive_inertia", "Coupling inertia, drive half", unit.KilogramSquareMetre).
			Within(0, 0.1).Typical(1e-4, 2e-3).Help("Of what turns with the pinion, such as a clutch's bell; empty takes the other half of that disc."),
	}
}

func (s *Spec) springParams() []param.Param {
	return []param.Param{
		param.Open(&s.Stiffness, "coupling_stiffness", "Coupling stiffness", unit.NewtonMetrePerRadian).Within(10, 100000).Typical(100, 2000).
			When(s.Kind != Rigid).Help("Torque per radian of twist between crank and pinion; empty is rigid."),
		param.Number(&s.Damping, "coupling_damping", "Coupling damping", unit.Percent).Within(0.5, 50).Typical(5, 10).
			When(s.Spring().Known).From("estimate: 5 to 10 %").Help("Of the critical damping; matters near resonance only."),
		param.Open(&s.TorqueAllowed, "coupling_torque_allowed", "Coupling torque allowed", unit.NewtonMetre).Within(1, 5000).Typical(30, 300).
			When(s.Spring().Known).Help("Greatest torque that its rubber or springs bear, from the coupling's maker."),
	}
}

func (s *Spec) clutchParams() []param.Param {
	clutch := s.Kind == Clutch
	shoes := clutch && !s.Torque.Known
	return []param.Param{
		param.Number(&s.TakeUp, "clutch_take_up_speed", "Clutch takes hold at", unit.RPM).Within(500, 12000).Typical(2500, 4500).
			When(clutch).From("estimate").Help("Crank speed at which the shoes touch the drum; keep it well above the highest idle."),
		param.Open(&s.Torque, "clutch_torque", "Clutch torque", unit.NewtonMetre).Within(0.5, 1000).Typical(20, 150).
			When(clutch).Help("What the clutch carries at the speed below; empty reckons it from the shoes."),
		param.Number(&s.TorqueSpeed, "clutch_torque_speed", "Speed of the clutch torque", unit.RPM).Within(1000, 15000).Typical(4000, 9000).
			When(clutch && s.Torque.Known).Help("Crank speed at which the clutch carries that torque."),
		param.Whole(&s.Shoes, "clutch_shoes", "Clutch shoes").Within(1, 8).Typical(2, 4).When(shoes).
			Help("Shoes that press on the drum."),
		param.Open(&s.ShoeMass, "clutch_shoe_mass", "Mass of one shoe", unit.Gram).Within(5, 2000).Typical(50, 250).When(shoes).
			Help("With its lining."),
		param.Number(&s.ShoeRadius, "clutch_shoe_radius", "Shoe's centre of gravity at", unit.Millimetre).Within(5, 150).Typical(25, 50).
			When(shoes).From("estimate").Help("Distance from the crank's axis."),
		param.Number(&s.Drum, "clutch_drum_diameter", "Clutch drum, inside", unit.Millimetre).Within(30, 300).Typical(70, 120).
			When(shoes).From("estimate").Help("Diameter on which the linings rub."),
		param.Number(&s.Friction, "clutch_friction", "Friction of the linings", unit.One).Within(0.05, 0.8).Typical(0.25, 0.4).
			When(shoes).From("from memory: 0.25 to 0.4 dry; much less with oil on it").Help("Dry lining on the drum; heat and oil lower it."),
	}
}

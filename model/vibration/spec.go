package vibration

import (
	"backspan/model/param"
	"backspan/model/unit"
)

// Spec is what a user sets.
type Spec struct {
	Counterweight float64     // share of the reciprocating mass that the crank balances
	Places        [][]float64 // of the mounts: behind the mount face, to the right, above the crank axis, m
	Axial         float64     // stiffness of one mount along the thrust axis, N/m
	Shear         float64     // across it, N/m
	StaticShare   float64     // stiffness under a steady load over that while it shakes
	Damping       float64     // share of the critical
	// First harmonic of the torque pulses while starting, N·m; without it the
	// engine's own without load.
	StartingCouple param.Slot
	ExhaustRides   bool    // the exhaust hangs on the engine, not on the frame
	ClearanceLeft  float64 // asked between tip and guard after sag, m
	PassedLimit    float64 // share of the first order's force that may reach the frame
}

// Default is four rubber mounts about the crank axis.
func Default() Spec {
	return Spec{Counterweight: 0.5, Axial: 150e3, Shear: 60e3, StaticShare: 0.83, Damping: 0.07, ExhaustRides: true, ClearanceLeft: 0.025, PassedLimit: 0.5,
		Places: [][]float64{{-0.015, -0.11, -0.11}, {-0.015, 0.11, -0.11}, {-0.015, -0.11, 0.11}, {-0.015, 0.11, 0.11}}}
}

// Clone is a copy that shares nothing with s.
func (s Spec) Clone() Spec {
	s.Places = copied(s.Places)
	return s
}

func copied(rows [][]float64) [][]float64 {
	out := make([][]float64, len(rows))
	for i, r := range rows {
		out[i] = append([]float64(nil), r...)
	}
	return out
}

const (
	invented = "invented"
	estimate = "estimate"
)

// Params lists what a user may set.
func (s *Spec) Params() []param.Param {
	return []param.Param{
		param.Table(func() [][]float64 { return copied(s.Places) }, func(rows [][]float64) { s.Places = copied(rows) }, "places", "Places of the mounts",
			param.Column{Label: "aft of mount face", Unit: unit.Millimetre, Min: -400, Max: 400},
			param.Column{Label: "to the right", Unit: unit.Millimetre, Min: -400, Max: 400},
			param.Column{Label: "above crank axis", Unit: unit.Millimetre, Min: -400, Max: 500}).Rows(3).
			Help("middle of the rubber, one row a mount, three or more that do not stand in one line").From(invented),
		param.Number(&s.Axial, "axial_stiffness", "Mount stiffness along thrust", unit.NewtonPerMillimetre).
			Within(1, 5000).Typical(50, 400).From(estimate).Help("of one mount, while it shakes"),
		param.Number(&s.Shear, "shear_stiffness", "Mount stiffness across thrust", unit.NewtonPerMillimetre).
			Within(1, 5000).Typical(20, 150).From(estimate).Help("of one mount, up and sideways, while it shakes"),
		param.Number(&s.StaticShare, "static_share", "Stiffness under steady load", unit.Percent).
			Within(30, 100).Typical(70, 95).From("from memory: rubber gives about a fifth more when loaded slowly").
			Help("of that while it shakes; weight, thrust and torque sag by it"),
		param.Number(&s.Damping, "damping", "Damping of the mounts", unit.Percent).
			Within(0.5, 40).Typical(4, 12).From("from memory: 5 to 10 % of the critical for rubber").Help("share of the critical"),
		param.Number(&s.Counterweight, "counterweight", "Reciprocating mass balanced", unit.Percent).
			Within(0, 100).Typical(40, 65).From("from memory: about half for a single cylinder").
			Help("by the crank's counterweight, besides all that rotates"),
		param.Open(&s.StartingCouple, "starting_couple", "Torque pulse while starting", unit.NewtonMetre).
			Within(0, 500).Typical(10, 80).Help("height of the couple that a firing pulse puts on the engine while it starts and stops; empty: the engine's own pulsation without load"),
		param.Toggle(&s.ExhaustRides, "exhaust_rides", "Exhaust hangs on the engine").
			Help("no: it hangs on the frame and does not swing along"),
		param.Number(&s.ClearanceLeft, "clearance_left", "Tip clearance asked after sag", unit.Millimetre).
			Within(0, 300).Typical(15, 40).From(estimate).Help("between propeller tip and guard under weight, thrust, torque and the swing of starting"),
		param.Number(&s.PassedLimit, "passed_limit", "Shaking that may reach the frame", unit.Percent).
			Within(1, 300).Typical(20, 60).From(estimate).Help("of the force once a turn; guide value"),
	}
}

package safety

import (
	"math"

	"backspan/model/param"
)

// Input is what the machine brings. SI.
type Input struct {
	TipClearance      float64    // propeller tip to guard at rest, m
	PropellerDiameter float64    // m
	PropellerInertia  float64    // of what turns with the propeller, about the shaft, kg·m²
	PropellerSpeed    param.Slot // full throttle standing, rad/s; empty without a working point
	// How far the foremost tip comes forward, and the tips across the thrust
	// axis, at full throttle standing, m; empty where the mounts are not solved.
	TipForward, TipShift param.Slot
	Swings               bool // the swing while crossing a mount mode is in them
}

// Result is what there is to be careful of.
type Result struct {
	Spec Spec

	HoopGive     float64    // m
	Forward      param.Slot // the way of the foremost tip that is counted, m
	Shift        param.Slot // of the tips across the thrust axis, m
	Swings       bool
	TipGap       float64    // tip to guard with the hoop pushed in, m
	PressedNet   float64    // net to blades with the net pressed, m
	Reach        float64    // through the net, m
	SpinEnergy   param.Slot // J
	TipSpeed     param.Slot // m/s
	ChipEnergy   param.Slot // J
	HottestKnown param.Slot // of the surfaces measured, K
}

// chipRadius is where the piece breaks off, share of the radius.
const chipRadius = 0.9

// Examine finds the gaps and energies of a machine:
//
//	hoop gives     F / k
//	tip gap        gap at rest − hoop gives − way of the tips across
//	net pressed    gap at rest − net gives − way of the tips forward
//	energy         ½·J·ω²
//	tip speed      ω·R
//	piece          ½·m·(0.9·R·ω)²
//
// Source: mechanics.
func Examine(s Spec, in Input) Result {
	r := Result{Spec: s, HoopGive: s.HoopPush / s.HoopStiffness, Reach: Reach(s.Shape, s.Opening),
		Forward: in.TipForward, Shift: in.TipShift, Swings: in.Swings}
	r.TipGap = in.TipClearance - r.HoopGive - in.TipShift.Value
	// A tip that the mounts let come back never counts as room.
	r.PressedNet = s.NetToBlade - s.NetGive - math.Max(0, in.TipForward.Value)
	if in.PropellerSpeed.Known {
		w := in.PropellerSpeed.Value
		tip := w * in.PropellerDiameter / 2
		r.SpinEnergy, r.TipSpeed = param.Finite(in.PropellerInertia*w*w/2), param.Finite(tip)
		r.ChipEnergy = param.Finite(s.ChipMass * chipRadius * chipRadius * tip * tip / 2)
	}
	for _, t := range []param.Slot{s.ExhaustSurface, s.HeadSurface} {
		if t.Known && (!r.HottestKnown.Known || t.Value > r.HottestKnown.Value) {
			r.HottestKnown = t
		}
	}
	return r
}

package coupling

import (
	"backspan/model/param"
	"backspan/model/unit"
)

// Kind is a kind of coupling.
type Kind string

// The kinds.
const (
	Rigid   Kind = "rigid"
	Elastic Kind = "elastic coupling"
	Clutch  Kind = "centrifugal clutch"
)

// Spec is what a user sets. SI units; speeds of the crank in rad/s.
type Spec struct {
	Kind          Kind
	Depth         float64
	Mass          float64
	EngineInertia param.Slot // of what turns with the crank
	DriveInertia  param.Slot // of what turns with the pinion
	Stiffness     param.Slot // rigid when empty
	Damping       float64    // of the critical
	TorqueAllowed param.Slot // on an elastic coupling, N·m

	// A clutch.
	TakeUp      float64 // speed at which it takes hold
	Torque      param.Slot
	TorqueSpeed float64 // at which it has that torque
	Shoes       int
	ShoeMass    param.Slot // of one
	ShoeRadius  float64    // of its centre of gravity
	Drum        float64    // inside diameter
	Friction    float64
}

// Default is an elastic coupling whose stiffness is still to be given.
func Default() Spec {
	return Spec{
		Kind: Elastic, Depth: 30e-3, Mass: 0.7, Damping: 0.08,
		TakeUp: unit.RPM.SI(3000), TorqueSpeed: unit.RPM.SI(6000),
		Shoes: 2, ShoeRadius: 35e-3, Drum: 90e-3, Friction: 0.3,
	}
}

// None is no coupling at all: what drives and what is driven are fast on one
// shaft.
func None() Spec { return Spec{Kind: Rigid} }

// Radius is that of a solid disc which stands for the coupling, m; an estimate.
const Radius = 45e-3

// Inertias are those of the halves that turn with the crank and with the
// pinion, kg·m². Where not given, each is half of a solid disc of the
// coupling's mass.
func (s *Spec) Inertias() (engine, drive float64) {
	half := s.Mass * Radius * Radius / 4
	engine, drive = half, half
	if s.EngineInertia.Known {
		engine = s.EngineInertia.Value
	}
	if s.DriveInertia.Known {
		drive = s.DriveInertia.Value
	}
	return engine, drive
}

// Spring is the stiffness between both halves, N·m/rad, empty where they turn
// as one.
func (s *Spec) Spring() param.Slot {
	if s.Kind == Rigid {
		return param.Slot{}
	}
	return s.Stiffness
}

// OutAt reports whether a clutch lets the crank turn at a speed, rad/s, without
// taking the pinion along.
func (s *Spec) OutAt(speed float64) bool { return s.Kind == Clutch && speed < s.TakeUp }

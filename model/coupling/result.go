package coupling

import "backspan/model/param"

// Load is what the coupling works under at one duty. Speeds of the crank.
type Load struct {
	Torque        float64    // mean, N·m
	Peak          param.Slot // greatest through the coupling, N·m
	RunUpPeak     param.Slot // greatest on the way up to the duty, at most, N·m
	DampingHeat   param.Slot // what the coupling's damping turns to heat, W
	Speed         float64    // rad/s
	IdleSpeed     param.Slot // rad/s
	EngineInertia float64    // before the coupling, kg·m²; 0 when not known
	DriveInertia  float64    // behind it, seen from the crank, kg·m²; 0 when not known
}

// Result is the coupling at one duty.
type Result struct {
	Kind                        Kind
	EngineInertia, DriveInertia float64 // of the halves, kg·m²

	Load     Load
	Spring   param.Slot // stiffness, N·m/rad; empty where both halves turn as one
	Allowed  param.Slot // torque on the spring, N·m
	Why      string     // why the clutch's torque is not known
	TakeUp   float64    // rad/s
	Capacity param.Slot // torque the clutch carries at the duty's speed, N·m
	Locks    param.Slot // crank speed from which it slips no more, rad/s
	SlipHeat param.Slot // most, at a steady speed between take-up and grip, W
	SlipAt   float64    // crank speed of that, rad/s
	Heat     param.Slot // of one take-up, J
}

// Examine finds how the coupling fares.
func (s *Spec) Examine(l Load) Result {
	g := s.grip()
	r := Result{Kind: s.Kind, Load: l, Spring: s.Spring(), Allowed: s.TorqueAllowed, Why: g.why, TakeUp: s.TakeUp}
	r.EngineInertia, r.DriveInertia = s.Inertias()
	if s.Kind != Clutch || !(l.Torque > 0) || !(l.Speed > 0) {
		return r
	}
	r.Capacity = g.torque(l.Speed)
	r.Locks = g.locks(l.Torque, l.Speed)
	r.SlipHeat, r.SlipAt = g.slipHeat(l.Torque, l.Speed)
	engine, drive := l.EngineInertia+r.EngineInertia, l.DriveInertia+r.DriveInertia
	if r.Locks.Known && l.EngineInertia > 0 && l.DriveInertia > 0 {
		r.Heat = param.Known(Heat(engine, drive, r.Locks.Value))
	}
	return r
}

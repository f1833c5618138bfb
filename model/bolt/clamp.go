package bolt

import (
	"math"

	"backspan/model/param"
)

// Load is what drive and propeller put on the joint.
type Load struct {
	Torque          float64    // of the propeller, mean, N·m
	TorqueAmplitude param.Slot // of its swing, N·m, where the drive knows it
	Thrust          float64    // N
	HubDiameter     float64    // of the propeller's hub, m
	HubThickness    float64    // m
	Flange          Flange
}

// Result is the joint under its load. Stresses and pressures Pa, per bolt
// where not said otherwise.
type Result struct {
	Count      int
	Hub        Material
	SwingKnown bool // the peak is the drive's own, not mean times a factor
	TorqueSet  bool // tightened to a torque that the builder chose

	Face   float64 // diameter that flange, plate and hub share, m
	Edge   Edge    // what ends it
	Flange string  // name of the drive's parameter of its flange, if it has one

	TighteningTorque float64 // N·m
	FullTorque       float64 // that uses 90 % of the yield strength, N·m
	Preload          float64 // greatest, N
	FullPreload      float64 // at 90 % of the yield strength, N
	LeastPreload     float64 // after scatter and losses, N
	StressShare      float64 // of the yield strength, in tightening
	ClampingForce    float64 // of all bolts, greatest, N

	PeakTorque float64    // N·m
	SlipTorque float64    // N·m
	SlipSafety param.Slot // unknown without a torque, or where the joint cannot be made
	SlipAsked  float64

	CrushPressure param.Slot // unknown where the plate has no area
	CrushAllowed  param.Slot
	CrushSafety   param.Slot

	// If friction fails, at peak torque.
	ShearForce    float64 // N
	ShearStress   float64
	BendingStress float64
	Combined      float64 // of both
	Yield         float64 // of the bolts

	ThrustShare param.Slot // thrust over the least clamping force

	HolesInside bool // heads and holes between the bore and the edge of the face
	HeadsClear  bool // of each other
}

// fullUse is the share of yield to which a bolt may be tightened. Source: from
// memory, VDI 2230.
const fullUse = 0.9

// Clamp works out the joint. Source: VDI 2230, the joint loaded across its
// bolts.
func Clamp(s Spec, l Load) Result {
	r := Result{Count: s.Count, Hub: s.Hub, SlipAsked: s.SlipAsked, CrushAllowed: s.allowedCrush(), TorqueSet: s.TighteningTorque.Known, Flange: l.Flange.Name}
	r.Face, r.Edge = s.face(&l)
	r.tighten(&s)
	r.crush(&s)
	r.hold(&s, &l)
	r.slipped(&s, &l)
	return r
}

func (r *Result) tighten(s *Spec) {
	t, yield := s.Size.thread(), s.Class.yield()
	lever := t.Lever(s.ThreadFriction, s.HeadFriction)
	r.FullPreload = t.Preload(yield, fullUse, s.ThreadFriction)
	r.FullTorque = lever * r.FullPreload
	if s.TighteningTorque.Known {
		r.TighteningTorque = s.TighteningTorque.Value
		r.Preload = r.TighteningTorque / lever
		r.StressShare = fullUse * r.Preload / r.FullPreload
	} else {
		r.StressShare = s.YieldUse
		r.Preload = t.Preload(yield, s.YieldUse, s.ThreadFriction)
		r.TighteningTorque = lever * r.Preload
	}
	r.LeastPreload = math.Max(0, r.Preload/s.TighteningFactor*(1-s.loss()))
	r.ClampingForce = float64(s.Count) * r.Preload
}

// hold compares what friction carries with the peak of the torque: the mean
// with the drive's own swing where that is known, else times the factor.
func (r *Result) hold(s *Spec, l *Load) {
	mean := math.Abs(l.Torque)
	r.SwingKnown = l.TorqueAmplitude.Known
	if r.SwingKnown {
		r.PeakTorque = mean + math.Abs(l.TorqueAmplitude.Value)
	} else {
		r.PeakTorque = mean * s.PeakOverMean
	}
	r.SlipTorque = SlipTorque(s.Count, r.LeastPreload, s.friction(), math.Min(s.BoltCircle, faceCircle(r.Face, s.Bore)), s.Surfaces)
	if r.HolesInside && r.StressShare <= 1 {
		r.SlipSafety = over(r.SlipTorque, r.PeakTorque)
	}
	r.ThrustShare = over(math.Abs(l.Thrust), float64(s.Count)*r.LeastPreload)
}

// faceCircle is the diameter, m, at which friction acts when the pressure is
// even over the face: the crush pressure is taken so, and bolts near the edge
// must not be credited with more.
func faceCircle(outer, inner float64) float64 {
	if !(outer > inner) {
		return 0
	}
	return 2.0 / 3 * (outer*outer + outer*inner + inner*inner) / (outer + inner)
}

// SlipTorque is what friction on the bolt circle (diameter, m) carries under
// bolts of that preload (N) each, N·m. Source: VDI 2230.
func SlipTorque(count int, preload, friction, circle float64, surfaces int) float64 {
	return float64(count*surfaces) * preload * friction * circle / 2
}

// crush spreads the greatest clamping force evenly over what flange, plate and
// hub share, less bore and holes.
func (r *Result) crush(s *Spec) {
	t, disc := s.Size.thread(), r.Face
	area := math.Pi / 4 * (disc*disc - s.Bore*s.Bore - float64(s.Count)*t.Hole*t.Hole)
	r.HolesInside = s.BoltCircle+t.Head <= disc && s.BoltCircle-t.Head >= s.Bore && area > 0
	r.HeadsClear = s.BoltCircle*math.Sin(math.Pi/float64(s.Count)) >= t.Corners
	if !r.HolesInside {
		return
	}
	r.CrushPressure = param.Known(r.ClampingForce / area)
	if r.CrushAllowed.Known {
		r.CrushSafety = over(r.CrushAllowed.Value, r.CrushPressure.Value)
	}
}

// slipped is what the bolts bear once friction has failed: the torque as shear
// on the bolt circle, and, held upright at plate and head, as bending over the
// hub's thickness. Source: mechanics.
func (r *Result) slipped(s *Spec, l *Load) {
	t := s.Size.thread()
	root := t.rootDiameter()
	r.ShearForce = 2 * r.PeakTorque / (float64(s.Count) * s.BoltCircle)
	r.ShearStress = r.ShearForce / t.StressArea()
	r.BendingStress = 16 * r.ShearForce * l.HubThickness / (math.Pi * root * root * root)
	r.Combined = math.Sqrt(r.BendingStress*r.BendingStress + 3*r.ShearStress*r.ShearStress)
	r.Yield = s.Class.yield()
}

// over is a/b, unknown where b is as good as nothing.
func over(a, b float64) param.Slot {
	if !(b > 0) {
		return param.Slot{}
	}
	return param.Finite(a / b)
}

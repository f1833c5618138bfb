package gear

import "backspan/model/bearing"

// Hand is the hand of a helix.
type Hand string

// The hands.
const (
	RightHand Hand = "right hand"
	LeftHand  Hand = "left hand"
)

// sign is +1 for a right-hand helix.
func (h Hand) sign() float64 {
	if h == LeftHand {
		return -1
	}
	return 1
}

// Places are where things stand along the two shafts: middles where not said
// otherwise, m ahead of the propeller plate, towards the engine.
type Places struct {
	FlangeFront         float64 // where flange and cover meet
	Gears               float64
	WheelPropBearing    float64
	WheelEngineBearing  float64
	PinionPropBearing   float64
	PinionEngineBearing float64
	CouplingRear        float64 // where coupling and case meet
	DriveFace           float64 // the engine's
}

// Shafting is what the two shafts get from gears and case at one duty.
type Shafting struct {
	Places       Places
	Overhung     bool    // the pinion stands outside its bearings
	Helical      bool    // the teeth push along the shafts
	FaceWidth    float64 // m
	SealAndCover float64 // m

	Pinion, WheelEngine, WheelProp bearing.DeepGroove

	Ratio         float64
	Module        float64 // normal, m
	PinionRoot    float64 // diameter, m
	PinionWorking float64 // diameter, m
	WheelWorking  float64
	Hand          Hand // of the pinion

	Torque      float64 // mean on the pinion, N·m
	Tangential  float64 // on the working circles, N
	Radial      float64 // pushes the shafts apart, N
	Axial       float64 // size, N
	Viscosity   float64 // of the oil, running, m²/s
	Application float64 // factor chosen for the teeth
	Pulsation   MeshPulsation
}

// WheelAxial is the axial force of the mesh on the wheel, N, positive forward,
// for a crank that turns clockwise (+1) or anticlockwise (−1) seen from behind.
// The driver of a right-hand helix is pushed the way a right-hand screw moves
// that turns with it; the wheel is pushed the other way. Source: statics.
func (s *Shafting) WheelAxial(crankTurn float64) float64 { return -crankTurn * s.Hand.sign() * s.Axial }

// Shafting is what the shafts get.
func (r Result) Shafting() Shafting {
	m, f := &r.Geometry, &r.Forces
	torque := f.Tangential * m.Pinion.ReferenceDiameter / 2
	return Shafting{
		Places: r.places(), Overhung: r.spec.PinionPlace == Overhung, Helical: m.HelixAngle > 0,
		FaceWidth: m.FaceWidth, SealAndCover: r.spec.SealWidth + r.spec.CoverDepth,
		Pinion: r.bearings.pinion, WheelEngine: r.bearings.wheelEngine, WheelProp: r.bearings.wheelPropeller,
		Ratio: m.Ratio(), Module: m.Module, PinionRoot: m.Pinion.RootDiameter,
		PinionWorking: m.Pinion.WorkingDiameter, WheelWorking: m.Driven.WorkingDiameter, Hand: r.spec.PinionHand,
		Torque: torque, Tangential: 2 * torque / m.Pinion.WorkingDiameter, Radial: f.Radial, Axial: f.Axial,
		Viscosity: r.Sump.Viscosity, Application: r.spec.ApplicationFactor, Pulsation: r.Pulsation,
	}
}

// places stand the wheel's bearings flush with the gap beside the gears, and
// the pinion's where its span and offset put them.
func (r *Result) places() Places {
	g := Gear{spec: r.spec, geometry: r.Geometry, bearings: r.bearings}
	s, b := &g.spec, &g.bearings
	p := Places{FlangeFront: s.FlangeThickness}
	gap := p.FlangeFront + s.SealWidth + s.CoverDepth + g.propellerWallDepth()
	p.Gears = gap + g.meshDepth()/2
	p.WheelPropBearing = gap - b.wheelPropeller.Width/2
	p.WheelEngineBearing = gap + g.meshDepth() + b.wheelEngine.Width/2
	prop, engine := g.pinionBearings()
	p.PinionPropBearing, p.PinionEngineBearing = p.Gears+prop, p.Gears+engine
	p.CouplingRear = gap + g.meshDepth() + g.engineWallDepth()
	p.DriveFace = p.CouplingRear + s.Coupling.Depth
	return p
}

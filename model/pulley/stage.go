package pulley

// Layout is what the chapter of a belt finds out about a stage before it can be
// built.
type Layout struct {
	Run           OpenBelt // on the pitch diameters
	CrankOutside  float64  // outside diameter of the crank pulley, m
	DrivenOutside float64  // of the driven pulley, m
	FaceWidth     float64  // of the pulleys between their side walls, m
	BeltWidth     float64  // m
	MassPerLength float64  // of the belt, kg/m
	Standoff      float64  // depth of what stands between the engine's drive face and the stage, m
}

// Stage is a belt stage laid out and built. It is a value and safe to copy.
type Stage struct {
	build Build
	laid  Layout

	crank, driven, plate body
}

// New builds a stage that is laid out. The bores must leave metal inside the
// rims and the side walls must stand clear of one another: whether they do is
// for the chapter of the belt to say, which knows what a user may change.
func New(b Build, l Layout) Stage {
	return Stage{
		build: b, laid: l,
		crank:  b.crankPulley(l.FaceWidth, l.CrankOutside),
		driven: b.drivenPulley(l.FaceWidth, l.DrivenOutside),
		plate:  b.plate(),
	}
}

// Run is the belt's geometry on the pitch diameters.
func (s Stage) Run() OpenBelt { return s.laid.Run }

// FaceWidth is that of the pulleys between their side walls, m.
func (s Stage) FaceWidth() float64 { return s.laid.FaceWidth }

// MassPerLength is that of the belt, kg/m.
func (s Stage) MassPerLength() float64 { return s.laid.MassPerLength }

// BeltMass is the mass of the whole belt, kg.
func (s Stage) BeltMass() float64 { return s.laid.MassPerLength * s.laid.Run.Length() }

// Centrifugal is the tension that turning the belt's own mass round the
// pulleys takes at a belt speed in m/s, N.
func (s Stage) Centrifugal(speed float64) float64 { return Centrifugal(s.laid.MassPerLength, speed) }

// Turn is +1: an open belt keeps the direction of the crank.
func (s Stage) Turn() int { return +1 }

// AxisOffset is how far the propeller axis stands above the crank axis, m.
func (s Stage) AxisOffset() float64 { return s.laid.Run.CentreDistance }

// CrankInertia is the polar inertia of what the stage adds to the crank, kg·m².
func (s Stage) CrankInertia() float64 { return s.crank.polar }

// SpinningInertia is that of driven pulley and propeller plate about the
// propeller axis, kg·m².
func (s Stage) SpinningInertia() float64 { return s.driven.polar + s.plate.polar }

// Overhang is from the crank's last bearing to the middle of the crank pulley,
// m: what stands between engine and pulley bends the crank as well.
func (s Stage) Overhang() float64 {
	return s.build.BearingToFace + s.laid.Standoff + s.build.Clearance + s.build.SideWall + s.laid.FaceWidth/2
}

// BeltPlane is the middle of the belt ahead of the propeller plate, m: the
// driven pulley's web stands behind its face.
func (s Stage) BeltPlane() float64 {
	return s.build.FlangeThickness + s.build.WebThickness + s.build.SideWall + s.laid.FaceWidth/2
}

// HubDepth is how far the driven pulley reaches ahead of the propeller plate, m:
// bearings inside it must not reach further.
func (s Stage) HubDepth() float64 { return s.build.FlangeThickness + s.driven.depth }

// skinFriction is the drag coefficient of the belt's skin. Estimate.
const skinFriction = 0.005

// Windage is the power lost to the air along both faces of the belt over the
// cube of its speed, W per (m/s)³, in air of a density in kg/m³.
func (s Stage) Windage(density float64) float64 {
	skin := 2 * s.laid.BeltWidth * s.laid.Run.Length()
	return 0.5 * density * skinFriction * skin
}

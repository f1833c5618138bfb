package stack

import "backspan/model/part"

// Parts are the bodies that other chapters bring to the stack.
type Parts struct {
	Engine     part.Piece   // its depth from the mount face to the face that carries fan or drive
	EngineRear float64      // from the mount face to the engine's rear end, m; may lie behind the propeller plate
	Cooling    []part.Piece // a fan stands between engine and drive; without depth, placed from the mount face
	Drive      []part.Piece // in order from the engine; without depth, placed from the face reached so far
	Propeller  part.Piece   // its front face is the propeller plate, its depth the hub behind it

	PropellerDiameter float64 // m
	AxisOffset        float64 // propeller axis above the crank axis, m
	FuelDensity       float64 // kg/m³
}

// Item is one body in its place, in the package's frame of reference.
type Item struct {
	Key, Label string
	Front      float64 // front face behind the back plane, m
	Depth      float64 // along the thrust axis, m; 0 beside the stack
	Mass       float64 // kg
	X, Z       float64 // centre of gravity, m
	Ahead      int     // pieces of the stack ahead of the face it is placed from; 0 at the back plane

	// Inertia about the own centre of gravity, kg·m².
	PitchInertia, YawInertia float64
}

// builder lays piece behind piece.
type builder struct {
	items []Item
	face  float64 // reached so far, m behind the back plane
	stood int     // pieces that stand ahead of it
}

// passed moves the face to the rear of a piece that stands in the stack.
func (b *builder) passed(depth float64) {
	b.face += depth
	b.stood++
}

// plain adds a body of the frame, whose own inertia is left out.
func (b *builder) plain(key, label string, depth, mass, z float64) {
	b.items = append(b.items, Item{Key: key, Label: label, Front: b.face, Depth: depth, Mass: mass, X: b.face + depth/2, Z: z, Ahead: b.stood})
	b.passed(depth)
}

// beside adds a body with its centre of gravity at x and z, placed from the
// rear of that many pieces.
func (b *builder) beside(key, label string, mass, x, z float64, ahead int) {
	b.items = append(b.items, Item{Key: key, Label: label, Front: x, Mass: mass, X: x, Z: z, Ahead: ahead})
}

// piece adds p with its front face at front, behind that many pieces, and its
// height counted from axis.
func (b *builder) piece(p *part.Piece, front, axis float64, ahead int) {
	b.items = append(b.items, Item{
		Key: p.Key, Label: p.Label, Front: front, Depth: p.Depth, Mass: p.Mass, Ahead: ahead,
		X: front + p.CGAft, Z: axis + p.CGUp, PitchInertia: p.PitchInertia, YawInertia: p.YawInertia,
	})
}

// Build stands the parts behind one another and adds them up.
//
// The propeller's height counts from the propeller axis, that of every other
// part from the crank axis.
func Build(s Spec, t Tank, p Parts) Result {
	const own = 10 // bodies that the frame and the tank bring
	b := builder{items: make([]Item, 0, own+2+len(p.Cooling)+len(p.Drive))}
	crank := s.ThrustHeight - p.AxisOffset
	fuel := t.FuelMass(p.FuelDensity)

	b.plain("stack.pad", "Pad", s.PadDepth, s.PadMass, s.FrameUp)
	b.plain("stack.frame", "Frame", s.FrameDepth, s.FrameMass, s.FrameUp)
	b.plain("stack.mount", "Rubber mount", s.MountDepth, s.MountMass, crank)
	mount, mounted := b.face, b.stood
	b.piece(&p.Engine, mount, crank, mounted)
	b.passed(p.Engine.Depth)
	for i := range p.Cooling {
		c := &p.Cooling[i]
		if c.Depth == 0 {
			b.piece(c, mount, crank, mounted)
			continue
		}
		b.piece(c, b.face, crank, b.stood)
		b.passed(c.Depth)
	}
	for i := range p.Drive {
		b.piece(&p.Drive[i], b.face, crank, b.stood)
		if p.Drive[i].Depth > 0 {
			b.passed(p.Drive[i].Depth)
		}
	}
	plate := b.face
	b.piece(&p.Propeller, plate, s.ThrustHeight, b.stood)

	b.guard(s, plate)
	b.beside("stack.exhaust", "Exhaust", s.ExhaustMass, mount+s.ExhaustAft, crank+s.ExhaustUp, mounted)
	b.beside("stack.tank", "Empty tank", t.EmptyMass, t.Aft, t.Up, 0)
	b.beside("stack.harness", "Harness", s.HarnessMass, s.HarnessAft, s.HarnessUp, 0)
	b.beside("stack.other", "Other load", s.OtherMass, s.OtherAft, s.OtherUp, 0)
	dry := len(b.items)
	b.beside("stack.fuel", "Fuel", fuel, t.Aft, t.FuelUp(), 0)

	r := Result{
		Items: b.items,
		Depth: plate, DriveDepth: plate - mount, OverallDepth: max(p.EngineRear, plate-mount+p.Propeller.Depth),
		EngineClear:  plate - mount - p.EngineRear,
		FuelMass:     fuel,
		ThrustHeight: s.ThrustHeight, HangAft: s.HangAft, HangUp: s.HangUp, HangSpacing: s.HangSpacing,
		TipClearance: (s.GuardDiameter - p.PropellerDiameter) / 2, TipClearanceAsked: s.TipClearance,
	}
	r.MassDry, r.CGAftDry, r.CGUpDry = centre(b.items[:dry])
	r.MassReady, r.CGAft, r.CGUp = centre(b.items)
	r.fill(t, p.FuelDensity)
	r.PitchInertia, r.YawInertia = inertia(b.items, s.HangAft, s.HangUp)
	return r
}

// guard adds the guard as a thin hoop about the propeller axis. Source:
// mechanics, m·r²/2 about a diameter.
func (b *builder) guard(s Spec, plate float64) {
	b.beside("stack.guard", "Guard", s.GuardMass, plate-s.GuardAhead, s.ThrustHeight, b.stood)
	hoop := &b.items[len(b.items)-1]
	hoop.PitchInertia = s.GuardMass * s.GuardDiameter * s.GuardDiameter / 8
	hoop.YawInertia = hoop.PitchInertia
}

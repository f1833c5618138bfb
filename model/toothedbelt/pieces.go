package toothedbelt

import "backspan/model/part"

// Pieces are the bodies of the stage from the engine's drive face to the
// propeller plate, in order. Crank pulley, belt, carrier and axle stand beside
// the driven pulley and add no depth.
func (b Belt) Pieces() []part.Piece {
	s, up := &b.spec, b.run.CentreDistance
	return []part.Piece{
		{Key: "drive.clearance", Label: "Clearance, engine to pulley", Depth: s.Clearance},
		beside(b.crank.piece("drive.crank_pulley", "Crank pulley", 0)),
		b.loop(),
		b.carrier(),
		b.axle(),
		b.driven.piece("drive.driven_pulley", "Driven pulley", up),
		b.plate.piece("drive.flange", "Propeller plate", up),
	}
}

func (t body) piece(key, label string, up float64) part.Piece {
	return part.Piece{
		Key: key, Label: label, Depth: t.depth, Mass: t.mass, CGAft: t.cgAft, CGUp: up,
		PitchInertia: t.transverse, YawInertia: t.transverse,
	}
}

func beside(p part.Piece) part.Piece {
	p.Depth = 0
	return p
}

// loop is the belt, its inertia that of a flat rectangle as tall as the loop
// and as wide as the pulleys' mean diameter.
func (b Belt) loop() part.Piece {
	o := b.run
	mass := b.massPerLength * o.Length()
	mean := (o.Crank + o.Driven) / 2
	tall := o.CentreDistance + mean
	return part.Piece{
		Key: "drive.belt", Label: "Belt", Mass: mass, CGAft: b.crank.depth / 2, CGUp: o.Centroid(),
		PitchInertia: mass * tall * tall / 12, YawInertia: mass * mean * mean / 12,
	}
}

// carrier is taken as a slender bar from crank to driven axis, in the plane of
// the pulleys' front faces.
func (b Belt) carrier() part.Piece {
	m, c := b.spec.CarrierMass, b.run.CentreDistance
	return part.Piece{
		Key: "drive.carrier", Label: "Carrier and tensioner", Mass: m, CGUp: c / 2, PitchInertia: m * c * c / 12,
	}
}

// axle is bearings, axle and bolts, taken as a solid cylinder filling the
// bearing seat over the driven pulley's width.
func (b Belt) axle() part.Piece {
	m, depth := b.spec.AxleMass, b.driven.depth
	inertia := part.Cylinder(m, b.spec.BearingSeat/2, depth)
	return part.Piece{
		Key: "drive.axle", Label: "Bearings, axle and bolts", Mass: m, CGAft: depth / 2, CGUp: b.run.CentreDistance,
		PitchInertia: inertia, YawInertia: inertia,
	}
}

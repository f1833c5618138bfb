package pulley

import "backspan/model/part"

// Pieces are the bodies of the stage from the engine's drive face to the
// propeller plate, in order. Crank pulley, belt, carrier and axle stand beside
// the driven pulley and add no depth.
func (s Stage) Pieces() []part.Piece {
	up := s.laid.Run.CentreDistance
	return []part.Piece{
		{Key: "drive.clearance", Label: "Clearance, engine to pulley", Depth: s.build.Clearance},
		beside(s.crank.piece("drive.crank_pulley", "Crank pulley", 0)),
		s.loop(),
		s.carrier(),
		s.axle(),
		s.driven.piece("drive.driven_pulley", "Driven pulley", up),
		s.plate.piece("drive.flange", "Propeller plate", up),
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
func (s Stage) loop() part.Piece {
	o := s.laid.Run
	mass := s.BeltMass()
	mean := (o.Crank + o.Driven) / 2
	tall := o.CentreDistance + mean
	return part.Piece{
		Key: "drive.belt", Label: "Belt", Mass: mass, CGAft: s.crank.depth / 2, CGUp: o.Centroid(),
		PitchInertia: mass * tall * tall / 12, YawInertia: mass * mean * mean / 12,
	}
}

// carrier is taken as a slender bar from crank to driven axis, in the plane of
// the pulleys' front faces.
func (s Stage) carrier() part.Piece {
	m, c := s.build.CarrierMass, s.laid.Run.CentreDistance
	return part.Piece{
		Key: "drive.carrier", Label: "Carrier and tensioner", Mass: m, CGUp: c / 2, PitchInertia: m * c * c / 12,
	}
}

// axle is bearings, axle and bolts, taken as a solid cylinder filling the
// bearing seat over the driven pulley's width.
func (s Stage) axle() part.Piece {
	m, depth := s.build.AxleMass, s.driven.depth
	inertia := part.Cylinder(m, s.build.BearingSeat/2, depth)
	return part.Piece{
		Key: "drive.axle", Label: "Bearings, axle and bolts", Mass: m, CGAft: depth / 2, CGUp: s.laid.Run.CentreDistance,
		PitchInertia: inertia, YawInertia: inertia,
	}
}

package engine

import "backspan/model/part"

// Piece is the engine in the stack: as deep as its drive stands behind its
// mount face. Its own inertia is that of a uniform cylinder along the crank
// axis, of the outside radius and the depth to the rear end.
func (e Engine) Piece() part.Piece {
	s := e.spec
	own := part.Cylinder(s.Mass, s.OutsideRadius, s.DepthToRearEnd)
	return part.Piece{
		Key: "engine", Label: "Engine", Depth: s.DepthToDrive, Mass: s.Mass,
		CGAft: s.CGAft, CGUp: s.CGAboveCrank, PitchInertia: own, YawInertia: own,
	}
}

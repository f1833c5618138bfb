package pulley

import "backspan/model/part"

// Forms are the stage's bodies for drawings.
func (s Stage) Forms() []part.Form {
	up, run := s.laid.Run.CentreDistance, s.laid.Run
	wall := s.build.SideWallHeight
	return []part.Form{
		part.Round("drive.crank_pulley", "Crank pulley", "drive.crank_pulley", s.crank.depth,
			part.Disc{Radius: s.laid.CrankOutside/2 + wall}),
		part.Round("drive.driven_pulley", "Driven pulley", "drive.driven_pulley", s.driven.depth,
			part.Disc{Up: up, Radius: s.laid.DrivenOutside/2 + wall}),
		{Key: "drive.belt", Label: "Belt", Piece: "drive.belt",
			Behind: s.build.SideWall + (s.laid.FaceWidth-s.laid.BeltWidth)/2, Depth: s.laid.BeltWidth,
			Low: part.Disc{Radius: run.Crank / 2}, High: part.Disc{Up: up, Radius: run.Driven / 2}},
		part.Round("drive.flange", "Propeller plate", "drive.flange", s.plate.depth,
			part.Disc{Up: up, Radius: s.build.FlangeDiameter / 2}),
	}
}

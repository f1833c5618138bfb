package gear

import (
	"backspan/model/coupling"
	"backspan/model/part"
)

// Forms are the reduction's bodies for drawings.
func (g Gear) Forms() []part.Form {
	s, m := &g.spec, &g.geometry
	a, around := m.CentreDistance, s.TipGap+s.CaseWall
	pinion, wheel := m.Pinion.TipDiameter/2, m.Driven.TipDiameter/2
	cover := s.SealWidth + s.CoverDepth
	return []part.Form{
		part.Round("drive.coupling", "Coupling", "drive.coupling", s.Coupling.Depth, part.Disc{Radius: coupling.Radius}),
		{Key: "drive.case", Label: "Gear case", Piece: "drive.case_engine_side",
			Depth: g.engineWallDepth() + g.meshDepth() + g.propellerWallDepth(),
			Low:   part.Disc{Radius: pinion + around}, High: part.Disc{Up: a, Radius: wheel + around}},
		part.Round("drive.pinion", "Pinion", "drive.gears", s.FaceWidth, part.Disc{Radius: pinion}),
		part.Round("drive.wheel", "Wheel", "drive.gears", s.FaceWidth, part.Disc{Up: a, Radius: wheel}),
		part.Round("drive.seal_cover", "Seal and cover", "drive.seal_cover", cover,
			part.Disc{Up: a, Radius: g.bearings.wheelPropeller.Outside/2 + s.BossWall}),
		part.Round("drive.flange", "Propeller flange", "drive.flange", s.FlangeThickness,
			part.Disc{Up: a, Radius: s.FlangeDiameter / 2}),
	}
}

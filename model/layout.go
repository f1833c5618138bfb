package model

import (
	"math"

	"backspan/model/drive"
	"backspan/model/part"
)

// Body is a part in its place for drawings, in the stack's frame of reference:
// what two discs and their common tangents enclose, seen along the thrust axis.
type Body struct {
	Key, Label string
	Front      float64 // m behind the back plane
	Depth      float64 // m
	Low, High  part.Disc
	Assumed    bool // its size across the thrust axis is in no parameter, only its depth is
}

// Layout is what a drawing shows besides the stack's pieces. Lengths in m, in
// the stack's frame of reference. It is empty when a part cannot be built.
type Layout struct {
	Bodies []Body // from the back plane aft

	Mount    float64 // engine's mount face
	CrankUp  float64 // crank axis
	ThrustUp float64 // propeller axis

	PropellerRadius float64
	GuardRadius     float64 // inside
	GuardAft        float64 // its plane
	ClearanceAsked  float64 // propeller tip to guard

	TankAft, TankUp, TankHeight float64
	TankSide                    float64 // of a square tank of that volume and height; Assumed
	TankFill                    float64 // share of the height, 0..1

	HipAhead    float64 // hip axis ahead of the back plane
	StrapUp     float64 // where the shoulder straps pull
	HangSpacing float64
	Turn        part.Turn // of the propeller
}

// formed is a drive that tells its outline.
type formed interface{ Forms() []part.Form }

// layOut gathers what a drawing shows. It needs the stack.
func (c *chain) layOut() {
	f, t, s := &c.variant.Frame, &c.variant.Tank, &c.stack
	crank := f.ThrustHeight - c.variant.Drive.AxisRise(c.drive)
	l := Layout{
		Mount: s.Depth - s.DriveDepth, CrankUp: crank, ThrustUp: f.ThrustHeight,
		PropellerRadius: c.propeller.Diameter() / 2, GuardRadius: f.GuardDiameter / 2, GuardAft: s.Depth - f.GuardAhead, ClearanceAsked: f.TipClearance,
		TankAft: t.Aft, TankUp: t.Up, TankHeight: t.Height, TankSide: side(t.Capacity, t.Height), TankFill: t.Fill,
		HipAhead: c.study.Pilot.BackBehindHip, StrapUp: c.study.Pilot.StrapHeight, HangSpacing: f.HangSpacing, Turn: c.turn(),
	}
	l.Bodies = make([]Body, 0, 12)
	l.carrying(c, crank)
	l.driving(c, crank)
	boss := part.Disc{Up: f.ThrustHeight, Radius: c.variant.Propeller.BossDiameter / 2}
	l.Bodies = append(l.Bodies, Body{Key: "propeller", Label: "Boss", Front: s.Depth, Depth: c.variant.Propeller.BossThickness, Low: boss, High: boss})
	c.outcome.Layout = l
}

// carrying adds what stands ahead of the drive. Pad and frame are taken to
// reach from the hip axis to the straps, the rubber mounts to lie within the
// engine's outline, the fan to be as wide as the engine.
func (l *Layout) carrying(c *chain, crank float64) {
	f, e := &c.variant.Frame, &c.variant.Engine
	back := part.Disc{Up: c.study.Pilot.StrapHeight / 2, Radius: c.study.Pilot.StrapHeight / 2}
	engine := part.Disc{Up: crank, Radius: e.OutsideRadius}
	mount := part.Disc{Up: crank, Radius: e.OutsideRadius / 2}
	frame := f.PadDepth + f.FrameDepth
	l.Bodies = append(l.Bodies,
		Body{Key: "stack.pad", Label: "Pad", Depth: f.PadDepth, Low: back, High: back, Assumed: true},
		Body{Key: "stack.frame", Label: "Frame", Front: f.PadDepth, Depth: f.FrameDepth, Low: back, High: back, Assumed: true},
		Body{Key: "stack.mount", Label: "Rubber mount", Front: frame, Depth: f.MountDepth, Low: mount, High: mount, Assumed: true},
		Body{Key: "engine", Label: "Engine", Front: l.Mount, Depth: e.DepthToRearEnd, Low: engine, High: engine})
	for i := range c.stack.Items {
		if it := &c.stack.Items[i]; it.Key == "cooling.fan" && it.Depth > 0 {
			l.Bodies = append(l.Bodies, Body{Key: it.Key, Label: it.Label, Front: it.Front, Depth: it.Depth, Low: engine, High: engine, Assumed: true})
		}
	}
}

// driving adds the drive. A hub is taken to be as wide as the propeller plate.
func (l *Layout) driving(c *chain, crank float64) {
	var forms []part.Form
	if d, ok := c.drive.(formed); ok {
		forms = d.Forms()
	} else {
		forms = []part.Form{part.Round("drive.hub", "Propeller hub", "drive.hub", part.Depth(c.drive.Pieces()), part.Disc{Radius: c.variant.Drive.Plate.Plate / 2})}
	}
	sign := 1.0
	if c.variant.Drive.PropellerAxis == drive.Below {
		sign = -1
	}
	for _, f := range forms {
		b := Body{Key: f.Key, Label: f.Label, Depth: f.Depth, Low: f.Low, High: f.High}
		b.Low.Up, b.High.Up = crank+sign*b.Low.Up, crank+sign*b.High.Up
		for i := range c.stack.Items {
			if c.stack.Items[i].Key == f.Piece {
				b.Front = c.stack.Items[i].Front + f.Behind
			}
		}
		l.Bodies = append(l.Bodies, b)
	}
}

// turn is the propeller's direction of rotation.
func (c *chain) turn() part.Turn {
	if c.variant.Engine.Turns.Sign()*float64(c.drive.Turn()) > 0 {
		return part.Clockwise
	}
	return part.Anticlockwise
}

// side is that of a square tank with upright walls.
func side(volume, height float64) float64 {
	if !(height > 0) {
		return 0
	}
	return math.Sqrt(volume / height)
}

package gearshaft

import (
	"math"

	"backspan/model/gear"
	"backspan/model/shaft"
)

// CrankPull is what a pinion on the engine's crank does to it, its place
// counted from the engine's drive face; nothing for a pinion with a shaft of
// its own.
func (r *Result) CrankPull() shaft.CrankPull { return r.pull }

// crankPull is the mesh force of a pinion on the crank, factor its greatest
// over its mean.
func crankPull(g *gear.Shafting, x *line, factor float64) shaft.CrankPull {
	force := x.mesh.load.Force
	return shaft.CrankPull{Steady: force, Axial: x.axial, Greatest: math.Max(1, factor) * force.Size(), Behind: g.Places.DriveFace - g.Places.Gears}
}

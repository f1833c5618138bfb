package bearing

import (
	"math"

	"backspan/model/param"
)

// Row is one bearing of a machine with the forces on it, for a table. Forces
// in N: Along the line from the propeller's axis to the crank's, Across it,
// Axial positive forward, towards the pilot.
type Row struct {
	Name         string
	Size         Size // empty for one of the engine's own
	Along        float64
	Across       float64
	Axial        float64
	Equivalent   param.Slot
	Life         param.Slot // s
	StaticSafety param.Slot
	SpeedShare   param.Slot // of the speed limit
}

// Radial is the size of the force across the shaft, N.
func (r Row) Radial() float64 { return math.Hypot(r.Along, r.Across) }

// Row is the rated bearing as a row, under steady forces.
func (r *Rated) Row(name string, along, across, axial, speedLimit float64) Row {
	return Row{Name: name, Size: r.Size, Along: along, Across: across, Axial: axial, Equivalent: param.Known(r.Equivalent),
		Life: r.Life, StaticSafety: r.StaticSafety, SpeedShare: param.Finite(r.SpeedParameter / speedLimit)}
}

package bolt

import "backspan/model/param"

// Flange is the drive's own, on which the propeller is bolted.
type Flange struct {
	Diameter param.Slot // m; unknown where the drive has none of its own
	Name     string     // of the parameter that gives it
}

// Edge is the part at whose edge the pressed face ends.
type Edge int

// The edges.
const (
	AtPlate Edge = iota
	AtBoss
	AtFlange
)

// face is the diameter, m, that plate, boss and flange all cover, and which of
// them ends it.
func (s *Spec) face(l *Load) (float64, Edge) {
	disc, edge := s.Plate, AtPlate
	if l.HubDiameter < disc {
		disc, edge = l.HubDiameter, AtBoss
	}
	if f := l.Flange.Diameter; f.Known && f.Value < disc {
		disc, edge = f.Value, AtFlange
	}
	return disc, edge
}

// ends says in words which part ends the face.
func (r *Result) ends() string {
	switch r.Edge {
	case AtFlange:
		return "the drive's flange, the least of plate, boss and flange, governs"
	case AtBoss:
		return "the propeller's boss, the least of plate, boss and flange, governs"
	}
	return "the plate, the least of plate, boss and flange, governs"
}

// wider is what gives the bolts more face to press on: all parts that could end
// it sooner.
func (r *Result) wider() string {
	if r.Flange == "" {
		return "Plate diameter and the propeller's Boss diameter"
	}
	return "Plate diameter, the propeller's Boss diameter and the drive's " + r.Flange
}

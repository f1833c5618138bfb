package propeller

import (
	"math"

	"backspan/model/part"
)

// sectionArea is the area of a blade section, m²: 0.68 of its thickness times
// its chord.
func sectionArea(chord, thickness float64) float64 { return 0.68 * thickness * chord * chord }

// counterweightShare is where the counterweight of a single blade stands, as a
// share of the tip radius: an estimate; weighed mass and measured inertia go
// before it.
const counterweightShare = 0.2

// counterweight of a single blade of a static moment, kg·m: mass kg and inertia
// about the shaft kg·m².
func (p *Propeller) counterweight(moment float64) (mass, inertia float64) {
	if p.spec.Blades != 1 {
		return 0, 0
	}
	arm := counterweightShare * p.tip
	return moment / arm, moment * arm
}

// body integrates the blades, the boss and the counterweight of a single blade:
// mass kg and inertia about the shaft kg·m². Between boss and cut-out the root
// section goes on.
func (p *Propeller) body() (mass, inertia float64) {
	moment := 0.0
	b, density := float64(p.spec.Blades), p.spec.Density
	for i := range p.stations {
		st := &p.stations[i]
		m := b * density * st.area * st.width
		mass += m
		moment += m * st.radius
		inertia += m * st.radius * st.radius
	}
	boss, root := p.spec.BossDiameter/2, p.spec.HubRadius
	neck := b * density * p.stations[0].area
	mass += neck * (root - boss)
	moment += neck * (root*root - boss*boss) / 2
	inertia += neck * (root*root*root - boss*boss*boss) / 3
	hub := density * math.Pi * boss * boss * p.spec.BossThickness
	heavy, slow := p.counterweight(moment)
	return mass + hub + heavy, inertia + hub*boss*boss/2 + slow
}

// Mass is the weighed mass, else density times volume, kg.
func (p *Propeller) Mass() float64 {
	if p.spec.Mass.Known {
		return p.spec.Mass.Value
	}
	m, _ := p.body()
	return m
}

// PolarInertia is the measured inertia about the shaft, else the blade's
// volume integrated along the radius, ∫ A r² dr times density and blades,
// scaled to the weighed mass where there is one, kg·m².
func (p *Propeller) PolarInertia() float64 {
	if p.spec.Inertia.Known {
		return p.spec.Inertia.Value
	}
	m, inertia := p.body()
	return inertia * p.Mass() / m
}

// Piece is the propeller as a body of the machine. Its front face stands on
// the propeller plate, so its Depth lies behind the plate.
func (p *Propeller) Piece() part.Piece {
	inertia := p.PolarInertia() / 2 // across the shaft, mean over one turn
	return part.Piece{
		Key: "propeller", Label: "Propeller", Depth: p.spec.BossThickness, Mass: p.Mass(),
		CGAft: p.spec.BossThickness / 2, PitchInertia: inertia, YawInertia: inertia,
	}
}

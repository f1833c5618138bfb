package propeller

import "backspan/model/param"

// Shape says how the blade's chord and angle are given.
type Shape string

// The ways to give the blade.
const (
	NominalPitch Shape = "nominal pitch"
	Stations     Shape = "stations"
)

// Planform is the outline of a blade given by its nominal pitch.
type Planform string

// The planforms, by what the blade does outboard of its greatest chord.
const (
	Tapered  Planform = "tapered"   // straight to the tip chord
	Elliptic Planform = "elliptic"  // a quarter ellipse to the tip chord
	BroadTip Planform = "broad tip" // a fourth-power curve: wide almost to the tip
)

// Family is the section family behind the generic polar.
type Family string

// The section families.
const (
	FlatBottomed Family = "cambered, flat-bottomed"
	ThinSection  Family = "thin, low Reynolds number"
	OwnFigures   Family = "own figures"
	OwnPolar     Family = "own polar"
)

// Spec describes a propeller and where it works. Lengths m, angles rad.
type Spec struct {
	Blades   int
	Diameter float64
	Shape    Shape

	Pitch         float64 // nominal, constant along the blade
	Planform      Planform
	RootChord     float64
	GreatestChord float64
	TipChord      float64
	GreatestAt    float64 // share of the radius

	Rows      [][]float64 // share of the radius, chord m, blade angle rad
	PitchTrim float64

	HubRadius float64 // where the lifting blade begins
	HubLoss   bool

	Family        Family
	Own           Section     // used with OwnFigures
	Polar         [][]float64 // used with OwnPolar: angle of attack rad, lift, drag, Reynolds number
	RootThickness float64     // share of the chord
	TipThickness  float64

	BossDiameter  float64
	BossThickness float64
	Density       float64 // of blade and boss, kg/m³
	Mass          param.Slot
	Inertia       param.Slot

	HubDrag          float64 // coefficient of the boss's face
	InstallationLoss float64 // share of the thrust lost behind body and cage
	TipMachLimit     float64
	StallMarginAsked float64
	BalanceGrade     BalanceGrade // only the build sheet rests on it
	TrackingLimit    float64      // m, of one tip path from another; only the build sheet rests on it
}

// Default is a 1.25 m two-blade wooden propeller that takes about 13 kW
// standing at 2550 rpm.
func Default() Spec {
	return Spec{
		Blades: 2, Diameter: 1.25, Shape: NominalPitch,
		Pitch: 0.65, Planform: Elliptic, RootChord: 0.070, GreatestChord: 0.115, TipChord: 0.070, GreatestAt: 0.35,
		HubRadius: 0.090, HubLoss: true,
		Family: FlatBottomed, Own: flatBottomed(), RootThickness: 0.18, TipThickness: 0.10,
		BossDiameter: 0.110, BossThickness: 0.030, Density: 700,
		HubDrag: 1.1, InstallationLoss: 0.08, TipMachLimit: 0.60, StallMarginAsked: degrees(3), BalanceGrade: G6, TrackingLimit: 0.002,
	}
}

// Clone returns a copy that shares nothing with s.
func (s Spec) Clone() Spec {
	s.Rows, s.Polar = cloneRows(s.Rows), cloneRows(s.Polar)
	return s
}

func cloneRows(rows [][]float64) [][]float64 {
	if rows == nil {
		return nil
	}
	out := make([][]float64, len(rows))
	for i, row := range rows {
		out[i] = append([]float64(nil), row...)
	}
	return out
}

// section is the polar the choice of family stands for.
func (s *Spec) section() Section {
	switch s.Family {
	case ThinSection:
		return thinSection()
	case OwnFigures:
		return s.Own
	}
	return flatBottomed()
}

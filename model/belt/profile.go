package belt

import "math"

// Profile is a multi-rib belt section after ISO 9982 and, for PK, ISO 9981.
type Profile string

// The profiles, from the finest rib to the coarsest.
const (
	PJ Profile = "PJ"
	PK Profile = "PK"
	PL Profile = "PL"
	PM Profile = "PM"
)

// section is what a profile fixes, in SI.
type section struct {
	ribPitch         float64 // m; ISO 9982
	edge             float64 // outermost rib centre to pulley edge, m; from memory: ISO 9982
	lineDifferential float64 // b_e, m; PK ISO 9981:2020, others from memory: ISO 9982
	smallestPulley   float64 // effective diameter, m; from memory: ISO 9982 table 2
	massPerRib       float64 // kg/m; section area times 1200 kg/m³
	stiffnessPerRib  float64 // EA, N; see stiffnessOrigin
	shortest         float64 // usual effective length, m; from memory: ISO 9982
	longest          float64 // usual effective length, m; from memory: ISO 9982
	fastest          float64 // belt speed, m/s; from memory: handbooks, lower end
	usualTension     float64 // standing tension per rib, N, 0 when none is known; from memory
	fatigueStrength  float64 // per rib, N, 0 when no law is known; see lawOrigin
	bendingConstant  float64 // per rib, N·m, 0 when no law is known; see lawOrigin
}

const (
	differentialOrigin = "PK from ISO 9981:2020; the others from memory: ISO 9982"
	massOrigin         = "estimate: section area times 1200 kg/m³"
	stiffnessOrigin    = "from memory: PK from 170 kN measured on a whole belt, Beikmann, Perkins & Ulsoy 1996; other profiles scaled by rib pitch"
)

// grooveAngle is the included angle of every groove, rad. From memory: ISO 9982.
const grooveAngle = 40 * math.Pi / 180

// section returns the table row of the profile, the zero row for an unknown one.
func (p Profile) section() section {
	switch p {
	case PJ:
		return section{2.34e-3, 1.8e-3, 1.2e-3, 20e-3, 0.0085, 18.4e3, 0.45, 2.5, 50, 0, 0, 0}
	case PK:
		return section{3.56e-3, 2.5e-3, 2.0e-3, 45e-3, 0.0175, 28.0e3, 0.5, 3.0, 50, 90, 1281, 7.1}
	case PL:
		return section{4.70e-3, 3.3e-3, 3.0e-3, 75e-3, 0.035, 37.0e3, 1.25, 6.3, 40, 0, 0, 0}
	case PM:
		return section{9.40e-3, 6.4e-3, 4.0e-3, 180e-3, 0.115, 73.9e3, 2.3, 16.8, 30, 0, 0, 0}
	}
	return section{}
}

// faceWidth is the grooved width of a pulley for so many ribs, m.
func (s section) faceWidth(ribs int) float64 {
	return float64(ribs-1)*s.ribPitch + 2*s.edge
}

// section is the profile's table row with what the spec sets itself.
func (s *Spec) section() section {
	row := s.Profile.section()
	if s.LineDifferential.Known {
		row.lineDifferential = s.LineDifferential.Value
	}
	if s.MassPerRib.Known {
		row.massPerRib = s.MassPerRib.Value
	}
	if s.StiffnessPerRib.Known {
		row.stiffnessPerRib = s.StiffnessPerRib.Value
	}
	return row
}

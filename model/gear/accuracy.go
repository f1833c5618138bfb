package gear

import "math"

// toothTolerances are those of one gear, µm.
type toothTolerances struct {
	pitch   float64 // single pitch
	profile float64 // form of the profile
	lead    float64 // slope of the helix
}

// newToothTolerances gives the tolerances of an accuracy class; lengths in mm.
// Source: ISO 1328-1, from memory.
func newToothTolerances(class int, diameter, module, face float64) toothTolerances {
	step := math.Pow(math.Sqrt2, float64(class-5))
	return toothTolerances{
		pitch:   (0.001*diameter + 0.4*module + 5) * step,
		profile: (0.55*module + 5) * step,
		lead:    (0.05*math.Sqrt(diameter) + 0.35*math.Sqrt(face) + 4) * step,
	}
}

// runIn is by how much a deviation in µm wears off. Source: ISO 6336-1, from
// memory.
func (m toothMaterial) runIn(deviation float64) float64 {
	if m.treatment == soft {
		return math.Min(160/m.contact, 1) * deviation
	}
	return math.Min(0.075*deviation, 3)
}

// runInLead is the same for the misalignment of the face, at a pitch-line speed
// in m/s: fast teeth wear in less.
func (m toothMaterial) runInLead(deviation, speed float64) float64 {
	if m.treatment != soft {
		return math.Min(0.15*deviation, 6)
	}
	worn := math.Min(320/m.contact, 1) * deviation
	switch {
	case speed > 10:
		return math.Min(worn, 12800/m.contact)
	case speed > 5:
		return math.Min(worn, 25600/m.contact)
	}
	return worn
}

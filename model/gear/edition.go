package gear

import "math"

// Edition is the edition of ISO 6336 whose form the rating takes.
type Edition string

// The editions. That of 2006 has the helix factor of its corrigendum of 2008.
const (
	Edition2006 Edition = "2006"
	Edition2019 Edition = "2019"
)

// helicalContact is what the single contact factors come down to at an overlap
// ratio of 1 and more: 1, or since 2019 the root of the factor for flanks
// without relief. Source: ISO 6336-2, clause 6, from memory.
func (b *toothBuild) helicalContact() float64 {
	if b.edition == Edition2019 {
		return math.Sqrt(b.unrelieved)
	}
	return 1
}

// helixRoot is Yβ, angle in rad. Source: ISO 6336-3, clause 8, from memory.
func (b *toothBuild) helixRoot(overlap, angle float64) float64 {
	lean := 1 - math.Min(overlap, 1)*math.Min(angle/degreeAngle, 30)/120
	if b.edition == Edition2019 {
		cos := math.Cos(angle)
		return lean / (cos * cos * cos)
	}
	return lean
}

// sharing is fε, by which helical teeth share the load at the root, for a
// virtual contact ratio below 2; 1 before 2019. Source: ISO 6336-3, 2019,
// clause 6, from memory.
func (b *toothBuild) sharing(overlap, virtual float64) float64 {
	if b.edition != Edition2019 {
		return 1
	}
	full := math.Min(overlap, 1)
	return math.Sqrt(1 - full + full/virtual)
}

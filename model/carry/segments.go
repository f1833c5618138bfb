package carry

// Table names a published table of body segments. The tables cut the body
// differently, so their figures are never mixed.
type Table string

// The segment tables.
const (
	DeLevaMale   Table = "de Leva, men"
	DeLevaFemale Table = "de Leva, women"
	Winter       Table = "Winter"
)

// Segments is a body by shares: masses of the whole mass, lengths of the
// stature, heights above the ground.
type Segments struct {
	UpperMass   float64 // head, arms and trunk
	UpperCentre float64 // their centre of gravity above the hip
	Thigh       float64 // mass of one
	Shank       float64 // mass of one
	Foot        float64 // mass of one
	Ankle       float64 // height of the ankle axis
	Hip         float64 // height of the hip axis
	Centre      float64 // height of the standing body's centre of gravity
}

// Of returns the segments of a table. An unknown table gives the men's.
func Of(t Table) Segments {
	switch t {
	case DeLevaFemale:
		return women
	case Winter:
		return winter
	}
	return men
}

// link is one segment on a chain of joints: its mass as a share of the body's,
// length as a share of stature, and centre of mass from the upper end as a
// share of the length.
type link struct{ mass, length, centre float64 }

// body is a table in the form of de Leva 1996.
type body struct {
	head, trunk, upperArm, forearm, hand, thigh, shank link

	foot     float64 // mass of one
	ankle    float64 // height
	shoulder float64 // above the hip
}

// de Leva, Adjustments to Zatsiorsky-Seluyanov's segment inertia parameters,
// J. Biomechanics 29 (1996), table 4. Masses and centres: seen in published
// tables. Lengths of arms and of the women: from memory. Ankle: ANSUR II
// lateral malleolus height over stature, mean.
var (
	men = body{
		head: link{0.0694, 0.1168, 0.5976}, trunk: link{0.4346, 0.3055, 0.4486},
		upperArm: link{0.0271, 281.7 / 1741, 0.5772}, forearm: link{0.0162, 268.9 / 1741, 0.4574},
		hand: link{0.0061, 86.2 / 1741, 0.7900}, thigh: link{0.1416, 0.2425, 0.4095}, shank: link{0.0433, 0.2493, 0.4459},
		foot: 0.0137, ankle: 0.0415, shoulder: 515.5 / 1741,
	}.segments()
	women = body{
		head: link{0.0669, 243.7 / 1735, 0.4841}, trunk: link{0.4257, 614.8 / 1735, 0.4964},
		upperArm: link{0.0255, 275.1 / 1735, 0.5754}, forearm: link{0.0138, 264.3 / 1735, 0.4559},
		hand: link{0.0056, 78.0 / 1735, 0.7474}, thigh: link{0.1478, 368.5 / 1735, 0.3612}, shank: link{0.0481, 432.3 / 1735, 0.4416},
		foot: 0.0129, ankle: 0.0386, shoulder: 497.9 / 1735,
	}.segments()
)

// Winter, Biomechanics and Motor Control of Human Movement, table 4.1 and
// figure 4.1. The whole leg, foot included, has its centre 0.553 of the way up
// from ankle to hip.
var winter = func() Segments {
	s := Segments{
		UpperMass: 0.678, UpperCentre: 0.626 * (0.818 - 0.530),
		Thigh: 0.100, Shank: 0.0465, Foot: 0.0145, Ankle: 0.039, Hip: 0.530,
	}
	leg := s.Ankle + 0.553*(s.Hip-s.Ankle)
	s.Centre = s.UpperMass*(s.Hip+s.UpperCentre) + (1-s.UpperMass)*leg
	return s
}()

// segments stands the body upright, arms hanging, and adds it up. The foot's
// centre is taken at half the ankle's height.
func (b body) segments() Segments {
	s := Segments{
		UpperMass: b.head.mass + b.trunk.mass + 2*(b.upperArm.mass+b.forearm.mass+b.hand.mass),
		Thigh:     b.thigh.mass, Shank: b.shank.mass, Foot: b.foot, Ankle: b.ankle,
		Hip: b.ankle + b.shank.length + b.thigh.length,
	}
	elbow := b.shoulder - b.upperArm.length
	wrist := elbow - b.forearm.length
	upper := b.trunk.mass*b.trunk.length*(1-b.trunk.centre) +
		b.head.mass*(1-s.Hip-b.head.length*b.head.centre) +
		2*(b.upperArm.below(b.shoulder)+b.forearm.below(elbow)+b.hand.below(wrist))
	s.UpperCentre = upper / s.UpperMass
	legs := 2 * (b.thigh.below(s.Hip) + b.shank.below(s.Ankle+b.shank.length) + b.foot*b.ankle/2)
	s.Centre = s.UpperMass*s.Hip + upper + legs
	return s
}

// below is the link's first moment when it hangs from a joint at height.
func (l link) below(height float64) float64 { return l.mass * (height - l.centre*l.length) }

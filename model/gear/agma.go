package gear

import "math"

const agmaOrigin = "from memory: AGMA 2001 as in Budynas & Nisbett, Shigley's Mechanical Engineering Design, chapter 14"

// agmaPair is a pair of gears as AGMA 2001 sees it, in its units: inch, pound
// force, psi. Index 0 is the pinion.
type agmaPair struct {
	teeth          [2]float64
	pitch          float64 // transverse teeth per inch
	diameter       float64 // of the pinion
	face           float64
	alignment      alignment
	load           float64    // at the pinion's reference circle
	loadFlank      float64    // at its working circle
	speed          float64    // ft/min
	quality        float64    // Qv
	overload       float64    // Ko
	geometry       [2]float64 // J, 0 when unknown
	flankGeometry  float64    // I
	form           [2]float64 // Lewis Y
	hardness       [2]float64 // Brinell
	through        bool       // both through-hardened
	root, flank    [2]float64 // strengths St and Sc
	cycles         [2]float64
	reliability    float64 // KR
	crowned        bool
	straddleOffset bool // pinion far from the middle of its bearings
}

// agmaSafety is what comes out.
type agmaSafety struct {
	dynamic, spread     float64 // Kv, Km
	size                [2]float64
	rootStress          [2]float64 // psi
	flankStress         [2]float64
	rootLife, flankLife [2]float64 // YN, ZN
	bending, pitting    [2]float64 // safeties SF, SH
}

// dynamicAGMA is Kv, and the greatest speed in ft/min the quality allows.
func dynamicAGMA(quality, speed float64) (factor, most float64) {
	b := 0.25 * math.Pow(12-quality, 2.0/3)
	a := 50 + 56*(1-b)
	return math.Pow((a+math.Sqrt(speed))/a, b), (a + quality - 3) * (a + quality - 3)
}

// spreadAGMA is Km.
func (p *agmaPair) spreadAGMA() float64 {
	slender := math.Max(p.face/(10*p.diameter), 0.05)
	proportion := slender - 0.025
	if p.face > 1 {
		proportion = slender - 0.0375 + 0.0125*p.face
	}
	lead, place := 1.0, 1.0
	if p.crowned {
		lead = 0.8
	}
	if p.straddleOffset {
		place = 1.1
	}
	a := &p.alignment
	return 1 + lead*(proportion*place+a.constant+a.perInch*p.face+a.perSquare*p.face*p.face)
}

// hardnessRatio is CH of a through-hardened wheel.
func (p *agmaPair) hardnessRatio() float64 {
	if !p.through {
		return 1
	}
	over, gain := p.hardness[0]/p.hardness[1], 0.0
	switch {
	case over > 1.7:
		gain = 0.00698
	case over >= 1.2:
		gain = 8.98e-3*over - 8.29e-3
	}
	return 1 + gain*(p.teeth[1]/p.teeth[0]-1)
}

// The curves hold from about 1e7 cycles; fewer count as that many.
const leastCycles = 1e7

// steelPair is Cp, √psi.
const steelPair = 2300

// rate gives stresses and safeties; backup and temperature factors are 1.
func (p *agmaPair) rate() agmaSafety {
	var s agmaSafety
	s.dynamic, _ = dynamicAGMA(p.quality, p.speed)
	s.spread = p.spreadAGMA()
	for i := range 2 {
		s.size[i] = math.Max(1, 1.192*math.Pow(p.face*math.Sqrt(p.form[i])/p.pitch, 0.0535))
		raise := p.overload * s.dynamic * s.size[i] * s.spread
		cycles := math.Max(p.cycles[i], leastCycles)
		s.rootLife[i] = 1.3558 * math.Pow(cycles, -0.0178)
		s.flankLife[i] = 1.4488 * math.Pow(cycles, -0.023)
		if p.geometry[i] > 0 {
			s.rootStress[i] = p.load * raise * p.pitch / (p.face * p.geometry[i])
			s.bending[i] = p.root[i] * s.rootLife[i] / (p.reliability * s.rootStress[i])
		}
		s.flankStress[i] = steelPair * math.Sqrt(p.loadFlank*raise/(p.diameter*p.face*p.flankGeometry))
		s.pitting[i] = p.flank[i] * s.flankLife[i] / (p.reliability * s.flankStress[i])
	}
	s.pitting[1] *= p.hardnessRatio()
	return s
}

// agmaStrength is a material's St and Sc, psi; ok is false for the treatments
// whose strengths are not held here. Grades 1 to 3 stand for ML, MQ and ME;
// through-hardened steel has no third.
func (m toothMaterial) agmaStrength() (root, flank float64, ok bool) {
	switch m.class {
	case Normalized, HardenedCarbon, HardenedAlloy:
		hardness := m.brinell()
		if m.grade == 0 {
			return 77.3*hardness + 12800, 322*hardness + 29100, true
		}
		return 102*hardness + 16400, 349*hardness + 34300, true
	case CaseHardened:
		return [3]float64{55000, 65000, 75000}[m.grade], [3]float64{180e3, 225e3, 275e3}[m.grade], true
	}
	return 0, 0, false
}

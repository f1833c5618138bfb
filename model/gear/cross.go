package gear

import "math"

// CrossRating is the second rating of the same teeth, by AGMA 2001.
type CrossRating struct {
	Why        string     // why there is none, empty when there is
	BendingWhy string     // why the roots have none
	Pitting    [2]float64 // safeties
	Bending    [2]float64
	Dynamic    float64 // Kv
	Spread     float64 // Km
}

const (
	poundForce  = 4.4482216152605 // N
	inchLength  = 0.0254          // m
	feetPerMin  = 0.3048 / 60     // m/s
	bestQuality = 11              // Qv, the form's end
)

// crossGeometry holds what of the cross-check follows from geometry alone.
type crossGeometry struct {
	bending [2]float64 // J
	flank   float64    // I
	why     string     // why there is no J
}

func newCrossGeometry(g *Geometry, b *toothBuild) crossGeometry {
	aw := g.WorkingPressureAngle
	u := g.Ratio()
	x := crossGeometry{flank: math.Cos(aw) * math.Sin(aw) / 2 * u / (u + 1)}
	if g.HelixAngle > 0 {
		normal := math.Pi * g.Module * math.Cos(b.pressureAngle)
		x.flank *= 0.95 * g.ContactRatio * g.BasePitch / normal
		x.why = "the geometry factor J of helical teeth is only printed as charts"
		return x
	}
	for i, w := range []*Wheel{&g.Pinion, &g.Driven} {
		j, ok := bendingGeometry(b.rack, b.pressureAngle, float64(w.Teeth), w.Shift, w.TipDiameter/g.Module, g.ContactRatio)
		if !ok {
			x.why = "no Lewis parabola touches the root of these teeth"
			return x
		}
		x.bending[i] = j
	}
	return x
}

// cross rates the teeth once more, under the same force and application
// factor, with a reliability of 99 %.
func (g *Gear) cross(force, application, speed float64) CrossRating {
	m, f := &g.geometry, &g.teeth
	p := agmaPair{
		teeth:    [2]float64{float64(m.Pinion.Teeth), float64(m.Driven.Teeth)},
		pitch:    float64(m.Pinion.Teeth) * inchLength / m.Pinion.ReferenceDiameter,
		diameter: m.Pinion.WorkingDiameter / inchLength, face: m.FaceWidth / inchLength,
		load: force / poundForce, loadFlank: force * m.Pinion.ReferenceDiameter / m.Pinion.WorkingDiameter / poundForce,
		speed: m.pitchLineSpeed(speed) / feetPerMin, overload: application,
		quality:  math.Min(float64(17-g.spec.AccuracyClass), bestQuality),
		geometry: g.second.bending, flankGeometry: g.second.flank, reliability: 1, crowned: g.spec.Crowned,
		alignment: alignments()[g.spec.Alignment],
	}
	if _, most := dynamicAGMA(p.quality, p.speed); p.speed > most {
		return CrossRating{Why: "the pitch line is faster than this accuracy class is meant for"}
	}
	p.straddleOffset = f.build.mount.overhung || f.build.mount.offset >= 0.175*f.build.mount.span
	p.through = true
	cycles := speed / (2 * math.Pi) * g.spec.Life
	for i, w := range []*Wheel{&m.Pinion, &m.Driven} {
		material := f.build.material[i]
		root, flank, ok := material.agmaStrength()
		if !ok {
			return CrossRating{Why: "AGMA's strengths of this material are not held here"}
		}
		p.root[i], p.flank[i] = root, flank
		p.through = p.through && material.treatment == soft
		p.hardness[i] = material.brinell()
		p.form[i] = lewisY(m.equivalentTeeth(w))
		p.cycles[i] = cycles
		cycles /= m.Ratio()
	}
	s := p.rate()
	return CrossRating{BendingWhy: g.second.why, Pitting: s.pitting, Bending: s.bending, Dynamic: s.dynamic, Spread: s.spread}
}

// mode is what would give out first: a flank or a root, of which gear.
type mode struct {
	gear int
	root bool
}

// first finds the mode with the least room. A flank's safety is squared,
// because its stress grows with the root of the load.
func first(pitting, bending [2]float64, askedPitting, askedBending float64, roots bool) mode {
	worst, least := mode{}, math.Inf(1)
	for i := range 2 {
		share := pitting[i] / askedPitting
		if share *= share; share < least {
			worst, least = mode{i, false}, share
		}
		if share := bending[i] / askedBending; roots && share < least {
			worst, least = mode{i, true}, share
		}
	}
	return worst
}

// String names the gear and its mode.
func (m mode) String() string {
	gear, part := "the pinion's", " flank"
	if m.gear == 1 {
		gear = "the wheel's"
	}
	if m.root {
		part = " root"
	}
	return gear + part
}

// blamed is what either rating finds weakest: ISO of all flanks and roots, AGMA
// of those it rates. They cannot be compared where ISO blames a root and AGMA
// rates none.
func (s *Strength) blamed(askedPitting, askedBending float64) (iso, agma mode, comparable bool) {
	roots := s.Cross.BendingWhy == ""
	iso = first([2]float64{s.Flank[0].Safety, s.Flank[1].Safety}, [2]float64{s.Root[0].Safety, s.Root[1].Safety}, askedPitting, askedBending, true)
	agma = first(s.Cross.Pitting, s.Cross.Bending, askedPitting, askedBending, roots)
	return iso, agma, roots || !iso.root
}

// blame is that in words.
func (r *Result) blame() string {
	iso, agma, _ := r.Strength.blamed(r.spec.PittingAsked, r.spec.BendingAsked)
	words := "ISO 6336 has " + iso.String() + " give out first, AGMA 2001 " + agma.String()
	if r.Strength.Cross.BendingWhy != "" {
		words += " of the flanks alone"
	}
	if s := &r.spec; s.PinionContact.Known || s.PinionBending.Known || s.WheelContact.Known || s.WheelBending.Known {
		words += "; ISO takes your own limits, AGMA the strengths of its own grades"
	}
	return words
}

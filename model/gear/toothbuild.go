package gear

import "math"

// toothBuild is what besides the geometry makes the teeth as strong as they
// are, in the units of ISO 6336: mm, µm, mm²/s. Index 0 is the pinion.
type toothBuild struct {
	rack          Rack
	pressureAngle float64 // rad
	accuracyClass int
	material      [2]toothMaterial
	flankDepth    float64    // mean roughness Rz of the flanks
	rootDepth     float64    // of the roots
	viscosity     float64    // of the oil at 40 °C
	tipRelief     float64    // µm
	hollow        [2]float64 // inside diameter of the rim over the mean diameter
	wheelRim      float64    // below the wheel's teeth; 0 is a solid wheel
	wheelWeb      float64    // its width over the face width; 1 is a solid wheel
	mount         pinionMount
	edition       Edition
	unrelieved    float64 // fZCa
}

// pinionMount is how the pinion is held, mm.
type pinionMount struct {
	overhung bool
	crowned  bool
	span     float64 // of its bearings
	offset   float64 // of the face's middle from that of the span, or overhang
	shaft    float64 // diameter
}

// unheld is why a pinion so mounted, its face in mm, cannot be built or lies
// outside what the method for its bending is given for; empty where it does
// not. Source: geometry; ISO 6336-1, from memory.
func (m pinionMount) unheld(face float64) string {
	switch {
	case m.overhung && m.offset < face/2:
		return "an overhung pinion stands outside its bearings: raise Pinion offset to more than half the Face width"
	case !m.overhung && m.span < face+2*m.offset:
		return "the pinion does not fit between its bearings: raise Pinion bearing span or lower Pinion offset or Face width"
	case m.overhung && m.offset > 0.5*m.span, !m.overhung && m.offset > 0.3*m.span:
		return "Pinion offset is too much of Pinion bearing span for the method; lower it, at most 0.3 between bearings and 0.5 overhung"
	}
	return ""
}

// The web of a lightened wheel lies between three and eight tenths of its
// radius (estimate, as in its inertia).
const (
	webInside  = 0.3
	webOutside = 0.8
)

// toothBuild gathers what the rating needs of a solved unit; ok is false when
// a hardness does not suit its material.
func (g *Gear) toothBuild() (b toothBuild, ok bool) {
	s, m := &g.spec, &g.geometry
	pinion, okPinion := newToothMaterial(s.PinionMaterial, s.MaterialQuality, s.CaseCore, s.PinionHardness)
	wheel, okWheel := newToothMaterial(s.WheelMaterial, s.MaterialQuality, s.CaseCore, s.WheelHardness)
	okPinion = pinion.own(s.PinionContact, s.PinionBending) || okPinion
	okWheel = wheel.own(s.WheelContact, s.WheelBending) || okWheel
	b = toothBuild{
		rack: s.Rack.Rack(), pressureAngle: s.PressureAngle, accuracyClass: s.AccuracyClass,
		material:   [2]toothMaterial{pinion, wheel},
		flankDepth: depthPerMean * s.Roughness * 1e6, rootDepth: s.RootRoughness * 1e6,
		viscosity: s.ViscosityAt40 * mm2, tipRelief: s.TipRelief * 1e6, wheelWeb: 1,
		edition: s.Edition, unrelieved: s.UnrelievedFlanks,
		mount: pinionMount{overhung: s.PinionPlace == Overhung, crowned: s.Crowned,
			span: g.pinionSpan() * 1000, offset: s.PinionOffset * 1000, shaft: g.bearings.pinion.Bore * 1000},
	}
	if s.WebFactor < 1 {
		b.wheelRim = ((1-webOutside)*m.Driven.ReferenceDiameter - (m.Driven.ReferenceDiameter - m.Driven.RootDiameter)) / 2 * 1000
		b.wheelWeb = 1 - (1-s.WebFactor)/(webOutside*webOutside-webInside*webInside)
		b.hollow[1] = webOutside * m.Driven.ReferenceDiameter / m.Driven.meanDiameter()
	}
	return b, okPinion && okWheel
}

// depthPerMean is the usual Rz over Ra. Source: from memory: ISO 6336-2.
const depthPerMean = 6

// pinionSpan is the distance of the pinion bearings' middles, m: as given, or
// that of the case.
func (g *Gear) pinionSpan() float64 {
	if g.spec.PinionSpan.Known {
		return g.spec.PinionSpan.Value
	}
	return g.meshDepth() + g.bearings.pinion.Width
}

func (w *Wheel) meanDiameter() float64 { return (w.TipDiameter + w.RootDiameter) / 2 }

// rimFactor is YB of the wheel; ok is false for a rim thinner than half a
// tooth. Source: ISO 6336-3, clause 9, from memory.
func (b *toothBuild) rimFactor(tooth float64) (factor float64, ok bool) {
	if b.wheelWeb >= 1 || b.wheelRim >= 1.2*tooth {
		return 1, true
	}
	if b.wheelRim <= 0.5*tooth {
		return 0, false
	}
	return 1.6 * math.Log(2.242*tooth/b.wheelRim), true
}

// blankFactor is CR, the softening by a web. Source: ISO 6336-1, from memory;
// webs below a fifth of the face count as a fifth.
func (b *toothBuild) blankFactor(module float64) float64 {
	if b.wheelWeb >= 1 {
		return 1
	}
	return 1 + math.Log(math.Max(b.wheelWeb, 0.2))/(5*math.Exp(math.Max(b.wheelRim, module)/(5*module)))
}

package gear

import (
	"cmp"
	"math"

	"backspan/model/reading"
	"backspan/model/unit"
)

// CaseDepth is how deep the hard case of the teeth should reach at their roots,
// m.
type CaseDepth struct {
	Why         string // why there is no recommendation, empty when there is one
	Least, Most float64
	origin      string
}

const (
	caseOrigin    = "from memory: ISO 6336-5, 0.15 to 0.2 modules at the root, to 550 HV"
	nitrideOrigin = "common practice, no source: 0.2 to 0.4 mm of nitriding at modules up to 3 mm"
	mostNitrided  = 3e-3 // module, m
)

// hardDepth is what is recommended for the hard gears of the pair.
func (g *Gear) hardDepth() CaseDepth {
	found := CaseDepth{Why: "both gears are as hard inside as outside"}
	for _, class := range []MaterialClass{g.spec.PinionMaterial, g.spec.WheelMaterial} {
		if class.treatment() == soft {
			continue
		}
		d := class.hardDepth(g.spec.Module)
		if found.origin != "" && found != d {
			return CaseDepth{Why: "the gears are hardened in two ways, each with a depth of its own"}
		}
		if found = d; d.Why != "" {
			return d
		}
	}
	return found
}

func (c MaterialClass) hardDepth(module float64) CaseDepth {
	switch {
	case c == CaseHardened:
		return CaseDepth{Least: 0.15 * module, Most: 0.2 * module, origin: caseOrigin}
	case c.treatment() == nitrided && module <= mostNitrided:
		return CaseDepth{Least: 0.2e-3, Most: 0.4e-3, origin: nitrideOrigin}
	case c.treatment() == nitrided:
		return CaseDepth{Why: "no depth of nitriding is held here for modules above 3 mm"}
	}
	return CaseDepth{Why: "no depth is held here for this treatment"}
}

// shearDepth is how deep below the flanks the greatest shear lies, m: 0.78 of
// the half width of contact under the greatest contact stress. Source: Johnson,
// Contact Mechanics, section 4.2 (lines in contact), from memory.
func (s *Strength) shearDepth(g *Geometry) float64 {
	stress := math.Max(s.Flank[0].Stress, s.Flank[1].Stress)
	stiffness := math.Pi * s.Elasticity * s.Elasticity * megapascal
	return 0.78 * 2 * stress * g.reducedRadius() / stiffness
}

func (r *Result) depthReadings(rs []reading.Reading) []reading.Reading {
	d := &r.CaseDepth
	return append(rs,
		reading.Unless(d.Why, "gear.case_depth", "Case depth wanted, least", d.Least, unit.Millimetre).
			How("hard layer at the roots").Source(cmp.Or(d.origin, caseOrigin)),
		reading.Unless(d.Why, "gear.case_depth_most", "Case depth wanted, most", d.Most, unit.Millimetre).
			How("hard layer at the roots; deeper leaves the tips brittle").Source(cmp.Or(d.origin, caseOrigin)),
		r.Strength.rated("gear.shear_depth", "Depth of greatest shear", r.Strength.shearDepth(&r.Geometry), unit.Millimetre).
			How("below the flanks, 0.78 of the half width of contact; the case must reach well beyond").
			Source("from memory: Johnson, Contact Mechanics, section 4.2"),
	)
}

func (r *Result) depthCheck() reading.Check {
	const key, label = "gear.case_depth", "Case depth as drawn"
	d, drawn := &r.CaseDepth, r.spec.CaseDepth
	switch {
	case d.Why != "":
		return reading.Unrated(key, label, d.Why)
	case !drawn.Known:
		return reading.Unrated(key, label, "no depth is given; fill in Case depth as drawn")
	case drawn.Value < d.Least:
		return reading.AtLeast(key, label, drawn.Value, d.Least, 0, unit.Millimetre).Warn().Source(d.origin).
			Advice("Ask for a deeper Case depth as drawn; a thin case is crushed into the core.")
	}
	return reading.AtMost(key, label, drawn.Value, d.Most, 0, unit.Millimetre).Warn().Source(d.origin).
		Advice("Ask for a shallower Case depth as drawn; a tooth hard right through breaks.")
}

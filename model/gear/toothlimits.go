package gear

import "math"

// lifeCurve is a life factor over load cycles.
type lifeCurve struct {
	most        float64 // at few cycles
	reference   float64 // cycles
	short, long float64 // exponents below and above the reference
}

// leastLife is the factor at 1e10 cycles and more.
const leastLife = 0.85

func (c lifeCurve) at(cycles float64) float64 {
	if cycles <= c.reference {
		return math.Min(c.most, math.Pow(c.reference/cycles, c.short))
	}
	return math.Max(leastLife, math.Pow(c.reference/cycles, c.long))
}

// Life curves by treatment, in its order. Source: ISO 6336-2 and 6336-3, from
// memory.
var (
	flankLife = [4]lifeCurve{
		{1.6, 5e7, 0.0756, 0.0306}, {1.6, 5e7, 0.0756, 0.0306}, {1.3, 2e6, 0.0875, 0.0191}, {1.1, 2e6, 0.0318, 0.0191}}
	rootLife = [4]lifeCurve{
		{2.5, 3e6, 0.16, 0.02}, {2.5, 3e6, 0.115, 0.02}, {1.6, 3e6, 0.059, 0.02}, {1.1, 3e6, 0.012, 0.02}}
)

// flankOil is the part of the oil film's and roughness' factors that the speed
// leaves alone.
type flankOil struct {
	lubricant, roughness float64 // ZL, ZR
	speedLow             float64 // CZv
	harder               float64 // RzH at 1 m/s, µm
}

// between is linear over the limit of the weaker flank, from 850 to 1200 N/mm².
func between(limit, low, high float64) float64 {
	return low + (high-low)*math.Min(math.Max((limit-850)/350, 0), 1)
}

// newFlankOil sets ZL and ZR by the weaker flank. Source: ISO 6336-2, clauses
// 12 and 13, from memory.
func newFlankOil(g *Geometry, b *toothBuild) flankOil {
	weaker := math.Min(b.material[0].contact, b.material[1].contact)
	thin := between(weaker, 0.83, 0.91)
	film := 1.2 + 134/b.viscosity
	reduced := g.reducedRadius() * math.Cos(g.BaseHelixAngle) * 1000
	rough := b.flankDepth * math.Cbrt(10/reduced)
	return flankOil{
		lubricant: thin + 4*(1-thin)/(film*film),
		roughness: math.Pow(3/rough, between(weaker, 0.15, 0.08)),
		speedLow:  thin + 0.02,
		harder:    rough * math.Cbrt(1500/b.viscosity),
	}
}

// speed is Zv at a pitch-line speed in m/s. Source: ISO 6336-2, clause 12,
// from memory.
func (o flankOil) speed(v float64) float64 {
	return o.speedLow + 2*(1-o.speedLow)/math.Sqrt(0.8+32/v)
}

// hardening is ZW of a soft gear that meets a hard one; 1 for like pairs.
// Source: ISO 6336-2, clause 14, from memory.
func (o flankOil) hardening(own, mate toothMaterial, v float64) float64 {
	if own.treatment != soft || mate.treatment == soft {
		return 1
	}
	depth := math.Min(math.Max(o.harder/math.Cbrt(v), 3), 16)
	hardness := math.Min(math.Max(own.hardness, 130), 470)
	return (1.2 - (hardness-130)/1700) * math.Pow(3/depth, 0.15)
}

// slipLayer is the thickness of the slip layer, mm. Source: ISO 6336-3, from
// memory.
func (m toothMaterial) slipLayer() float64 {
	t := slipLayers()
	if m.treatment != soft {
		return t.fixed[m.treatment]
	}
	last := len(t.soft) - 1
	stress := math.Min(math.Max(m.proofStress(), t.soft[0][0]), t.soft[last][0])
	i := 0
	for i < last-1 && stress > t.soft[i+1][0] {
		i++
	}
	from, to := t.soft[i], t.soft[i+1]
	return from[1] + (to[1]-from[1])*(stress-from[0])/(to[0]-from[0])
}

// notch is YδrelT. Source: ISO 6336-3, clause 13, from memory.
func (m toothMaterial) notch(parameter float64) float64 {
	layer := m.slipLayer()
	return (1 + math.Sqrt(layer*0.2*(1+2*parameter))) / (1 + math.Sqrt(layer*1.2))
}

// surface is YRrelT at a root roughness Rz in µm. Source: ISO 6336-3, clause
// 14, from memory.
func (m toothMaterial) surface(depth float64) float64 {
	smooth := depth < 1
	switch {
	case m.treatment == nitrided || m.treatment == nitrocarburized:
		if smooth {
			return 1.025
		}
		return 4.299 - 3.259*math.Pow(depth+1, 0.0058)
	case m.class == Normalized:
		if smooth {
			return 1.07
		}
		return 5.306 - 4.203*math.Pow(depth+1, 0.01)
	case smooth:
		return 1.12
	}
	return 1.674 - 0.529*math.Pow(depth+1, 0.1)
}

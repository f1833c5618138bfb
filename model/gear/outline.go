package gear

import "math"

// outline is the inside of the case seen along the shafts: the hull of two
// circles, one around each gear.
type outline struct {
	area         float64 // m²
	perimeter    float64 // m
	centreHeight float64 // of the area above the crank axis, m
}

// newOutline wraps both tip circles at the tip gap.
func newOutline(s Spec, g Geometry) outline {
	return hull(g.Pinion.TipDiameter/2+s.TipGap, g.Driven.TipDiameter/2+s.TipGap, g.CentreDistance)
}

// hull is the convex hull of a circle of radius low at the crank axis and one
// of radius high a distance above it. The height of its centre treats the part
// between the half circles as a trapezium over the full distance.
func hull(low, high, distance float64) outline {
	if math.Abs(high-low) >= distance {
		r, up := low, 0.0
		if high > low {
			r, up = high, distance
		}
		return outline{area: math.Pi * r * r, perimeter: 2 * math.Pi * r, centreHeight: up}
	}
	lean := math.Asin((high - low) / distance)
	side := distance * math.Cos(lean)
	lowCap, highCap := low*low*(math.Pi/2-lean), high*high*(math.Pi/2+lean)
	middle := (low + high) * side
	middleHeight := distance / 3 * (low + 2*high) / (low + high)
	area := lowCap + highCap + middle
	return outline{
		area:         area,
		perimeter:    2*side + low*(math.Pi-2*lean) + high*(math.Pi+2*lean),
		centreHeight: (highCap*distance + middle*middleHeight) / area,
	}
}

// coolingArea is the outside that the air reaches, fins included: the rim and
// the propeller-side face; the coupling covers the other face.
func (g *Gear) coolingArea() float64 {
	return g.spec.FinFactor * (g.outline.perimeter*g.caseDepth() + g.outline.area)
}

// caseDepth is that of the oil-filled case with its two walls, m.
func (g *Gear) caseDepth() float64 {
	return g.engineWallDepth() + g.meshDepth() + g.propellerWallDepth()
}

func (g *Gear) meshDepth() float64 { return g.spec.FaceWidth + 2*g.spec.SideGap }

package pulley

import "math"

// ring is a solid of revolution with a bore, on the axis of a pulley.
type ring struct {
	inner, outer float64 // radii, m
	front        float64 // of its front face, behind the body's, m
	length       float64 // m
	fill         float64 // share of the volume that is metal
}

// body is a turned part: mass kg, centre of gravity behind its front face m,
// inertias about its own centre of gravity kg·m².
type body struct {
	depth, mass, cgAft float64
	polar, transverse  float64
}

// turned sums rings of one material into a body.
func turned(depth, density float64, rings ...ring) body {
	b := body{depth: depth}
	for _, r := range rings {
		m := r.mass(density)
		b.mass += m
		b.cgAft += m * (r.front + r.length/2)
		b.polar += m * (r.outer*r.outer + r.inner*r.inner) / 2
	}
	if b.mass > 0 {
		b.cgAft /= b.mass
	}
	for _, r := range rings {
		m, arm := r.mass(density), r.front+r.length/2-b.cgAft
		b.transverse += m*(3*(r.outer*r.outer+r.inner*r.inner)+r.length*r.length)/12 + m*arm*arm
	}
	return b
}

func (r ring) mass(density float64) float64 {
	return math.Pi * (r.outer*r.outer - r.inner*r.inner) * r.length * density * r.fill
}

// crankPulley has its web in the middle of the face.
func (b *Build) crankPulley(face, outside float64) body {
	width := face + 2*b.SideWall
	rings := b.pulleyRings(face, outside, b.CrankBore)
	web := ring{rings.hub.outer, rings.rim.inner, (width - b.WebThickness) / 2, b.WebThickness, 1}
	return turned(width, b.PulleyDensity, rings.rim, rings.front, rings.back, rings.hub, web)
}

// drivenPulley has its web behind the face, where the propeller plate bolts
// on; the bearings sit inside its hub.
func (b *Build) drivenPulley(face, outside float64) body {
	width := face + 2*b.SideWall
	rings := b.pulleyRings(face, outside, b.BearingSeat)
	web := ring{rings.hub.inner, outside / 2, width, b.WebThickness, 1 - b.WebCutOut}
	return turned(width+b.WebThickness, b.PulleyDensity, rings.rim, rings.front, rings.back, rings.hub, web)
}

func (b *Build) plate() body {
	return turned(b.FlangeThickness, b.PulleyDensity,
		ring{0, b.FlangeDiameter / 2, 0, b.FlangeThickness, 1})
}

// pulleyRings is what both pulleys have: rim, two side walls, hub.
type pulleyRings struct{ rim, front, back, hub ring }

// pulleyRings lays out a pulley of an outside diameter around a bore. A hub
// that would reach into the rim leaves the pulley solid.
func (b *Build) pulleyRings(face, outside, bore float64) pulleyRings {
	width, outer := face+2*b.SideWall, outside/2
	inner := outer - b.RimThickness
	wall := ring{inner, outer + b.SideWallHeight, 0, b.SideWall, 1}
	back := wall
	back.front = width - b.SideWall
	return pulleyRings{
		rim:   ring{inner, outer, b.SideWall, face, 1},
		front: wall,
		back:  back,
		hub:   ring{bore / 2, math.Min(bore/2+b.HubWall, inner), 0, width, 1},
	}
}

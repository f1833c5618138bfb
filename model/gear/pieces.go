package gear

import (
	"math"

	"backspan/model/bearing"
	"backspan/model/coupling"
	"backspan/model/part"
)

const (
	steelDensity     = 7850.0 // kg/m³
	aluminiumDensity = 2700.0 // kg/m³
	boltDiameter     = 6e-3   // of the case, m; estimate
	boltPitch        = 60e-3  // along the rim, ten diameters; estimate
	boltHead         = 1.4    // mass with head over that of the shank; estimate
)

// lump is a solid of revolution along the thrust axis.
type lump struct {
	mass, up, radius, length float64
}

// gather makes one piece of lumps that share its depth.
func gather(key, label string, depth float64, lumps ...lump) part.Piece {
	p := part.Piece{Key: key, Label: label, Depth: depth, CGAft: depth / 2}
	for _, l := range lumps {
		p.Mass += l.mass
		p.CGUp += l.mass * l.up
	}
	if p.Mass > 0 {
		p.CGUp /= p.Mass
	}
	for _, l := range lumps {
		own := part.Cylinder(l.mass, l.radius, l.length)
		up := l.up - p.CGUp
		p.PitchInertia += own + l.mass*up*up
		p.YawInertia += own
	}
	return p
}

// Pieces are the bodies of the reduction from the engine's drive face to the
// propeller plate, one behind the other.
func (g Gear) Pieces() []part.Piece {
	s, m, b := &g.spec, &g.geometry, &g.bearings
	a := m.CentreDistance
	wall := g.engineWallDepth()
	far := g.propellerWallDepth()
	cover := s.SealWidth + s.CoverDepth
	pieces := []part.Piece{
		gather("drive.coupling", "Coupling", s.Coupling.Depth,
			lump{s.Coupling.Mass, 0, coupling.Radius, s.Coupling.Depth}),
		gather("drive.case_engine_side", "Case wall and bearings, engine side", wall,
			append(g.pinionSeats(), g.rim(wall), g.plate(), g.boss(b.wheelEngine, a), ring(b.wheelEngine, a), bar(b.wheelEngine.Bore, wall, a))...),
		gather("drive.gap_engine_side", "Gap, engine side", s.SideGap,
			g.rim(s.SideGap), bar(b.pinion.Bore, only(!s.Held.OnCrank, s.SideGap), 0), bar(b.wheelEngine.Bore, s.SideGap, a)),
		gather("drive.gears", "Gears and oil", s.FaceWidth,
			g.rim(s.FaceWidth), g.bolts(),
			bar(m.Pinion.ReferenceDiameter, s.FaceWidth, 0), g.wheelBody(), g.oilBody()),
		gather("drive.gap_propeller_side", "Gap, propeller side", s.SideGap,
			g.rim(s.SideGap), bar(b.pinion.Bore, only(s.PinionPlace == Between, s.SideGap), 0), bar(b.wheelPropeller.Bore, s.SideGap, a)),
		gather("drive.case_propeller_side", "Case wall and bearings, propeller side", far,
			append(g.pinionSeatsBehind(), g.rim(far), g.plate(), g.boss(b.wheelPropeller, a), ring(b.wheelPropeller, a), bar(b.wheelPropeller.Bore, far, a))...),
		gather("drive.seal_cover", "Seal and cover", cover,
			g.coverBody(cover), bar(b.wheelPropeller.Bore, cover, a)),
		gather("drive.flange", "Propeller flange", s.FlangeThickness, g.flangeBody()),
	}
	if s.Held.OnCrank {
		return pieces[1:]
	}
	return pieces
}

// bar is solid steel round stock.
func bar(diameter, length, up float64) lump {
	return lump{steelDensity * math.Pi / 4 * diameter * diameter * length, up, diameter / 2, length}
}

func ring(b bearing.DeepGroove, up float64) lump {
	return lump{b.Mass(), up, b.MeanDiameter() / 2, b.Width}
}

// boss is the metal around a bearing seat.
func (g *Gear) boss(b bearing.DeepGroove, up float64) lump {
	outside := b.Outside + 2*g.spec.BossWall
	area := math.Pi / 4 * (outside*outside - b.Outside*b.Outside)
	return lump{aluminiumDensity * area * b.Width, up, outside / 2, b.Width}
}

// plate is one face of the case.
func (g *Gear) plate() lump {
	wall := g.spec.CaseWall
	return lump{aluminiumDensity * g.outline.area * wall, g.outline.centreHeight, g.outlineRadius(), wall}
}

// rim is a length of the wall around the gears. Its radius makes a thin hoop
// of the formula for a solid.
func (g *Gear) rim(length float64) lump {
	mass := aluminiumDensity * g.outline.perimeter * g.spec.CaseWall * length
	return lump{mass, g.outline.centreHeight, g.outlineRadius() * math.Sqrt2, length}
}

func (g *Gear) outlineRadius() float64 { return math.Sqrt(g.outline.area / math.Pi) }

// bolts close the case through the depth of the mesh.
func (g *Gear) bolts() lump {
	count := math.Ceil(g.outline.perimeter / boltPitch)
	one := boltHead * steelDensity * math.Pi / 4 * boltDiameter * boltDiameter * g.meshDepth()
	return lump{count * one, g.outline.centreHeight, g.outlineRadius() * math.Sqrt2, g.meshDepth()}
}

func (g *Gear) wheelBody() lump {
	solid := bar(g.geometry.Driven.ReferenceDiameter, g.spec.FaceWidth, g.geometry.CentreDistance)
	solid.mass *= g.spec.WebFactor
	return solid
}

// oilBody lies around the lower gear's tips.
func (g *Gear) oilBody() lump {
	depth := -g.geometry.Pinion.TipDiameter / 2
	return lump{g.spec.OilVolume * g.spec.OilDensity, depth, g.geometry.Pinion.TipDiameter / 2, g.meshDepth()}
}

func (g *Gear) coverBody(depth float64) lump {
	b := g.bearings.wheelPropeller
	outside := b.Outside + 2*g.spec.BossWall
	area := math.Pi / 4 * (outside*outside - b.Bore*b.Bore)
	return lump{aluminiumDensity * area * depth, g.geometry.CentreDistance, outside / 2, depth}
}

func (g *Gear) flangeBody() lump {
	f := bar(g.spec.FlangeDiameter, g.spec.FlangeThickness, g.geometry.CentreDistance)
	if g.spec.FlangeMaterial == Aluminium {
		f.mass *= aluminiumDensity / steelDensity
	}
	return f
}

// SpinningInertia is the polar inertia of what turns with the propeller:
// wheel, shaft and flange, kg·m². What lightening removes is taken from a ring
// between three and eight tenths of the wheel's radius (estimate).
func (g Gear) SpinningInertia() float64 {
	m, b := &g.geometry, &g.bearings
	solid := bar(m.Driven.ReferenceDiameter, g.spec.FaceWidth, 0)
	removed := (1 - g.spec.WebFactor) * solid.mass * (0.3*0.3 + 0.8*0.8) / 2 * solid.radius * solid.radius
	inertia := spin(solid) - removed
	engineEnd := g.engineWallDepth() + g.spec.SideGap
	propellerEnd := g.spec.SideGap + g.propellerWallDepth() + g.spec.SealWidth + g.spec.CoverDepth
	inertia += spin(bar(b.wheelEngine.Bore, engineEnd, 0)) + spin(bar(b.wheelPropeller.Bore, propellerEnd, 0))
	return inertia + spin(g.flangeBody())
}

// CrankInertia is the polar inertia of what the reduction adds to the crank,
// kg·m²: coupling, pinion and its shaft.
func (g Gear) CrankInertia() float64 {
	engine, drive := g.spec.Coupling.Inertias()
	return engine + drive + g.pinionInertia()
}

// pinionInertia is that of the pinion and its shaft, kg·m².
func (g *Gear) pinionInertia() float64 {
	shaft := bar(g.bearings.pinion.Bore, g.pinionShaft(), 0)
	return spin(bar(g.geometry.Pinion.ReferenceDiameter, g.spec.FaceWidth, 0)) + spin(shaft)
}

// spin is a solid cylinder's polar inertia, kg·m².
func spin(l lump) float64 { return l.mass * l.radius * l.radius / 2 }

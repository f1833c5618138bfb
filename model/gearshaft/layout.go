package gearshaft

import (
	"math"

	"backspan/model/gear"
	"backspan/model/shaft"
)

// diameters are those of the seats, m. None falls below a third of the
// bearing's bore.
type diameters struct{ coupling, wheel, flange float64 }

func (s *Spec) diameters(g *gear.Shafting) diameters {
	below := func(bore, step float64) float64 { return math.Max(bore-step, bore/3) }
	return diameters{
		coupling: below(g.Pinion.Bore, s.CouplingStep),
		wheel:    g.WheelProp.Bore + s.WheelStep,
		flange:   below(g.WheelProp.Bore, s.FlangeStep),
	}
}

// toward is the face of a bearing that looks at the gear, m.
func toward(bearing, gear, width float64) float64 {
	return bearing + math.Copysign(width/2, gear-bearing)
}

// pinionPlaces are the sections of the pinion shaft. The torque enters at the
// coupling; between the bearings it ends at the teeth.
func (s *Spec) pinionPlaces(g *gear.Shafting, d *diameters) [6]place {
	p := &g.Places
	return [6]place{
		{"coupling seat", p.CouplingRear + s.CouplingSeatLength/2, d.coupling, s.notch(s.Coupling.Fit), true},
		{"engine-side bearing seat", p.PinionEngineBearing, g.Pinion.Bore, s.Shoulder, true},
		{"engine-side bearing shoulder", toward(p.PinionEngineBearing, p.Gears, g.Pinion.Width), g.Pinion.Bore, s.Shoulder, true},
		{"propeller-side bearing seat", p.PinionPropBearing, g.Pinion.Bore, s.Shoulder, g.Overhung},
		{"propeller-side bearing shoulder", toward(p.PinionPropBearing, p.Gears, g.Pinion.Width), g.Pinion.Bore, s.Shoulder, g.Overhung},
		{"roots of the pinion's teeth", p.Gears, g.PinionRoot, s.Toothed, true},
	}
}

// wheelPlaces are the sections of the propeller shaft. The torque runs from
// the wheel to the flange.
func (s *Spec) wheelPlaces(g *gear.Shafting, d *diameters) [6]place {
	p := &g.Places
	return [6]place{
		{"wheel seat", p.Gears, d.wheel, s.notch(s.Wheel.Fit), true},
		{"engine-side bearing seat", p.WheelEngineBearing, g.WheelEngine.Bore, s.Shoulder, false},
		{"engine-side bearing shoulder", toward(p.WheelEngineBearing, p.Gears, g.WheelEngine.Width), g.WheelEngine.Bore, s.Shoulder, false},
		{"propeller-side bearing seat", p.WheelPropBearing, g.WheelProp.Bore, s.Shoulder, true},
		{"propeller-side bearing shoulder", toward(p.WheelPropBearing, p.Gears, g.WheelProp.Width), g.WheelProp.Bore, s.Shoulder, true},
		{"flange seat", math.Min(s.FlangeSeatLength, p.WheelPropBearing-g.WheelProp.Width/2), d.flange, s.notch(s.Flange.Fit), true},
	}
}

// wheelSteps are the diameters along the propeller shaft.
func wheelSteps(g *gear.Shafting, d *diameters) [4]shaft.Step {
	p, half := &g.Places, g.FaceWidth/2
	rear := p.WheelPropBearing - g.WheelProp.Width/2
	return [4]shaft.Step{
		{From: 0, To: rear, Diameter: d.flange},
		{From: rear, To: p.Gears - half, Diameter: g.WheelProp.Bore},
		{From: p.Gears - half, To: p.Gears + half, Diameter: d.wheel},
		{From: p.Gears + half, To: p.WheelEngineBearing + g.WheelEngine.Width/2, Diameter: g.WheelEngine.Bore},
	}
}

// pinionSteps are the diameters along the pinion shaft: the bearings' bore,
// and the root circle over the face.
func pinionSteps(g *gear.Shafting) [3]shaft.Step {
	p, half := &g.Places, g.FaceWidth/2
	rear := math.Min(p.PinionPropBearing-g.Pinion.Width/2, p.Gears-half)
	front := math.Max(p.PinionEngineBearing+g.Pinion.Width/2, p.Gears+half)
	return [3]shaft.Step{
		{From: rear, To: p.Gears - half, Diameter: g.Pinion.Bore},
		{From: p.Gears - half, To: p.Gears + half, Diameter: math.Max(g.PinionRoot, g.Pinion.Bore/3)},
		{From: p.Gears + half, To: front, Diameter: g.Pinion.Bore},
	}
}

// Bend is how far the shafts bend under mesh, weight and the greatest
// gyroscopic couple. Slopes in rad, deflections in m.
type Bend struct {
	MeshSlope  float64 // between the two gears
	Separation float64 // of the gears along the line of centres; negative when closer
	Shift      float64 // greatest deflection at either gear
	Bearings   [bearingCount]float64
}

// bend integrates both shafts. The gyroscopic couple has any direction and is
// added in the worst one.
func (s *Spec) bend(g *gear.Shafting, d *diameters, wheel, pinion *line) Bend {
	ws, ps := wheelSteps(g, d), pinionSteps(g)
	w := wheel.places.Bend(ws[:], shaft.SteelModulus, wheel.mesh.load, wheel.weight.load)
	y := wheel.places.Bend(ws[:], shaft.SteelModulus, wheel.gyroPeak.load)
	p := pinion.places.Bend(ps[:], shaft.SteelModulus, pinion.mesh.load)
	at := g.Places.Gears
	ws1, wd := w.At(at)
	ys, yd := y.At(at)
	ps1, pd := p.At(at)
	b := Bend{
		MeshSlope:  ws1.Minus(ps1).Size() + ys.Size(),
		Separation: pd.Along - wd.Along + yd.Size(),
		Shift:      math.Max(wd.Size()+yd.Size(), pd.Size()),
	}
	for i, place := range [...]float64{wheel.places.PropSide, wheel.places.EngineSide} {
		steady, _ := w.At(place)
		turn, _ := y.At(place)
		b.Bearings[wheelProp+i] = steady.Size() + turn.Size()
	}
	for i, place := range [...]float64{pinion.places.PropSide, pinion.places.EngineSide} {
		steady, _ := p.At(place)
		b.Bearings[pinionProp+i] = steady.Size()
	}
	return b
}

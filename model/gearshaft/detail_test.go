package gearshaft

import (
	"math"
	"strings"
	"testing"

	"backspan/model/bearing"
	"backspan/model/internal/anyspec"
	"backspan/model/param"
	"backspan/model/part"
	"backspan/model/reading"
	"backspan/model/shaft"
)

// The greatest static load of the pinion's locating bearing: 3000 N
// along the shaft and the mesh force across it, three times as much at a
// peak of 60 N·m.
func TestStaticLoadCountsTheAxialPeak(t *testing.T) {
	s, g := Default(), threeToOne(t)
	s.ApplicationFactor = 1
	g.Axial, g.Pulsation.Peak, g.Pulsation.PeakSpeed = 3000, 60, 300
	r := Rate(s, g, part.Clockwise, threeToOneLoads())
	b := &r.Bearings[pinionEngine]
	want := 0.6*3*b.Running + 0.5*3*3000
	near(t, "static load", b.StaticEquivalent, want)
}

// A tooth push against the thrust leaves the locating bearing most where the
// torque is least: 650 N of thrust and 270 N of teeth that swing by a quarter.
func TestAxialPeakWhereTheTeethPushLeast(t *testing.T) {
	g := threeToOne(t)
	mesh, _ := meshes(&g, 1)
	l := threeToOneLoads()
	s := Default()
	x := wheelLine(&s, &g, mesh, 1, &l)
	tw := newTwist(&g, l.Speed*g.Ratio)
	shake := newShaking(&g, &tw)
	near(t, "push", x.axial, 380)
	near(t, "share lost", shake.drop, 0.25)
	// A torque that falls to nothing and hardly rises: the thrust is left alone.
	g.Pulsation.Least, g.Pulsation.Most = 0, 21
	s.ApplicationFactor = 1
	r := Rate(s, g, part.Clockwise, l)
	b := &r.Bearings[wheelProp]
	wheel := wheelLine(&s, &g, mesh, 1, &l)
	radial := b.Running + 0.05*wheel.mesh.held.PropSide.Size() + wheel.gyroPeak.held.PropSide.Size()
	near(t, "static load", b.StaticEquivalent, math.Max(0.6*radial+0.5*650, radial))
	s.WheelLocating = shaft.EngineSide
	l.GyroCouple, l.GyroPeak = 0, 0
	r = Rate(s, g, part.Clockwise, l)
	b = &r.Bearings[wheelEngine]
	radial = b.Running + 0.05*wheel.mesh.held.EngineSide.Size()
	if want := 0.6*radial + 0.5*650; want > radial {
		near(t, "static load, engine side", b.StaticEquivalent, want)
	} else {
		t.Fatalf("the axial load does not rule: %g and %g", want, radial)
	}
}

// Ratings and the speed limit of a data sheet stand in for those from memory.
func TestOwnRatingsReplaceTheTable(t *testing.T) {
	table := Rate(Default(), threeToOne(t), part.Clockwise, threeToOneLoads())
	for i, set := range [...]func(*Spec, param.Slot, param.Slot){
		wheelProp:   func(s *Spec, c, c0 param.Slot) { s.WheelPropDynamic, s.WheelPropStatic = c, c0 },
		wheelEngine: func(s *Spec, c, c0 param.Slot) { s.WheelEngineDynamic, s.WheelEngineStatic = c, c0 },
		pinionProp:  func(s *Spec, c, c0 param.Slot) { s.PinionDynamic, s.PinionStatic = c, c0 },
	} {
		s, g := Default(), threeToOne(t)
		old := [...]bearing.DeepGroove{g.WheelProp, g.WheelEngine, g.Pinion}[i]
		set(&s, param.Known(2*old.Rating), param.Known(2*old.StaticRating))
		r := Rate(s, g, part.Clockwise, threeToOneLoads())
		for j := range r.Bearings {
			grown := j == i || i == pinionProp && j == pinionEngine
			if (r.Bearings[j].StaticSafety.Value > 1.9*table.Bearings[j].StaticSafety.Value) != grown || (r.Bearings[j].BasicLife.Value > 5*table.Bearings[j].BasicLife.Value) != grown {
				t.Errorf("ratings of the %s: %s has %+v, was %+v", names[i], names[j], r.Bearings[j], table.Bearings[j])
			}
		}
	}
	s := Default()
	s.SpeedLimit = param.Known(0.9 * table.Bearings[pinionProp].SpeedParameter)
	c := anyspec.Check(t, Rate(s, threeToOne(t), part.Clockwise, threeToOneLoads()).Checks(nil, 0.1), "bearing.speed_pinion")
	if was := anyspec.Check(t, table.Checks(nil, 0.1), "bearing.speed_pinion"); c.Verdict != reading.Fails || was.Verdict != reading.Holds || !strings.Contains(c.Origin, "your own") || !strings.Contains(was.Origin, "from memory") {
		t.Errorf("%+v, was %+v", c, was)
	}
}

// What a turn wears is its cubic mean where that is more than the mean.
func TestTurnsWearByTheirCubicMean(t *testing.T) {
	s, g, l := Default(), threeToOne(t), threeToOneLoads()
	s.TurningShare, s.ApplicationFactor, g.Pulsation.Wear = 1, 1, 1
	for _, tc := range []struct{ wear, want float64 }{{0, 30}, {45, 45}} {
		l.GyroWear = tc.wear
		b := Rate(s, g, part.Clockwise, l).Bearings[wheelEngine]
		spacing := g.Places.WheelEngineBearing - g.Places.WheelPropBearing
		near(t, "in a turn", b.Turning, b.Running+30/spacing)
		near(t, "equivalent", b.Equivalent, b.Running+tc.want/spacing)
	}
}

// The cubic mean is that of the wave; of an unknown one that of a sine.
func TestWearFollowsTheWave(t *testing.T) {
	g := threeToOne(t)
	g.Pulsation.Wear = 1.3
	tw := newTwist(&g, 8400*rpm)
	near(t, "known", newShaking(&g, &tw).wear, 0.3)
	g.Pulsation.Why = "not known"
	tw = newTwist(&g, 8400*rpm)
	near(t, "a sine of 0.75", newShaking(&g, &tw).wear, math.Cbrt(1+1.5*0.75*0.75)-1)
}

// The torque runs from the coupling to the pinion's teeth and from the wheel
// to the flange; an overhung pinion stands behind both its bearings.
func TestWhereTheTorqueRuns(t *testing.T) {
	s, g := Default(), threeToOne(t)
	d := s.diameters(&g)
	for _, overhung := range []bool{false, true} {
		g.Overhung = overhung
		for _, p := range s.pinionPlaces(&g, &d) {
			if want := overhung || !strings.HasPrefix(p.name, "propeller-side"); p.twisted != want {
				t.Errorf("overhung %t: torque at the %s is %t", overhung, p.name, p.twisted)
			}
		}
	}
	for _, p := range s.wheelPlaces(&g, &d) {
		if want := !strings.HasPrefix(p.name, "engine-side"); p.twisted != want {
			t.Errorf("torque at the %s is %t", p.name, p.twisted)
		}
	}
	r := Rate(s, g, part.Clockwise, threeToOneLoads())
	near(t, "coupling", r.Coupling.Torque, 25)
	near(t, "wheel", r.WheelSeat.Torque, 75)
	near(t, "flange", r.Flange.Torque, 75)
}

// Imbalance stands still on a shaft that turns with it: it counts as steady
// bending, with the square of the speed.
func TestImbalanceIsSteady(t *testing.T) {
	s, g, l := Default(), threeToOne(t), threeToOneLoads()
	s.CentreOffset = 1e-3
	wheelMesh, _ := meshes(&g, 1)
	x := wheelLine(&s, &g, wheelMesh, 1, &l)
	tw := newTwist(&g, l.Speed*g.Ratio)
	at := place{at: g.Places.WheelPropBearing}
	force := l.PropellerWeight / 9.80665 * 1e-3 * l.Speed * l.Speed
	arm := g.Places.WheelPropBearing + l.PropellerOverhang
	full := x.stressing(&at, tw.mean, tw.swing, &tw, 3, 1)
	near(t, "steady", full.MeanBending, force*arm)
	near(t, "to and fro", full.BendingAmplitude, l.PropellerWeight*arm+l.GyroPeak)
	half := x.stressing(&at, tw.mean, tw.swing, &tw, 3, 0.5)
	near(t, "steady at half speed", half.MeanBending, force*arm/4)
	near(t, "to and fro at half speed", half.BendingAmplitude, l.PropellerWeight*arm+l.GyroPeak/2)
}

// The mesh pushes the shafts apart; hand sum on two uniform shafts with the
// gear in the middle, F L³/48 E I each.
func TestMeshPushesTheGearsApart(t *testing.T) {
	s, g, l := Default(), threeToOne(t), threeToOneLoads()
	l.PropellerWeight, l.GyroCouple, l.GyroPeak = 0, 0, 0
	g.Axial, g.PinionRoot, s.WheelStep = 0, g.Pinion.Bore, 0
	g.WheelEngine = g.WheelProp
	g.Places.WheelEngineBearing = 2*g.Places.Gears - g.Places.WheelPropBearing
	r := Rate(s, g, part.Clockwise, l)
	sag := func(span, d float64) float64 {
		return span * span * span / (48 * 206e9 * math.Pi / 64 * d * d * d * d)
	}
	give := sag(g.Places.WheelEngineBearing-g.Places.WheelPropBearing, 0.030) + sag(g.Places.PinionEngineBearing-g.Places.PinionPropBearing, 0.020)
	near(t, "separation, µm", r.Bend.Separation*1e6, g.Radial*give*1e6)
	near(t, "shift, µm", r.Bend.Shift*1e6, math.Hypot(g.Radial, g.Tangential)*1e6*sag(g.Places.PinionEngineBearing-g.Places.PinionPropBearing, 0.020))
	near(t, "slope in the middle, mrad", r.Bend.MeshSlope*1e3, 0)
}

// Beside its bearings a pinion's shaft bends by the bearing's force over half
// the bearing's width.
func TestShouldersLieBesideTheBearings(t *testing.T) {
	s, g := Default(), threeToOne(t)
	d := s.diameters(&g)
	_, mesh := meshes(&g, 1)
	x := pinionLine(&g, mesh, 1)
	for _, p := range s.pinionPlaces(&g, &d) {
		held := x.steady.EngineSide
		if strings.HasPrefix(p.name, "propeller-side") {
			held = x.steady.PropSide
		}
		if strings.HasSuffix(p.name, "shoulder") {
			near(t, p.name, x.fixed(p.at, 1), held.Size()*g.Pinion.Width/2)
		}
	}
}

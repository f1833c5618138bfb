package gearshaft

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"backspan/model/gear"
	"backspan/model/internal/anyspec"
	"backspan/model/part"
	"backspan/model/shaft"
)

const notFinite = "the sum has no finite answer for these parameters"

func drawSpec(t *rapid.T) Spec {
	s := Default()
	anyspec.Set(t, s.Params(true), nil)
	return s
}

func drawLoads(t *rapid.T) shaft.Loads {
	number := func(name string, lo, hi float64) float64 { return rapid.Float64Range(lo, hi).Draw(t, name) }
	gyro := number("gyro", 0, 60)
	return shaft.Loads{PropellerWeight: number("weight", -50, 50), PropellerOverhang: number("overhang", 0, 0.2), Thrust: number("thrust", 0, 1500),
		GyroCouple: gyro, GyroPeak: number("peak", 1, 2) * gyro, Speed: number("speed", 0, 600)}
}

// drawShafting is that of a random gear that can be built.
func drawShafting(t *rapid.T) (gear.Shafting, bool) {
	s := gear.Default()
	anyspec.Set(t, s.Params(), nil)
	at := part.Duty{Power: rapid.Float64Range(0, 40000).Draw(t, "power"), CrankSpeed: rapid.Float64Range(0, 1400).Draw(t, "crank"),
		AirTemperature: 290, AirDensity: 1.2, Inflow: 10}
	g, err := gear.New(s, at)
	if err != nil {
		return gear.Shafting{}, false
	}
	x := g.Examine(at, part.Train{}).Shafting()
	if rapid.Bool().Draw(t, "pulses") {
		swing := x.Torque * rapid.Float64Range(0, 3).Draw(t, "swing")
		x.Pulsation = gear.MeshPulsation{Mean: x.Torque, Swing: swing, Peak: rapid.Float64Range(0, 200).Draw(t, "peak"), PeakSpeed: at.CrankSpeed / 4}
	}
	return x, true
}

func TestRandomGearShaftsStayFinite(t *testing.T) {
	built := 0
	rapid.Check(t, func(t *rapid.T) {
		g, ok := drawShafting(t)
		if !ok {
			return
		}
		built++
		turn := rapid.SampledFrom([]part.Turn{part.Clockwise, part.Anticlockwise}).Draw(t, "turn")
		r := Rate(drawSpec(t), g, turn, drawLoads(t))
		for _, x := range r.Readings(nil) {
			anyspec.Finite(t, x.Key, x.Value)
			if x.Why == notFinite {
				t.Fatalf("%+v", x)
			}
		}
		for _, c := range r.Checks(nil, 0.1) {
			anyspec.Finite(t, c.Key, c.Value, c.Limit, c.Margin)
			if c.Why == notFinite {
				t.Fatalf("%+v", c)
			}
		}
		for _, row := range r.Rows() {
			anyspec.Finite(t, row.Name, row)
		}
		if !(r.Survival >= 0 && r.Survival <= 1) {
			t.Fatalf("survival %g", r.Survival)
		}
	})
	if built == 0 {
		t.Error("no random gear was built")
	}
	t.Logf("%d random gears were built", built)
}

// solid is a force at a point, about an axis: along, across, forward.
type solid struct{ point, force [3]float64 }

func (f solid) moment() [3]float64 {
	p, q := f.point, f.force
	return [3]float64{p[1]*q[2] - p[2]*q[1], p[2]*q[0] - p[0]*q[2], p[0]*q[1] - p[1]*q[0]}
}

// closes holds that forces are in balance in space, but for the torque about
// the axis, which it returns.
func closes(t *rapid.T, name string, forces []solid) (torque float64) {
	var force, moment [3]float64
	size, arm := 0.0, 0.0
	for _, f := range forces {
		m := f.moment()
		for i := range 3 {
			force[i] += f.force[i]
			moment[i] += m[i]
			size += math.Abs(f.force[i])
			for j := range 3 {
				arm += math.Abs(f.point[j] * f.force[i])
			}
		}
	}
	for i := range 3 {
		if math.Abs(force[i]) > 1e-9*size || i < 2 && math.Abs(moment[i]) > 1e-9*arm {
			t.Fatalf("%s: force %v of %g, moment %v of %g", name, force, size, moment, arm)
		}
	}
	return moment[2]
}

// Both shafts are in balance as bodies in space: mesh forces at the point of
// contact, weight and thrust at the hub, and what the table says of bearings.
// The torques left over are those of power and its direction of turn.
func TestRandomGearShaftsAreInBalance(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		g, ok := drawShafting(t)
		if !ok {
			return
		}
		turn := rapid.SampledFrom([]part.Turn{part.Clockwise, part.Anticlockwise}).Draw(t, "turn")
		s, l := drawSpec(t), drawLoads(t)
		s.PinionOn = OwnShaft
		r := Rate(s, g, turn, l)
		rows := r.Rows()
		held := func(i int, at float64) solid {
			return solid{[3]float64{0, 0, at}, [3]float64{-rows[i].Along, -rows[i].Across, -rows[i].Axial}}
		}
		mesh := [3]float64{-g.Radial, -turn.Sign() * g.Tangential, r.WheelAxial}
		back := [3]float64{-mesh[0], -mesh[1], -mesh[2]}
		wheel := closes(t, "wheel", []solid{
			{[3]float64{g.WheelWorking / 2, 0, g.Places.Gears}, mesh},
			{[3]float64{0, 0, -l.PropellerOverhang}, [3]float64{l.PropellerWeight, 0, l.Thrust}},
			held(wheelProp, g.Places.WheelPropBearing), held(wheelEngine, g.Places.WheelEngineBearing)})
		pinion := closes(t, "pinion", []solid{
			{[3]float64{-g.PinionWorking / 2, 0, g.Places.Gears}, back},
			held(pinionProp, g.Places.PinionPropBearing), held(pinionEngine, g.Places.PinionEngineBearing)})
		if off := wheel + turn.Sign()*g.Torque*g.Ratio; math.Abs(off) > 1e-9*(1+math.Abs(wheel)) {
			t.Fatalf("torque on the wheel %g, on the pinion %g", wheel, g.Torque)
		}
		if off := pinion + turn.Sign()*g.Torque; math.Abs(off) > 1e-9*(1+math.Abs(pinion)) {
			t.Fatalf("the mesh must brake the pinion: %g of %g", pinion, g.Torque)
		}
	})
}

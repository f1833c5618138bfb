package shaft

import (
	"math"
	"testing"

	"backspan/model/internal/anyspec"
	"pgregory.net/rapid"
)

func drawSpec(t *rapid.T) Spec {
	s := Default()
	anyspec.Set(t, s.Params(), nil)
	return s
}

func drawVector(t *rapid.T, name string, most float64) Vector {
	return Vector{rapid.Float64Range(-most, most).Draw(t, name+" along"), rapid.Float64Range(-most, most).Draw(t, name+" across")}
}

func drawLoads(t *rapid.T) Loads {
	number := func(name string, lo, hi float64) float64 { return rapid.Float64Range(lo, hi).Draw(t, name) }
	force, standing := drawVector(t, "force", 5000), drawVector(t, "standing", 5000)
	l := Loads{
		Along: force.Along, Across: force.Across, At: number("at", 0, 0.3), Pulsating: drawVector(t, "pulsating", 2000),
		PropellerWeight: number("weight", -50, 50), PropellerOverhang: number("overhang", 0, 0.2), Thrust: number("thrust", -2000, 3500),
		GyroCouple: number("gyro", 0, 60), GyroPeak: number("peak", 0, 120), Torque: number("torque", 0, 200),
		TorqueAmplitude: number("torque amplitude", 0, 400), Speed: number("speed", 0, 1000), CrankMoment: number("crank", 0, 100),
	}
	l.Standing.Along, l.Standing.Across = standing.Along, standing.Across
	return l
}

func TestRandomSupportsStayFinite(t *testing.T) {
	const notFinite = "the sum has no finite answer for these parameters"
	rapid.Check(t, func(t *rapid.T) {
		r := Support(drawSpec(t), drawLoads(t))
		for _, x := range r.Readings(nil) {
			if math.IsNaN(x.Value) || math.IsInf(x.Value, 0) || x.Why == notFinite || x.Value < 0 {
				t.Fatalf("%+v", x)
			}
		}
		for _, c := range r.Checks(nil, 0.1) {
			if math.IsNaN(c.Value) || math.IsInf(c.Value, 0) || c.Why == notFinite {
				t.Fatalf("%+v", c)
			}
		}
		if r.Survival < 0 || r.Survival > 1 || r.LargestBending < r.Bending[0] {
			t.Fatalf("%+v", r)
		}
	})
}

func TestEquilibriumCloses(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		near := rapid.Float64Range(0, 0.2).Draw(t, "near")
		p := Places{near, near + rapid.Float64Range(0.005, 0.3).Draw(t, "spacing")}
		loads := make([]Load, rapid.IntRange(1, 5).Draw(t, "loads"))
		for i := range loads {
			loads[i] = Load{rapid.Float64Range(-0.2, 0.5).Draw(t, "at"), drawVector(t, "force", 5000), drawVector(t, "couple", 50)}
		}
		held := p.Reactions(loads...).Loads(p)
		all := append(loads, held[:]...)
		var force, moment, size, arm float64
		for _, l := range all {
			force += l.Force.Along
			moment += l.Couple.Along - l.Force.Along*l.At
			size += l.Force.Size()
			arm += l.Force.Size()*math.Abs(l.At) + l.Couple.Size()
		}
		if math.Abs(force) > 1e-12*size || math.Abs(moment) > 1e-12*(arm+size*p.EngineSide) {
			t.Fatalf("force %g of %g, moment %g of %g", force, size, moment, arm)
		}
		// Beyond the last load nothing bends the axle.
		if m := BendingMoment(1, all...); m > 1e-12*(size+arm) {
			t.Fatalf("moment %g beyond the end", m)
		}
	})
}

func TestLargerBoreOrMoreLoadIsNeverSafer(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		x := Stressing{}
		for _, p := range []*float64{&x.MeanBending, &x.BendingAmplitude, &x.MeanTorque, &x.TorqueAmplitude} {
			*p = rapid.Float64Range(0, 200).Draw(t, "moment")
		}
		s := Section{Diameter: 0.02, Bore: rapid.Float64Range(0, 0.015).Draw(t, "bore"), BendingNotch: 2, TorsionNotch: 1.5}
		m := Strength{900e6, 700e6, 250e6}
		worse, more := s, x
		worse.Bore += 0.001
		more.BendingAmplitude += 1
		for _, c := range []Criterion{Goodman, Soderberg, Gerber, ASMEElliptic} {
			if use := s.FatigueUse(c, x, m); worse.FatigueUse(c, x, m) < use || s.FatigueUse(c, more, m) < use {
				t.Fatalf("%s", c)
			}
		}
	})
}

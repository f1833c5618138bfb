package shaft

import (
	"testing"

	"backspan/model/internal/published"
)

// seatRunners are those of bending, keys, splines, tapers and the crank.
func seatRunners() map[string]published.Runner {
	return map[string]published.Runner{
		"diameter": diameterCase, "bend": bendCase, "key_length": keyLength, "key_section": keySection, "key_stress": keyStress,
		"key_torque": func(t testing.TB, c published.Case) map[string]float64 {
			k := Key{Width: c.Num(t, "width") / 1000, Length: c.Num(t, "length") / 1000}
			return map[string]float64{"torque_knm": c.Num(t, "shear") * megapascal / k.Shear(1, c.Num(t, "diameter")/1000) / 1000}
		},
		"spline": func(t testing.TB, c published.Case) map[string]float64 {
			s := Spline{Diameter: c.Num(t, "diameter") / 1000, Module: c.Num(t, "module") / 1000, Length: c.Num(t, "length") / 1000, Share: c.Num(t, "share")}
			p, ok := s.Pressure(c.Num(t, "torque"))
			if !ok {
				t.Fatal("no spline")
			}
			return map[string]float64{"teeth": float64(s.Teeth()), "pressure": p / megapascal}
		},
		"taper": func(t testing.TB, c published.Case) map[string]float64 {
			return map[string]float64{"torque": Taper{c.Num(t, "diameter") / 1000, c.Num(t, "ratio"), c.Num(t, "force"), c.Num(t, "friction")}.Torque()}
		},
		"crank": func(t testing.TB, c published.Case) map[string]float64 {
			f := CrankPull{Steady: Vector{Along: c.Num(t, "force")}, Behind: c.Num(t, "behind")}.Crank(c.Num(t, "spacing"))
			return map[string]float64{"near": f.Near.Size(), "far": f.Far.Size()}
		},
	}
}

// diameterCase finds the diameter at which each criterion leaves the safety.
func diameterCase(t testing.TB, c published.Case) map[string]float64 {
	x := Stressing{MeanBending: c.Num(t, "mean_bending"), BendingAmplitude: c.Num(t, "bending_amplitude"),
		MeanTorque: c.Num(t, "mean_torque"), TorqueAmplitude: c.Num(t, "torque_amplitude")}
	m := Strength{Tensile: 1000 * c.Num(t, "sut"), Yield: 1000 * c.Num(t, "sy"), Endurance: 1000 * c.Num(t, "se")}
	got := map[string]float64{}
	for name, criterion := range map[string]Criterion{"gerber": Gerber, "asme_elliptic": ASMEElliptic, "soderberg": Soderberg, "goodman": Goodman} {
		lo, hi := 0.1, 10.0
		for range 60 {
			d := (lo + hi) / 2
			s := Section{Diameter: d, BendingNotch: c.Num(t, "kf"), TorsionNotch: c.Num(t, "kfs")}
			if s.FatigueUse(criterion, x, m) > 1/c.Num(t, "safety") {
				lo = d
			} else {
				hi = d
			}
		}
		got[name] = lo
	}
	return got
}

// bendCase holds a shaft from its near bearing at 0 to one at the span.
func bendCase(t testing.TB, c published.Case) map[string]float64 {
	p := Places{0, c.Num(t, "span")}
	from, d := c.List(t, "from"), c.List(t, "diameters")
	steps := make([]Step, len(from))
	for i := range from {
		steps[i] = Step{From: from[i], To: p.EngineSide, Diameter: d[i]}
		if i+1 < len(from) {
			steps[i].To = from[i+1]
		}
	}
	at := c.Num(t, "at")
	line := p.Bend(steps, c.Num(t, "modulus"), Load{At: at, Force: Vector{Across: -c.Num(t, "force")}})
	near, _ := line.At(p.PropSide)
	far, _ := line.At(p.EngineSide)
	slope, sag := line.At(at)
	return map[string]float64{"slope_near": near.Size(), "slope_far": far.Size(), "slope_load": slope.Size(), "sag_load": sag.Size()}
}

// keyLength finds by the stress at unit length how long a square key must be.
func keyLength(t testing.TB, c published.Case) map[string]float64 {
	k := Key{Width: c.Num(t, "width"), Height: c.Num(t, "width"), ShaftDepth: c.Num(t, "width") / 2, Length: 1}
	torque, d, allowed := c.Num(t, "torque"), c.Num(t, "diameter"), 1000*c.Num(t, "yield")/c.Num(t, "safety")
	return map[string]float64{"shear_length": k.Shear(torque, d) / (0.577 * allowed), "pressure_length": k.Pressure(torque, d) / allowed}
}

func keySection(t testing.TB, c published.Case) map[string]float64 {
	k, ok := KeyFor(c.Num(t, "diameter")/1000, 0.1)
	if !ok {
		t.Fatal("no key")
	}
	return map[string]float64{"width": k.Width * 1000, "height": k.Height * 1000, "depth": k.ShaftDepth * 1000}
}

func keyStress(t testing.TB, c published.Case) map[string]float64 {
	d, torque := c.Num(t, "diameter")/1000, c.Num(t, "torque")
	k, ok := KeyFor(d, c.Num(t, "seat")/1000)
	if !ok {
		t.Fatal("no key")
	}
	return map[string]float64{"shear": k.Shear(torque, d) / megapascal, "pressure": k.Pressure(torque, d) / megapascal}
}

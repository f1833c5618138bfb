package propeller

import (
	"math"
	"strconv"
	"testing"

	"backspan/model/internal/published"
	"backspan/model/unit"
)

const standardDensity, standardSound, standardViscosity = 1.225, 340.294, 1.78938e-5

func rpm(x float64) float64 { return unit.RPM.SI(x) }

func TestPublished(t *testing.T) {
	seen := map[string]bool{}
	published.Run(t, "propeller", map[string]published.Runner{
		"analyse_printed":  analysePrinted,
		"measured":         func(t testing.TB, c published.Case) map[string]float64 { return measured(t, c, seen) },
		"hover_rotor":      hoverRotor,
		"lifting_airscrew": func(t testing.TB, c published.Case) map[string]float64 { return liftingAirscrew(t, c, seen) },
		"one_station":      oneStation,
		"prandtl": func(t testing.TB, c published.Case) map[string]float64 {
			x := c.Num(t, "share")
			return map[string]float64{"loss": lossFactor(c.Num(t, "blades")/2*(1-x)/x, -1, math.Sin(degrees(c.Num(t, "phi"))))}
		},
		"polar": func(t testing.TB, c published.Case) map[string]float64 {
			s, x := flatBottomed(), c.Num(t, "chord_to_radius")
			p := s.at(1e6, 0, math.Min(1, 3*x*x), flatPlateDrag(10))
			cl, cd := p.coefficients(degrees(c.Num(t, "alpha")))
			return map[string]float64{"lift": cl, "drag": cd}
		},
		"design_printed":   designPrinted,
		"paramotor_design": paramotorDesign,
		"clipped_design":   clippedDesign,
		"disc": func(t testing.TB, c published.Case) map[string]float64 {
			d, thrust, v := c.Num(t, "diameter"), c.Num(t, "thrust"), c.Num(t, "airspeed")
			u := DiscSpeed(thrust, v, c.Num(t, "density"), math.Pi/4*d*d)
			return map[string]float64{"induced": u, "power": thrust * (v + u), "efficiency": v / (v + u)}
		},
		"ideal_thrust": func(t testing.TB, c published.Case) map[string]float64 {
			d := c.Num(t, "diameter")
			return map[string]float64{"thrust": IdealThrust(c.Num(t, "merit")*c.Num(t, "power"), c.Num(t, "density"), math.Pi/4*d*d)}
		},
	})
	for _, row := range compared {
		if !seen[row.name] {
			t.Errorf("no such measurement under a working load: %s", row.name)
		}
	}
}

func blade(t testing.TB, radius, chords, angles []float64) (chord, angle func(float64) float64) {
	t.Helper()
	chord, angle, err := joined(radius, chords, angles)
	if err != nil {
		t.Fatal(err)
	}
	return chord, angle
}

func scaled(xs []float64, by float64) []float64 {
	out := make([]float64, len(xs))
	for i, x := range xs {
		out[i] = by * x
	}
	return out
}

func tested(o outline, n int) Propeller {
	o.aspectChord = o.chord(0.75 * o.tip)
	if o.thickness == nil {
		o.thickness = func(float64) float64 { return 0.12 }
	}
	p := Propeller{tip: o.tip, aspect: o.tip / o.aspectChord, stations: o.stations(n)}
	p.spec.Blades = o.blades
	return p
}

func analysePrinted(t testing.TB, c published.Case) map[string]float64 {
	foot := unit.Foot.SI(1)
	r := scaled(c.List(t, "radius"), foot)
	ld, _ := blade(t, r, c.List(t, "lift_to_drag"), r)
	chord, angle := blade(t, r, scaled(c.List(t, "chord"), foot), scaled(c.List(t, "beta"), math.Pi/180))
	slope := c.Num(t, "slope_per_degree") * 180 / math.Pi
	lift := c.Num(t, "cl")
	o := outline{
		blades: int(c.Num(t, "blades")), tip: c.Num(t, "diameter") / 2 * foot, root: c.Num(t, "hub_diameter") / 2 * foot,
		chord: chord, angle: angle,
		section: Section{ZeroLiftAngle: degrees(c.Num(t, "alpha")) - lift/slope, LiftSlope: slope, GreatestLift: 9, LeastLift: -9},
	}
	p := tested(o, Cells)
	for i := range p.stations {
		p.stations[i].section.LeastDrag = lift / ld(p.stations[i].radius)
	}
	pt := p.At(Flow{Airspeed: c.Num(t, "airspeed") * foot, Speed: rpm(c.Num(t, "speed")), Density: unit.SlugPerCubicFoot.SI(c.Num(t, "density")),
		SoundSpeed: math.Inf(1), Viscosity: standardViscosity})
	return map[string]float64{"thrust": unit.PoundForce.From(pt.Thrust), "power": unit.Horsepower.From(pt.Power),
		"ct": pt.CT, "cp": pt.CP, "advance": pt.AdvanceRatio, "efficiency": pt.Efficiency}
}

func measured(t testing.TB, c published.Case, seen map[string]bool) map[string]float64 {
	tip := c.Num(t, "radius_mm") / 1000
	chords := scaled(c.List(t, "chord"), tip)
	r := make([]float64, len(chords))
	for i := range r {
		r[i] = tip * (0.15 + 0.05*float64(i))
	}
	chord, angle := blade(t, r, chords, scaled(c.List(t, "beta"), math.Pi/180))
	p := tested(outline{blades: 2, tip: tip, root: 0.15 * tip, section: thinSection(), lossAtHub: true, chord: chord, angle: angle}, Cells)
	n := c.Num(t, "rpm") / 60
	pt := p.At(Flow{Airspeed: c.Num(t, "advance") * n * 2 * tip, Speed: 2 * math.Pi * n, Density: standardDensity, SoundSpeed: standardSound, Viscosity: standardViscosity})
	t.Logf("J %.3f: CT %.6f (%+.1f %%), CP %.6f (%+.1f %%)", pt.AdvanceRatio, pt.CT, off(t, c, "ct", pt.CT), pt.CP, off(t, c, "cp", pt.CP))
	if pt.Flow.Airspeed == 0 {
		solidity := 2 * p.stations[Cells/2].chord / (math.Pi * tip)
		hold(t, seen, c, pt.CT*rotorForm/solidity, off(t, c, "ct", pt.CT)/100, off(t, c, "cp", pt.CP)/100)
	}
	return map[string]float64{"ct": pt.CT, "cp": pt.CP}
}

// off is the deviation from the measured figure, in %.
func off(t testing.TB, c published.Case, name string, got float64) float64 {
	t.Helper()
	want, err := strconv.ParseFloat(c.Want[name], 64)
	if err != nil {
		t.Fatal(err)
	}
	return 100 * (got/want - 1)
}

func hoverRotor(t testing.TB, c published.Case) map[string]float64 {
	s := flatBottomed()
	s.ZeroLiftAngle, s.GreatestLift, s.LeastLift, s.LeastDrag, s.LeastDragLift = 0, 1.3, -1.3, 0.008, 0
	ct, _ := airscrew(t, c, s, 0.15*c.Num(t, "radius"), standardSound)
	t.Logf("rotor CT %.5f (%+.0f %%)", ct, off(t, c, "rotor_ct", ct))
	return map[string]float64{"rotor_ct": ct}
}

// rotorForm turns T/(ρn²D⁴) into T/(ρ(ΩR)²πR²).
const rotorForm = 4 / (math.Pi * math.Pi * math.Pi)

// airscrew is a rotor of plain untwisted blades; its coefficients are referred
// to tip speed and disc.
func airscrew(t testing.TB, c published.Case, s Section, root, sound float64) (ct, cq float64) {
	chord, pitch := c.Num(t, "chord"), degrees(c.Num(t, "pitch"))
	p := tested(outline{blades: int(c.Num(t, "blades")), tip: c.Num(t, "radius"), root: root, section: s, lossAtHub: true,
		chord: func(float64) float64 { return chord }, angle: func(float64) float64 { return pitch }}, Cells)
	pt := p.At(Flow{Speed: rpm(c.Num(t, "rpm")), Density: standardDensity, SoundSpeed: sound, Viscosity: standardViscosity})
	return pt.CT * rotorForm, pt.CP * rotorForm / math.Pi
}

// liftingAirscrew is referred to half the density.
func liftingAirscrew(t testing.TB, c published.Case, seen map[string]bool) map[string]float64 {
	s := Section{LiftSlope: 5.75, GreatestLift: 1.3, LeastLift: -1.3, LeastDrag: 0.0113, DragRise: 1.25 / (5.75 * 5.75)}
	ct, cq := airscrew(t, c, s, c.Num(t, "root"), math.Inf(1))
	solidity := c.Num(t, "blades") * c.Num(t, "chord") / (math.Pi * c.Num(t, "radius"))
	load := ct / solidity
	ct, cq = 2*ct, 2*cq
	hold(t, seen, c, load, off(t, c, "rotor_ct", ct)/100, off(t, c, "rotor_cq", cq)/100)
	t.Logf("rotor CT %.5f (%+.1f %%), CQ %.6f (%+.1f %%)", ct, off(t, c, "rotor_ct", ct), cq, off(t, c, "rotor_cq", cq))
	return map[string]float64{"rotor_ct": ct, "rotor_cq": cq}
}

func oneStation(t testing.TB, c published.Case) map[string]float64 {
	chord, beta := c.Num(t, "chord"), degrees(c.Num(t, "beta"))
	o := outline{blades: int(c.Num(t, "blades")), tip: c.Num(t, "tip"), chord: func(float64) float64 { return chord },
		angle: func(float64) float64 { return beta }, thickness: func(float64) float64 { return 0.1 },
		section: Section{LiftSlope: 2 * math.Pi, GreatestLift: 9, LeastLift: -9, LeastDrag: c.Num(t, "drag")}, aspectChord: chord}
	st := o.station(c.Num(t, "radius"), 0.01)
	f := Flow{Airspeed: c.Num(t, "airspeed"), Speed: c.Num(t, "omega"), Density: c.Num(t, "density"), SoundSpeed: math.Inf(1), Viscosity: standardViscosity}
	s := st.settle(&f, 1)
	return map[string]float64{"phi": s.phi, "induced": s.speed*s.sin - f.Airspeed, "swirl": f.Speed*st.radius - s.speed*s.cos, "loss": s.loss, "speed": s.speed}
}

// clippedDesign gives the least-induced-loss blade a chord that can be built,
// then analyses it.
func clippedDesign(t testing.TB, c published.Case) map[string]float64 {
	b, v, w, cl, e := c.Num(t, "blades"), c.Num(t, "design_airspeed"), c.Num(t, "displacement"), c.Num(t, "cl"), c.Num(t, "drag_to_lift")
	tip, omega := c.Num(t, "diameter")/2, rpm(c.Num(t, "rpm"))
	s := flatBottomed()
	design := func(r float64) (chord, angle float64) {
		tan := (v + w/2) / (omega * r)
		phi := math.Atan(tan)
		sin, cos := math.Sincos(phi)
		sinTip := math.Sin(math.Atan((v + w/2) / (omega * tip)))
		circulation := 2 * math.Pi * r * w * prandtl(b/2*(1-r/tip), sinTip) * sin * cos / b
		speed := (v + w/2*cos*cos*(1-e*tan)) / sin
		return 2 * circulation / (speed * cl), phi + s.ZeroLiftAngle + cl/s.LiftSlope
	}
	o := outline{blades: int(b), tip: tip, root: c.Num(t, "hub_diameter") / 2, section: s,
		chord: func(r float64) float64 {
			chord, _ := design(r)
			return math.Min(math.Max(chord, c.Num(t, "least_chord")), c.Num(t, "greatest_chord"))
		},
		angle: func(r float64) float64 { _, beta := design(r); return beta }}
	p := tested(o, Cells)
	pt := p.At(Flow{Airspeed: c.Num(t, "airspeed"), Speed: omega, Density: standardDensity, SoundSpeed: standardSound, Viscosity: standardViscosity})
	return map[string]float64{"thrust": pt.Thrust, "torque": pt.Torque, "power": pt.Power / 1000, "merit": pt.FigureOfMerit, "efficiency": pt.Efficiency}
}

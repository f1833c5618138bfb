package gear

import (
	"fmt"
	"math"
	"testing"

	"backspan/model/internal/published"
)

// A tip-loaded spur tooth of the usual rack.
func tipLoadedCase(t testing.TB, c published.Case) map[string]float64 {
	got := map[string]float64{}
	for _, z := range c.List(t, "teeth") {
		tooth := newCutTooth(ProfileA.Rack(), 20*degree, z, 0)
		f := tooth.isoForm(tooth.loadAt(z + 2))
		got[fmt.Sprintf("form_%g", z)] = f.form
		got[fmt.Sprintf("correction_%g", z)] = f.correction
	}
	return got
}

func solidBuild(class int) toothBuild {
	return toothBuild{rack: ProfileA.Rack(), pressureAngle: 20 * degree, accuracyClass: class, wheelWeb: 1,
		material:  [2]toothMaterial{{treatment: hardened, contact: 1500, bending: 461}, {treatment: hardened, contact: 1500, bending: 461}},
		viscosity: 100, flankDepth: 4, rootDepth: 16, mount: pinionMount{crowned: true, span: 60, shaft: 20}}
}

func rootFormCase(t testing.TB, c published.Case) map[string]float64 {
	g := pairOf(t, c)
	f := newToothFactors(&g, solidBuild(6))
	return map[string]float64{
		"form_pinion": f.form[0].form, "correction_pinion": f.form[0].correction,
		"form_wheel": f.form[1].form, "correction_wheel": f.form[1].correction,
	}
}

func ratingCase(t testing.TB, c published.Case) map[string]float64 {
	g := pairOf(t, c)
	b := solidBuild(int(c.Num(t, "class")))
	b.viscosity, b.flankDepth, b.rootDepth = c.Num(t, "viscosity"), c.Num(t, "flank_rz"), c.Num(t, "root_rz")
	b.mount.span, b.mount.offset, b.mount.shaft = c.Num(t, "span"), c.Num(t, "offset"), c.Num(t, "shaft")
	for i := range 2 {
		b.material[i].contact, b.material[i].bending = c.Num(t, "contact"), c.Num(t, "bending")
		b.hollow[i] = c.Num(t, "hollow")
	}
	f := newToothFactors(&g, b)
	if f.why != "" {
		t.Fatal(f.why)
	}
	speed := c.Num(t, "rpm") * rpm
	force := 2 * c.Num(t, "power_kw") * 1000 / speed / g.Pinion.ReferenceDiameter
	s := f.rate(&g, force, c.Num(t, "application"), speed, c.Num(t, "hours")*3600)
	k := s.Load
	return map[string]float64{
		"force": force, "speed": g.Pinion.ReferenceDiameter / 2 * speed, "tooth_stiffness": k.toothStiffness,
		"mesh_stiffness": k.meshStiffnessMean, "reduced_mass": f.mass, "resonance": k.Resonance,
		"resonance_rpm": c.Num(t, "rpm") / k.Resonance, "dynamic": k.Dynamic, "dynamic_simple": k.DynamicSimple,
		"face": k.Face, "face_root": k.FaceRoot, "transverse": k.Transverse, "zone": s.Zone, "ratio": s.Ratio,
		"single": s.Flank[0].Single, "nominal": s.Nominal / megapascal,
		"stress_pinion": s.Flank[0].Stress / megapascal, "stress_wheel": s.Flank[1].Stress / megapascal,
		"lubricant": s.Flank[0].Lubricant, "film_speed": s.Flank[0].Speed, "roughness": s.Flank[0].Rough,
		"life_pinion": s.Flank[0].Life, "life_wheel": s.Flank[1].Life,
		"pitting_pinion": s.Flank[0].Safety, "pitting_wheel": s.Flank[1].Safety,
		"bend_pinion": s.Root[0].Stress / megapascal, "bend_wheel": s.Root[1].Stress / megapascal,
		"bending_pinion": s.Root[0].Safety, "bending_wheel": s.Root[1].Safety,
	}
}

func materialCase(t testing.TB, c published.Case) map[string]float64 {
	m, ok := newToothMaterial(MaterialClass(c.Word(t, "class")), MaterialQuality(c.Word(t, "quality")), Core25, c.Num(t, "hardness"))
	if !ok {
		t.Fatal("not listed")
	}
	return map[string]float64{"contact": m.contact, "bending": m.bending}
}

func agmaCase(t testing.TB, c published.Case) map[string]float64 {
	z1, z2, pitch := c.Num(t, "pinion_teeth"), c.Num(t, "wheel_teeth"), c.Num(t, "pitch")
	phi, u := c.Num(t, "pressure_angle_deg")*degree, z2/z1
	p := agmaPair{teeth: [2]float64{z1, z2}, pitch: pitch, diameter: z1 / pitch, face: c.Num(t, "face"),
		speed: math.Pi * z1 / pitch * c.Num(t, "rpm") / 12, quality: c.Num(t, "quality"), overload: 1,
		geometry: [2]float64{c.Num(t, "j_pinion"), c.Num(t, "j_wheel")}, flankGeometry: math.Cos(phi) * math.Sin(phi) / 2 * u / (u + 1),
		form: [2]float64{lewisY(z1), lewisY(z2)}, hardness: [2]float64{c.Num(t, "hardness_pinion"), c.Num(t, "hardness_wheel")},
		through: true, alignment: alignments()[CommercialUnit], cycles: [2]float64{c.Num(t, "cycles"), c.Num(t, "cycles") / u}, reliability: c.Num(t, "reliability")}
	p.load = 33000 * c.Num(t, "power_hp") / p.speed
	p.loadFlank = p.load
	for i := range 2 {
		p.root[i], p.flank[i], _ = toothMaterial{class: Normalized, hardness: p.hardness[i]}.agmaStrength()
	}
	s := p.rate()
	return map[string]float64{
		"speed": p.speed, "load": p.load, "hardness_ratio": p.hardnessRatio(), "dynamic": s.dynamic, "size_pinion": s.size[0], "size_wheel": s.size[1], "spread": s.spread,
		"flank_geometry": p.flankGeometry, "root_life_pinion": s.rootLife[0], "root_life_wheel": s.rootLife[1],
		"flank_life_pinion": s.flankLife[0], "flank_life_wheel": s.flankLife[1],
		"root_pinion": s.rootStress[0], "root_wheel": s.rootStress[1], "bending_pinion": s.bending[0], "bending_wheel": s.bending[1],
		"flank_pinion": s.flankStress[0], "flank_wheel": s.flankStress[1], "pitting_pinion": s.pitting[0], "pitting_wheel": s.pitting[1],
	}
}

func bendingGeometryCase(t testing.TB, c published.Case) map[string]float64 {
	s := Default()
	s.PinionTeeth, s.WheelTeeth = int(c.Num(t, "pinion_teeth")), int(c.Num(t, "wheel_teeth"))
	s.HelixAngle, s.PinionShift, s.WheelShift, s.Rack = 0, 0, 0, ProfileC
	g := solve(t, s)
	x := newCrossGeometry(&g, &toothBuild{rack: ProfileC.Rack(), pressureAngle: s.PressureAngle})
	if x.why != "" {
		t.Fatal(x.why)
	}
	return map[string]float64{"pinion": x.bending[0], "wheel": x.bending[1]}
}

func unitRatingCase(t testing.TB, c published.Case) map[string]float64 {
	spec := Default()
	spec.PinionTeeth, spec.WheelTeeth = int(c.Num(t, "pinion_teeth")), int(c.Num(t, "wheel_teeth"))
	g := newGear(t, spec)
	speed := c.Num(t, "mesh_hz") * 2 * math.Pi / c.Num(t, "pinion_teeth")
	s := g.teeth.rate(&g.geometry, c.Num(t, "force"), c.Num(t, "application"), speed, spec.Life)
	k := s.Load
	return map[string]float64{
		"mesh_stiffness": k.meshStiffnessMean, "resonance": k.Resonance, "dynamic": k.Dynamic, "face": k.Face, "face_root": k.FaceRoot,
		"transverse": k.Transverse, "transverse_root": k.TransverseRoot, "nominal": s.Nominal / megapascal,
		"stress_pinion": s.Flank[0].Stress / megapascal, "stress_wheel": s.Flank[1].Stress / megapascal,
		"form_pinion": s.Root[0].Form, "correction_pinion": s.Root[0].Correction, "bend_pinion": s.Root[0].Stress / megapascal,
		"form_wheel": s.Root[1].Form, "correction_wheel": s.Root[1].Correction, "bend_wheel": s.Root[1].Stress / megapascal,
	}
}

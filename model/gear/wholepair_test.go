package gear

import (
	"fmt"
	"testing"

	"backspan/model/internal/published"
)

// specOf sets the parameters that a case names by their keys, in their units.
func specOf(t testing.TB, c published.Case) Spec {
	t.Helper()
	s := Default()
	for key, value := range c.Given {
		for _, p := range s.Params() {
			if p.Key != key {
				continue
			}
			if err := p.Set(fmt.Sprint(value)); err != nil {
				t.Fatal(err)
			}
		}
	}
	return s
}

// wholePairCase rates the pair of a whole Spec under a tangential force.
func wholePairCase(t testing.TB, c published.Case) map[string]float64 {
	spec := specOf(t, c)
	g := newGear(t, spec)
	if g.teeth.why != "" {
		t.Fatal(g.teeth.why)
	}
	f := &g.teeth
	s := f.rate(&g.geometry, c.Num(t, "force"), spec.ApplicationFactor, c.Num(t, "rpm")*rpm, spec.Life)
	k := &s.Load
	got := map[string]float64{
		"contact_ratio": g.geometry.ContactRatio, "overlap": g.geometry.OverlapRatio, "line_load": k.lineLoad,
		"tooth_stiffness": k.toothStiffness, "mesh_stiffness": k.meshStiffnessMean, "reduced_mass": f.mass,
		"resonance": k.Resonance, "dynamic": k.Dynamic, "dynamic_simple": k.DynamicSimple, "misalignment": k.Misalignment * 1e6,
		"face": k.Face, "face_root": k.FaceRoot, "transverse": k.Transverse, "transverse_root": k.TransverseRoot,
		"zone": s.Zone, "ratio": s.Ratio, "helix": s.Helix, "nominal": s.Nominal / megapascal, "helix_root": s.Lean,
		"lubricant": s.Flank[0].Lubricant, "film_speed": s.Flank[0].Speed, "roughness_factor": s.Flank[0].Rough,
	}
	for i, name := range gearNames {
		flank, root := &s.Flank[i], &s.Root[i]
		for key, v := range map[string]float64{
			"single_": flank.Single, "stress_": flank.Stress / megapascal, "hard_": flank.Hard, "life_": flank.Life, "pitting_": flank.Safety,
			"endurance_": flank.Endurance / megapascal, "root_endurance_": root.Endurance / megapascal, "form_": root.Form,
			"correction_": root.Correction, "rim_": root.Rim, "bend_": root.Stress / megapascal, "notch_": root.Notch,
			"surface_": root.Surface, "root_life_": root.Life, "bending_": root.Safety,
		} {
			got[key+name.key] = v
		}
	}
	return got
}

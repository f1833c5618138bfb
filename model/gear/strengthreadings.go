package gear

import (
	"cmp"
	"math"

	"backspan/model/reading"
	"backspan/model/unit"
)

const (
	loadClause    = "ISO 6336-1, from memory"
	dynamicClause = "ISO 6336-1 clause 6, method B, from memory"
	faceClause    = "ISO 6336-1 clause 7, method C, from memory"
	shareClause   = "ISO 6336-1 clause 8, from memory"
	flankClause   = "ISO 6336-2, from memory"
	rootClause    = "ISO 6336-3, method B, from memory"
)

// rated is a reading of the rating, or says why there is none.
func (s *Strength) rated(key, label string, si float64, u unit.Unit) reading.Reading {
	return reading.Unless(s.Why, key, label, si, u)
}

func (r *Result) strengthReadings(rs []reading.Reading) []reading.Reading {
	rs = r.loadReadings(rs)
	rs = r.flankReadings(rs)
	rs = r.rootReadings(rs)
	return r.crossReadings(rs)
}

func (r *Result) safetyReadings(rs []reading.Reading) []reading.Reading {
	s := &r.Strength
	return append(rs,
		s.rated("gear.pitting_safety", "Safety against pitting", s.PittingSafety(), unit.One).Higher().
			How("permissible over acting contact stress of the weaker gear, at this duty for the life asked").Source(flankClause),
		s.rated("gear.bending_safety", "Safety against tooth breakage", s.BendingSafety(), unit.One).Higher().
			How("permissible over acting root stress of the weaker gear, at this duty for the life asked").Source(rootClause),
	)
}

func (r *Result) loadReadings(rs []reading.Reading) []reading.Reading {
	s, k := &r.Strength, &r.Strength.Load
	from := "as set"
	if r.spec.LoadFactor == FromPulsation {
		from = "greatest over mean torque in the mesh"
	}
	return append(rs,
		s.rated("gear.application_factor", "Application factor", k.Application, unit.One).Lower().How(from).Source("ISO 6336-6, from memory"),
		r.pulsationReading(),
		r.peakReading("gear.run_up_peak", "Greatest mesh torque, run-up", r.Pulsation.Peak, unit.NewtonMetre).Lower(),
		r.peakReading("gear.run_up_speed", "Crank speed of that", r.Pulsation.PeakSpeed, unit.RPM),
		reading.OfSlot("gear.run_up_root_safety", "Root safety at the run-up peak", s.PeakRoot, unit.One, r.noPeakRoot()).Higher().
			How("of the weaker gear, that torque for application factor and its speed for the dynamic one, as if held for the life asked: an engine may idle there").Source(rootClause),
		s.rated("gear.dynamic_factor", "Dynamic factor", k.Dynamic, unit.One).Lower().
			How("from errors of pitch and profile, tip relief and the nearness of resonance").Source(dynamicClause),
		r.simpleReading(),
		s.rated("gear.resonance_ratio", "Speed over mesh resonance", k.Resonance, unit.One).
			How("running speed over that at which the two blanks alone resonate on their teeth, as the standard has it; 0.85 to 1.15 is resonance, from less under 100 N/mm. Mesh over torsional frequency has the train with them").Source(dynamicClause),
		reading.OfSlot("gear.torsional_ratio", "Mesh over torsional frequency", r.overTorsional(), unit.One, r.noTorsional()).
			How("mesh frequency over the second torsional frequency, of pinion with coupling half against wheel with propeller; Speed over mesh resonance has the two blanks alone").Source(twistOrigin),
		s.rated("gear.mesh_stiffness", "Mesh stiffness per width", k.MeshStiffness, unit.Gigapascal).
			How("mean of the pair; 1 GPa is 1 N/(mm µm)").Source("ISO 6336-1 clause 9, method B, from memory"),
		s.rated("gear.misalignment", "Misalignment over the face", k.Misalignment, unit.Micrometre).Lower().
			How("as made and as bent, less what runs in").Source(faceClause),
		s.rated("gear.face_load_factor", "Face load factor", k.Face, unit.One).Lower().
			How("greatest over mean load along the width, for the flank").Source(faceClause),
		s.rated("gear.face_load_factor_root", "Face load factor, root", k.FaceRoot, unit.One).Lower().
			How("the same for the root, eased by the tooth's depth").Source(faceClause),
		s.rated("gear.transverse_load_factor", "Transverse load factor", k.Transverse, unit.One).Lower().
			How("uneven sharing among pairs of teeth, for the flank").Source(shareClause),
		s.rated("gear.transverse_load_factor_root", "Transverse load factor, root", k.TransverseRoot, unit.One).Lower().
			How("the same for the root").Source(shareClause),
	)
}

func (r *Result) simpleReading() reading.Reading {
	const key, label = "gear.dynamic_factor_simple", "Dynamic factor, simple method"
	s := &r.Strength
	if s.Why == "" && s.Load.DynamicSimple == 0 {
		return reading.Missing(key, label, unit.One, "too fast for the simple method").Lower()
	}
	return s.rated(key, label, s.Load.DynamicSimple, unit.One).Lower().
		How("from accuracy class and speed alone, as a cross-check").Source("ISO 6336-1 clause 6, method C, from memory")
}

func (r *Result) flankReadings(rs []reading.Reading) []reading.Reading {
	s := &r.Strength
	p := &s.Flank[0]
	rs = append(rs,
		s.rated("gear.zone_factor", "Zone factor", s.Zone, unit.One).How("curvature of the flanks at the pitch point").Source(flankClause),
		s.rated("gear.elasticity_factor", "Elasticity factor, √(N/mm²)", s.Elasticity, unit.One).How("steel on steel").Source(flankClause),
		s.rated("gear.contact_ratio_factor", "Contact ratio factor", s.Ratio, unit.One).Lower().
			How("length of the lines of contact").Source(flankClause),
		s.rated("gear.helix_factor", "Helix factor", s.Helix, unit.One).How("one over the root of the cosine of the helix angle").
			Source("ISO 6336-2, edition of 2019 and corrigendum of 2008, from memory"),
		s.rated("gear.contact_stress_nominal", "Contact stress, nominal", s.Nominal, unit.Megapascal).Lower().
			How("at the pitch point under the mean torque").Source(flankClause),
		s.rated("gear.lubricant_factor", "Lubricant factor", p.Lubricant, unit.One).Higher().How("from the oil's viscosity at 40 °C").Source(flankClause),
		s.rated("gear.speed_factor", "Speed factor", p.Speed, unit.One).Higher().How("from the pitch-line speed").Source(flankClause),
		s.rated("gear.roughness_factor", "Roughness factor", p.Rough, unit.One).Higher().
			How("from the flanks' Rz, taken as six times Ra, and their radius").Source(flankClause),
	)
	for i, name := range gearNames {
		f := &s.Flank[i]
		rs = append(rs,
			s.rated("gear.single_contact_factor_"+name.key, name.label+" single contact factor", f.Single, unit.One).Lower().
				How("stress at the inner end of single contact over that at the pitch point").Source(flankClause),
			s.rated("gear.contact_stress_"+name.key, name.label+" contact stress", f.Stress, unit.Megapascal).Lower().
				How("nominal stress with all load factors").Source(flankClause),
			s.rated("gear.load_cycles_"+name.key, name.label+" load cycles, millions", f.Cycles/1e6, unit.One).How("turns in the life asked").Source("geometry"),
			r.limitReading("gear.pitting_endurance_"+name.key, name.label+" pitting endurance", f.Endurance, r.ownContact(i)),
			s.rated("gear.pitting_life_factor_"+name.key, name.label+" life factor, flank", f.Life, unit.One).Higher().
				How("from the load cycles, no pitting allowed").Source(flankClause),
			s.rated("gear.work_hardening_factor_"+name.key, name.label+" work hardening factor", f.Hard, unit.One).Higher().
				How("for a soft gear that meets a hard one, 1 otherwise").Source(flankClause),
			s.rated("gear.pitting_limit_"+name.key, name.label+" pitting limit", f.Limit, unit.Megapascal).Higher().
				How("endurance times life, lubricant, speed, roughness and work hardening factors; size factor 1").Source(flankClause),
			s.rated("gear.pitting_safety_"+name.key, name.label+" pitting safety", f.Safety, unit.One).Higher().
				How("pitting limit over contact stress").Source(flankClause))
	}
	return rs
}

var gearNames = [2]struct{ key, label string }{{"pinion", "Pinion"}, {"wheel", "Wheel"}}

func (r *Result) rootReadings(rs []reading.Reading) []reading.Reading {
	s := &r.Strength
	rs = append(rs,
		s.rated("gear.helix_factor_root", "Helix factor, root", s.Lean, unit.One).Lower().
			How("from helix angle and overlap ratio").Source(rootClause),
		s.rated("gear.rim_factor_wheel", "Wheel rim factor", s.Root[1].Rim, unit.One).Lower().
			How("rim below the teeth against their depth").Source(rootClause),
	)
	for i, name := range gearNames {
		t := &s.Root[i]
		rs = append(rs,
			s.rated("gear.form_factor_"+name.key, name.label+" form factor", t.Form, unit.One).Lower().
				How("load at the outer end of single contact, section at the 30° tangents").Source(rootClause),
			s.rated("gear.stress_correction_"+name.key, name.label+" stress correction factor", t.Correction, unit.One).Lower().
				How("from the notch of the fillet").Source(rootClause),
			s.rated("gear.bending_stress_"+name.key, name.label+" root stress", t.Stress, unit.Megapascal).Lower().
				How("tangential force over face width and module, with all factors").Source(rootClause),
			r.limitReading("gear.bending_endurance_"+name.key, name.label+" bending endurance", t.Endurance, r.ownBending(i)),
			s.rated("gear.bending_life_factor_"+name.key, name.label+" life factor, root", t.Life, unit.One).Higher().
				How("from the load cycles").Source(rootClause),
			s.rated("gear.notch_factor_"+name.key, name.label+" notch sensitivity factor", t.Notch, unit.One).Higher().
				How("relative, from slip layer and notch").Source(rootClause),
			s.rated("gear.surface_factor_"+name.key, name.label+" root surface factor", t.Surface, unit.One).Higher().
				How("relative, from the root's roughness").Source(rootClause),
			s.rated("gear.bending_limit_"+name.key, name.label+" bending limit", t.Limit, unit.Megapascal).Higher().
				How("endurance times 2, life, notch and surface factors; size factor 1").Source(rootClause),
			s.rated("gear.bending_safety_"+name.key, name.label+" breakage safety", t.Safety, unit.One).Higher().
				How("bending limit over root stress").Source(rootClause))
	}
	return rs
}

func (r *Result) crossReadings(rs []reading.Reading) []reading.Reading {
	c := &r.Strength.Cross
	flanks := cmp.Or(r.Strength.Why, c.Why)
	roots := cmp.Or(flanks, c.BendingWhy)
	return append(rs,
		reading.Unless(flanks, "gear.agma_pitting_safety", "Pitting safety, AGMA form", math.Min(c.Pitting[0], c.Pitting[1]), unit.One).Higher().
			How("of the weaker gear, 99 % reliable; commonly higher than by ISO, whose load factors are stricter. "+r.blame()).Source(agmaOrigin),
		reading.Unless(roots, "gear.agma_bending_safety", "Breakage safety, AGMA form", math.Min(c.Bending[0], c.Bending[1]), unit.One).Higher().
			How("of the weaker gear, 99 % reliable; within about 35 % of ISO's unless the load per width is low").Source(agmaOrigin),
		reading.Unless(flanks, "gear.agma_dynamic_factor", "Dynamic factor, AGMA form", c.Dynamic, unit.One).Lower().
			How("from speed and a quality number of 17 less the accuracy class, at most 11 (estimate)").Source(agmaOrigin),
		reading.Unless(flanks, "gear.agma_load_distribution", "Load distribution, AGMA form", c.Spread, unit.One).Lower().
			How("proportions, crowning, place between the bearings and Alignment, AGMA form").Source(agmaOrigin),
	)
}

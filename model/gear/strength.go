package gear

import (
	"math"

	"backspan/model/param"
	"backspan/model/part"
)

// Strength is the rating of the teeth at one duty held for the life asked.
// Stresses in Pa; index 0 is the pinion.
type Strength struct {
	Why        string // why the teeth are not rated, empty when they are
	Load       LoadFactors
	Zone       float64 // ZH
	Elasticity float64 // ZE, √(N/mm²)
	Ratio      float64 // Zε
	Helix      float64 // Zβ
	Nominal    float64 // contact stress without load factors
	Lean       float64 // Yβ
	Flank      [2]FlankRating
	Root       [2]RootRating
	Cross      CrossRating

	// PeakRoot is the safety of the weaker root under the greatest torque of the
	// run-up, at its speed; empty where that torque is not known.
	PeakRoot param.Slot
}

// FlankRating is one gear's safety against pitting. Source: ISO 6336-2, from
// memory.
type FlankRating struct {
	Single                              float64 // ZB, ZD
	Stress, Endurance, Limit            float64
	Cycles                              float64
	Life, Lubricant, Speed, Rough, Hard float64 // ZNT, ZL, Zv, ZR, ZW
	Safety                              float64
}

// RootRating is one gear's safety against breakage. Source: ISO 6336-3, from
// memory.
type RootRating struct {
	Form, Correction, Rim    float64 // YF, YS, YB
	Stress, Endurance, Limit float64
	Life, Notch, Surface     float64 // YNT, YδrelT, YRrelT
	Safety                   float64
}

// PittingSafety is that of the weaker flank.
func (s *Strength) PittingSafety() float64 { return math.Min(s.Flank[0].Safety, s.Flank[1].Safety) }

// BendingSafety is that of the weaker root.
func (s *Strength) BendingSafety() float64 { return math.Min(s.Root[0].Safety, s.Root[1].Safety) }

const (
	wrongHardness = "the hardness lies outside what the material and its quality are listed for; change Pinion hardness, Wheel hardness or the material"
	noTorque      = "no torque passes at this point"
	leastTorque   = 1e-3 // N·m, below which nothing is worth rating
	stressFactor  = 2.0  // YST of the reference gears
)

// strength rates the teeth at a duty.
func (g *Gear) strength(at part.Duty, pulsation MeshPulsation) Strength {
	f := &g.teeth
	switch {
	case f.why != "":
		return Strength{Why: f.why}
	case !(at.CrankSpeed > standstill) || !(at.Power/at.CrankSpeed > leastTorque):
		return Strength{Why: noTorque}
	}
	application := g.spec.ApplicationFactor
	if g.spec.LoadFactor == FromPulsation {
		if pulsation.Why != "" {
			return Strength{Why: pulsation.Why}
		}
		application = pulsation.Factor
	}
	force := 2 * at.Power / at.CrankSpeed / g.geometry.Pinion.ReferenceDiameter
	s := f.rate(&g.geometry, force, application, at.CrankSpeed, g.spec.Life)
	s.Cross = g.cross(force, application, at.CrankSpeed)
	if pulsation.Why == "" {
		s.PeakRoot = g.peakRoot(&pulsation)
	}
	return s
}

// peakRoot rates the roots at the run-up's greatest torque as if it were held
// for the life asked, because an engine may idle or linger there; the dynamic
// factor is that of its speed.
func (g *Gear) peakRoot(p *MeshPulsation) param.Slot {
	force := 2 * p.Mean / g.geometry.Pinion.ReferenceDiameter
	s := g.teeth.rate(&g.geometry, force, p.Peak/p.Mean, p.PeakSpeed, g.spec.Life)
	return param.Finite(s.BendingSafety())
}

// rate rates both gears under a tangential force in N, at a speed of the
// pinion in rad/s, for a life in s.
func (f *toothFactors) rate(g *Geometry, force, application, speed, life float64) Strength {
	k := f.loadFactors(g, force, application, speed)
	s := Strength{Load: k, Zone: f.zone, Elasticity: f.elasticity, Ratio: f.ratio, Helix: f.helix, Lean: f.lean}
	u, d, b, module := g.Ratio(), g.Pinion.ReferenceDiameter*1000, g.FaceWidth*1000, g.Module*1000
	nominal := f.zone * f.elasticity * f.ratio * f.helix * math.Sqrt(force*(u+1)/(d*b*u))
	raise := math.Sqrt(k.Application * k.Dynamic * k.Face * k.Transverse)
	bend := force / (b * module) * f.lean * k.Application * k.Dynamic * k.FaceRoot * k.TransverseRoot
	s.Nominal = nominal * megapascal
	v := g.Pinion.ReferenceDiameter / 2 * speed
	m := &f.build.material
	for i := range 2 {
		cycles := speed / (2 * math.Pi) * life
		if i == 1 {
			cycles /= u
		}
		s.Flank[i] = f.rateFlank(i, nominal*raise, cycles, v, m[1-i])
		s.Root[i] = f.rateRoot(i, bend, cycles)
	}
	return s
}

const megapascal = 1e6

func (f *toothFactors) rateFlank(i int, stress, cycles, v float64, mate toothMaterial) FlankRating {
	m := f.build.material[i]
	r := FlankRating{Single: f.single[i], Cycles: cycles, Endurance: m.contact * megapascal,
		Life: flankLife[m.treatment].at(cycles), Lubricant: f.flank.lubricant, Speed: f.flank.speed(v),
		Rough: f.flank.roughness, Hard: f.flank.hardening(m, mate, v)}
	r.Stress = r.Single * stress * megapascal
	r.Limit = r.Endurance * r.Life * r.Lubricant * r.Speed * r.Rough * r.Hard
	r.Safety = r.Limit / r.Stress
	return r
}

// rateRoot takes the size factor as 1, as it is up to a module of 5 mm.
func (f *toothFactors) rateRoot(i int, stress, cycles float64) RootRating {
	m, form := f.build.material[i], f.form[i]
	r := RootRating{Form: form.form, Correction: form.correction, Rim: f.rim[i], Endurance: m.bending * megapascal,
		Life: rootLife[m.treatment].at(cycles), Notch: m.notch(form.notch), Surface: m.surface(f.build.rootDepth)}
	r.Stress = stress * r.Form * r.Correction * r.Rim * megapascal
	r.Limit = r.Endurance * stressFactor * r.Life * r.Notch * r.Surface
	r.Safety = r.Limit / r.Stress
	return r
}

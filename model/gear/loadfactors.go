package gear

import "math"

// LoadFactors are the factors by which the load on the teeth exceeds the
// steady mean. Source: ISO 6336-1, from memory.
type LoadFactors struct {
	Application       float64 // KA
	Dynamic           float64 // Kv, method B
	DynamicSimple     float64 // Kv, method C; 0 outside its range
	Resonance         float64 // speed over that of resonance
	Face              float64 // KHβ
	FaceRoot          float64 // KFβ
	Transverse        float64 // KHα
	TransverseRoot    float64 // KFα
	MeshStiffness     float64 // cγα, N/(m·m)
	Misalignment      float64 // after running in, m
	resonant          float64 // Resonance from which the pair resonates
	lineLoad          float64 // Ft KA/b, N/mm
	toothStiffness    float64 // c', N/(mm µm)
	meshStiffnessMean float64 // cγα, N/(mm µm)
}

// loadFactors at a tangential force in N, an application factor and a speed of
// the pinion in rad/s.
func (f *toothFactors) loadFactors(g *Geometry, force, application, speed float64) LoadFactors {
	face := g.FaceWidth * 1000
	k := LoadFactors{Application: application, lineLoad: force * application / face}
	k.toothStiffness = f.toothStiffness
	if k.lineLoad < 100 {
		k.toothStiffness *= math.Sqrt(math.Sqrt(k.lineLoad / 100))
	}
	k.meshStiffnessMean = k.toothStiffness * (0.75*g.ContactRatio + 0.25)
	k.MeshStiffness = k.meshStiffnessMean * 1e9
	f.dynamic(&k, g, speed)
	k.DynamicSimple = simpleDynamic(g, f.build.accuracyClass, k.lineLoad, g.Pinion.ReferenceDiameter/2*speed)
	f.face(&k, g, face, g.Pinion.ReferenceDiameter/2*speed)
	f.transverse(&k, g)
	return k
}

// dynamic is method B. Source: ISO 6336-1, from memory.
func (f *toothFactors) dynamic(k *LoadFactors, g *Geometry, speed float64) {
	resonance := 30000 / (math.Pi * float64(g.Pinion.Teeth)) * math.Sqrt(k.meshStiffnessMean/f.mass) // rpm
	k.Resonance = speed * 30 / math.Pi / resonance
	k.resonant = resonantFrom
	if k.lineLoad < 100 {
		k.resonant = 0.5 + 0.35*math.Sqrt(k.lineLoad/100)
	}
	perError := k.toothStiffness / k.lineLoad
	bp, bf, bk := perError*f.pitchError, perError*f.formError, 1.0
	// Coarser teeth are too uneven for relief to count.
	if f.build.accuracyClass <= 5 {
		bk = math.Abs(1 - perError*f.build.tipRelief)
	}
	c := newDynamicConstants(g.ContactRatio + g.OverlapRatio)
	n := k.Resonance
	main := 1 + c[0]*bp + c[1]*bf + c[3]*bk
	above := c[4]*bp + c[5]*bf + c[6]
	switch {
	case n <= k.resonant:
		k.Dynamic = 1 + n*(c[0]*bp+c[1]*bf+c[2]*bk)
	case n <= resonantTo:
		k.Dynamic = main
	case n >= 1.5:
		k.Dynamic = above
	default:
		k.Dynamic = above + (main-above)/0.35*(1.5-n)
	}
	k.Dynamic = math.Max(1, k.Dynamic)
}

// newDynamicConstants are Cv1 to Cv7 at a total contact ratio. Source: ISO
// 6336-1, from memory.
func newDynamicConstants(total float64) [7]float64 {
	c := [7]float64{6: 1}
	for i := range dynamicForms() {
		c[i] = dynamicForms()[i].at(total)
	}
	switch {
	case total <= 1.5:
		c[6] = 0.75
	case total <= 2.5:
		c[6] = 0.125*math.Sin(math.Pi*(total-2)) + 0.875
	}
	return c
}

// simpleDynamic is method C, a cross-check far below resonance, 0 outside its
// range; line load in N/mm, v in m/s. Source: ISO 6336-1, from memory.
func simpleDynamic(g *Geometry, class int, lineLoad, v float64) float64 {
	u := g.Ratio()
	path := v * float64(g.Pinion.Teeth) / 100 * math.Sqrt(u*u/(1+u*u))
	if path > 3 {
		return 0
	}
	k3 := 2.0
	if path > 0.2 {
		k3 = 2.071 - 0.357*path
	}
	i := min(max(class-3, 0), 7)
	line := math.Max(lineLoad, 100)
	k1 := simpleFactors()
	spur := 1 + (k1.spur[i]/line+0.0193)*path*k3
	helical := 1 + (k1.helical[i]/line+0.0087)*path*k3
	return spur + math.Min(g.OverlapRatio, 1)*(helical-spur)
}

// face is KHβ by method C and KFβ. Source: ISO 6336-1, from memory.
func (f *toothFactors) face(k *LoadFactors, g *Geometry, face, speed float64) {
	p, d := &f.build.mount, g.Pinion.ReferenceDiameter*1000
	line := k.lineLoad * k.Dynamic
	place := 0.8
	if p.overhung {
		place = 1.33
	}
	slender := d / p.shaft
	bend := place * p.span * p.offset / (d * d) * slender * slender * slender * slender
	deflection := line * 0.023 * (math.Abs(1+bend-0.3) + 0.3) * (face / d) * (face / d)
	misaligned := math.Max(1.33*deflection+f.leadError, math.Max(0.005*line, f.leadLeast))
	m := &f.build.material
	misaligned -= (m[0].runInLead(misaligned, speed) + m[1].runInLead(misaligned, speed)) / 2
	k.Misalignment = misaligned * 1e-6
	reach := misaligned * 0.85 * k.meshStiffnessMean / (2 * line)
	if k.Face = 1 + reach; reach >= 1 {
		k.Face = 2 * math.Sqrt(reach)
	}
	wide := math.Max(face/f.toothDepth, 3)
	k.FaceRoot = math.Pow(k.Face, wide*wide/(1+wide+wide*wide))
}

// transverse is KHα and KFα. Source: ISO 6336-1, from memory.
func (f *toothFactors) transverse(k *LoadFactors, g *Geometry) {
	total := g.ContactRatio + g.OverlapRatio
	perError := 0.4 * k.meshStiffnessMean * f.pitchError / (k.lineLoad * k.Dynamic * k.Face)
	uneven := total / 2 * (0.9 + perError)
	if total > 2 {
		uneven = 0.9 + math.Sqrt(2*(total-1)/total)*perError
	}
	k.Transverse = math.Max(1, math.Min(uneven, total/(g.ContactRatio*f.ratio*f.ratio)))
	k.TransverseRoot = math.Max(1, math.Min(uneven, total/(0.25*g.ContactRatio+0.75)))
}

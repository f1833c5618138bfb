package gear

import "math"

// toothFactors is what of the rating follows from geometry and build alone.
type toothFactors struct {
	build          toothBuild
	why            string     // why the teeth cannot be rated, empty when they can
	zone           float64    // ZH
	elasticity     float64    // ZE, √(N/mm²)
	ratio          float64    // Zε
	helix          float64    // Zβ
	single         [2]float64 // ZB, ZD
	form           [2]rootForm
	rim            [2]float64 // YB
	lean           float64    // Yβ
	toothStiffness float64    // of one pair under a full line load, c', N/(mm µm)
	mass           float64    // reduced, kg/mm
	pitchError     float64    // base pitch, run in, µm
	formError      float64    // profile, run in, µm
	leadError      float64    // misalignment as made, µm
	leadLeast      float64    // least misalignment to reckon with, µm
	toothDepth     float64    // mm
	flank          flankOil
}

// steelElasticity is ZE of steel on steel, √(N/mm²). Source: ISO 6336-2, from memory.
const steelElasticity = 189.8

func newToothFactors(g *Geometry, b toothBuild) toothFactors {
	f := toothFactors{build: b, elasticity: steelElasticity}
	if g.Pinion.Teeth > g.Driven.Teeth {
		f.refuse("the method takes the pinion for the smaller gear; raise Wheel teeth to at least Pinion teeth")
	}
	if why := b.mount.unheld(g.FaceWidth * 1000); why != "" {
		f.refuse(why)
	}
	f.flankShape(g)
	f.rootShape(g)
	f.stiffness(g)
	f.deviations(g)
	f.flank = newFlankOil(g, &f.build)
	return f
}

// equivalentTeeth is the number of teeth of the spur gear that stands for a
// helical one. Source: ISO 6336-3, from memory.
func (g *Geometry) equivalentTeeth(w *Wheel) float64 {
	cos := math.Cos(g.BaseHelixAngle)
	return float64(w.Teeth) / (cos * cos * math.Cos(g.HelixAngle))
}

func (f *toothFactors) refuse(why string) {
	if f.why == "" {
		f.why = why
	}
}

// flankShape sets the factors of contact stress. Source: ISO 6336-2, clause 6,
// from memory.
func (f *toothFactors) flankShape(g *Geometry) {
	at, aw := g.TransversePressureAngle, g.WorkingPressureAngle
	ea, eb := g.ContactRatio, g.OverlapRatio
	if ea < 1 || ea >= 2 {
		f.refuse("the method holds for a transverse contact ratio of 1 to 2")
		return
	}
	if math.Min(g.Pinion.StartRollLength, g.Driven.StartRollLength) <= 0 {
		f.refuse("contact would start inside a base circle; raise the profile shift or the teeth of the gear whose contact above its fillet fails")
	}
	f.zone = math.Sqrt(2*math.Cos(g.BaseHelixAngle)*math.Cos(aw)/math.Sin(aw)) / math.Cos(at)
	full := math.Min(eb, 1)
	f.ratio = math.Sqrt((4-ea)/3*(1-full) + full/ea)
	f.helix = 1 / math.Sqrt(math.Cos(g.HelixAngle))
	helical := f.build.helicalContact()
	f.single[0] = g.singleContact(&g.Pinion, &g.Driven, full, helical)
	f.single[1] = g.singleContact(&g.Driven, &g.Pinion, full, helical)
	if !(f.single[0] > 0 && f.single[1] > 0) {
		f.refuse("the flanks touch at or below a base circle")
	}
}

// singleContact is ZB or ZD: the stress at the inner end of single contact of
// the gear over that at the pitch point, full is the overlap ratio up to 1 and
// helical what it comes down to there; 0 when that end lies inside the base
// circle.
func (g *Geometry) singleContact(w, mate *Wheel, full, helical float64) float64 {
	own := w.tipRoll() - 2*math.Pi/float64(w.Teeth)
	other := mate.tipRoll() - (g.ContactRatio-1)*2*math.Pi/float64(mate.Teeth)
	if own <= 0 || other <= 0 {
		return 0
	}
	m := math.Max(math.Tan(g.WorkingPressureAngle)/math.Sqrt(own*other), 1)
	return m - full*(m-helical)
}

// tipRoll is the involute's angle of roll at the tip, rad.
func (w *Wheel) tipRoll() float64 {
	return 2 * rollLengthAt(w.TipDiameter, w.BaseDiameter) / w.BaseDiameter
}

// rootShape sets the factors of root stress. Source: ISO 6336-3, clauses 6 to
// 9, from memory.
func (f *toothFactors) rootShape(g *Geometry) {
	cos := math.Cos(g.BaseHelixAngle)
	virtual := g.ContactRatio / (cos * cos)
	if virtual >= 2 {
		f.refuse("the method holds for a virtual contact ratio below 2")
		return
	}
	for i, w := range []*Wheel{&g.Pinion, &g.Driven} {
		zn := g.equivalentTeeth(w)
		tooth := newCutTooth(f.build.rack, f.build.pressureAngle, zn, w.Shift)
		tip := zn + (w.TipDiameter-w.ReferenceDiameter)/g.Module
		f.form[i] = tooth.isoForm(tooth.loadAt(tooth.outerSingle(tip, virtual)))
		if !f.form[i].valid {
			f.refuse("the shape of the tooth's root is outside the method")
		}
		f.form[i].form *= f.build.sharing(g.OverlapRatio, virtual)
	}
	f.lean = f.build.helixRoot(g.OverlapRatio, g.HelixAngle)
	f.toothDepth = (g.Pinion.TipDiameter - g.Pinion.RootDiameter) / 2 * 1000
	f.rim[0] = 1
	rim, ok := f.build.rimFactor((g.Driven.TipDiameter - g.Driven.RootDiameter) / 2 * 1000)
	if f.rim[1] = rim; !ok {
		f.refuse("the wheel's rim is thinner than half a tooth; raise Wheel web factor to 1 or use more teeth")
	}
}

const degreeAngle = math.Pi / 180

// stiffness sets the stiffness of a pair of teeth and the reduced mass.
// Source: ISO 6336-1, method B, from memory.
func (f *toothFactors) stiffness(g *Geometry) {
	b := &f.build
	z1, z2 := g.equivalentTeeth(&g.Pinion), g.equivalentTeeth(&g.Driven)
	x1, x2 := g.Pinion.Shift, g.Driven.Shift
	give := 0.04723 + 0.15551/z1 + 0.25791/z2 - 0.00635*x1 - 0.11654*x1/z1 - 0.00193*x2 - 0.24188*x2/z2 +
		0.00529*x1*x1 + 0.00182*x2*x2
	if !(give > 0.01) {
		f.refuse("the stiffness of these teeth is outside the method")
		return
	}
	profile := (1 + 0.5*(1.2-b.rack.Dedendum)) * (1 - 0.02*(20-b.pressureAngle/degreeAngle))
	f.toothStiffness = 0.8 * b.blankFactor(g.Module*1000) * profile * math.Cos(g.HelixAngle) / give

	const density = 7.83e-6 // kg/mm³
	mean := g.Pinion.meanDiameter() * 1000
	over := g.Pinion.meanDiameter() / g.Pinion.BaseDiameter
	u := g.Ratio()
	f.mass = math.Pi / 8 * over * over * mean * mean * density /
		(1/(1-math.Pow(b.hollow[0], 4)) + 1/((1-math.Pow(b.hollow[1], 4))*u*u))
}

// deviations sets the errors of the teeth after running in, by the gear with
// the larger tolerance. Source: ISO 1328-1 and ISO 6336-1, from memory.
func (f *toothFactors) deviations(g *Geometry) {
	b := &f.build
	var t [2]toothTolerances
	for i, d := range []float64{g.Pinion.ReferenceDiameter, g.Driven.ReferenceDiameter} {
		t[i] = newToothTolerances(b.accuracyClass, d*1000, g.Module*1000, g.FaceWidth*1000)
	}
	runIn := func(e float64) float64 { return e - (b.material[0].runIn(e)+b.material[1].runIn(e))/2 }
	f.pitchError = runIn(math.Max(t[0].pitch, t[1].pitch) * math.Cos(g.TransversePressureAngle))
	f.formError = runIn(math.Max(t[0].profile, t[1].profile))
	f.leadError = math.Hypot(t[0].lead, t[1].lead)
	f.leadLeast = 0.5 * math.Max(t[0].lead, t[1].lead)
	if b.mount.crowned {
		f.leadError *= 0.5
	}
}

package belt

import (
	"math"

	"backspan/model/param"
	"backspan/model/pulley"
	"backspan/model/unit"
)

// Setting is how the standing tension is set and what the adjuster must do.
type Setting struct {
	NewFactor        float64    // a new belt's setting over the standing tension
	RunInFactor      float64    // a run-in belt's
	BendingStiffness param.Slot // EI per rib, N·m²; empty leaves the span a string
	LengthTolerance  float64    // whole band of the belt's length, m
	PermanentSet     float64    // share of the length a belt grows for good
	EccentricOffset  float64    // m; 0 for another kind of adjuster
	SettingStep      float64    // least turn of the eccentric one can set, rad
	FrameGrowth      float64    // share per 100 K
	WarmUp           float64    // of the frame in service, K
	Misalignment     float64    // greatest of the pulleys, rad
}

func defaultSetting() Setting {
	return Setting{
		NewFactor: 1.4, RunInFactor: 1.05, LengthTolerance: 0.004, PermanentSet: 0.0075,
		EccentricOffset: 0.006, SettingStep: 2 * math.Pi / 180, FrameGrowth: 0.0023, WarmUp: 60,
		Misalignment: 0.5 * math.Pi / 180,
	}
}

func (s *Setting) params(details bool) []param.Param {
	ps := []param.Param{
		param.Number(&s.NewFactor, "new_setting", "Setting of a new belt", unit.One).
			Within(1, 2).Typical(1.3, 1.5).Help("times the standing tension, for it falls as the belt beds in").From("from memory: 1.3 to 1.5"),
		param.Number(&s.RunInFactor, "run_in_setting", "Setting of a run-in belt", unit.One).
			Within(0.8, 1.5).Typical(1, 1.1).Help("times the standing tension, after about 20 h").From("from memory: 1.0 to 1.1"),
		param.Open(&s.BendingStiffness, "bending_stiffness", "Bending stiffness EI per rib", unit.NewtonSquareMetre).
			Within(0, 0.05).Typical(0.0005, 0.0025).Help("raises the span frequency a little; empty leaves the span a string").
			From("0.78e-3 N·m² per PK rib in EP 1 046 835, for a stiff belt"),
		param.Number(&s.LengthTolerance, "length_tolerance", "Belt length tolerance, whole band", unit.Millimetre).
			Within(0, 40).Typical(2, 10).Help("longest less shortest belt of one size").From("estimate"),
		param.Number(&s.PermanentSet, "permanent_set", "Permanent stretch in service", unit.Percent).
			Within(0, 4).Typical(0.5, 1).Help("of the belt length; aramid cord less").From("from memory: 0.5 to 1 % for polyester"),
		param.Number(&s.EccentricOffset, "eccentric_offset", "Offset of the eccentric", unit.Millimetre).
			Within(0, 20).Typical(4, 10).Help("of the driven axis in its carrier; 0 when the adjuster is of another kind").From("estimate"),
		param.Number(&s.SettingStep, "setting_step", "Least turn of the eccentric", unit.Degree).
			Within(0.1, 15).Typical(1, 5).Help("the smallest that can be set and clamped").From("estimate"),
		param.Number(&s.FrameGrowth, "frame_growth", "Frame growth per 100 K", unit.Percent).
			Within(0, 1).Typical(0.12, 0.26).Help("aluminium 0.23, steel 0.12 %").From("common practice, no source"),
		param.Number(&s.WarmUp, "warm_up", "Warming of the frame", unit.KelvinDifference).
			Within(0, 200).Typical(30, 90).Help("between pulley axes, from setting to service").From("estimate"),
		param.Number(&s.Misalignment, "misalignment_limit", "Misalignment limit", unit.Degree).
			Within(0.05, 2).Typical(0.25, 0.5).Help("between the planes of the pulleys").From("from memory: 0.25 to 0.5°"),
	}
	expert(ps, details, "eccentric_offset")
	return ps
}

// expert puts parameters aside but those named, unless details are wanted.
func expert(ps []param.Param, details bool, shown ...string) {
	for i, p := range ps {
		keep := details
		for _, key := range shown {
			keep = keep || p.Key == key
		}
		ps[i] = p.Apart(!keep)
	}
}

// Adjustment is what a fitter works to.
type Adjustment struct {
	New, RunIn             float64 // standing tension per strand to set, N
	FrequencyNew           float64 // of a free span at that tension, Hz
	FrequencyRunIn         float64
	Deflection             float64 // of the span's middle, m
	ForceNew, ForceRunIn   float64 // that deflects it so far, N
	TakeUpNeeded           float64 // centre distance from the shortest new belt slack to the longest old one set, m
	Travel                 float64 // of the eccentric over ±60°, m of centre distance
	Shift                  float64 // of the driven axis sideways at the ends of that travel, m
	Resolution             float64 // centre distance per setting step, m
	TensionStep            float64 // tension per setting step, N
	Growth                 float64 // standing tension the warm frame adds, N
	HotLoad                float64 // standing shaft load with it, N
	NewLoad                float64 // standing shaft load of a new belt as set, N
	MisalignmentOffset     float64 // of one pulley over the span at the limit, m
	BelowOffer, AboveOffer Offer
}

// deflectionShare is the share of the span a fitter presses it down by.
const deflectionShare = 1.0 / 64

// spanFrequency is the lowest of a free span under a tension, N, at
// standstill, Hz. Source: mechanics of a string; bending stiffness raises the
// tension by (π/span)² EI.
func (b Belt) spanFrequency(tension float64) float64 {
	span := b.Run().Span()
	if ei := b.spec.Setting.BendingStiffness; ei.Known {
		tension += math.Pi * math.Pi / (span * span) * ei.Value * float64(b.spec.Ribs)
	}
	return math.Sqrt(math.Max(0, tension)/b.MassPerLength()) / (2 * span)
}

// deflectionForce presses the middle of a span down by its 1/64. Mechanics of
// a string: both halves pull at the slope 2δ/span, so F = 4 T δ/span; and they
// grow by 2δ²/span, which the whole loop shares.
func (b Belt) deflectionForce(tension float64) float64 {
	span, length := b.Run().Span(), b.Run().Length()
	grown := 2 * deflectionShare * deflectionShare * span / length * b.losses.stiffness
	return 4 * deflectionShare * (tension + grown)
}

// adjustment works out the setting of the belt as laid out.
func (b Belt) adjustment(r Result) Adjustment {
	s, rate := &b.spec.Setting, r.SettingRate
	a := Adjustment{
		New: s.NewFactor * b.standing, RunIn: s.RunInFactor * b.standing,
		Deflection: deflectionShare * b.Run().Span(), MisalignmentOffset: math.Tan(s.Misalignment) * b.Run().Span(),
	}
	a.FrequencyNew, a.FrequencyRunIn = b.spanFrequency(a.New), b.spanFrequency(a.RunIn)
	a.ForceNew, a.ForceRunIn = b.deflectionForce(a.New), b.deflectionForce(a.RunIn)
	length := b.Run().Length()
	grown := s.LengthTolerance + length*b.standing/b.losses.stiffness + s.PermanentSet*length
	a.TakeUpNeeded = grown / (2 * math.Cos(b.Run().SpanTilt()))
	a.Growth = rate * s.FrameGrowth / 100 * s.WarmUp * b.Run().CentreDistance
	a.HotLoad = pulley.Locked(b.standing+a.Growth, 0, 0).ShaftLoad(b.Run().SpanTilt()).Size()
	a.NewLoad = pulley.Locked(a.New, 0, 0).ShaftLoad(b.Run().SpanTilt()).Size()
	a.BelowOffer, a.AboveOffer = b.offers(r.EffectiveLength)
	e := eccentric{s.EccentricOffset, b.Run().CentreDistance}
	a.Travel, a.Shift = e.travel(), e.shift()
	a.Resolution = e.offset * s.SettingStep
	a.TensionStep = rate * a.Resolution
	return a
}

// eccentric carries the driven axis at an offset; at the middle of its travel
// the offset stands square to the line of centres. Lengths in m.
type eccentric struct{ offset, centreDistance float64 }

// usable is how far either side of its middle an eccentric is turned, rad.
const usable = math.Pi / 3

// travel is the centre distance covered over the usable turn.
func (e eccentric) travel() float64 { return e.at(math.Pi/2-usable) - e.at(math.Pi/2+usable) }

// at is the centre distance with the offset at an angle from the line of
// centres.
func (e eccentric) at(angle float64) float64 {
	pivot := math.Sqrt(e.centreDistance*e.centreDistance - e.offset*e.offset)
	sin, cos := math.Sincos(angle)
	return math.Hypot(pivot+e.offset*cos, e.offset*sin)
}

// shift is how far the driven axis moves sideways from the middle to either
// end of the travel.
func (e eccentric) shift() float64 { return e.offset * (1 - math.Sin(math.Pi/2-usable)) }

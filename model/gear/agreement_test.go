package gear

import (
	"math"
	"strings"
	"testing"

	"backspan/model/param"
	"backspan/model/part"
	"backspan/model/reading"
)

// The ratings agree only where both blame the same gear and the same mode.
func TestRatingsAgreeOnGearAndMode(t *testing.T) {
	const weak, fair, strong = 1.2, 2.0, 4.0
	type safeties struct{ pitting, bending [2]float64 }
	flankOf := func(gear int) safeties {
		s := safeties{[2]float64{fair, fair}, [2]float64{strong, strong}}
		s.pitting[gear] = weak
		return s
	}
	rootOf := func(gear int) safeties {
		s := safeties{[2]float64{fair, fair}, [2]float64{strong, strong}}
		s.bending[gear] = 1.6
		return s
	}
	for _, tc := range []struct {
		name    string
		iso     safeties
		second  safeties
		noRoots string
		want    reading.Verdict
	}{
		{"pinion flank by both", flankOf(0), flankOf(0), "", reading.Holds},
		{"wheel root by both", rootOf(1), rootOf(1), "", reading.Holds},
		{"flanks of different gears", flankOf(0), flankOf(1), "", reading.Thin},
		{"one gear, flank against root", flankOf(0), rootOf(0), "", reading.Thin},
		{"root against flank", rootOf(1), flankOf(1), "", reading.Thin},
		{"roots of different gears", rootOf(0), rootOf(1), "", reading.Thin},
		{"flanks only, alike", flankOf(0), safeties{pitting: [2]float64{weak, fair}}, "charts", reading.Holds},
		{"roots not rated, but to blame", rootOf(1), safeties{pitting: [2]float64{weak, fair}}, "charts", reading.NotRated},
		{"flanks only, not alike", flankOf(0), safeties{pitting: [2]float64{fair, weak}}, "charts", reading.Thin},
	} {
		r := Result{}
		r.spec.PittingAsked, r.spec.BendingAsked = 1.1, 1.5
		for i := range 2 {
			r.Strength.Flank[i].Safety, r.Strength.Root[i].Safety = tc.iso.pitting[i], tc.iso.bending[i]
		}
		r.Strength.Cross = CrossRating{BendingWhy: tc.noRoots, Pitting: tc.second.pitting, Bending: tc.second.bending}
		if got := r.agreementCheck().Verdict; got != tc.want {
			t.Errorf("%s: %s, want %s", tc.name, got, tc.want)
		}
	}
}

// Who is blamed is said, and whose strengths each rating takes.
func TestBlameInWords(t *testing.T) {
	r := newGear(t, Default()).Examine(rated(), part.Train{})
	r.spec.PittingAsked, r.spec.BendingAsked = 1.1, 1.5
	for i := range 2 {
		r.Strength.Flank[i].Safety, r.Strength.Root[i].Safety = 2, [2]float64{2, 1.6}[i]
	}
	r.Strength.Cross = CrossRating{Pitting: [2]float64{1.2, 2}, Bending: [2]float64{4, 4}}
	if got, want := r.blame(), "ISO 6336 has the wheel's root give out first, AGMA 2001 the pinion's flank"; got != want {
		t.Errorf("%q, want %q", got, want)
	}
	r.Strength.Cross.BendingWhy = "charts"
	r.spec.WheelBending = param.Known(400e6)
	if got := r.blame(); !strings.Contains(got, "of the flanks alone; ISO takes your own limits") {
		t.Errorf("%q", got)
	}
	if x, _ := reading.Find(r.Readings(nil), "gear.agma_pitting_safety"); !strings.Contains(x.Method, r.blame()) {
		t.Errorf("%q", x.Method)
	}
	if c := r.agreementCheck(); !strings.Contains(c.Why, "the wheel's root") {
		t.Errorf("%+v", c)
	}
}

// A flank's safety counts squared against a root's: 1.3 of 1.1 is less room
// than 2.0 of 1.5, though 1.3/1.1 alone is not.
func TestFlankSafetyCountsSquared(t *testing.T) {
	if got := first([2]float64{1.3, 9}, [2]float64{2.0, 9}, 1.1, 1.5, true); got != (mode{0, true}) {
		t.Errorf("%+v", got)
	}
	if got := first([2]float64{1.25, 9}, [2]float64{2.0, 9}, 1.1, 1.5, true); got != (mode{0, false}) {
		t.Errorf("%+v", got)
	}
}

// The band of resonance through the whole examination, at a full line load and
// at a low one. Source: ISO 6336-1, from memory.
func TestMeshResonanceFromTheRunningSpeed(t *testing.T) {
	s := Default()
	s.HelixAngle, s.WebFactor = 0, 1
	g := newGear(t, s)
	for _, tc := range []struct{ force, from float64 }{{2000, 0.85}, {600, 0.5 + 0.35*math.Sqrt(0.6*1.75*1000/20/100)}, {400, 0.5 + 0.35*math.Sqrt(0.4*1.75*1000/20/100)}} {
		if line := tc.force * 1.75 / 20; line < 100 && math.Abs(0.5+0.35*math.Sqrt(line/100)-tc.from) > 1e-9 {
			t.Fatalf("line load %g", line)
		}
		k := g.teeth.loadFactors(&g.geometry, tc.force, 1.75, 900)
		per := 900 / k.Resonance
		for _, at := range []struct {
			ratio float64
			want  reading.Verdict
		}{{tc.from - 0.002, reading.Holds}, {tc.from + 0.002, reading.Thin}, {1, reading.Thin}, {1.148, reading.Thin}, {1.152, reading.Holds}} {
			r := Result{}
			r.Strength.Load = g.teeth.loadFactors(&g.geometry, tc.force, 1.75, per*at.ratio)
			if got := r.resonanceCheck().Verdict; got != at.want {
				t.Errorf("%g N, %g of resonance: %s, want %s", tc.force, at.ratio, got, at.want)
			}
		}
	}
}

func TestPinionMustBeTheSmallerGear(t *testing.T) {
	s := Default()
	s.PinionTeeth, s.WheelTeeth = 30, 29
	if why := newGear(t, s).teeth.why; why == "" {
		t.Error("a pinion of more teeth than its wheel is rated")
	}
	s.WheelTeeth, s.WebFactor = 30, 1
	if why := newGear(t, s).teeth.why; why != "" {
		t.Errorf("equal gears: %s", why)
	}
}

// AGMA's strengths are over Brinell hardness, 0.95 of Vickers (ISO 18265, from
// memory); normalized steel has its hardness in Brinell already.
func TestSecondRatingTakesBrinell(t *testing.T) {
	root, flank, _ := toothMaterial{class: HardenedAlloy, hardness: 300}.agmaStrength()
	if math.Abs(root-34830.5) > 1e-6 || math.Abs(flank-120870) > 1e-6 {
		t.Errorf("alloy steel of 300 HV: %g and %g psi", root, flank)
	}
	if h := (toothMaterial{class: Normalized, hardness: 180}).brinell(); h != 180 {
		t.Errorf("normalized steel of 180 HBW counts as %g", h)
	}
}

// Two rollers of 7 mm reduced radius under 1000 N/mm²: half width 0.12370 mm.
// Source: Hertz, lines in contact, b = 2 p R/E*, worked by hand with E 206 000
// N/mm² and 0.3, which is E* 113 187 N/mm².
func TestDepthOfGreatestShear(t *testing.T) {
	g := newGear(t, Default()).geometry
	s := Strength{Elasticity: steelElasticity}
	s.Flank[1].Stress = 1000 * megapascal
	want := 0.78 * 0.12370 / 7 * g.reducedRadius()
	if got := s.shearDepth(&g); math.Abs(got/want-1) > 5e-4 {
		t.Errorf("%g mm, want %g", got*1000, want*1000)
	}
}

// A pinion of 2 in and a face of 1.5 in. Source: AGMA 2001 form, worked by an
// independent script.
func TestLoadDistributionByAlignment(t *testing.T) {
	for _, tc := range []struct {
		how            Enclosure
		plain, crowned float64 // crowned and far from the middle of the span
	}{{OpenGearing, 1.328128, 1.267002}, {CommercialUnit, 1.206741, 1.169893}, {PrecisionUnit, 1.142742, 1.118693}, {ExtraPrecisionUnit, 1.074965, 1.064472}} {
		p := agmaPair{face: 1.5, diameter: 2, alignment: alignments()[tc.how]}
		plain := p.spreadAGMA()
		p.crowned, p.straddleOffset = true, true
		if crowned := p.spreadAGMA(); math.Abs(plain-tc.plain) > 1e-6 || math.Abs(crowned-tc.crowned) > 1e-6 {
			t.Errorf("%s: %.6f and %.6f, want %g and %g", tc.how, plain, crowned, tc.plain, tc.crowned)
		}
	}
}

func TestReadingsSayWhoseLimitsAreUsed(t *testing.T) {
	s := Default()
	s.PinionContact, s.WheelBending = param.Known(1400e6), param.Known(380e6)
	rs := newGear(t, s).Examine(rated(), part.Train{}).Readings(nil)
	for key, own := range map[string]float64{"gear.pitting_endurance_pinion": 1400e6, "gear.pitting_endurance_wheel": 0,
		"gear.bending_endurance_pinion": 0, "gear.bending_endurance_wheel": 380e6} {
		x, _ := reading.Find(rs, key)
		if own > 0 && (x.Value != own || x.Origin != "the builder's own") || own == 0 && x.Origin != "from memory: ISO 6336-5, table 1" {
			t.Errorf("%s: %s from %s", key, x, x.Origin)
		}
	}
	// With both limits of a gear given, the table's hardness does not matter.
	s.WheelContact, s.WheelHardness = param.Known(1350e6), 500
	if why := newGear(t, s).teeth.why; why != "" {
		t.Error(why)
	}
	s.WheelContact = param.Slot{}
	if why := newGear(t, s).teeth.why; why == "" {
		t.Error("a hardness outside the table is rated by the table")
	}
}

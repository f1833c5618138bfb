package gear

import (
	"math"
	"testing"

	"backspan/model/coupling"
	"backspan/model/param"
	"backspan/model/part"
	"backspan/model/reading"
)

// However long the span, the case holds both pinion bearings between cover and
// coupling, and each millimetre of span is one of depth for an overhung pinion
// and half of one on either side of one between.
func TestCaseHoldsThePinionsBearings(t *testing.T) {
	depth := map[Place]map[float64]float64{Between: {}, Overhung: {}}
	for place, deep := range depth {
		for _, span := range []float64{60e-3, 80e-3, 200e-3} {
			for _, offset := range []float64{0, 5e-3, 20e-3} {
				s := Default()
				s.PinionPlace, s.PinionSpan, s.PinionOffset = place, param.Known(span), offset
				g := newGear(t, s)
				x := g.Examine(rated(), part.Train{})
				p := x.Shafting().Places
				half, cover := g.bearings.pinion.Width/2, s.FlangeThickness+s.SealWidth+s.CoverDepth
				low, high := p.PinionPropBearing-half, p.PinionEngineBearing+half
				if low < cover-1e-12 || high > p.CouplingRear-s.CaseWall+1e-12 {
					t.Errorf("%s, span %g, offset %g: bearings from %g to %g, case from %g to %g", place, span, offset, low, high, cover, p.CouplingRear)
				}
				if whole := part.Depth(g.Pieces()); math.Abs(whole-p.DriveFace) > 1e-12 {
					t.Errorf("%s: pieces are %g deep, places %g", place, whole, p.DriveFace)
				}
				if offset == 0 {
					deep[span] = p.DriveFace
				}
			}
		}
		if more := deep[200e-3] - deep[80e-3]; math.Abs(more-120e-3) > 1e-9 {
			t.Errorf("%s: 120 mm more span make %g more depth", place, more)
		}
	}
	if d := Default(); part.Depth(newGear(t, d).Pieces()) != 113e-3 {
		t.Error("the plain case is not 113 mm deep")
	}
}

func overhungSpec() Spec {
	s := Default()
	s.PinionPlace, s.PinionSpan, s.PinionOffset = Overhung, param.Known(0.06), 0.025
	s.Coupling.Kind = coupling.Clutch
	return s
}

// A pinion on the crank has no bearings, seal, shaft or coupling of its own.
func TestPinionOnTheCrankHasNothingOfItsOwn(t *testing.T) {
	s := overhungSpec()
	own, crank := newGear(t, s), newGear(t, s.With(Held{OnCrank: true}))
	at := rated()
	a, b := own.Examine(at, part.Train{}), crank.Examine(at, part.Train{})
	law := own.lossLaw(a.Sump.Temperature)
	if a.Losses.Seals-b.Losses.Seals < 0.9*sealDrag(own.bearings.pinion.Bore, s.SealMaterial)*at.CrankSpeed {
		t.Errorf("seals %g and %g W", a.Losses.Seals, b.Losses.Seals)
	}
	bare := crank.lossLaw(a.Sump.Temperature)
	if same := law.bearings[0] == bare.bearings[0] && law.bearings[1] == bare.bearings[1]; !same || bare.bearings[2] != (bearingDrag{}) || law.bearings[2] == (bearingDrag{}) {
		t.Errorf("bearings %+v and %+v", law.bearings, bare.bearings)
	}
	saved := part.Mass(own.Pieces()) - part.Mass(crank.Pieces())
	if least := s.Coupling.Mass + 2*own.bearings.pinion.Mass(); saved < least {
		t.Errorf("saves %g kg, at least %g", saved, least)
	}
	if crank.TurnsAt(1) == false || crank.spec.Coupling.Depth != 0 {
		t.Error("a clutch is left")
	}
	if d := part.Depth(crank.Pieces()); math.Abs(d-b.Shafting().Places.DriveFace) > 1e-12 {
		t.Errorf("pieces %g deep, places %g", d, b.Shafting().Places.DriveFace)
	}
	if c, ok := find(b.Checks(nil, 0.1), "gear.pinion_body"); !ok || c.Verdict != reading.NotRated {
		t.Errorf("%+v", c)
	}
	if between := Default().With(Held{OnCrank: true}); between.Held.OnCrank || between.Coupling != Default().Coupling {
		t.Error("a pinion between bearings is on the crank")
	}
}

// Where the mate's tip reaches below the involute the contact ratio ends there,
// and of an undercut tooth it is not known.
func TestContactRatioCountsInvoluteOnly(t *testing.T) {
	r := newGear(t, Default()).Examine(rated(), part.Train{})
	g := &r.Geometry
	c, _ := find(r.Checks(nil, 0.1), "gear.contact_ratio")
	if c.Verdict != reading.Holds || c.Value != g.ContactRatio {
		t.Fatalf("%+v", c)
	}
	g.Pinion.FormRollLength = g.Pinion.StartRollLength + 0.3*g.BasePitch
	c, _ = find(r.Checks(nil, 0.1), "gear.contact_ratio")
	if want := g.ContactRatio - 0.3; c.Verdict != reading.Fails || math.Abs(c.Value-want) > 1e-9 {
		t.Errorf("cut at the form circle: %s %g, want %g", c.Verdict, c.Value, want)
	}
	g.Driven.StartRollLength, g.Driven.FormRollLength = -0.1*g.BasePitch, -0.5*g.BasePitch
	c, _ = find(r.Checks(nil, 0.1), "gear.contact_ratio")
	if want := g.ContactRatio - 0.4; math.Abs(c.Value-want) > 1e-9 {
		t.Errorf("never inside the base circle: %g, want %g", c.Value, want)
	}
	g.Pinion.LeastShift = g.Pinion.Shift + 0.1
	if c, _ = find(r.Checks(nil, 0.1), "gear.contact_ratio"); c.Verdict != reading.NotRated {
		t.Errorf("undercut: %+v", c)
	}
}

// The mesh frequency is held against the train's own: where they meet the check
// is past, above and below it holds.
func TestMeshFrequencyAgainstTheTrain(t *testing.T) {
	g := newGear(t, Default())
	second := g.Examine(rated(), trainOf(0.5)).Pulsation.Second.Value
	for _, tc := range []struct {
		share float64
		want  reading.Verdict
	}{{0.8, reading.Holds}, {0.9, reading.Thin}, {1.1, reading.Thin}, {1.2, reading.Holds}} {
		at := rated()
		at.CrankSpeed = tc.share * second * 2 * math.Pi / float64(g.spec.PinionTeeth)
		x := g.Examine(at, trainOf(0.5))
		c, _ := find(x.Checks(nil, 0.1), "gear.mesh_torsional")
		if c.Verdict != tc.want || math.Abs(x.overTorsional().Value/tc.share-1) > 1e-9 {
			t.Errorf("at %g: %s, ratio %g", tc.share, c.Verdict, x.overTorsional().Value)
		}
	}
	if c, _ := find(g.Examine(rated(), part.Train{}).Checks(nil, 0.1), "gear.mesh_torsional"); c.Verdict != reading.NotRated || c.Why == "" {
		t.Errorf("without a train: %+v", c)
	}
}

// The bearing that takes the thrust has the axial force of the teeth.
func TestDragFollowsTheLocatingBearing(t *testing.T) {
	s := Default()
	s.WheelPropellerBearing = s.WheelEngineBearing
	s.HelixAngle = 0.5
	aft, ahead := newGear(t, s), newGear(t, s.With(Held{ThrustAhead: true}))
	a, b := aft.lossLaw(350).bearings, ahead.lossLaw(350).bearings
	if a[0] != b[1] || a[1] != b[0] || a[0] == a[1] {
		t.Errorf("%+v and %+v", a, b)
	}
}

func find(cs []reading.Check, key string) (reading.Check, bool) {
	for _, c := range cs {
		if c.Key == key {
			return c, true
		}
	}
	return reading.Check{}, false
}

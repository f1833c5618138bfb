package drive

import (
	"math"
	"strings"
	"testing"

	"backspan/model/param"
	"backspan/model/part"
	"backspan/model/reading"
)

func rated() part.Duty {
	return part.Duty{Power: 15e3, CrankSpeed: 8000 * math.Pi / 30, AirTemperature: 290, AirDensity: 1.2, Inflow: 8}
}

func report(t *testing.T, change func(*Spec)) Result {
	t.Helper()
	s := Default()
	change(&s)
	d, err := New(s, rated(), 0, part.Train{})
	if err != nil {
		t.Fatal(err)
	}
	return Report(s, d, d.Transmit(rated().Power, rated().CrankSpeed), rated(), part.Train{})
}

func kind(k Kind) func(*Spec) { return func(s *Spec) { s.Kind = k } }

// What every drive owes: power is not made, the ratio holds, depth and mass
// are the sums of the pieces.
func TestEveryKindKeepsTheBooks(t *testing.T) {
	for _, k := range []Kind{RibbedBelt, ToothedBelt, Gear, Direct} {
		s := Default()
		s.Kind = k
		d, err := New(s, rated(), 0, part.Train{})
		if err != nil {
			t.Fatal(err)
		}
		r := report(t, kind(k))
		if r.Mass != part.Mass(d.Pieces()) || r.Depth != part.Depth(d.Pieces()) || r.Mass <= 0 || r.Depth <= 0 {
			t.Errorf("%s: mass %g, depth %g", k, r.Mass, r.Depth)
		}
		for _, share := range []float64{0.2, 0.6, 1} {
			tr := d.Transmit(share*rated().Power, rated().CrankSpeed)
			if tr.PowerOut > tr.PowerIn || tr.Efficiency() > 1 {
				t.Errorf("%s makes power: %+v", k, tr)
			}
			if slip := 1 - tr.SpeedOut*d.Ratio()/tr.SpeedIn; slip < 0 || slip > 0.01 {
				t.Errorf("%s slips by %g", k, slip)
			}
		}
	}
}

func TestOneMeshReversesAndABeltDoesNot(t *testing.T) {
	for k, want := range map[Kind]int{RibbedBelt: 1, ToothedBelt: 1, Gear: -1, Direct: 1} {
		if got := report(t, kind(k)).Turn; got != want {
			t.Errorf("%s turns %+d", k, got)
		}
	}
}

func TestAxisSide(t *testing.T) {
	s := Default()
	d, err := New(s, rated(), 0, part.Train{})
	if err != nil {
		t.Fatal(err)
	}
	up := s.AxisRise(d)
	s.PropellerAxis = Below
	if up <= 0 || s.AxisRise(d) != -up {
		t.Errorf("rise %g above, %g below", up, s.AxisRise(d))
	}
}

func TestCoreReadingsOfOtherKindsSayThereIsNone(t *testing.T) {
	for k, keys := range map[Kind][]string{
		RibbedBelt: {"gear.pitting_safety", "gear.bending_safety"},
		Gear:       {"belt.static_tension", "belt.shaft_load_standing", "belt.shaft_load_running"},
	} {
		rs := report(t, kind(k)).Readings(nil)
		for _, key := range keys {
			if r, ok := reading.Find(rs, key); !ok || !r.Absent || r.Text() != "none" || !strings.Contains(r.Why, "no ") {
				t.Errorf("%s: %s is %+v", k, key, r)
			}
		}
	}
}

// A drive that could not be built declares the same keys as one that was.
func TestUnbuiltDriveOwesTheSameKeys(t *testing.T) {
	for _, k := range []Kind{RibbedBelt, ToothedBelt, Gear, Direct} {
		unbuilt := Result{Kind: k}.Readings(nil)
		for _, r := range report(t, kind(k)).Readings(nil) {
			if _, ok := reading.Find(unbuilt, r.Key); !ok {
				t.Errorf("%s: %s is not declared when the drive cannot be built", k, r.Key)
			}
		}
	}
}

func TestRatioBelowOneFails(t *testing.T) {
	r := report(t, func(s *Spec) { s.Kind, s.Gear.PinionTeeth, s.Gear.WheelTeeth = Gear, 40, 39 })
	if c := r.Checks(nil, 0.1)[0]; c.Key != "drive.ratio" || c.Verdict != reading.Fails {
		t.Errorf("%+v", c)
	}
}

func TestOnlyTheChosenKindIsShown(t *testing.T) {
	s := Default()
	s.Kind = Gear
	shown := map[string]bool{}
	for _, sec := range s.Sections("drive") {
		shown[sec.Key] = !sec.Hidden
	}
	if !shown["drive"] || !shown["drive.gear"] || shown["drive.ribbed_belt"] || shown["drive.direct"] {
		t.Errorf("%v", shown)
	}
	if p, ok := param.Find(s.Sections("drive"), "drive.ribbed_belt.ribs"); !ok || p.Set("9") != nil || s.RibbedBelt.Ribs != 9 {
		t.Error("a kind that is not chosen cannot be set")
	}
}

func TestUnknownKindIsRefused(t *testing.T) {
	if _, err := New(Spec{Kind: "chain"}, rated(), 0, part.Train{}); err == nil || !strings.Contains(err.Error(), "ribbed belt") {
		t.Errorf("%v", err)
	}
}

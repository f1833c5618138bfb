package drive

import (
	"math"
	"strings"
	"testing"

	"backspan/model/coupling"
	"backspan/model/internal/anyspec"
	"backspan/model/part"
	"backspan/model/reading"
	"backspan/model/shaft"
)

// idler is a crank that turns at 200 rad/s without load.
type idler struct{ idle float64 }

func (c idler) Power(float64) float64                 { return 15e3 }
func (c idler) SpeedRange() (lowest, highest float64) { return 300, 900 }
func (c idler) IdleSpeed() float64                    { return c.idle }
func (c idler) Pulsation(power, speed float64) part.Pulsation {
	return part.Pulsation{Mean: power / speed}
}

// A propeller turns whenever the engine does, unless a clutch takes hold above
// idle.
func TestPropellerAtIdle(t *testing.T) {
	clutch := func(takeUp float64) func(*Spec) {
		return func(s *Spec) { s.Kind, s.Gear.Coupling.Kind, s.Gear.Coupling.TakeUp = Gear, coupling.Clutch, takeUp }
	}
	for _, tc := range []struct {
		name   string
		change func(*Spec)
		crank  part.Crank
		stands bool
		want   reading.Verdict
	}{
		{"ribbed belt", kind(RibbedBelt), idler{200}, false, reading.Thin},
		{"toothed belt", kind(ToothedBelt), idler{200}, false, reading.Thin},
		{"direct", kind(Direct), idler{200}, false, reading.Thin},
		{"gear", kind(Gear), idler{200}, false, reading.Thin},
		{"gear, clutch out", clutch(300), idler{200}, true, reading.Holds},
		{"gear, clutch in", clutch(190), idler{200}, false, reading.Thin},
		{"engine unknown", clutch(300), nil, false, reading.NotRated},
		{"idle unknown", kind(Direct), idler{0}, false, reading.NotRated},
	} {
		s := Default()
		tc.change(&s)
		train := part.Train{Crank: tc.crank, CrankInertia: 2e-3, PropellerInertia: 0.05}
		d, err := New(s, rated(), 0, train)
		if err != nil {
			t.Fatal(err)
		}
		r := Report(s, d, d.Transmit(rated().Power, rated().CrankSpeed), rated(), train)
		c := anyspec.Check(t, r.Checks(nil, 0.1), "drive.idle_propeller")
		x, ok := reading.Find(r.Readings(nil), "drive.idle_propeller_speed")
		if c.Verdict != tc.want || !ok || x.Known() != (tc.want != reading.NotRated) {
			t.Errorf("%s: %s, %+v", tc.name, c.Verdict, x)
		}
		speed := 200 / d.Ratio()
		if tc.stands {
			speed = 0
		}
		if x.Known() && math.Abs(x.Value-speed) > 1e-9 {
			t.Errorf("%s: %g rad/s, want %g", tc.name, x.Value, speed)
		}
		if c.Verdict == reading.Thin && !strings.Contains(c.Cure, x.Unit.Text(x.Value)) {
			t.Errorf("%s: the advice does not say how fast: %s", tc.name, c.Cure)
		}
	}
}

// Without a dip nothing is said of which gear dips; with one the lower must.
func TestLowerGearDips(t *testing.T) {
	for _, tc := range []struct {
		depth float64
		axis  Side
		want  reading.Verdict
	}{{6e-3, Above, reading.Holds}, {6e-3, Below, reading.Fails}, {0, Above, reading.NotRated}} {
		r := report(t, func(s *Spec) { s.Kind, s.Gear.DipDepth, s.PropellerAxis = Gear, tc.depth, tc.axis })
		if c := anyspec.Check(t, r.Checks(nil, 0.1), "drive.dipping_gear"); c.Verdict != tc.want {
			t.Errorf("dip %g, propeller %s: %s", tc.depth, tc.axis, c.Verdict)
		}
	}
}

// The drag of the bearings follows which of them is chosen to take the thrust.
func TestBearingDragFollowsTheLocatingBearing(t *testing.T) {
	drag := func(side shaft.Side) float64 {
		r := report(t, func(s *Spec) { s.Kind, s.GearShafts.WheelLocating = Gear, side })
		x, _ := reading.Find(r.Readings(nil), "gear.bearing_drag")
		return x.Value
	}
	if a, b := drag(shaft.PropSide), drag(shaft.EngineSide); a == b || !(a > 0) || !(b > 0) {
		t.Errorf("%g and %g W", a, b)
	}
}

package flight

import (
	"math"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"backspan/model/internal/published"
	"backspan/model/part"
	"backspan/model/reading"
	"backspan/model/unit"
)

func twistCase(t testing.TB, c published.Case) map[string]float64 {
	in := hangAt(c.Num(t, "aft"), c.Num(t, "below"))
	in.Wing = wing(t, c)
	in.Wing.LineSpread, in.Wing.LineHeight = c.Num(t, "spread"), c.Num(t, "height")
	in.PilotMass, in.UnitMass = c.Num(t, "mass")-28, 28
	in.Seat.DragArea = c.Num(t, "drag_area")
	in.ThrustHeight, in.Line = -c.Num(t, "thrust_below"), steady(c.Num(t, "thrust"))
	in.ShaftTorque, in.HangSpacing = c.Num(t, "torque"), c.Num(t, "spacing")
	r := Fly(&in)
	return map[string]float64{
		"climb": unit.Degree.From(r.ClimbAngle), "lean": unit.Degree.From(r.HangFull), "lines": unit.Degree.From(r.Twist.LineLean),
		"tension": r.Twist.Tension, "moment": r.Twist.Moment, "held": r.Twist.Held,
		"twist": unit.Degree.From(r.Twist.Angle.Value), "opening": unit.Degree.From(r.Opening.Angle.Value),
	}
}

// No torque, no twist; the mirrored propeller twists to the other side as far;
// and a shaft that stands square to the lines does not twist at all.
func TestTwistFollowsTheLines(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		in := draw(t)
		r := Fly(&in)
		if !r.Twists {
			return
		}
		if in.CrankTurn = part.Clockwise; r.PropellerTurn == part.Clockwise {
			in.CrankTurn = part.Anticlockwise
		}
		in.Turn = 1
		m := Fly(&in)
		if m.Twist.Moment != -r.Twist.Moment || m.Opening.Moment != -r.Opening.Moment {
			t.Fatalf("mirrored %g and %g N·m, were %g and %g", m.Twist.Moment, m.Opening.Moment, r.Twist.Moment, r.Opening.Moment)
		}
		if got, want := math.Abs(r.Twist.Moment), in.ShaftTorque*math.Abs(math.Sin(r.HangFull-r.Twist.LineLean)); math.Abs(got-want) > 1e-9*(1+want) {
			t.Fatalf("%g N·m, want %g", got, want)
		}
	})
}

func TestWorseTwistIsRated(t *testing.T) {
	in := sample()
	r := Fly(&in)
	if r.Twist.Moment >= 0 || r.Opening.Moment <= 0 {
		t.Fatalf("climb %g, opening %g N·m", r.Twist.Moment, r.Opening.Moment)
	}
	for _, tc := range []struct {
		name     string
		set      func(*Result)
		worst    float64
		says     string
		climb    string
		openSide string
	}{
		{"opening", func(*Result) {}, math.Abs(r.Opening.Moment), "just after", "to the left", "nose to the right first"},
		{"climb", func(r *Result) { r.Opening.Moment = -r.Twist.Moment / 100 }, math.Abs(r.Twist.Moment), "steady climb", "to the left", "nose to the right first"},
	} {
		x := r
		tc.set(&x)
		found := 0
		for _, c := range x.Checks(nil, 0.1) {
			switch c.Key {
			case "flight.riser_twist":
				if found++; math.Abs(c.Value-tc.worst) > 1e-9 || !strings.Contains(c.Origin, tc.says) {
					t.Errorf("%s: %s, %s", tc.name, c.Text(), c.Origin)
				}
			case "flight.torque_steering":
				if found++; !strings.Contains(c.Why, tc.openSide) {
					t.Errorf("%s: %s", tc.name, c.Why)
				}
			}
		}
		rd, _ := reading.Find(x.Readings(nil), "flight.twist")
		if found != 2 || rd.Value >= 0 || !strings.Contains(rd.Method, tc.climb) || !strings.Contains(rd.Method, "below square") {
			t.Errorf("%s: %d checks, %s: %s", tc.name, found, rd.Text(), rd.Method)
		}
	}
	in.Line = steady(3000)
	if rd, _ := reading.Find(Fly(&in).Readings(nil), "flight.twist"); rd.Known() {
		t.Errorf("twist without a steady climb: %s", rd.Text())
	}
}

// With few blades the propeller's share swings; it can turn the whole round.
func TestFewBladesSwingTheCouple(t *testing.T) {
	for _, tc := range []struct {
		blades, turn int
		says, not    string
	}{
		{2, 1, "net 3.18 N·m to 44.3 N·m", "turns round"},
		{2, -1, "turns round for moments", ""},
		{1, 1, "net 3.18 N·m to 44.3 N·m", "turns round"},
		{3, 1, "depth does not change it", "swings"},
	} {
		in := sample()
		in.Blades, in.Turn, in.CrankInertia, in.DrivenInertia = tc.blades, tc.turn, 0.0032, 0.002
		r := Fly(&in)
		rd, _ := reading.Find(r.Readings(nil), "flight.net_couple")
		if !strings.Contains(rd.Method, tc.says) || tc.not != "" && strings.Contains(rd.Method, tc.not) {
			t.Errorf("%d blades: %g ± %g: %s", tc.blades, r.NetCouple, r.NetSwing, rd.Method)
		}
	}
}

// Short of thrust at trim, level flight may be left at the slower speed of less
// drag: half the drag from lift at trim puts that speed at trim, less below it.
func TestLevelFlightIsSoughtBesideTrim(t *testing.T) {
	in := sample()
	in.Wing.LiftDragShare = 0.2
	m := AllUp(in.Wing, in.Seat, in.PilotMass, in.UnitMass)
	trim, need := Level(in.Wing, m, in.AirDensity)
	slow := trim * math.Pow(0.2/0.8, 0.25)
	least := LevelThrust(in.Wing, m, in.AirDensity, slow)
	in.Line = steady((need + least) / 2)
	r := Fly(&in)
	if s := r.Speeds; !s.Level || s.Slowest > slow || s.Fastest < slow || s.Fastest >= trim {
		t.Errorf("%+v about %g m/s, trim %g m/s", s, slow, trim)
	}
	for key, want := range map[string]string{"flight.level_fuel": "", "flight.fastest_level": "at trim speed full throttle falls short"} {
		if rd, _ := reading.Find(r.Readings(nil), key); !strings.Contains(rd.Method, want) || key == "flight.fastest_level" && !rd.Known() {
			t.Errorf("%s: %+v", key, rd)
		}
	}
	in.Line = steady(0.99 * least)
	r = Fly(&in)
	rd, _ := reading.Find(r.Readings(nil), "flight.fastest_level")
	if r.Speeds.Level || rd.Why != noLevelAtAll {
		t.Errorf("%+v, %s", r.Speeds, rd.Why)
	}
}

func TestSinkWithTheEngineOff(t *testing.T) {
	in := sample()
	r := Fly(&in)
	glide := math.Atan(1 / in.Wing.GlideRatio)
	if want := r.TrimSpeed * math.Sqrt(math.Cos(glide)) * math.Sin(glide); math.Abs(r.SinkOff-want) > 1e-3*want {
		t.Errorf("%g m/s, want %g", r.SinkOff, want)
	}
}

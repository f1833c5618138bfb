package belt

import (
	"math"
	"strings"
	"testing"

	"backspan/model/internal/anyspec"
	"backspan/model/part"
	"backspan/model/reading"
	"pgregory.net/rapid"
)

// own is what a random stage may have in its tables and texts.
var own = map[string]anyspec.Own{
	"stock_lengths": anyspec.OneOf("", "700", "500; 640; 812; 990; 1400"),
	"rating_table":  anyspec.OneOf("", "60 5000 1.5", "50 4000 0.9; 50 9000 1.4; 120 4000 2; 120 9000 3.5"),
	"rating_source": anyspec.OneOf("", "a report"),
}

func drawSpec(t *rapid.T) Spec {
	s := Default()
	anyspec.Set(t, s.Params(), own)
	if u := &s.Use; u.Full+u.Climb+u.Level > 1 {
		u.Full, u.Climb, u.Level = u.Full/3, u.Climb/3, u.Level/3
	}
	return s
}

func drawBelt(t *rapid.T) (Belt, part.Duty) {
	rated := anyspec.Rated(t)
	train := drawTrain(t)
	s := drawSpec(t)
	if train.Crank == nil {
		s.Pulsing.LoadFactor = ByServiceFactor
	}
	b, err := New(s, rated, 0, train)
	if err != nil {
		t.Skip(err)
	}
	return b, rated
}

func TestRandomStagesHaveFiniteAnswers(t *testing.T) {
	mayLack := map[string]bool{
		"the belt would stretch more than the centre distance can take up":     true,
		"the slack side does not press on the pulley":                          true,
		"the slack side carries nothing but its own mass":                      true,
		"no length on offer there goes round the pulleys clear of one another": true,
		"there is no other band":                                               true, "there is no band": true, "there is no pull at this point": true,
		"no usual tension per rib is known for this profile":       true,
		"the adjuster is no eccentric, so its travel is not known": true,
		"the engine's range of speeds is not known":                true,
		noPull: true, noTorque: true, skidHeat: true, noPassing: true, noLaw: true, noRating: true, noSource: true, outsideRating: true,
	}
	rapid.Check(t, func(t *rapid.T) {
		b, at := drawBelt(t)
		at.Power *= rapid.OneOf(rapid.Just(0.0), rapid.Float64Range(1e-6, 1.5)).Draw(t, "power share")
		at.CrankSpeed *= rapid.OneOf(rapid.Just(0.0), rapid.Float64Range(0.01, 1.5)).Draw(t, "speed share")
		at.Inflow = rapid.Float64Range(0, 30).Draw(t, "inflow")
		r := b.Examine(at, drawTrain(t))
		anyspec.Finite(t, "result", r)
		anyspec.Finite(t, "pieces", b.Pieces())
		for _, x := range r.Readings(nil) {
			if !x.Known() && !mayLack[x.Why] && !strings.Contains(x.Why, "are not known") {
				t.Errorf("%s has no value: %s", x.Key, x.Why)
			}
		}
		for _, c := range r.Checks(nil, 0.1) {
			if c.Verdict == reading.NotRated && !mayLack[c.Why] {
				t.Errorf("%s is not rated: %s", c.Key, c.Why)
			}
		}
		for _, band := range r.Resonance.Bands {
			if !(band.From <= band.At && band.At <= band.To) {
				t.Errorf("band %v", band)
			}
		}
	})
}

func TestTensionsClose(t *testing.T) {
	near := func(t *rapid.T, what string, got, want, scale float64) {
		if math.Abs(got-want) > 1e-9*scale {
			t.Errorf("%s is %.12g, want %.12g", what, got, want)
		}
	}
	rapid.Check(t, func(t *rapid.T) {
		b, at := drawBelt(t)
		r := b.Examine(at, part.Train{})
		tight, slack := r.Tensions.Contact()
		scale := math.Abs(tight) + math.Abs(slack) + r.Tensions.Centrifugal
		near(t, "power from the spans", (tight-slack)*r.Speed, at.Power, scale*r.Speed)
		near(t, "sum of the spans", r.Tensions.TightSide+r.Tensions.SlackSide, 2*r.StandingTension, scale)
		// Law of cosines: the spans meet at twice their tilt.
		square := tight*tight + slack*slack + 2*tight*slack*math.Cos(2*b.Run().SpanTilt())
		near(t, "running shaft load", math.Pow(r.Running.Size(), 2), square, scale*scale)
		// At the required tension the design reserve is the service factor.
		if !b.spec.StandingTension.Known && b.spec.Pulsing.LoadFactor == ByServiceFactor {
			near(t, "design slip reserve", r.Reserve.Design.Value, b.spec.ServiceFactor, 1000)
		}
	})
}

// Over a cycle the spans stay in balance with the pull, and a loop that stays
// taut keeps the sum set at standstill.
func TestSurgeCloses(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		b, at := drawBelt(t)
		r := b.Examine(at, part.Train{Crank: drawEngine(t), CrankInertia: 1e-3, PropellerInertia: 0.03})
		s, tc := r.Pulsation.Surge, r.Tensions.Centrifugal
		near := func(what string, got, want float64) {
			if math.Abs(got-want) > 1e-9*(math.Abs(s.Tight)+tc+b.standing) {
				t.Errorf("%s is %.12g, want %.12g", what, got, want)
			}
		}
		near("pull", s.Tight-s.Slack, s.Pull)
		if s.Slack < tc || s.Open < 0 || s.Open > 1+1e-9 {
			t.Errorf("%+v at a centrifugal tension of %g", s, tc)
		}
		if s.Open == 0 && s.Need <= b.standing {
			near("sum of the spans", s.Tight+s.Slack, 2*b.standing)
		}
		tight, slack := s.Tight-tc, s.Slack-tc
		near("peak load", s.Load.Size(), math.Sqrt(math.Max(0, tight*tight+slack*slack+2*tight*slack*math.Cos(2*b.Run().SpanTilt()))))
		if sweep := r.Pulsation.Sweep; sweep.To > 0 && (sweep.Need <= 0 || sweep.TightSpeed < sweep.From || sweep.TightSpeed > sweep.To) {
			t.Errorf("%+v", sweep)
		}
	})
}

func TestTransmissionIsMonotone(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		b, at := drawBelt(t)
		speed := at.CrankSpeed * rapid.Float64Range(0.1, 1.5).Draw(t, "speed share")
		power := at.Power * rapid.Float64Range(0, 1.5).Draw(t, "power share")
		x, more, faster := b.Transmit(power, speed), b.Transmit(power*1.01+1, speed), b.Transmit(power, speed*1.01)
		if !(more.PowerOut > x.PowerOut) || !(more.SpeedOut < x.SpeedOut) {
			t.Errorf("more power in: %+v after %+v", more, x)
		}
		if !(faster.SpeedOut > x.SpeedOut) {
			t.Errorf("more speed in: %+v after %+v", faster, x)
		}
		if x.Loss() < 0 || x.SpeedOut > speed/b.Ratio() {
			t.Errorf("gains on the way: %+v", x)
		}
	})
}

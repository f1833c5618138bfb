package engine

import (
	"math"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"backspan/model/air"
)

// The data of Fritsch & Carlson, Monotone piecewise cubic interpolation, SIAM
// J. Numer. Anal. 17 (1980) 238–246 (from memory), on which a spline overshoots.
func TestCurveOfTheRadioDataStaysMonotone(t *testing.T) {
	x := []float64{7.99, 8.09, 8.19, 8.7, 9.2, 10, 12, 15, 20}
	y := []float64{0, 2.76429e-5, 4.37498e-2, 0.169183, 0.469428, 0.943740, 0.998636, 0.999919, 0.999994}
	points := make([]Point, len(x))
	for i := range x {
		points[i] = Point{Speed: x[i], Power: x[i] * (1 + y[i])} // torque is 1 + y
	}
	c, err := newMeasuredCurve(points)
	if err != nil {
		t.Fatal(err)
	}
	last := 0.0
	for i := 0; i <= 2000; i++ {
		torque := c.torque(x[0] + (x[8]-x[0])*float64(i)/2000)
		if torque < last-1e-12 || torque > 1.999994+1e-12 {
			t.Fatalf("torque falls or overshoots at sample %d: %g after %g", i, torque, last)
		}
		last = torque
	}
}

func drawCurve(t *rapid.T) []Point {
	n := rapid.IntRange(2, 12).Draw(t, "points")
	points := make([]Point, n)
	speed := rapid.Float64Range(500, 6000).Draw(t, "first")
	for i := range points {
		points[i] = Point{
			Speed: perMinute(speed),
			Power: 1000 * rapid.Float64Range(0.1, 100).Draw(t, "power"),
		}
		speed += rapid.Float64Range(0.001, 1100).Draw(t, "step")
	}
	return points
}

func TestMeasuredCurvePassesItsPointsAndNeverLeavesTheirBand(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		points := drawCurve(t)
		c, err := newMeasuredCurve(points)
		if err != nil {
			t.Fatal(err)
		}
		for i, p := range points {
			if got := p.Speed * c.torque(p.Speed); !near(got, p.Power, 1e-9) {
				t.Fatalf("point %d: %g W, want %g", i, got, p.Power)
			}
			if i == 0 {
				continue
			}
			a, b := points[i-1], p
			low, high := math.Min(a.Power/a.Speed, b.Power/b.Speed), math.Max(a.Power/a.Speed, b.Power/b.Speed)
			for k := 1; k < 16; k++ {
				torque := c.torque(a.Speed + (b.Speed-a.Speed)*float64(k)/16)
				if torque < low*(1-1e-9) || torque > high*(1+1e-9) {
					t.Fatalf("between points %d and %d torque %g leaves %g to %g", i-1, i, torque, low, high)
				}
			}
		}
	})
}

func TestPeakIsAboveEverySample(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := Default()
		s.Curve = drawCurve(t)
		e, err := New(s, air.Default().State())
		if err != nil {
			t.Fatal(err)
		}
		peak, at := e.Peak()
		low, high := e.SpeedRange()
		if at < low || at > high {
			t.Fatalf("peak at %g, outside %g to %g", at, low, high)
		}
		for i := 0; i <= 500; i++ {
			if p := e.Power(math.Min(low+(high-low)*float64(i)/500, high)); p > peak*(1+1e-5) {
				t.Fatalf("power %g above the peak %g", p, peak)
			}
		}
	})
}

func TestConceptPeaksWhereAskedWithThePressureAsked(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := Default()
		s.CurveSource = Concept
		s.Shape = rapid.SampledFrom([]Shape{Broad, TunedPipe}).Draw(t, "shape")
		s.Cycle = rapid.SampledFrom([]Cycle{TwoStroke, FourStroke}).Draw(t, "cycle")
		s.PipeGain = rapid.Float64Range(0, 1.5).Draw(t, "gain")
		s.PipeWidth = rapid.Float64Range(0.1, 0.3).Draw(t, "width")
		s.PeakPowerSpeed = perMinute(rapid.Float64Range(3000, 14000).Draw(t, "speed"))
		s.MeanEffectivePressure = 1e5 * rapid.Float64Range(2, 16).Draw(t, "pressure")
		e, err := New(s, air.Default().State())
		if err != nil {
			t.Fatal(err)
		}
		peak, at := e.Peak()
		if at != s.PeakPowerSpeed {
			t.Fatalf("peak at %g, want %g", at, s.PeakPowerSpeed)
		}
		if r := e.At(peak, at); !near(r.PeakEffectivePressure, s.MeanEffectivePressure, 1e-12) {
			t.Fatalf("mean pressure %g, want %g", r.PeakEffectivePressure, s.MeanEffectivePressure)
		}
		low, high := e.SpeedRange()
		for i := 0; i <= 1000; i++ {
			speed := math.Min(low+(high-low)*float64(i)/1000, high)
			if p := e.Power(speed); !(p > 0) || p > peak*(1+1e-9) {
				t.Fatalf("power %g at %g of the peak's speed, peak %g", p, speed/at, peak)
			}
		}
	})
}

func TestPipeLeavesADipBelowItsHump(t *testing.T) {
	e := concept(t, func(s *Spec) { s.Shape, s.PipeGain, s.PipeWidth = TunedPipe, 0.8, 0.15 })
	_, at := e.Peak()
	if !(e.Torque(0.65*at) < e.Torque(0.45*at) && e.Torque(0.65*at) < e.Torque(at)) {
		t.Errorf("torque at 0.45, 0.65 and 1 of the peak's speed: %g %g %g", e.Torque(0.45*at), e.Torque(0.65*at), e.Torque(at))
	}
}

func TestCurveRefusals(t *testing.T) {
	for _, tc := range []struct {
		name   string
		change func(*Spec)
		says   string
	}{
		{"no points", func(s *Spec) { s.Curve = nil }, "at least two points"},
		{"one point", func(s *Spec) { s.Curve = s.Curve[:1] }, "at least two points"},
		{"speed repeats", func(s *Spec) { s.Curve[2].Speed = s.Curve[1].Speed }, "row 3"},
		{"speed falls", func(s *Spec) { s.Curve[2].Speed = 1 }, "row 3"},
		{"speed is not a number", func(s *Spec) { s.Curve[0].Speed = math.NaN() }, "row 2"},
		{"no power", func(s *Spec) { s.Curve[4].Power = 0 }, "row 5"},
		{"idle above peak", func(s *Spec) { s.CurveSource, s.IdleSpeed = Concept, s.PeakPowerSpeed }, "Idle speed"},
		{"rear end ahead of drive", func(s *Spec) { s.DepthToRearEnd = s.DepthToDrive / 2 }, "Mount face to rear end"},
		{"rod shorter than stroke", func(s *Spec) { s.RodLength = 0.9 * s.Stroke }, "connecting rod"},
		{"centre outside", func(s *Spec) { s.CGAft = 2 * s.DepthToRearEnd }, "Centre of gravity behind mount"},
	} {
		s := Default()
		tc.change(&s)
		if _, err := New(s, air.Default().State()); err == nil || !strings.Contains(err.Error(), tc.says) {
			t.Errorf("%s: %v, want an error with %q", tc.name, err, tc.says)
		}
	}
}

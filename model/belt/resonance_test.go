package belt

import (
	"math"
	"testing"

	"backspan/model/part"
)

// Every band's edges and middle are where they are said to be.
func TestBandsAreWhereTheFrequenciesMeet(t *testing.T) {
	b, at := build(t, asIs), rated()
	line, ok := part.LoadLineOf(at, single().Crank)
	if !ok {
		t.Fatal("no line")
	}
	p := single().Crank.Pulsation(at.Power, at.CrankSpeed)
	bands := b.bands(&line, &p)
	if len(bands) == 0 {
		t.Fatal("no bands")
	}
	for _, band := range bands {
		c := band.Cause
		off := func(speed float64) float64 {
			pair, multiple := b.spanPair(b.standing, line.Power(speed), speed), float64(c.Mode)
			own := pair.tight
			if c.Slack {
				own = pair.slack
			}
			if c.Parametric {
				multiple *= 2
			}
			per := c.Order / (2 * math.Pi)
			switch c.Exciter {
			case DrivenPulley:
				per /= b.Ratio()
			case BeltPass:
				per = c.Order * b.Run().Crank / 2 / b.Run().Length()
			}
			return per*speed/(multiple*own) - 1
		}
		if band.From > line.From && math.Abs(off(band.From)+0.15) > 0.005 {
			t.Errorf("%s begins at %g, off by %g", c, band.From, off(band.From))
		}
		if band.To < line.To && math.Abs(off(band.To)-0.15) > 0.005 {
			t.Errorf("%s ends at %g, off by %g", c, band.To, off(band.To))
		}
		if band.To < line.To && math.Abs(off(band.At)) > 0.005 {
			t.Errorf("%s meets at %g, off by %g", c, band.At, off(band.At))
		}
	}
}

func TestCausesAreNamed(t *testing.T) {
	for _, tc := range []struct {
		c    Cause
		want string
	}{
		{Cause{Exciter: EngineOrder, Order: 1, Mode: 1}, "engine order 1 on mode 1 of the tight span"},
		{Cause{Exciter: EngineOrder, Order: 1.5, Mode: 1, Slack: true, Parametric: true}, "engine order 1.5 at twice mode 1 of the slack span"},
		{Cause{Exciter: BeltPass, Order: 2, Mode: 2}, "belt passage 2 on mode 2 of the tight span"},
		{Cause{Exciter: DrivenPulley, Order: 1, Mode: 2}, "driven pulley run-out on mode 2 of the tight span"},
	} {
		if got := tc.c.String(); got != tc.want {
			t.Errorf("%q, want %q", got, tc.want)
		}
	}
}

func TestExcitersFollowTheHarmonics(t *testing.T) {
	b := build(t, asIs)
	kinds := func(shares ...part.Harmonic) (n map[Exciter]int) {
		n = map[Exciter]int{}
		p := shaken{fixed: 1, shares: shares}.Pulsation(1, 1)
		for _, e := range b.exciters(&p, nil) {
			n[e.kind]++
		}
		return n
	}
	if n := kinds(part.Harmonic{Order: 1, Cos: 1}, part.Harmonic{Order: 2}, part.Harmonic{Order: 4, Sin: 1}); n[EngineOrder] != 1 || n[CrankPulley] != 0 {
		t.Errorf("%v", n)
	}
	if n := kinds(part.Harmonic{Order: 2, Cos: 1}); n[EngineOrder] != 1 || n[CrankPulley] != 1 {
		t.Errorf("%v", n)
	}
}

// Near standstill a span sings as it does when set; at the speed of its own
// waves it does not sing at all.
func TestMovingSpan(t *testing.T) {
	near(t, "slow", movingSpan(600, 0.14, 1e-9, 0.155), math.Sqrt(600/0.14)/(2*0.155), 1e-9)
	near(t, "at its waves' speed", movingSpan(0.14*900, 0.14, 30, 0.155), 0, 0)
}

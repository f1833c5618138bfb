package part

import (
	"math"
	"testing"
)

// plain is a crank with one harmonic.
type plain struct{ idle, lowest, highest, peak float64 }

func (p plain) Power(float64) float64                 { return p.peak }
func (p plain) SpeedRange() (lowest, highest float64) { return p.lowest, p.highest }
func (p plain) IdleSpeed() float64                    { return p.idle }
func (p plain) Pulsation(power, speed float64) Pulsation {
	out := Pulsation{Mean: power / speed, Count: 2}
	out.Harmonics[0], out.Harmonics[1] = Harmonic{Order: 1, Cos: 1}, Harmonic{Order: 2, Sin: 1}
	return out
}

func is(t *testing.T, what string, got, want float64) {
	t.Helper()
	if math.Abs(got-want) > 1e-9*math.Abs(want) {
		t.Errorf("%s: %g, want %g", what, got, want)
	}
}

func TestLoadLineIsCappedByFullThrottle(t *testing.T) {
	at := Duty{Power: 10e3, CrankSpeed: 800}
	l, ok := LoadLineOf(at, plain{200, 300, 900, 12e3})
	if !ok || l.From != 200 || l.To != 900 {
		t.Fatalf("%+v", l)
	}
	is(t, "half speed", l.Power(400), 1250)
	is(t, "highest speed", l.Power(900), 12e3)
	is(t, "idle", l.Power(200), 10e3/64)
	is(t, "mean torque at half speed", l.Pulsation(400).Mean, 10e3/800/4)
	if l, ok := LoadLineOf(at, plain{0, 300, 900, 12e3}); !ok || l.From != 300 {
		t.Errorf("without idle: %+v", l)
	}
	for _, c := range []Crank{nil, plain{200, 0, 100, 1}, plain{0, 0, 900, 1}} {
		if _, ok := LoadLineOf(at, c); ok {
			t.Errorf("a line along %+v", c)
		}
	}
	if _, ok := LoadLineOf(Duty{}, plain{200, 300, 900, 1}); ok {
		t.Error("a line through standstill")
	}
}

// The speeds of a sweep are even in ratio and reach both ends.
func TestSpeedsOfALine(t *testing.T) {
	l := RunUp(Duty{Power: 10e3, CrankSpeed: 800}, plain{200, 300, 900, 12e3}, 200)
	speeds := l.Speeds()
	is(t, "first", speeds[0], 200)
	is(t, "last", speeds[LineSteps-1], 800)
	for i := 1; i < LineSteps; i++ {
		is(t, "step", speeds[i]/speeds[i-1], math.Pow(4, 1.0/(LineSteps-1)))
	}
}

func TestRunUpFromAboveTheDutyIsTheDuty(t *testing.T) {
	for _, from := range []float64{0, 900} {
		l := RunUp(Duty{Power: 10e3, CrankSpeed: 800}, plain{200, 300, 900, 12e3}, from)
		is(t, "from", l.From, 800)
		is(t, "to", l.To, 800)
	}
}

func TestOrdersMeetAFrequency(t *testing.T) {
	l := RunUp(Duty{Power: 10e3, CrankSpeed: 800}, plain{200, 300, 900, 12e3}, 200)
	p := l.Pulsation(800)
	for natural, want := range map[float64]int{100: 0, 300: 1, 500: 2, 1000: 1, 2000: 0} {
		got := l.Meets(nil, &p, natural)
		if len(got) != want {
			t.Errorf("%g rad/s: %v", natural, got)
		}
		for _, speed := range got {
			if n := natural / speed; math.Abs(n-math.Round(n)) > 1e-12 {
				t.Errorf("%g rad/s: no order meets at %g", natural, speed)
			}
		}
	}
}

package vibration

import (
	"math"
	"testing"
)

// Modes at or below idle are crossed at the start, those above it up to the
// standing speed while running.
func TestModesCrossed(t *testing.T) {
	s, d := Default(), standing()
	modes := Swing(&s, d).Modes
	for below := range freedoms - 1 {
		if modes[below+1]-modes[below] < 1e-6 {
			continue
		}
		d.Idle = math.Pi * (modes[below] + modes[below+1])
		if got := Swing(&s, d).Crossed; got != [2]int{below + 1, freedoms - 1 - below} {
			t.Errorf("idle between modes %d and %d: crossed %v", below+1, below+2, got)
		}
	}
	d.Idle, d.Working = 1, math.Pi*(modes[2]+modes[3])
	if got := Swing(&s, d).Crossed; got != [2]int{0, 3} {
		t.Errorf("standing between modes 3 and 4: crossed %v", got)
	}
}

// The second order meets a mode at half its speed.
func TestNearnessCountsTheSecondOrder(t *testing.T) {
	s, d := Default(), standing()
	fastest := 2 * math.Pi * Swing(&s, d).Modes[freedoms-1]
	d.Working = fastest / 2
	if got := Swing(&s, d).NearMode; math.Abs(got) > 1e-9 {
		t.Errorf("half the fastest mode is %g off", got)
	}
	d.Working = 3 * fastest
	if got := Swing(&s, d).NearMode; math.Abs(got-2) > 1e-9 {
		t.Errorf("three times the fastest mode is %g off", got)
	}
}

// A four-stroke fires every second turn: its couple swings at half the speed.
func TestFiringOrderOfAFourStroke(t *testing.T) {
	s, d := Default(), standing()
	two := Swing(&s, d)
	d.Pulsation.Harmonics[0].Order = 0.5
	d.Working *= 2
	four := Swing(&s, d)
	if math.Abs(two.FiringPassed-four.FiringPassed) > 1e-12 || four.PassedFirst == two.PassedFirst {
		t.Errorf("passed %g and %g", two.FiringPassed, four.FiringPassed)
	}
}

// The largest swing while starting is of an order that meets a mode there.
func TestPassageMeetsAMode(t *testing.T) {
	s, d := Default(), standing()
	r := Swing(&s, d)
	met := false
	for _, hz := range r.Modes {
		for order := 1.0; order <= 2; order++ {
			met = met || math.Abs(2*math.Pi*hz/order-r.Passage.HubSpeed) < 1e-9
		}
	}
	if !met || !(r.Passage.Hub > 0) || r.Passage.HubSpeed >= d.Working {
		t.Errorf("swing of %g m at %g rad/s", r.Passage.Hub, r.Passage.HubSpeed)
	}
}

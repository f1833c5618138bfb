package model

import (
	"testing"

	"backspan/model/param"
)

// The air turns a machine against its propeller. Seen from behind, one whose
// propeller turns clockwise leans to the left: what stands above the mounts
// goes left. A gear of one mesh reverses that.
func TestMachineLeansAgainstItsPropeller(t *testing.T) {
	s := Sample()
	for _, tc := range []struct {
		variant, turns string
		left           bool
	}{
		{"Belt 190", "clockwise", true}, {"Belt 190", "anticlockwise", false}, {"Gear 190", "clockwise", false}, {"Gear 190", "anticlockwise", true},
	} {
		v := s.Variants[s.Index(tc.variant)].Clone()
		p, _ := param.Find(v.Sections(), "engine.turns")
		if err := p.Set(tc.turns); err != nil {
			t.Fatal(err)
		}
		if aside := value(t, Evaluate(s, &v), "vibration.hub_aside"); (aside < 0) != tc.left {
			t.Errorf("%s, %s: the plate goes %g mm to the right", tc.variant, tc.turns, aside)
		}
	}
}

func TestWhatSwingsAlong(t *testing.T) {
	base := evaluated(t, nil)
	alone := evaluated(t, [][2]string{{"mounts.exhaust_rides", "no"}})
	exhaust := 0.0
	swinging := 0.0
	for _, it := range base.Stack.Items {
		switch it.Key {
		case "stack.exhaust":
			exhaust = it.Mass
		case "stack.pad", "stack.frame", "stack.mount", "stack.guard", "stack.tank", "stack.harness", "stack.other", "stack.fuel":
		default:
			swinging += it.Mass
		}
	}
	within(t, "swinging mass with exhaust", value(t, base, "vibration.mass"), swinging+exhaust, 1e-9)
	within(t, "swinging mass without exhaust", value(t, alone, "vibration.mass"), swinging, 1e-9)
}

// What the mounts let the blades come forward is taken from the gap to the net,
// and what they let them go aside from the gap to the hoop.
func TestMountsTakeFromTheGapsOfSafety(t *testing.T) {
	o := evaluated(t, nil)
	ahead := Sample().Variants[0].Frame.GuardAhead * 1000
	way := ahead - value(t, o, "vibration.ahead_left")
	within(t, "gap to the net, mm", value(t, o, "safety.net_gap"), 100-40-way, 1e-9)
	if way < 1 {
		t.Errorf("the blades come forward by %g mm", way)
	}
	within(t, "gap to the hoop, mm", value(t, o, "safety.tip_gap"), value(t, o, "vibration.tip_left")-25, 1e-9)
}

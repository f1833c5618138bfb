package stack

import (
	"math"
	"testing"
)

// Every body is placed from the rear of so many pieces of the stack.
func TestPiecesAheadAreCounted(t *testing.T) {
	r := Build(Default(), DefaultTank(), sample())
	for key, want := range map[string]int{
		"stack.pad": 0, "stack.frame": 1, "stack.mount": 2, "engine": 3, "stack.exhaust": 3, "cooling.radiator": 3, "cooling.fan": 4,
		"drive.crank_pulley": 5, "drive.driven_pulley": 5, "propeller": 6, "stack.guard": 6,
		"stack.tank": 0, "stack.harness": 0, "stack.other": 0, "stack.fuel": 0,
	} {
		if got := find(t, r, key).Ahead; got != want {
			t.Errorf("%s stands behind %d pieces, want %d", key, got, want)
		}
	}
}

func TestFullTank(t *testing.T) {
	tank := DefaultTank()
	full := Build(Default(), tank, sample())
	tank.Fill = 0.3
	part := Build(Default(), tank, sample())
	for name, pair := range map[string][2]float64{
		"mass of the full machine": {full.MassFull, full.MassReady}, "its centre aft": {full.CGAftFull, full.CGAft}, "its centre up": {full.CGUpFull, full.CGUp},
		"mass when part full": {part.MassFull, full.MassReady}, "centre aft": {part.CGAftFull, full.CGAft}, "centre up": {part.CGUpFull, full.CGUp},
	} {
		if math.Abs(pair[0]-pair[1]) > 1e-12 {
			t.Errorf("%s is %g, want %g", name, pair[0], pair[1])
		}
	}
}

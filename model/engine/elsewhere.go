package engine

import "backspan/model/air"

// In is the same engine in other air. The pulsation of torque, which hardly
// changes with the air, stays that of the air it was built in.
func (e Engine) In(at air.State) Engine {
	e.factor = e.spec.Correction.factor(at)
	return e
}

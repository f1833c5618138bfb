package belt

import (
	"math"

	"backspan/model/part"
)

// setTension finds the required standing tension, and takes it unless the
// builder gave one.
func (b *Belt) setTension(train part.Train) error {
	b.factor = b.spec.ServiceFactor
	if b.spec.Pulsing.LoadFactor == ByPulsation {
		b.factor = 1
	}
	b.required = b.tractionNeed()
	if b.spec.Pulsing.LoadFactor == ByPulsation {
		if train.Crank == nil {
			return misfit("Load factor", "the engine's torque pulsation is not known, so it cannot set the belt; choose %q", ByServiceFactor)
		}
		b.required = math.Max(b.required, (1+b.spec.Pulsing.Reserve)*b.pulsationNeed(train))
	}
	b.standing = b.required
	if b.spec.StandingTension.Known {
		b.standing = b.spec.StandingTension.Value
	}
	return nil
}

// tractionNeed is the standing tension that carries the rated pull, times the
// factor, at the design tension ratio, N.
func (b *Belt) tractionNeed() float64 {
	speed := b.Run().Speed(b.rated.CrankSpeed)
	pull := b.factor * b.rated.Power / speed
	ratio := traction(b.friction, b.Run().SmallestWrap())
	return atTraction(pull, ratio, b.Centrifugal(speed)).Standing()
}

package toothedbelt

import (
	"math"
	"math/cmplx"

	"backspan/model/part"
)

// Swing is the belt's pull through a turn of the crank. It is known when the
// engine's torque is.
type Swing struct {
	Known bool
	Why   string  // why it is not known
	Most  float64 // pull, N
	Least float64 // pull, N; negative when the propeller drives the crank
	First float64 // torsional natural frequency over the belt, Hz; 0 when the belt is taken as rigid
}

const (
	noPulsation = "the engine's torque through a turn is not known"
	noInertia   = "the inertias of crank and propeller are not known"
	noPull      = "there is no pull at this point"
)

// swing carries each harmonic of the crank's torque across the belt. Crank and
// propeller are two inertias, the belt a damped spring between them, or rigid
// where its stiffness is not given: the belt then carries the propeller's share
// of the inertia. Both spans are taken to stay taut.
//
// Source: mechanics of two inertias on one spring.
func (b Belt) swing(at part.Duty, train part.Train) Swing {
	switch {
	case train.Crank == nil:
		return Swing{Why: noPulsation}
	case !(train.CrankInertia > 0) || !(train.PropellerInertia > 0):
		return Swing{Why: noInertia}
	case !(at.Power > 0) || !(at.CrankSpeed > 0):
		return Swing{Why: noPull}
	}
	torque := train.Crank.Pulsation(at.Power, at.CrankSpeed)
	shaft := b.twoInertias(train)
	var turning [part.Orders]phasor
	count := min(max(torque.Count, 0), part.Orders)
	for i, h := range torque.Harmonics[:count] {
		turning[i] = phasor{
			now:  complex(h.Cos, -h.Sin) * shaft.passes(h.Order*at.CrankSpeed),
			step: cmplx.Rect(1, h.Order*4*math.Pi/samples),
		}
	}
	most, least := extremes(turning[:count])
	arm := b.Run().Crank / 2
	mean := at.Power / at.CrankSpeed
	return Swing{
		Known: true, Most: (mean + most) / arm, Least: (mean + least) / arm,
		First: shaft.natural / (2 * math.Pi),
	}
}

// samples are taken over two turns, the period of a four-stroke.
const samples = 256

// phasor is one harmonic as a complex number whose real part is the torque,
// and the factor that turns it to the next sample.
type phasor struct{ now, step complex128 }

// extremes are the greatest and least sum of the harmonics.
func extremes(turning []phasor) (most, least float64) {
	for range samples {
		sum := 0.0
		for i := range turning {
			h := &turning[i]
			sum += real(h.now)
			h.now *= h.step
		}
		most, least = math.Max(most, sum), math.Min(least, sum)
	}
	return most, least
}

// twoInertias is crank and propeller seen from the crank.
type twoInertias struct {
	share   float64 // of the propeller side in all inertia
	natural float64 // rad/s; 0 when rigid
	loss    float64 // loss factor
}

func (b Belt) twoInertias(train part.Train) twoInertias {
	crank := train.CrankInertia + b.CrankInertia()
	propeller := (train.PropellerInertia + b.SpinningInertia()) / (b.ratio * b.ratio)
	shaft := twoInertias{share: propeller / (crank + propeller), loss: b.spec.LossFactor}
	if b.stiffness.Known {
		arm := b.Run().Crank / 2
		spring := 2 * b.stiffness.Value / b.springLength() * arm * arm
		shaft.natural = math.Sqrt(spring * (crank + propeller) / (crank * propeller))
	}
	return shaft
}

// springLength is the length of one strand that stretches under the pull: the
// span and a quarter of the mean arc. Estimate.
func (b Belt) springLength() float64 {
	arcs := (b.Run().Crank*b.Run().CrankWrap() + b.Run().Driven*b.Run().DrivenWrap()) / 2
	return b.Run().Span() + arcs/2/4
}

// passes is the belt's torque over the crank's at a frequency in rad/s.
func (t twoInertias) passes(frequency float64) complex128 {
	if t.natural == 0 {
		return complex(t.share, 0)
	}
	over := frequency / t.natural
	spring := complex(1, t.loss)
	return complex(t.share, 0) * spring / (spring - complex(over*over, 0))
}

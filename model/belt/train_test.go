package belt

import (
	"math"

	"backspan/model/part"
	"backspan/model/unit"
	"pgregory.net/rapid"
)

// shaken is an invented engine: torque harmonics as shares of the mean torque
// and of a fixed one.
type shaken struct {
	idle, lowest, highest float64 // rad/s
	peak                  float64 // W
	fixed                 float64 // N·m
	shares                []part.Harmonic
}

func (e shaken) Power(speed float64) float64 {
	if speed < e.lowest || speed > e.highest {
		return 0
	}
	return e.peak * speed / e.highest
}

func (e shaken) SpeedRange() (lowest, highest float64) { return e.lowest, e.highest }
func (e shaken) IdleSpeed() float64                    { return e.idle }

func (e shaken) Pulsation(power, speed float64) part.Pulsation {
	p := part.Pulsation{Mean: power / speed, Count: len(e.shares)}
	for i, h := range e.shares {
		torque := p.Mean + e.fixed
		p.Harmonics[i] = part.Harmonic{Order: h.Order, Cos: h.Cos * torque, Sin: h.Sin * torque}
	}
	return p
}

// single is an invented single-cylinder two-stroke of 15 kW with a crank and
// flywheel of 2.5e-3 kg·m² and a propeller of 0.04 kg·m².
func single() part.Train {
	return part.Train{
		Crank: shaken{
			idle: unit.RPM.SI(2000), lowest: unit.RPM.SI(3500), highest: unit.RPM.SI(9000), peak: 16e3,
			shares: []part.Harmonic{{Order: 1, Cos: 0.5, Sin: 1.4}, {Order: 2, Cos: 0.4, Sin: 0.9}, {Order: 3, Cos: 0.2, Sin: 0.5}, {Order: 4, Cos: 0.1, Sin: 0.25},
				{Order: 5, Sin: 0.12}, {Order: 6, Sin: 0.06}, {Order: 7, Sin: 0.03}, {Order: 8, Sin: 0.02}},
		},
		CrankInertia: 2.5e-3, PropellerInertia: 0.04,
	}
}

func drawTrain(t *rapid.T) part.Train {
	inertia := rapid.OneOf(rapid.Just(0.0), rapid.Float64Range(1e-5, 1))
	train := part.Train{CrankInertia: inertia.Draw(t, "crank inertia"), PropellerInertia: inertia.Draw(t, "propeller inertia")}
	if rapid.Bool().Draw(t, "crank known") {
		train.Crank = drawEngine(t)
	}
	return train
}

func drawEngine(t *rapid.T) shaken {
	speed := rapid.OneOf(rapid.Just(0.0), rapid.Float64Range(50, 1500))
	e := shaken{
		idle: speed.Draw(t, "idle"), lowest: speed.Draw(t, "lowest"), highest: speed.Draw(t, "highest"),
		peak: rapid.Float64Range(0, 60e3).Draw(t, "peak power"), fixed: rapid.Float64Range(0, 40).Draw(t, "fixed"),
	}
	for range rapid.IntRange(0, part.Orders).Draw(t, "harmonics") {
		e.shares = append(e.shares, part.Harmonic{
			Order: float64(rapid.IntRange(1, 20).Draw(t, "half orders")) / 2,
			Cos:   rapid.Float64Range(-5, 5).Draw(t, "cosine"), Sin: rapid.Float64Range(-5, 5).Draw(t, "sine"),
		})
	}
	return e
}

// mostOf is the amplitude of a sum of cosines sampled finely.
func mostOf(f func(angle float64) float64) float64 {
	most := math.Inf(-1)
	for i := range 100000 {
		most = math.Max(most, f(2*math.Pi*float64(i)/100000))
	}
	return most
}

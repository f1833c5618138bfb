package gear

import (
	"math"
	"math/cmplx"

	"backspan/model/param"
	"backspan/model/part"
)

// MeshPulsation is what the engine's pulsation makes of the torque in the mesh.
type MeshPulsation struct {
	Why    string  // why it is not known, empty when it is
	Mean   float64 // torque at the pinion, N·m
	Swing  float64 // sum of the harmonics that pass the mesh, N·m
	Share  float64 // of the torque of a stiff train that passes
	Factor float64 // greatest torque over the mean

	Torsional param.Slot // frequency of crank against propeller over the coupling, Hz

	// The greatest torque at the crank from idle up to this point.
	Peak      float64 // N·m
	PeakSpeed float64 // of the crank, rad/s
}

// Torsional is the frequency of crank against propeller over the coupling, Hz,
// unknown without its stiffness.
func (r Result) Torsional() param.Slot { return r.Pulsation.Torsional }

// meshPulsation carries the harmonics of the crank's torque through the mesh.
// Crank and propeller are two inertias; between them the train is rigid, or
// with a coupling stiffness given a damped spring. The heights of the harmonics
// are added, as if all peaked at once. Source: mechanics of two inertias.
func (g *Gear) meshPulsation(at part.Duty, train part.Train) MeshPulsation {
	switch {
	case !(at.Power > 0) || !(at.CrankSpeed > 0):
		return MeshPulsation{Why: noTorque}
	case train.Crank == nil:
		return MeshPulsation{Why: "the engine's torque through a turn is not known"}
	case !(train.CrankInertia > 0) || !(train.PropellerInertia > 0):
		return MeshPulsation{Why: "the inertias of crank and propeller are not known"}
	}
	u := g.geometry.Ratio()
	crank := train.CrankInertia + g.CrankInertia()
	propeller := (train.PropellerInertia + g.SpinningInertia()) / (u * u)
	p := MeshPulsation{Mean: at.Power / at.CrankSpeed, Share: propeller / (crank + propeller)}
	natural := 0.0
	if g.spec.CouplingStiffness.Known {
		natural = math.Sqrt(g.spec.CouplingStiffness.Value * (crank + propeller) / (crank * propeller))
		p.Torsional = param.Known(natural / (2 * math.Pi))
	}
	swing := func(power, speed float64) float64 {
		return p.Share * passed(train.Crank.Pulsation(power, speed), speed, natural, g.spec.CouplingDamping)
	}
	p.Swing = swing(at.Power, at.CrankSpeed)
	p.Factor = 1 + p.Swing/p.Mean
	p.Peak, p.PeakSpeed = runUp(at, train.Crank.IdleSpeed(), swing)
	return p
}

// runUpSteps looks at speeds a quarter of a resonance's width apart, with the
// usual damping and idle at a quarter of the working speed.
const runUpSteps = 48

// runUp is the greatest torque, N·m, and its speed, from idle up to a point
// along the propeller's load, whose power goes with the cube of speed.
func runUp(at part.Duty, idle float64, swing func(power, speed float64) float64) (peak, peakSpeed float64) {
	if !(idle > 0) || idle > at.CrankSpeed {
		idle = at.CrankSpeed
	}
	for i := range runUpSteps {
		n := math.Pow(idle/at.CrankSpeed, float64(i)/(runUpSteps-1))
		speed, power := at.CrankSpeed*n, at.Power*n*n*n
		if torque := power/speed + swing(power, speed); torque > peak {
			peak, peakSpeed = torque, speed
		}
	}
	return peak, peakSpeed
}

// passed adds the heights of the harmonics that a spring passes, N·m, as if all
// peaked at once.
func passed(torque part.Pulsation, speed, natural, damping float64) float64 {
	sum := 0.0
	for _, h := range torque.Harmonics[:min(max(torque.Count, 0), part.Orders)] {
		sum += h.Amplitude() * spring(h.Order*speed, natural, damping)
	}
	return sum
}

// spring is by how much a spring raises what passes at a frequency, its damping
// given over the critical; without a natural frequency the train is rigid.
func spring(frequency, natural, damping float64) float64 {
	if natural <= 0 {
		return 1
	}
	tune := frequency / natural
	damped := complex(0, 2*damping*tune)
	return cmplx.Abs((1 + damped) / (complex(1-tune*tune, 0) + damped))
}

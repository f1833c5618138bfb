package gear

import (
	"math"

	"backspan/model/part"
	"backspan/model/torsion"
)

// RunUp is the way from idle, or from where a clutch grips, up to the examined
// point along the propeller's load. Speeds of the crank, rad/s.
type RunUp struct {
	From      float64
	Parts     bool    // the teeth part somewhere on it
	PartsFrom float64 // lowest speed looked at, at which they do
	PartsTo   float64 // highest
}

// runUp looks along the propeller's load. Beside even steps it looks where an
// order meets the first frequency. Below the grip of a clutch nothing but its
// steady friction passes.
func (g *Gear) runUp(p *MeshPulsation, at part.Duty, crank part.Crank, t *twist) {
	line := part.RunUp(at, crank, math.Max(crank.IdleSpeed(), g.spec.Coupling.GripsFrom(p.Mean, at.CrankSpeed)))
	p.RunUp.From = line.From
	var torque part.Pulsation
	look := func(speed float64) {
		torque = line.Pulsation(speed)
		wave := t.chain.Through(t.last(), &torque, speed)
		p.look(speed, torque.Mean, &wave)
	}
	// From the top, where the torque is usually greatest: most waves below need
	// not be drawn then.
	speeds := line.Speeds()
	for i := range speeds {
		look(speeds[len(speeds)-1-i])
	}
	var room [part.Orders]float64
	for _, speed := range line.Meets(room[:0], &torque, t.chain.Natural()[0]) {
		look(speed)
	}
}

// look keeps the worst of a speed. Where all heights together stay below the
// mean the teeth cannot part, and where they do not reach the peak so far there
// is no new one.
func (p *MeshPulsation) look(speed, mean float64, wave *torsion.Wave) {
	heights := wave.Heights()
	if heights <= mean && mean+heights <= p.Peak {
		return
	}
	most, least := wave.Extremes()
	if peak := mean + most; peak > p.Peak {
		p.Peak, p.PeakMean, p.PeakSpeed = peak, mean, speed
	}
	if mean+least >= 0 {
		return
	}
	r := &p.RunUp
	if !r.Parts {
		r.Parts, r.PartsFrom, r.PartsTo = true, speed, speed
	}
	r.PartsFrom, r.PartsTo = math.Min(r.PartsFrom, speed), math.Max(r.PartsTo, speed)
}

// IdleMesh is the mesh while the engine idles with the propeller on it.
type IdleMesh struct {
	Why   string  // why it is not known, empty when it is
	Out   bool    // a clutch is out: nothing passes
	Speed float64 // of the crank, rad/s
	Mean  float64 // torque at the pinion, N·m
	Least float64 // below 0 the teeth part and rattle, N·m
}

// Drop is how far the torque falls below its mean, over the mean; past 1 the
// teeth part.
func (m IdleMesh) Drop() float64 { return (m.Mean - m.Least) / m.Mean }

func (g *Gear) idleMesh(at part.Duty, crank part.Crank, t *twist) IdleMesh {
	idle := crank.IdleSpeed()
	if !(idle > 0) || idle > at.CrankSpeed {
		return IdleMesh{Why: "the engine's idle speed is not known, or not below the working speed"}
	}
	line := part.RunUp(at, crank, idle)
	torque := line.Pulsation(idle)
	m := IdleMesh{Speed: idle, Mean: torque.Mean}
	if g.spec.Coupling.OutAt(idle) {
		m.Out = true
		return m
	}
	wave := t.chain.Through(t.last(), &torque, idle)
	_, least := wave.Extremes()
	m.Least = m.Mean + least
	return m
}

package cooling

import (
	"math"

	"backspan/model/param"
)

const airHeat = 1006.0 // specific, of air at constant pressure, J/kgK; from memory

// Day is full throttle at the same crank speed in other air.
type Day struct {
	Power   float64 // at the crank, W
	Density float64 // of the air, kg/m³
}

// Duty is the engine and the air at full throttle standing. Lengths in m.
type Duty struct {
	Power          float64 // at the crank, W
	HeatShare      float64 // heat from cylinder and head over that power
	AirTemperature float64 // K
	AirDensity     float64 // kg/m³
	Induced        float64 // mean over the propeller's disc, m/s
	Hot            Day     // the hot day
	Measured       Day     // that of the measurement; means something where there is one

	PropellerRadius, HubRadius float64
	CylinderAhead              float64 // of the propeller's disc
	CylinderOff                float64 // from the propeller axis
	RadiatorAhead, RadiatorOff float64

	Bore, Stroke float64
	Cylinders    int
	GearCase     bool    // a gear case stands between cylinder and propeller
	PulleyRadius float64 // of a driven pulley on the propeller axis; 0 where there is none
	AxisRise     float64 // propeller axis above the crank axis
}

// Band is a figure with its scatter. Low and High bound Mid.
type Band struct{ Low, Mid, High float64 }

// sides are the two conductances between which the head stands, W/K, and the
// speed of the air that cools it, m/s.
type sides struct{ gas, air, speed float64 }

// ratio is K; without any cooling air there is none.
func (x sides) ratio() float64 { return x.gas / x.air }

// head is the temperature at which both sides pass the same heat, K.
func (x sides) head(gas, air float64) float64 {
	if !(x.gas+x.air > 0) {
		return air
	}
	return (x.gas*gas + x.air*air) / (x.gas + x.air)
}

// machine is one cooled engine.
type machine struct {
	spec *Spec
	duty *Duty
	fins fins

	cylinderInflow, radiatorInflow float64 // over the mean induced speed
	covered, shade                 float64 // share of the fins behind a pulley, and of the air that the drive keeps off
}

func newMachine(s *Spec, d *Duty) machine {
	m := machine{spec: s, duty: d, fins: s.fins(d.Bore)}
	m.cylinderInflow = s.Passage * Inflow(d.CylinderAhead, d.CylinderOff, d.PropellerRadius, d.HubRadius)
	m.covered = m.fins.behind(s, d)
	if m.shade = m.covered * s.PulleyShade; d.GearCase {
		m.shade = s.CaseShade
	}
	m.cylinderInflow *= 1 - m.shade
	m.radiatorInflow = s.Passage * Inflow(d.RadiatorAhead, d.RadiatorOff, d.PropellerRadius, d.HubRadius)
	return m
}

// gasSide is the conductance from the gas to the metal at a power, W/K: the
// heat share gives it at the machine's own power, an exponent elsewhere.
func (m *machine) gasSide(power float64) float64 {
	s, d := m.spec, m.duty
	if !(power > 0) || !(d.Power > 0) {
		return 0
	}
	heat := d.HeatShare * (1 - s.OtherWays) * d.Power * math.Pow(power/d.Power, s.PowerExponent)
	return heat / (s.GasTemperature - s.StatedAt)
}

// induced is the inflow at a power and an air density, m/s: an ideal
// propeller's goes with the third root of power over density. Source: momentum
// theory.
func (m *machine) induced(power, density float64) float64 {
	d := m.duty
	if !(d.Power > 0) {
		return 0
	}
	return d.Induced * math.Cbrt(power/d.Power*d.AirDensity/density)
}

// inAir is the cylinder in the propeller's inflow, with baffles or without.
func (m *machine) inAir(power, density, gain float64) sides {
	speed := m.cylinderInflow * m.induced(power, density)
	return sides{m.gasSide(power), float64(m.duty.Cylinders) * m.fins.conductance(speed, density, gain), speed}
}

// as is the machine as it is cooled, at a power and an air density.
func (m *machine) as(power, density float64) sides {
	switch m.spec.Kind {
	case Baffled:
		return m.inAir(power, density, m.spec.BaffleGain)
	case Fan:
		return m.byFan(power, density)
	case Liquid:
		return m.byLiquid(power, density)
	}
	return m.inAir(power, density, 1)
}

// byFan blows the fan's flow through the fins' passages. The air warms on its
// way, which takes from the conductance. Source: fan power is flow times
// pressure over efficiency; heat exchanger with one side at one temperature.
func (m *machine) byFan(power, density float64) sides {
	s := m.spec
	flow := s.FanPowerShare * power * s.FanEfficiency / s.FanPressure
	speed := flow / (float64(m.duty.Cylinders) * m.fins.passage())
	surface := float64(m.duty.Cylinders) * m.fins.conductance(speed, density, s.BaffleGain)
	return sides{m.gasSide(power), warming(surface, flow*density*airHeat), speed}
}

// warming is a conductance to air that warms on its way, W/K, for a stream of
// a heat capacity in W/K.
func warming(conductance, stream float64) float64 {
	if !(stream > 0) {
		return 0
	}
	return stream * -math.Expm1(-conductance/stream)
}

// measured is by how much the machine's K differs from the sum in the air of
// that day, from one reading of the head; not known where there is none or it makes no sense.
func (m *machine) measured() param.Slot {
	s := m.spec
	if !s.MeasuredHead.Known || !s.MeasuredAir.Known {
		return param.Slot{}
	}
	head, air := s.MeasuredHead.Value, s.MeasuredAir.Value
	x := m.as(m.duty.Measured.Power, m.duty.Measured.Density)
	if !(head > air && head < s.GasTemperature && x.gas > 0 && x.air > 0) {
		return param.Slot{}
	}
	return param.Finite((head - air) / (s.GasTemperature - head) / x.ratio())
}

// band is the head's temperature on both sides of a correction, K.
func (m *machine) band(x sides, correction, scatter, air float64) Band {
	at := func(k float64) float64 { return sides{gas: x.gas * k, air: x.air}.head(m.spec.GasTemperature, air) }
	return Band{at(correction / (1 + scatter)), at(correction), at(correction * (1 + scatter))}
}

// freePower is the power that free air, without fan, liquid or baffles, keeps
// at the limit on the hot day for a correction of K, W: more power draws more
// air, which is counted. The slope of K over power is nearly constant on
// logarithmic scales, so that a secant finds it in a few steps. It is empty
// when the day is hotter than the limit.
func (m *machine) freePower(correction, density float64) param.Slot {
	s := m.spec
	if !(s.HeadLimit > s.HotDay && s.GasTemperature > s.HeadLimit && correction > 0) {
		return param.Slot{}
	}
	want := math.Log((s.HeadLimit - s.HotDay) / (s.GasTemperature - s.HeadLimit) / correction)
	const steps, near = 12, 1e-6
	over := func(log float64) float64 { return math.Log(m.inAir(math.Exp(log), density, 1).ratio()) - want }
	a := math.Log(m.duty.Power)
	b := a - over(a)
	for range steps {
		fa, fb := over(a), over(b)
		if math.Abs(fb) < near {
			break
		}
		a, b = b, b-fb*(b-a)/(fb-fa)
	}
	return param.Finite(math.Exp(b))
}

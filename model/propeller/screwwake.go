package propeller

import (
	"errors"
	"math"
)

// screwWake designs a blade that loses least to swirl and induced speed: the
// wake leaves as a rigid screw, moved back at one displacement speed (Betz
// 1919), with Prandtl's tip factor. Source: Adkins & Liebeck, Design of optimum
// propellers, J. Propulsion and Power 10(5) 1994, written here with the
// displacement speed itself so that it holds standing still too.
type screwWake struct {
	blades    float64
	tip, root float64 // m
	flow      Flow
	section   func(radius, reynolds, mach float64) worksAt
}

// worksAt is the section where it is to work.
type worksAt struct {
	attack, lift, dragToLift float64
}

// ideal is one station of the least-loss blade.
type ideal struct {
	worksAt
	radius, chord  float64
	inflow         float64 // angle of the air to the disc, rad
	speed          float64 // over the section, m/s
	axial, swirl   float64 // induced at the disc, m/s
	reynolds       float64
	thrust, torque float64 // of all blades, per metre of radius
}

const (
	screwCells        = 40
	displacementSteps = 40
	sectionPasses     = 4 // of chord against Reynolds number
	// leastDesignChord stands for the chord where the ideal one runs out at the
	// tip, so that the section has a Reynolds number there.
	leastDesignChord = 0.005
)

// at is the station at a radius for a displacement speed.
func (d *screwWake) at(radius, displacement float64) ideal {
	v, spin := d.flow.Airspeed+displacement/2, d.flow.Speed*radius
	tan := v / spin
	s := ideal{radius: radius, inflow: math.Atan(tan)}
	sin, cos := math.Sincos(s.inflow)
	sinTip := math.Sin(math.Atan(v / (d.flow.Speed * d.tip)))
	loss := prandtl(d.blades/2*(1-radius/d.tip), sinTip)
	circulation := 2 * math.Pi * radius * displacement * loss * sin * cos / d.blades
	s.dragToLift, s.chord = 0.02, 0.08
	for range sectionPasses {
		s.axial = displacement / 2 * cos * cos * (1 - s.dragToLift*tan)
		s.speed = (d.flow.Airspeed + s.axial) / sin
		s.reynolds = d.flow.Density * s.speed * max(s.chord, leastDesignChord) / d.flow.Viscosity
		s.worksAt = d.section(radius, s.reynolds, s.speed/d.flow.SoundSpeed)
		s.chord = 2 * circulation / (s.speed * s.lift)
	}
	s.swirl = displacement / 2 * sin * cos * (1 + s.dragToLift/tan)
	pull := d.flow.Density * d.blades * circulation * s.speed
	s.thrust = pull * cos * (1 - s.dragToLift*tan)
	s.torque = pull * radius * sin * (1 + s.dragToLift/tan)
	return s
}

// sum is thrust and torque of the whole blade.
func (d *screwWake) sum(displacement float64) (thrust, torque float64) {
	half, step := (d.tip-d.root)/2, math.Pi/screwCells
	for i := range screwCells {
		middle := (float64(i) + 0.5) * step
		s := d.at(d.root+half*(1-math.Cos(middle)), displacement)
		width := 2 * half * math.Sin(middle) * math.Sin(step/2)
		thrust += s.thrust * width
		torque += s.torque * width
	}
	return thrust, torque
}

// displacement finds the speed at which the blade gives the thrust, or takes
// the power when thrust is 0.
func (d *screwWake) displacement(thrust, power float64) (float64, error) {
	lacks := func(w float64) float64 {
		t, q := d.sum(w)
		if thrust > 0 {
			return thrust - t
		}
		return power - q*d.flow.Speed
	}
	low, high := 0.0, 1.0
	for lack := math.Inf(1); ; low, high = high, 2*high {
		now := lacks(high)
		if now <= 0 {
			break
		}
		if now >= lack || high > 2*d.flow.Speed*d.tip {
			return 0, errors.New("no blade of this diameter gives that at this speed: ask for less, or raise Diameter or the propeller's speed")
		}
		lack = now
	}
	for range displacementSteps {
		if middle := (low + high) / 2; lacks(middle) > 0 {
			low = middle
		} else {
			high = middle
		}
	}
	return (low + high) / 2, nil
}

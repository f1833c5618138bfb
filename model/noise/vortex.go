package noise

import (
	"math"

	"backspan/model/unit"
)

const (
	vortexShare    = 0.7  // of the tip's speed
	vortexStrouhal = 0.28 // of the peak, on the thickness the air meets
	vortexPower    = 6.1e-11
	vortexFeet     = 300.0
	vortexLift     = 0.4
)

// octaves is how far below the whole each octave lies, dB, from the one below
// the peak upward.
type octaves [6]float64

// fallOff is the spectrum. Source: Schlegel, King & Mull 1966.
func fallOff() octaves { return octaves{7.92, 4.17, 8.33, 8.75, 12.92, 13.33} }

// vortex is the broad noise between the tones, 1 m from the hub, the same in
// every direction.
//
//	p² = p₀² · 6.1e-11 · A V⁶ (CL/0.4)²   at 300 ft; A in ft², V in ft/s
//
// with the area A of all blades, their speed V at 0.7 of the radius and their
// mean lift coefficient CL. Source: Marte & Kurtz, JPL TR 32-1462; worth
// plus or minus 5 dB.
func (s *Source) vortex() sound {
	area, chord, thickness := s.planform()
	if area <= 0 {
		return sound{}
	}
	tip := s.Speed * s.Radius
	lift := s.lift(area)
	speed := unit.FootPerSecond.From(vortexShare * tip)
	feet := area / (unit.Foot.SI(1) * unit.Foot.SI(1))
	over := unit.Foot.SI(vortexFeet)
	whole := reference * vortexPower * feet * math.Pow(speed, 6) * (lift / vortexLift) * (lift / vortexLift) * over * over

	a := sound{square: whole}
	sin, cos := math.Sincos(lift / (2 * pi))
	frequency := vortexStrouhal * vortexShare * tip / (thickness*cos + chord*math.Abs(sin)) / 2
	for _, down := range fallOff() {
		a.weighted += whole * math.Pow(10, -down/10) * weight(frequency)
		frequency *= 2
	}
	return a
}

// lift is the mean lift coefficient of blades of an area, m².
func (s *Source) lift(area float64) float64 {
	tip := s.Speed * s.Radius
	return 6 * s.Thrust / (s.Density * area * tip * tip)
}

// planform is the area of all blades, m², and the chord and thickness at 0.7
// of the radius, m.
func (s *Source) planform() (area, chord, thickness float64) {
	away := math.Inf(1)
	for i := range s.Cells {
		c := &s.Cells[i]
		area += c.Chord * c.Width * float64(s.Blades)
		if d := math.Abs(c.Radius - vortexShare*s.Radius); d < away {
			away, chord, thickness = d, c.Chord, c.Thickness
		}
	}
	return area, chord, thickness
}

package noise

import "backspan/model/propeller"

// Source is the propeller at work, standing in still air.
type Source struct {
	Blades     int
	Radius     float64 // of the tip, m
	Speed      float64 // rad/s
	Density    float64 // of the air, kg/m³
	SoundSpeed float64 // m/s
	TipMach    float64
	Thrust     float64 // isolated, N
	Torque     float64 // N·m
	Cells      []propeller.StationLoad
}

// effectiveShare is the radius, as a share of the tip's, at which thrust and
// torque act as one. Source: Gutin 1936 (NACA TM 1195).
const effectiveShare = 0.8

// passing is the frequency at which blades pass, Hz.
func (s *Source) passing() float64 { return float64(s.Blades) * s.Speed / (2 * pi) }

// wave is the wave number of the first harmonic of one blade, rad/m.
func (s *Source) wave() float64 { return s.Speed / s.SoundSpeed }

// sound is a sum of tones or bands at one place.
type sound struct {
	square   float64 // mean square sound pressure, Pa²
	weighted float64 // the same, A-weighted
}

func (a *sound) add(square, frequency float64) (weighted float64) {
	weighted = square * weight(frequency)
	a.square += square
	a.weighted += weighted
	return weighted
}

// times is the sound louder by a factor on the mean square.
func (a sound) times(factor float64) sound { return sound{a.square * factor, a.weighted * factor} }

func (a sound) plus(b sound) sound { return sound{a.square + b.square, a.weighted + b.weighted} }

package noise

import "math"

const (
	pi = math.Pi

	mostHarmonics  = 40
	leastHarmonics = 3
	tail           = 1e-3 // share of the sum at which a harmonic ends the series
	inboard        = 1e-3 // share of the tip's Bessel function at which a cell is left out
)

// tones are the harmonics of blade passing at one place.
type tones struct {
	sound
	loudest int     // harmonic with the greatest A-weighted level
	peak    float64 // its weighted mean square, Pa²
}

func (a *tones) harmonic(m int, square, passing float64) (ended bool) {
	weighted := a.add(square, float64(m)*passing)
	if weighted > a.peak {
		a.peak, a.loudest = weighted, m
	}
	return m >= leastHarmonics && square < tail*a.square && weighted < tail*a.weighted
}

// far sums the tones 1 m from the hub as if the far field began there: they
// fall with the square of the distance. direction is reckoned from straight
// ahead, rad. Source: Gutin's loading and Deming's thickness harmonics, each
// cell of the blade at its own radius; the two are a quarter of a period
// apart, so their squares add.
func (s *Source) far(direction float64) tones {
	var a tones
	for m := 1; m <= mostHarmonics; m++ {
		if a.harmonic(m, s.farHarmonic(m, direction), s.passing()) {
			break
		}
	}
	return a
}

func (s *Source) farHarmonic(m int, direction float64) float64 {
	sin, cos := math.Sincos(direction)
	order := m * s.Blades
	wave := float64(order) * s.wave()
	var load, volume, largest float64
	for i := len(s.Cells) - 1; i >= 0; i-- {
		c := &s.Cells[i]
		j := math.Jn(order, wave*c.Radius*sin)
		largest = max(largest, math.Abs(j))
		if math.Abs(j) < inboard*largest {
			break
		}
		load += (c.Along*cos - c.Across/(s.wave()*c.Radius)) * j
		volume += c.Area * c.Width * j
	}
	spin := float64(order) * s.Speed
	scale := float64(s.Blades) / (2 * math.Sqrt2 * pi)
	p, q := scale*wave*load, scale*s.Density*spin*spin*volume
	return p*p + q*q
}

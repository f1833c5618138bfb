package model

import (
	"fmt"
	"math"

	"backspan/model/match"
	"backspan/model/part"
)

const (
	// AroundMode is how far from a frequency an order still sets it swinging,
	// share of it. Estimate.
	AroundMode = 0.15
	shakenBy   = 3 // orders of the crank looked at
)

// mapSpeeds adds where the crank's orders meet the twisting of the drive and
// the modes of the mounts to what the drive itself found, from idle up. It
// needs the drive and the mounts.
func (c *chain) mapSpeeds(m match.Report) {
	if c.firstError() != nil || !worked(m.Static) {
		return
	}
	s := &c.outcome.Speeds
	s.Working = m.Static.CrankSpeed
	if !(s.To > s.From) {
		s.From = c.engine.IdleSpeed()
		_, s.To = c.engine.SpeedRange()
	}
	for i, what := range [...]string{"crank against propeller", "pinion against wheel"} {
		if f := c.torsional[i]; f.Known {
			addBands(s, what, f.Value)
		}
	}
	if c.shaking.Held {
		addBands(s, "a mount mode", c.shaking.Modes[:]...)
	}
}

// addBands puts the bands of some frequencies, Hz, slowest first, on the map:
// one band an order for frequencies that stand close.
func addBands(s *part.SpeedMap, what string, frequencies ...float64) {
	for order := 1; order <= shakenBy; order++ {
		first := len(s.Bands)
		for _, f := range frequencies {
			at := 2 * math.Pi * f / float64(order)
			from, to := math.Max(s.From, (1-AroundMode)*at), math.Min(s.To, (1+AroundMode)*at)
			if !(from < to) {
				continue
			}
			if last := len(s.Bands) - 1; last >= first && from <= s.Bands[last].To {
				s.Bands[last].To = to
				continue
			}
			s.Bands = append(s.Bands, part.SpeedBand{Cause: fmt.Sprintf("engine order %d on %s", order, what), From: from, To: to})
		}
	}
}

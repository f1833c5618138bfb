package gear

import (
	"math"

	"backspan/model/part"
)

// Sump is the oil's steady temperature at a duty.
type Sump struct {
	Temperature float64 // K; the hottest one tried when there is no balance
	Viscosity   float64 // kinematic, m²/s
	Balanced    bool    // the case sheds the losses at Temperature
}

const (
	coldestOil = 200.0  // K, where the search starts at the latest
	hottestOil = 573.15 // K, where it is given up: no oil stands it
	seaDensity = 1.225  // kg/m³, ISO 2533
)

// cooling is how the case sheds heat at a duty.
type cooling struct {
	toAir, toEngine     float64 // W/K
	air, engineCaseHeat float64 // K
}

func (c cooling) shed(temperature float64) float64 {
	return c.toAir*(temperature-c.air) + c.toEngine*(temperature-c.engineCaseHeat)
}

// cooling combines still air and the stream over the case, the stream's part
// rising with the root of speed and density as over a laminar plate. Source:
// the third-power mean of free and forced convection, from memory: Incropera,
// Fundamentals of Heat and Mass Transfer, section 9.9.
func (g *Gear) cooling(at part.Duty) cooling {
	s := &g.spec
	stream := s.StreamCooling * math.Sqrt(math.Max(at.Inflow, 0)/10*math.Max(at.AirDensity, 0)/seaDensity)
	coefficient := math.Cbrt(s.StillCooling*s.StillCooling*s.StillCooling + stream*stream*stream)
	return cooling{
		toAir:          coefficient * g.coolingArea(),
		toEngine:       s.MountConductance,
		air:            at.AirTemperature,
		engineCaseHeat: s.EngineCaseTemperature,
	}
}

// excess is what the case sheds beyond the losses at an oil temperature, W.
// Drag cannot take more than the power that comes in.
func (g *Gear) excess(c cooling, at part.Duty, temperature float64) float64 {
	if at.Power <= 0 || at.CrankSpeed <= standstill {
		return c.shed(temperature)
	}
	law := g.lossLaw(temperature)
	return c.shed(temperature) - math.Min(law.at(at.Power, at.CrankSpeed).Total(), at.Power)
}

// solveSump finds where the losses, which fall as the oil thins, equal the
// heat shed, which rises, to a hundredth of a kelvin.
func (g *Gear) solveSump(at part.Duty) Sump {
	c := g.cooling(at)
	low := math.Max(math.Min(at.AirTemperature, g.spec.EngineCaseTemperature), coldestOil)
	high := hottestOil
	atLow, atHigh := g.excess(c, at, low), g.excess(c, at, high)
	switch {
	case atLow >= 0:
		return g.sumpAt(low, true)
	case !(atHigh > 0):
		return g.sumpAt(high, false)
	}
	// Regula falsi with the Illinois rule: an end that stays is halved.
	side := 0
	t := low
	for range 100 {
		last := t
		t = (low*atHigh - high*atLow) / (atHigh - atLow)
		f := g.excess(c, at, t)
		if math.Abs(t-last) < 0.01 || high-low < 0.01 || f == 0 {
			break
		}
		if f > 0 {
			high, atHigh = t, f
			if side == +1 {
				atLow /= 2
			}
			side = +1
		} else {
			low, atLow = t, f
			if side == -1 {
				atHigh /= 2
			}
			side = -1
		}
	}
	return g.sumpAt(t, true)
}

func (g *Gear) sumpAt(temperature float64, balanced bool) Sump {
	return Sump{Temperature: temperature, Viscosity: g.spec.oil().Viscosity(temperature), Balanced: balanced}
}

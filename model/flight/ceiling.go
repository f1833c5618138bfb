package flight

import (
	"math"

	"backspan/model/air"
	"backspan/model/param"
	"backspan/model/unit"
)

// ServiceClimb is the climb rate left at the service ceiling, m/s.
const ServiceClimb = 0.5

const (
	airEnds      = air.Highest
	closeEnough  = 0.05 // climb rate taken for none, m/s
	unsettled    = 0.15
	mostCeilings = 3 // climbs worked out
	mostRetreats = 4
)

// Ceiling is where full throttle at trim climbs no more, geopotential m.
type Ceiling struct {
	Absolute param.Slot
	Service  param.Slot // where ServiceClimb is left
	Why      string     // there is none
}

// FindCeiling seeks the ceiling above a site: altitude m, climb rate there m/s,
// a first guess of the absolute ceiling m. climb works out the rate at another
// altitude; it reports false where the machine does not work. The climb rate
// falls nearly on a straight line, so two or three workings fix it to some tens
// of metres.
func FindCeiling(altitude, rate, guess float64, climb func(altitude float64) (rate float64, ok bool)) Ceiling {
	if !(rate > 0) {
		return Ceiling{Why: "full throttle does not climb at this site"}
	}
	at, rates := [mostCeilings + 1]float64{altitude}, [mostCeilings + 1]float64{rate}
	n, retreats := 1, 0
	guess = math.Max(guess, altitude+100)
	for n <= mostCeilings {
		guess = math.Min(guess, airEnds)
		f, ok := climb(guess)
		if !ok {
			if retreats++; retreats > mostRetreats {
				return Ceiling{Why: "the engine cannot work this propeller further up"}
			}
			guess = (guess + at[n-1]) / 2
			continue
		}
		at[n], rates[n] = guess, f
		n++
		if math.Abs(f) <= closeEnough || guess == airEnds && f > 0 {
			break
		}
		if guess = inverse(at[:n], rates[:n], 0); !(guess > altitude) {
			break
		}
	}
	return read(at[:n], rates[:n])
}

// read takes the ceilings off the climb rates worked out.
func read(at, rates []float64) Ceiling {
	absolute, service := inverse(at, rates, 0), inverse(at, rates, ServiceClimb)
	last := rates[len(rates)-1]
	switch {
	case absolute > airEnds && at[len(at)-1] == airEnds:
		return Ceiling{Why: "it lies above " + unit.Metre.Text(airEnds) + ", where the model of the air ends"}
	case !(absolute > at[0]) || absolute > airEnds || math.Abs(last) > unsettled:
		return Ceiling{Why: "the climb rates at height do not settle on a ceiling"}
	}
	c := Ceiling{Absolute: param.Known(absolute)}
	if rates[0] > ServiceClimb && service > at[0] {
		c.Service = param.Known(service)
	}
	return c
}

// inverse is the altitude of a climb rate on the curve through the last two or
// three points: Lagrange with the rate as the independent variable.
func inverse(at, rates []float64, rate float64) float64 {
	if n := len(at); n > 3 {
		at, rates = at[n-3:], rates[n-3:]
	}
	sum := 0.0
	for i := range at {
		term := at[i]
		for j := range at {
			if i != j {
				term *= (rate - rates[j]) / (rates[i] - rates[j])
			}
		}
		sum += term
	}
	return sum
}

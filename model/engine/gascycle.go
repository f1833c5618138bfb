package engine

import (
	"math"

	"backspan/model/unit"
)

const (
	halfTurn = 180 // steps of one degree, each examined at its middle
	degree   = math.Pi / halfTurn

	// gasExponent is the ratio of specific heats, one for mixture and burnt
	// gas. Source: Heywood, from memory.
	gasExponent = 1.3
	// wiebeComplete makes 99.3 % of the charge burn within the duration; the
	// rest is taken to burn at its end.
	// Source: Heywood, from memory.
	wiebeComplete = 5
	// blowdown is how long the pressure needs to fall after the exhaust opens,
	// degrees; estimate.
	blowdown = 30
)

// closed is how far on either side of top dead centre the cylinder is shut,
// degrees. Estimate: ports and cams open as far before bottom dead centre as
// they close after it, and transfer ports are not told apart from the exhaust.
func (c Cycle) closed() int {
	if c == FourStroke {
		return 140
	}
	return 95
}

// gasCycle is the gas in one cylinder over the turn about its firing top dead
// centre: one zone of ideal gas with one exponent. Heat to the walls is not
// told apart from heat that is never released. Pressure then is the sum of what
// compression alone does and what burning adds, in proportion to the heat.
//
// The open cylinder is at the charge's pressure, once it has blown down, and so
// is the underside of the piston: gas exchange and the crankcase of a
// two-stroke are part of the friction, which does not pulsate.
//
// Step i stands for the crank angles ±(i+½) degrees. Volumes are shares of the
// swept volume.
type gasCycle struct {
	volume, rate   [halfTurn]float64 // rate per radian after top dead centre; before it, the same negative
	perHeat        [halfTurn]float64 // volume to the power of the exponent less one
	compression    [halfTurn]float64 // above the charge's pressure, over it
	burningBefore  [halfTurn]float64 // pressure from burning, over
	burningAfter   [halfTurn]float64 // (exponent − 1) × heat per swept volume
	closed, active int               // steps shut, and with any pressure
}

// build fills the cycle in; it is a method so that the tables stay where the
// caller has them.
func (g *gasCycle) build(s *Spec) {
	crank, clearance := s.sliderCrank(), 1/(s.CompressionRatio-1)
	g.closed = s.Cycle.closed()
	g.active = g.closed + blowdown
	for i := range g.active {
		sin, cos := math.Sincos((float64(i) + 0.5) * degree)
		below, rate := crank.travel(sin, cos)
		g.volume[i], g.rate[i] = clearance+below, rate
		g.perHeat[i] = math.Pow(g.volume[i], gasExponent-1)
	}
	sin, cos := math.Sincos(float64(g.closed) * degree)
	below, _ := crank.travel(sin, cos)
	charge := math.Pow(clearance+below, gasExponent)
	for i := range g.closed {
		g.compression[i] = charge/(g.volume[i]*g.perHeat[i]) - 1
	}
	g.burn(s)
	g.blowDown()
}

// burn releases the heat by the function of Wiebe. Heat still to come when the
// exhaust opens is lost.
func (g *gasCycle) burn(s *Spec) {
	start, per := unit.Degree.From(s.BurnStart), 1/unit.Degree.From(s.BurnDuration)
	sum, burnt := 0.0, 0.0
	for n := -g.closed; n < g.closed; n++ {
		i, pressure := n, &g.burningAfter
		if n < 0 {
			i, pressure = -n-1, &g.burningBefore
		}
		now := burnt
		if u := (float64(n+1) - start) * per; u > 0 && burnt < 1 {
			now = wiebe(u, s.BurnShape)
		}
		half := (now - burnt) * g.perHeat[i] / 2
		pressure[i] = (sum + half) / (g.volume[i] * g.perHeat[i])
		sum, burnt = sum+2*half, now
	}
}

// wiebe is the share burnt after a share of the duration. Source: Heywood,
// from memory.
func wiebe(share, shape float64) float64 {
	if share >= 1 {
		return 1
	}
	return 1 - math.Exp(-wiebeComplete*math.Pow(share, shape+1))
}

func (g *gasCycle) blowDown() {
	opening := g.burningAfter[g.closed-1]
	for i := g.closed; i < g.active; i++ {
		share := (float64(i-g.closed) + 0.5) / blowdown
		g.burningAfter[i] = opening * (1 + math.Cos(math.Pi*share)) / 2
	}
}

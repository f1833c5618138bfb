package propeller

import "math"

// comparison is a measured propeller standing still: thrust and power that
// this model gives at the measured pitch and speed, over the measured ones,
// less 1.
type comparison struct {
	name          string // of the case among the published ones
	thrust, power float64
}

// workingLoad is the least thrust a comparison must carry, as rotor thrust
// coefficient over solidity. Below it a given pitch error is a large share of a
// small thrust. A propeller standing at full throttle carries two to four times
// as much, more than most of the comparisons.
const workingLoad = 0.05

// compared are all published measurements of thrust and torque standing still
// under a working load; a test holds the figures to what the model gives now.
// Sources: Deters, Ananda & Selig 2014 (radius 5.6 chords, Reynolds numbers
// 19 000 and 44 000 at 0.75 of the radius, generic section); Knight & Hefner,
// NACA TN-626 (radius 15 chords, 200 000, section figures as fitted there).
var compared = [...]comparison{
	{"small research propeller standing, 1547 rpm", 0.040, -0.027},
	{"small research propeller standing, 3527 rpm", 0.023, 0.004},
	{"lifting airscrew, 2 blades at 6 degrees", -0.025, 0.018},
	{"lifting airscrew, 2 blades at 8 degrees", -0.046, -0.017},
	{"lifting airscrew, 2 blades at 10 degrees", -0.036, 0.007},
	{"lifting airscrew, 2 blades at 12 degrees", 0.026, 0.082},
	{"lifting airscrew, 3 blades at 8 degrees", -0.006, -0.033},
	{"lifting airscrew, 3 blades at 10 degrees", -0.021, -0.023},
	{"lifting airscrew, 3 blades at 12 degrees", 0.008, 0.035},
	{"lifting airscrew, 4 blades at 8 degrees", 0.022, 0.001},
	{"lifting airscrew, 4 blades at 10 degrees", -0.027, -0.045},
	{"lifting airscrew, 4 blades at 12 degrees", -0.028, -0.038},
	{"lifting airscrew, 5 blades at 8 degrees", 0.045, 0.030},
	{"lifting airscrew, 5 blades at 10 degrees", 0.005, -0.007},
	{"lifting airscrew, 5 blades at 12 degrees", -0.012, -0.015},
}

// realMerit is the least figure of merit that real propellers of these machines
// are said to reach: common practice, from memory.
const realMerit = 0.60

// meritThrust is the isolated thrust at a figure of merit for the power of a
// standing point, N.
func (p *Propeller) meritThrust(static *Point, merit float64) float64 {
	if !(static.Power > 0) {
		return 0
	}
	return math.Pow(merit, 2.0/3) * IdealThrust(static.Power, static.Flow.Density, p.DiscArea())
}

// band is what an isolated standing thrust is worth, N: down to the comparisons
// or to the figure of merit of real propellers, whichever is less.
func (p *Propeller) band(static *Point) (low, high float64) {
	most, least := thrustWorth()
	low, high = static.Thrust/(1+most), static.Thrust/(1+least)
	if real := p.meritThrust(static, realMerit); real > 0 {
		low = min(low, real)
	}
	return low, high
}

// worth is the greater deviation of a thrust from the ends of its band.
func worth(thrust, low, high float64) float64 {
	if !(thrust > 0) {
		return 0
	}
	return max(1-low/thrust, high/thrust-1)
}

// thrustWorth is the range of thrust at equal absorbed power, over the
// measured, less 1. With the shape given T ∝ CT·CP^(−2/3)·P^(2/3).
func thrustWorth() (most, least float64) {
	most, least = math.Inf(-1), math.Inf(1)
	for _, c := range compared {
		share := (1+c.thrust)/math.Pow(1+c.power, 2.0/3) - 1
		most, least = max(most, share), min(least, share)
	}
	return most, least
}

package cooling

import "math"

// inflowSteps cuts half the rim of a disc. The integrand is smooth and
// periodic, so that the sum has settled to a part in a thousand from a
// distance of a twentieth of the radius on.
const inflowSteps = 48

// Inflow is the speed that a propeller draws in at a distance ahead of its
// disc and off its axis, over the mean speed in its blades' ring. The disc has
// the radius tip; within the radius hub it does no work, so that the air ahead
// of the hub is nearly still: the hub's shadow. Lengths in m, ahead > 0. At or
// behind the disc the figure for a point just ahead of it is given.
//
// An evenly loaded disc draws the air ahead of it in proportion to the solid
// angle under which it is seen; the two discs are laid over one another.
// Source: mechanics of a vortex cylinder; on the axis 1 − x/√(x²+R²).
func Inflow(ahead, off, tip, hub float64) float64 {
	ahead, off = math.Max(ahead, 0.02*tip), math.Abs(off)
	return math.Max(0, solidAngle(ahead, off, tip)-solidAngle(ahead, off, hub))
}

// solidAngle is that of a disc over the half space's.
func solidAngle(ahead, off, radius float64) float64 {
	if !(radius > 0) {
		return 0
	}
	sum := 0.0
	for i := range inflowSteps {
		cos := math.Cos(math.Pi * (float64(i) + 0.5) / inflowSteps)
		far := math.Sqrt(ahead*ahead + radius*radius + off*off - 2*radius*off*cos)
		sum += (radius*radius - off*radius*cos) / (far * (far + ahead))
	}
	return sum / inflowSteps
}

package torsion

// modes is how many natural frequencies above zero the chain has.
func (c *Chain) modes() int { return c.Count - 1 }

// shape is how far each inertia swings at a natural frequency, rad/s, when the
// first swings by 1. The last follows from the momentum, which is none. Source:
// Holzer's method, Thomson, from memory.
func (c *Chain) shape(natural float64) (angle [Most]float64) {
	angle[0] = 1
	moved, last := c.Inertia[0], c.Count-1
	for i := 1; i < last; i++ {
		angle[i] = angle[i-1] - natural*natural*moved/c.Spring[i-1].Stiffness
		moved += c.Inertia[i] * angle[i]
	}
	angle[last] = -moved / c.Inertia[last]
	return angle
}

// share is the part of a steady acceleration's torque that passes a spring
// when nothing swings: the inertia behind it over all inertia.
func (c *Chain) share(spring int) float64 {
	behind, all := 0.0, 0.0
	for i, j := range c.Inertia[:c.Count] {
		all += j
		if i > spring {
			behind += j
		}
	}
	return behind / all
}

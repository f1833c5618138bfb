package stack

// centre is the mass of the items, kg, and their common centre of gravity, m.
// Items without mass have theirs at the origin.
func centre(items []Item) (mass, x, z float64) {
	for i := range items {
		it := &items[i]
		mass += it.Mass
		x += it.Mass * it.X
		z += it.Mass * it.Z
	}
	if mass <= 0 {
		return 0, 0, 0
	}
	return mass, x / mass, z / mass
}

// inertia is the inertia of the items about the lateral (pitch) and the
// vertical (yaw) axis through x, z, kg·m². Source: mechanics, parallel axes.
func inertia(items []Item, x, z float64) (pitch, yaw float64) {
	for i := range items {
		it := &items[i]
		aft, up := it.X-x, it.Z-z
		pitch += it.PitchInertia + it.Mass*(aft*aft+up*up)
		yaw += it.YawInertia + it.Mass*aft*aft
	}
	return pitch, yaw
}

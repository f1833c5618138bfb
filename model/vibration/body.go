package vibration

// freedoms of a stiff body: three shifts, m, and three turns, rad.
const freedoms = 6

// vector is a shift and turn of the body, or a force and couple on it.
type vector [freedoms]float64

// place is a point, m.
type place struct{ x, y, z float64 }

func (p place) from(q place) place { return place{p.x - q.x, p.y - q.y, p.z - q.z} }

// Part is one body of those that swing together. X and Z are its centre of
// gravity, m; the inertia about it, kg·m².
type Part struct {
	Mass, X, Z       float64
	Roll, Pitch, Yaw float64
}

// body is all parts together.
type body struct {
	mass             float64
	centre           place
	roll, pitch, yaw float64 // about the centre
	rollYaw          float64 // product of inertia, Σ m·x·z
}

// gather adds the parts up. Source: mechanics, parallel axes.
func gather(parts []Part) body {
	var b body
	for i := range parts {
		p := &parts[i]
		b.mass += p.Mass
		b.centre.x += p.Mass * p.X
		b.centre.z += p.Mass * p.Z
	}
	if !(b.mass > 0) {
		return body{}
	}
	b.centre.x /= b.mass
	b.centre.z /= b.mass
	for i := range parts {
		p := &parts[i]
		x, z := p.X-b.centre.x, p.Z-b.centre.z
		b.roll += p.Roll + p.Mass*z*z
		b.pitch += p.Pitch + p.Mass*(x*x+z*z)
		b.yaw += p.Yaw + p.Mass*x*x
		b.rollYaw += p.Mass * x * z
	}
	return b
}

// arm turns a motion of the body into that of a point at r from its centre: one
// row for each axis. Source: mechanics, shift + turn × r.
func arm(r place) [3]vector {
	return [3]vector{
		{1, 0, 0, 0, r.z, -r.y},
		{0, 1, 0, -r.z, 0, r.x},
		{0, 0, 1, r.y, -r.x, 0},
	}
}

// at is the motion of a point at r.
func (v *vector) at(r place) place {
	var d [3]float64
	for i, row := range arm(r) {
		d[i] = row.dot(v)
	}
	return place{d[0], d[1], d[2]}
}

func (v *vector) dot(w *vector) float64 {
	sum := 0.0
	for i := range v {
		sum += v[i] * w[i]
	}
	return sum
}

// push is a force at r as force and couple about the centre.
func push(force, r place) vector {
	rows := arm(r)
	var v vector
	for i := range v {
		v[i] = rows[0][i]*force.x + rows[1][i]*force.y + rows[2][i]*force.z
	}
	return v
}

func (v *vector) add(w vector) {
	for i := range v {
		v[i] += w[i]
	}
}

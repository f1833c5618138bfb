package vibration

import (
	"math"

	"gonum.org/v1/gonum/mat"
)

// mount is one rubber mount: its place from the body's centre and its
// stiffness along the axes, N/m.
type mount struct {
	at        place
	stiffness [3]float64
}

// stiffness is that of all mounts against shifts and turns of the body.
// Source: mechanics, Σ BᵀkB.
func stiffness(mounts []mount) *mat.SymDense {
	k := mat.NewSymDense(freedoms, nil)
	for m := range mounts {
		for axis, row := range arm(mounts[m].at) {
			for i := range freedoms {
				for j := i; j < freedoms; j++ {
					k.SetSym(i, j, k.At(i, j)+mounts[m].stiffness[axis]*row[i]*row[j])
				}
			}
		}
	}
	return k
}

// inertia is the body's matrix of mass and inertia about its centre.
func (b *body) inertia() *mat.SymDense {
	m := mat.NewSymDense(freedoms, nil)
	for i := range 3 {
		m.SetSym(i, i, b.mass)
	}
	m.SetSym(3, 3, b.roll)
	m.SetSym(4, 4, b.pitch)
	m.SetSym(5, 5, b.yaw)
	m.SetSym(3, 5, -b.rollYaw)
	return m
}

// mode is one way of swinging: its own speed, rad/s, and its shape, scaled to a
// modal mass of 1 kg.
type mode struct {
	speed float64
	shape vector
}

// modes are the six of a body on its mounts, slowest first. ok is false when
// the body has no inertia against some turn, or the mounts do not hold it.
func (b *body) modes(mounts []mount) (found [freedoms]mode, ok bool) {
	var root mat.Cholesky
	if b.mass <= 0 || !root.Factorize(b.inertia()) {
		return found, false
	}
	var lower, inverse mat.TriDense
	root.LTo(&lower)
	if err := inverse.InverseTri(&lower); err != nil {
		return found, false
	}
	var half, scaled mat.Dense
	half.Mul(&inverse, stiffness(mounts))
	scaled.Mul(&half, inverse.T())
	symmetric := mat.NewSymDense(freedoms, nil)
	for i := range freedoms {
		for j := i; j < freedoms; j++ {
			symmetric.SetSym(i, j, (scaled.At(i, j)+scaled.At(j, i))/2)
		}
	}
	var eigen mat.EigenSym
	if !eigen.Factorize(symmetric, true) {
		return found, false
	}
	var own, shapes mat.Dense
	eigen.VectorsTo(&own)
	shapes.Mul(inverse.T(), &own)
	values := eigen.Values(make([]float64, freedoms))
	const held = 1e-9 // of the stiffest mode; less is a mount that gives no hold
	for k := range freedoms {
		if !(values[k] > held*values[freedoms-1]) {
			return found, false
		}
		found[k].speed = math.Sqrt(values[k])
		for i := range freedoms {
			found[k].shape[i] = shapes.At(i, k)
		}
	}
	return found, true
}

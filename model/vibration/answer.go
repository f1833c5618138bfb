package vibration

import (
	"math"
	"math/cmplx"
)

// wave is a force that swings: cos with the cosine, sin with the sine.
type wave struct{ cos, sin vector }

// swing is a motion or force that swings, as complex amplitudes.
type swing [freedoms]complex128

// system is a body on its mounts, solved.
type system struct {
	body    body
	modes   [freedoms]mode
	damping float64 // share of the critical
}

// shift is where a steady load moves the body.
func (s *system) shift(load vector) vector {
	var q vector
	for k := range s.modes {
		m := &s.modes[k]
		much := m.shape.dot(&load) / (m.speed * m.speed)
		for i := range q {
			q[i] += much * m.shape[i]
		}
	}
	return q
}

// passed is the force and couple that reach the frame through springs and
// dampers when a wave of a speed, rad/s, shakes the body.
// Source: sum of modes, each a swing of one freedom; Rao, from memory.
func (s *system) passed(w wave, speed float64) swing {
	var through swing
	for k := range s.modes {
		m := &s.modes[k]
		drive := complex(m.shape.dot(&w.cos), -m.shape.dot(&w.sin))
		damper := complex(0, 2*s.damping*m.speed*speed)
		spring := complex(m.speed*m.speed, 0)
		much := drive * (spring + damper) / (spring - complex(speed*speed, 0) + damper)
		weighed := s.body.weigh(&m.shape)
		for i := range through {
			through[i] += much * complex(weighed[i], 0)
		}
	}
	return through
}

// weigh is the matrix of inertia times a motion.
func (b *body) weigh(v *vector) vector {
	return vector{b.mass * v[0], b.mass * v[1], b.mass * v[2],
		b.roll*v[3] - b.rollYaw*v[5], b.pitch * v[4], b.yaw*v[5] - b.rollYaw*v[3]}
}

// crossing is how much of a mode swings while a wave dwells at that mode's own
// speed: the steady answer, over the mode's shape.
func (s *system) crossing(k int, w wave) float64 {
	m := &s.modes[k]
	return math.Hypot(m.shape.dot(&w.cos), m.shape.dot(&w.sin)) / (2 * s.damping * m.speed * m.speed)
}

// force is the size of the force in a swing, N: the root of the squares of its
// parts along the axes.
func (x *swing) force() float64 {
	return math.Sqrt(square(x[0]) + square(x[1]) + square(x[2]))
}

func square(z complex128) float64 { a := cmplx.Abs(z); return a * a }

// force is the same of a wave.
func (w *wave) force() float64 {
	sum := 0.0
	for i := range 3 {
		sum += w.cos[i]*w.cos[i] + w.sin[i]*w.sin[i]
	}
	return math.Sqrt(sum)
}

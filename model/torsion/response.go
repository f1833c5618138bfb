package torsion

import "backspan/model/part"

// Response is the torque in each spring over a torque on the first inertia
// that swings at a frequency, rad/s, at least 0; both as complex numbers, the
// mean torque set aside. At frequency 0 it is the share of the inertia behind.
// Without damping it has no finite value at a natural frequency.
//
// Holzer's method from the far end, whose swing is taken as 1: the torque in a
// spring is what moves the inertias behind it, and twists it by that over its
// stiffness. Everything is divided by −ω², so that slow swinging has a limit.
// Source: Thomson, Theory of Vibration with Applications, from memory.
func (c *Chain) Response(frequency float64) (through [Most - 1]complex128) {
	square := frequency * frequency
	angle := complex(1, 0)
	var moved complex128
	for i := c.Count - 1; i > 0; i-- {
		moved += complex(c.Inertia[i], 0) * angle
		through[i-1] = moved
		angle -= complex(square, 0) * moved * c.Spring[i-1].gives(frequency)
	}
	moved += complex(c.Inertia[0], 0) * angle
	whole := real(moved)*real(moved) + imag(moved)*imag(moved)
	over := complex(real(moved)/whole, -imag(moved)/whole)
	for i := range c.Count - 1 {
		through[i] *= over
	}
	return through
}

// Heat is what the damping of a spring makes of the harmonics of a torque on
// the first inertia, W, at a speed of it in rad/s. Source: Den Hartog, from
// memory: work of a viscous damper, c ω² θ²/2.
func (c *Chain) Heat(spring int, torque *part.Pulsation, speed float64) float64 {
	s, heat := c.Spring[spring], 0.0
	for i := range torque.Harmonics[:min(max(torque.Count, 0), part.Orders)] {
		h := &torque.Harmonics[i]
		w := h.Order * speed
		twist := complex(h.Cos, -h.Sin) * c.Response(w)[spring] * s.gives(w)
		heat += s.Damping * w * w * (real(twist)*real(twist) + imag(twist)*imag(twist)) / 2
	}
	return heat
}

// gives is the twist per torque at a frequency, rad/(N·m).
func (s Spring) gives(frequency float64) complex128 {
	lag := s.Damping * frequency
	whole := s.Stiffness*s.Stiffness + lag*lag
	return complex(s.Stiffness/whole, -lag/whole)
}

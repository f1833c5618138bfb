package torsion

import "math"

// Most is the greatest number of inertias in a chain.
const Most = 3

// Spring joins two inertias.
type Spring struct {
	Stiffness float64 // above 0, N·m/rad
	Damping   float64 // viscous, at least 0, N·m·s/rad
}

// Damped is a spring whose damping is a share of the critical at a natural
// frequency, rad/s: 2ζk/ω.
func Damped(stiffness, share, natural float64) Spring {
	return Spring{Stiffness: stiffness, Damping: 2 * share * stiffness / natural}
}

// Chain is a row of inertias, each joined to the next by a spring. Count is 2
// or 3; what lies beyond it means nothing.
type Chain struct {
	Count   int
	Inertia [Most]float64 // above 0, kg·m²
	Spring  [Most - 1]Spring
}

// Pair is two inertias on one spring.
func Pair(first float64, s Spring, second float64) Chain {
	return Chain{Count: 2, Inertia: [Most]float64{first, second}, Spring: [Most - 1]Spring{s}}
}

// Row is three inertias on two springs.
func Row(first float64, s Spring, second float64, t Spring, third float64) Chain {
	return Chain{Count: 3, Inertia: [Most]float64{first, second, third}, Spring: [Most - 1]Spring{s, t}}
}

// Alone is the natural frequency of two inertias on one spring without damping,
// rad/s. Source: Den Hartog, from memory: √(k(J1+J2)/(J1 J2)).
func Alone(first, stiffness, second float64) float64 {
	return math.Sqrt(stiffness * (1/first + 1/second))
}

// Natural is the frequencies at which the chain swings without damping, lowest
// first, rad/s. Of three inertias they are the roots of
//
//	ω⁴ − ω²[k1(1/J1+1/J2) + k2(1/J2+1/J3)] + k1 k2 (J1+J2+J3)/(J1 J2 J3) = 0,
//
// the lower one from the product of both, which keeps its figures where one
// spring is far stiffer. Source: Den Hartog, from memory.
func (c *Chain) Natural() (frequencies [Most - 1]float64) {
	j, k1 := &c.Inertia, c.Spring[0].Stiffness
	first := k1 * (1/j[0] + 1/j[1])
	if c.Count == 2 {
		frequencies[0] = math.Sqrt(first)
		return frequencies
	}
	k2 := c.Spring[1].Stiffness
	second := k2 * (1/j[1] + 1/j[2])
	high := (first + second + math.Hypot(first-second, 2*math.Sqrt(k1)*math.Sqrt(k2)/j[1])) / 2
	product := (k1 / j[0]) * (k2 / j[1]) * ((j[0] + j[1] + j[2]) / j[2])
	frequencies[0], frequencies[1] = math.Sqrt(product/high), math.Sqrt(high)
	return frequencies
}

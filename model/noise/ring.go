package noise

import "math"

const (
	ringPoints  = 64
	ringOrders  = 30 // highest harmonic of one blade that ringPoints resolve
	ringLongest = 12
	leastGap    = 0.05 // m; nearer to the blades' path no figure means anything
)

// near sums the tones at a place ahead of the propeller disc and beside the
// shaft, m, from one ring of turning forces and volumes at Gutin's effective
// radius, retarded path by retarded path, so that it holds close by as well as
// far off. Source: Garrick & Watkins, NACA Report 1198, for a propeller that
// stands. The forces are points, which the blades are not at arm's length.
func (s *Source) near(ahead, beside float64) tones {
	var sums [ringLongest]complex128
	longest := min(ringLongest, ringOrders/s.Blades)
	r := ring{Source: s, radius: effectiveShare * s.Radius, ahead: ahead, beside: beside}
	r.volume = s.seenVolume(r.radius)
	for i := range ringPoints {
		r.gather(2*pi*float64(i)/ringPoints, sums[:longest])
	}
	var a tones
	for m := 1; m <= longest; m++ {
		p := sums[m-1] / complex(4*pi*ringPoints, 0)
		if a.harmonic(m, 2*(real(p)*real(p)+imag(p)*imag(p)), s.passing()) {
			break
		}
	}
	return a
}

type ring struct {
	*Source
	radius, ahead, beside float64
	volume                float64 // of all blades, as one at the radius, m³
}

// gather adds the pressure that one point of the ring sends, harmonic by
// harmonic.
func (r *ring) gather(angle float64, sums []complex128) {
	sin, cos := math.Sincos(angle)
	gap := math.Sqrt(r.ahead*r.ahead + r.beside*r.beside + r.radius*r.radius - 2*r.beside*r.radius*cos)
	gap = max(gap, leastGap)
	blades := float64(r.Blades)
	wave := blades * r.wave()
	// The force on the air: thrust sends it aft, torque along with the blades.
	toward := (-r.Thrust*r.ahead - r.Torque/r.radius*r.beside*sin) / gap
	sin, cos = math.Sincos(-blades*angle - wave*gap)
	turn := complex(cos, sin)
	phase := turn
	for i := range sums {
		k := float64(i+1) * wave
		spin := k * r.SoundSpeed
		sums[i] += phase * complex((toward/gap-r.Density*r.volume*spin*spin)/gap, toward*k/gap)
		phase *= turn
	}
}

// seenVolume is the volume of all blades that, gathered at a radius, sounds
// like the blades do at the blade passing frequency: each cell counts with its
// radius to the power of the number of blades, as its Bessel function does.
func (s *Source) seenVolume(radius float64) float64 {
	v := 0.0
	for i := range s.Cells {
		c := &s.Cells[i]
		v += c.Area * c.Width * math.Pow(c.Radius/radius, float64(s.Blades))
	}
	return v * float64(s.Blades)
}

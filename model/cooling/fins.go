package cooling

import (
	"math"

	"backspan/model/param"
)

// Gibson's speed exponent, and the density his tunnel is taken to have had.
const (
	gibsonExponent = 0.73
	gibsonDensity  = 1.225
	leastBracket   = 0.004 // keeps his regression positive far outside its range
)

// SurfaceCoefficient is the mean heat transfer coefficient of the fins of a
// bare cylinder in a free stream, W/m²K: fins of a length and a clear gap in m,
// air of a speed in m/s and a density in kg/m³. The speed counts with the
// density to the same power. Good for fins of 10 to 50 mm with gaps from 4 mm;
// narrower gaps at low speed cool no better.
// Source: Gibson, as quoted by Yoshida et al., JSME Int. J. B 49 (2006) 869,
// eq. 1; that its units are mm and km/h is from memory.
func SurfaceCoefficient(length, gap, speed, density float64) float64 {
	if !(speed > 0) {
		return 0
	}
	bracket := math.Max(leastBracket, 0.0247-0.00148*math.Pow(1000*length, 0.8)/math.Pow(1000*gap, 0.4))
	return 241.7 * bracket * math.Pow(3.6*speed*density/gibsonDensity, gibsonExponent)
}

// fins is a finned cylinder.
type fins struct {
	root         float64 // radius under the fins, m
	height       float64 // of a fin, m
	length       float64 // of the finned cylinder and head, m
	pitch        float64 // m
	thickness    float64 // m
	conductivity float64 // W/mK
}

// fins are those of the Spec; what is not given follows from the bore.
func (s *Spec) fins(bore float64) fins {
	or := func(slot param.Slot, otherwise float64) float64 {
		if slot.Known {
			return slot.Value
		}
		return otherwise
	}
	const rootOverBore, heightOverBore, tallest, lengthOverBore = 0.6, 0.6, 0.045, 2.65
	return fins{
		root: or(s.RootRadius, rootOverBore*bore), height: or(s.FinHeight, math.Min(heightOverBore*bore, tallest)),
		length: or(s.FinnedLength, lengthOverBore*bore), pitch: s.FinPitch, thickness: s.FinThickness, conductivity: s.FinConductivity,
	}
}

func (f fins) gap() float64 { return f.pitch - f.thickness }

// base is the area under the fins, m².
func (f fins) base() float64 { return 2 * math.Pi * f.root * f.length }

// passage is the free area between the fins on both sides of the cylinder, m².
func (f fins) passage() float64 { return 2 * f.height * f.length * f.gap() / f.pitch }

// BaseCoefficient is the heat that passes per area under the fins and per
// difference of temperature, W/m²K, where the fins' surface passes surface:
// what the fins add and what their own resistance takes.
// Source: Biermann and Pinkel, NACA Report 488 (1934), from memory.
func (f fins) BaseCoefficient(surface float64) float64 {
	if !(surface > 0) {
		return 0
	}
	a := math.Sqrt(2 * surface / (f.conductivity * f.thickness))
	tip := f.height + f.thickness/2
	return surface / f.pitch * (2/a*(1+f.height/(2*f.root))*math.Tanh(a*tip) + f.gap())
}

// conductance is that of one cylinder's fins to air of a speed, W/K.
func (f fins) conductance(speed, density, gain float64) float64 {
	return f.base() * f.BaseCoefficient(gain*SurfaceCoefficient(f.height, f.gap(), speed, density))
}

// strips cut the cylinder's front across its length.
const strips = 48

// behind is what share of the cylinder's front, as the propeller sees it, lies
// behind a driven pulley. The front is as wide as the fins and as long as they
// reach along the cylinder. Source: geometry.
func (f fins) behind(s *Spec, d *Duty) float64 {
	if !(d.PulleyRadius > 0) || !(f.length > 0) {
		return 0
	}
	sin, cos := math.Sincos(s.CylinderLean)
	along, across, half := d.AxisRise*cos, -d.AxisRise*sin, f.root+f.height
	sum := 0.0
	for i := range strips {
		off := s.CylinderReach + f.length*((float64(i)+0.5)/strips-0.5) - along
		chord := math.Sqrt(math.Max(0, d.PulleyRadius*d.PulleyRadius-off*off))
		sum += math.Max(0, math.Min(half, across+chord)-math.Max(-half, across-chord))
	}
	return sum / strips / (2 * half)
}

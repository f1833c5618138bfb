package bearing

import "math"

const (
	rpm = math.Pi / 30
	mm2 = 1e-6 // m²
)

// ReferenceViscosity is the kinematic viscosity that just parts the surfaces,
// m²/s, for a speed in rad/s above 0 and a mean diameter in m. Source: ISO
// 281:2007, ν1 = 45 000 n^-0.83 Dpw^-0.5 below 1000 rpm, else
// 4500 (n Dpw)^-0.5, in mm and rpm.
func ReferenceViscosity(speed, meanDiameter float64) float64 {
	n, d := speed/rpm, meanDiameter*1000
	if n < 1000 {
		return mm2 * 45000 * math.Pow(n, -0.83) / math.Sqrt(d)
	}
	return mm2 * 4500 / math.Sqrt(n*d)
}

// ViscosityRatio is κ, the viscosity over that which just parts the surfaces;
// 0 at standstill.
func (b DeepGroove) ViscosityRatio(viscosity, speed float64) float64 {
	if !(speed > 0) {
		return 0
	}
	return viscosity / ReferenceViscosity(speed, b.MeanDiameter())
}

// FatigueLoadLimit is the load below which clean steel does not tire, N.
// Source: ISO 281:2007, Cu = C0/22 for ball bearings up to 100 mm of
// mean diameter, from memory.
func (b DeepGroove) FatigueLoadLimit() float64 { return b.StaticRating / 22 }

const (
	largestLifeFactor = 50.0
	leastLifeFactor   = 0.1
	greatestRatio     = 4.0 // of viscosities; more helps no further
)

// LifeFactor is aISO of a radial ball bearing for a viscosity ratio κ and
// eC Cu/P, between 0.1 and 50. Below κ = 0.1, where the standard ends, the
// least value stands. Source: ISO 281:2007.
func LifeFactor(ratio, cleanLoad float64) float64 {
	if ratio < 0.1 {
		return leastLifeFactor
	}
	ratio = math.Min(ratio, greatestRatio)
	bracket := 1 - math.Pow(math.Max(0, 2.5671-filmTerm(ratio)), 0.83)*math.Cbrt(cleanLoad)
	if bracket <= 0 {
		return largestLifeFactor
	}
	return math.Min(leastLifeFactor*math.Pow(bracket, -9.3), largestLifeFactor)
}

func filmTerm(ratio float64) float64 {
	switch {
	case ratio < 0.4:
		return 2.2649 / math.Pow(ratio, 0.054381)
	case ratio < 1:
		return 1.9987 / math.Pow(ratio, 0.19087)
	}
	return 1.9987 / math.Pow(ratio, 0.071739)
}

// Lubricant is what a bearing runs in.
type Lubricant string

// The lubricants.
const (
	Grease Lubricant = "grease"
	Oil    Lubricant = "oil"
)

// SpeedLimit is the mean diameter times speed that a cool bearing bears, in
// m·rev/s: 500 000 mm/min with grease, 600 000 with oil. From memory.
func (l Lubricant) SpeedLimit() float64 {
	const perMinute = 1.0 / 60000
	if l == Oil {
		return 6e5 * perMinute
	}
	return 5e5 * perMinute
}

// SpeedParameter is mean diameter times speed, m·rev/s; speed in rad/s.
func (b DeepGroove) SpeedParameter(speed float64) float64 {
	return b.MeanDiameter() * speed / (2 * math.Pi)
}

package gear

import "math"

// SealMaterial is the rubber of the shaft seals.
type SealMaterial string

// The rubbers offered.
const (
	NBR SealMaterial = "NBR"
	FKM SealMaterial = "FKM"
)

const (
	sealOrigin    = "from memory: ISO/TR 14179-1 and -2, the larger"
	windageOrigin = "Anderson & Loewenthal, NASA TP-1622, 1980; constants from memory"
	windagePower  = 2.8
)

// SpeedLimit is the greatest surface speed under the lip, m/s. Source: from
// memory, usual seal practice.
func (m SealMaterial) SpeedLimit() float64 {
	if m == FKM {
		return 35
	}
	return 14
}

// sealDrag is the loss in W per rad/s of a lip seal on a shaft of a diameter
// in m. Source: the larger of ISO/TR 14179-1 (torque by rubber) and -2.
func sealDrag(diameter float64, material SealMaterial) float64 {
	d := diameter * 1000
	torque := 2.429e-3 * d
	if material == FKM {
		torque = 3.737e-3 * d
	}
	return math.Max(torque, plainSealDrag(diameter))
}

// plainSealDrag is the loss in W per rad/s, whatever the rubber. Source:
// ISO/TR 14179-2.
func plainSealDrag(diameter float64) float64 {
	d := diameter * 1000
	return 7.69e-6 * d * d * 30 / math.Pi
}

// windage is the loss in W at 1 rad/s of the crank of one gear turning in oil
// mist; it rises with windagePower. viscosity is dynamic, Pa·s. Source:
// Anderson and Loewenthal 1980.
func windage(w Wheel, width, speedShare, viscosity float64) float64 {
	radius := w.ReferenceDiameter / 2
	rpm := speedShare * 30 / math.Pi
	return 1000 * 2.82e-7 * (1 + 2.3*width/radius) * math.Pow(rpm, windagePower) * math.Pow(radius, 4.6) *
		math.Pow(0.028*viscosity*1000+0.019, 0.2)
}

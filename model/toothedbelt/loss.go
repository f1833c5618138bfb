package toothedbelt

import (
	"backspan/model/part"
	"backspan/model/unit"
)

// losses are the constants of the stage's power loss, fixed once at the rated
// point.
type losses struct {
	meshing    float64 // share of the power lost in the teeth
	resistance float64 // of bending hysteresis, N at the belt
	windage    float64 // W per (m/s)³
}

// at splits the power lost, W, at a belt speed in m/s: meshing grows with the
// power, bending with speed alone, windage with its cube.
func (l losses) at(power, speed float64) (meshing, bending, windage float64) {
	return l.meshing * power, l.resistance * speed, l.windage * speed * speed * speed
}

// calibrate shares what the efficiency at the rated point leaves after windage
// between the teeth and the bending of the belt.
func (b *Belt) calibrate() error {
	power, speed := b.rated.Power, b.Run().Speed(b.rated.CrankSpeed)
	b.losses = losses{windage: b.Windage(b.rated.AirDensity)}
	_, _, windage := b.losses.at(power, speed)
	left := (1-b.spec.RatedEfficiency)*power - windage
	if left < 0 {
		return misfit("Efficiency at rated power", "windage alone loses %s, more than %s allows; lower it or give a smaller crank pulley",
			unit.Percent.Text(windage/power), unit.Percent.Text(b.spec.RatedEfficiency))
	}
	b.losses.meshing = b.spec.LoadLossShare * left / power
	b.losses.resistance = (1 - b.spec.LoadLossShare) * left / speed
	return nil
}

// Transmit passes a power in W at a crank speed in rad/s through the stage.
//
// Teeth do not slip: the driven pulley turns at exactly crank speed over
// ratio. PowerOut is negative where the power put in does not cover the running
// resistance, so that the propeller must drive the belt. At standstill nothing
// arrives.
func (b Belt) Transmit(power, crankSpeed float64) part.Transmission {
	t := part.Transmission{PowerIn: power, SpeedIn: crankSpeed}
	if !(crankSpeed > 0) {
		return t
	}
	meshing, bending, windage := b.losses.at(power, b.Run().Speed(crankSpeed))
	t.PowerOut = power - meshing - bending - windage
	t.SpeedOut = crankSpeed / b.ratio
	return t
}

package belt

import "backspan/model/part"

// losses are the constants of the stage's power loss, fixed once at the rated
// point.
type losses struct {
	stiffness  float64 // EA of the whole belt, N
	resistance float64 // of bending hysteresis, N at the belt
	windage    float64 // W per (m/s)³
}

// at splits the power lost, W, at a belt speed in m/s: creep grows with the
// pull, bending with speed alone, windage with its cube. Only creep also costs
// speed.
func (l losses) at(power, speed float64) (creep, bending, windage float64) {
	return power * (1 - l.grip(power, speed)), l.resistance * speed, l.windage * speed * speed * speed
}

// grip is the share of the speed that creep leaves, 1/(1+Te/EA): the ratio of
// the spans' stretch with the slack side's own left out. It stays positive at
// any pull.
func (l losses) grip(power, speed float64) float64 {
	taut := l.stiffness * speed
	return taut / (taut + power)
}

// Transmit passes a power in W at a crank speed in rad/s through the stage.
//
// The driven pulley turns slower than the pitch ratio says by the creep.
// Skidding is not part of it: see the slip reserves of Examine. PowerOut is negative where the power put in does not
// cover the running resistance, so that the propeller must drive the belt. At
// standstill nothing arrives.
func (b Belt) Transmit(power, crankSpeed float64) part.Transmission {
	t := part.Transmission{PowerIn: power, SpeedIn: crankSpeed}
	if !(crankSpeed > 0) {
		return t
	}
	speed := b.Run().Speed(crankSpeed)
	creep, bending, windage := b.losses.at(power, speed)
	t.PowerOut = power - creep - bending - windage
	t.SpeedOut = crankSpeed / b.ratio * b.losses.grip(power, speed)
	return t
}

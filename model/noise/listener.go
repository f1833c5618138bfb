package noise

import (
	"math"

	"backspan/model/param"
	"backspan/model/unit"
)

// Ground is what the ground adds at a listener far off.
type Ground string

// The kinds of ground.
const (
	FreeField Ground = "none, free field"
	SoftField Ground = "energy doubled, +3 dB"
	HardField Ground = "pressure doubled, +6 dB"
)

// gain is the factor on the mean square.
func (g Ground) gain() float64 {
	switch g {
	case SoftField:
		return 2
	case HardField:
		return 4
	}
	return 1
}

// Listener is who hears the machine: someone far off, and the pilot.
type Listener struct {
	Distance  float64 // of the far listener, m
	Direction float64 // of the far listener from straight ahead of the pilot, rad
	Ground    Ground

	EarUp       float64 // pilot's ear above the hip axis, m
	EarAhead    float64 // pilot's ear ahead of the back plane, m
	Attenuation float64 // of the hearing protector as worn, dB
	Time        float64 // with the engine running, in a day, s
	Criterion   float64 // level for 8 h a day, dB(A)
}

// DefaultListener stands 25 m away, where the tones are loudest; the pilot
// wears no hearing protector.
func DefaultListener() Listener {
	return Listener{
		Distance: 25, Direction: unit.Degree.SI(105), Ground: FreeField,
		EarUp: 0.68, EarAhead: 0.1, Time: unit.Hour.SI(1), Criterion: 85,
	}
}

// Params lists what a user may set, in the order a form shows it.
func (l *Listener) Params() []param.Param {
	return []param.Param{
		param.Number(&l.Distance, "distance", "Own listening distance", unit.Metre).Within(3, 2000).Typical(7, 300).
			Help("the level is shown there besides 150 m, so that it can be measured"),
		param.Number(&l.Direction, "direction", "Direction, from straight ahead", unit.Degree).Within(5, 175).Typical(90, 130).
			From("from memory: NACA TN 1354, loudest somewhat behind the disc").Help("of the far listener, seen from the propeller; 90° is abeam or below"),
		param.Choice(&l.Ground, "ground", "Added by the ground", FreeField, SoftField, HardField).
			From("from memory: energy doubles over most ground, pressure at a meter lying on hard ground (SAE ARP 4055)").
			Help("to the propeller as the far listener hears it; the engine's measurement holds its ground already"),
		param.Number(&l.EarUp, "ear_up", "Ear above hip axis", unit.Millimetre).Within(300, 1000).Typical(600, 760).
			From("estimate").Help("pilot seated upright"),
		param.Number(&l.EarAhead, "ear_ahead", "Ear ahead of back plane", unit.Millimetre).Within(-100, 400).Typical(50, 180).
			From("estimate").Help("pilot seated upright"),
		param.Number(&l.Attenuation, "protector_attenuation", "Hearing protector attenuation", unit.PlainDecibel).Within(0, 40).Typical(0, 30).
			From("as worn; from memory: helmets and plugs 20 to 30 dB in tests, often less in use").
			Help("0 is bare ears; low tones such as a propeller's pass more easily than the figure on the packet"),
		param.Number(&l.Time, "time_a_day", "Engine running in a day", unit.Hour).Within(0.1, 12).Typical(0.5, 3).
			From("own use").Help("full throttle is taken all the time, so the exposure is an upper bound"),
		param.Number(&l.Criterion, "criterion", "Level allowed for 8 h a day", unit.Decibel).Within(70, 95).Typical(80, 87).
			From("NIOSH 98-126: 85 dB(A); directive 2003/10/EC acts at 80 and 85, limit 87 dB(A) under the protector").
			Help("local rules decide; less is safer"),
	}
}

// place turns an ear's place about the hip axis into metres ahead of the disc
// and beside the shaft.
func (l *Listener) place(discAft, shaftUp float64) (ahead, beside float64) {
	return discAft + l.EarAhead, math.Abs(l.EarUp - shaftUp)
}

package bearing

import (
	"backspan/model/param"
	"backspan/model/unit"
)

// Service is what every set of bearings under a propeller is asked to do.
type Service struct {
	GeometryFactor    float64 // f0 of the bearings
	LargestLifeFactor float64 // aISO counted at most
	Reliability       Reliability
	LifeAsked         float64    // s
	TurningShare      float64    // of the time, under the gyroscopic couple
	CentreOffset      float64    // of the propeller's mass from its axis, m
	SpeedLimit        param.Slot // own, of mean diameter times speed, m·rev/s
	Seats             Seats
}

// OwnRating declares a rating, N, that stands in for the table's.
func OwnRating(to *param.Slot, key, label string) param.Param {
	return param.Open(to, key, label, unit.Newton).Within(500, 200000).Typical(5000, 40000).
		Help("From the data sheet of the bearing you fit; empty takes the table's, which is from memory.")
}

// SpeedLimitIn is the mean diameter times speed that the bearings bear, m·rev/s,
// and where it is from.
func (s *Service) SpeedLimitIn(l Lubricant) (limit float64, source string) {
	if s.SpeedLimit.Known {
		return s.SpeedLimit.Value, "your own limit of diameter times speed"
	}
	return l.SpeedLimit(), "from memory: mean diameter times speed, 500 000 mm/min with grease, 600 000 with oil"
}

// DefaultService is that of a small drive, with those seats.
func DefaultService(seats Seats) Service {
	return Service{Seats: seats, GeometryFactor: 14, LargestLifeFactor: 3, Reliability: Reliability90, LifeAsked: 300 * 3600, TurningShare: 0.2, CentreOffset: 25e-6}
}

// Params lists what a builder may set, in the order a form shows it.
func (s *Service) Params() []param.Param {
	const estimate = "estimate"
	return append([]param.Param{
		param.Number(&s.GeometryFactor, "bearing_geometry_factor", "Bearing geometry factor", unit.One).
			Within(10, 18).Typical(13, 15).From("from memory: 13 to 15 for deep-groove ball bearings").
			Help("f0 of ISO 76, from the bearing's data sheet."),
		param.Number(&s.LargestLifeFactor, "largest_life_factor", "Life factor counted at most", unit.One).
			Within(0.1, 50).Typical(1, 3).From("estimate: 3 for a small drive").
			Help("The modified life may be many times the basic one on paper; no more than this is believed."),
		param.Choice(&s.Reliability, "reliability", "Bearing reliability", Reliability90, Reliability95,
			Reliability96, Reliability97, Reliability98, Reliability99).
			From("from memory: ISO 281:2007").Help("Share of bearings that reach the life."),
		param.Open(&s.SpeedLimit, "bearing_speed_limit", "Own limit, diameter × speed", unit.MillimetrePerMinute).
			Within(1e5, 2e6).Typical(4e5, 8e5).
			Help("Mean diameter times speed that your bearings bear, by their data sheet; empty takes 500 000 mm/min with grease or 600 000 with oil, from memory."),
		param.Number(&s.LifeAsked, "bearing_life_asked", "Bearing life asked", unit.Hour).
			Within(1, 20000).Typical(200, 1000).From(estimate).Help("Your own requirement, at full throttle throughout."),
		param.Number(&s.TurningShare, "turning_share", "Time spent in turns", unit.Percent).
			Within(0, 100).Typical(10, 40).From(estimate).
			Help("Share of the running time under the gyroscopic couple."),
		param.Number(&s.CentreOffset, "centre_offset", "Propeller's centre off axis", unit.Micrometre).
			Within(0, 5000).Typical(0, 100).From("from memory: grade G 6.3 of ISO 21940-11 leaves 23 µm at 2600 rpm").
			Help("Of its mass, from imbalance and from a loose fit on the plate."),
	}, s.Seats.Params()...)
}

package match

import "backspan/model/propeller"

// Ask is what a machine is worked at besides standing. Airspeeds in m/s,
// thrusts as installed, N.
type Ask struct {
	Trim, Level           float64 // trim speed, and the thrust that holds it level
	Fast                  float64 // highest airspeed looked at; 0 leaves it out
	LightTrim, LightLevel float64 // trim speed and thrust with the tank empty; 0 leaves them out
}

// Find works a machine standing and at trim speed at full throttle, and in
// level flight at trim speed, in a flow whose Airspeed and Speed are not used.
// The points at the highest airspeed and with an empty tank, which serve curves
// only, are found to a few parts in a thousand of the thrust. Each point is
// sought from the one before, which is quicker than separate searches. It does
// not allocate.
func Find(e Engine, d Drive, p *propeller.Propeller, flow propeller.Flow, ask Ask) Report {
	m := machine{e, d, p, flow, fine}
	m.flow.Airspeed = 0
	s := m.survey()
	static := s.fullThrottle(propeller.Point{})
	m.flow.Airspeed = ask.Trim
	trim := s.fullThrottle(static.Propeller)
	r := NewReport(e, static, trim, m.level(ask.Level, trim))
	if ask.Fast > 0 {
		m.flow.Airspeed, m.tolerance = ask.Fast, rough
		r.Fast = s.fullThrottle(trim.Propeller)
	}
	if ask.LightLevel > 0 && r.Level.holds() {
		m.flow.Airspeed, m.tolerance = ask.LightTrim, fair
		r.Light = m.level(ask.LightLevel, r.Level)
	}
	return r
}

// holds reports whether level flight was found.
func (p *Point) holds() bool { return p.Status == Matched || p.Status == BelowRange }

package match

import "backspan/model/propeller"

// Find works a machine standing and at trim speed at full throttle, and in
// level flight at trim speed under an installed thrust (N), in a flow whose
// Airspeed and Speed are not used. Each point is sought from the one before,
// which is quicker than three separate searches. It does not allocate.
func Find(e Engine, d Drive, p *propeller.Propeller, flow propeller.Flow, trimSpeed, levelThrust float64) Report {
	m := machine{e, d, p, flow}
	m.flow.Airspeed = 0
	static := m.fullThrottle(propeller.Point{})
	m.flow.Airspeed = trimSpeed
	trim := m.fullThrottle(static.Propeller)
	return NewReport(e, static, trim, m.level(levelThrust, trim))
}

package flight

import (
	"backspan/model/param"
	"backspan/model/unit"
)

// Wing is the canopy at trim, and what is asked of the climb.
type Wing struct {
	GlideRatio    float64 // of wing, pilot and machine together, power off
	TrimSpeed     float64 // airspeed at the reference mass, sea level standard air, m/s
	ReferenceMass float64 // all-up, at which the trim speed was measured, kg
	Mass          float64 // kg
	LineHeight    float64 // hang points to canopy, m
	LineSpread    float64 // of the line attachments across the canopy, m
	ThrustTilt    float64 // thrust line above the flight path, rad
	TurnRate      float64 // at which the gyroscopic effect is shown, rad/s
	LeastClimb    float64 // climb rate asked, m/s
}

// DefaultWing is a mid-size wing.
func DefaultWing() Wing {
	return Wing{
		GlideRatio: 7.5, TrimSpeed: 10.8, ReferenceMass: 120, Mass: 5.5, LineHeight: 6.3, LineSpread: 4.5,
		TurnRate: 1, LeastClimb: 1,
	}
}

// Params lists what a user may set, in the order a form shows it.
func (w *Wing) Params() []param.Param {
	return []param.Param{
		param.Number(&w.GlideRatio, "glide_ratio", "Glide ratio", unit.One).Within(3, 15).Typical(5.5, 9).
			From("invented").Help("of wing, pilot and machine together, engine stopped, at trim"),
		param.Number(&w.TrimSpeed, "trim_speed", "Trim speed", unit.KilometrePerHour).Within(20, 80).Typical(34, 50).
			From("invented").Help("true airspeed at the reference mass in sea-level standard air"),
		param.Number(&w.ReferenceMass, "reference_mass", "Mass of the trim speed", unit.Kilogram).Within(50, 300).
			Typical(80, 160).From("invented").Help("all-up mass at which the trim speed holds"),
		param.Number(&w.Mass, "wing_mass", "Wing mass", unit.Kilogram).Within(1, 15).Typical(4, 7).From("invented"),
		param.Number(&w.LineHeight, "line_height", "Hang points to canopy", unit.Metre).Within(3, 12).Typical(5.5, 8).
			From("estimate").Help("vertical, to the middle of the canopy"),
		param.Number(&w.LineSpread, "line_spread", "Spread of the lines at the canopy", unit.Metre).Within(0.5, 10).
			Typical(3.5, 5.5).From("estimate").Help("mean distance between left and right line attachments"),
		param.Number(&w.ThrustTilt, "thrust_tilt", "Thrust line above flight path", unit.Degree).Within(-20, 20).
			Typical(0, 15).From("estimate").Help("positive pushes the craft up"),
		param.Number(&w.TurnRate, "turn_rate", "Turn rate looked at", unit.RadianPerSecond).Within(0.1, 3).
			Typical(0.5, 1.5).From("estimate").Help("for the gyroscopic effect of a turn"),
		param.Number(&w.LeastClimb, "least_climb", "Least climb rate", unit.MetrePerSecond).Within(0, 6).
			Typical(0.8, 2).From("own requirement").Help("climb asked at full throttle, ready mass"),
	}
}

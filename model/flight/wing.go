package flight

import (
	"backspan/model/param"
	"backspan/model/unit"
)

// Wing is the canopy, how it is launched, and what is asked of the flight.
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

	LiftDragShare float64 // of the drag at trim, what goes with the square of lift
	LeastSpeed    float64 // slowest level speed over trim speed
	TopSpeed      float64 // fastest level speed over trim speed
	LiftOffSpeed  float64 // over trim speed
	Headwind      float64 // at take-off, m/s
	LegsPush      float64 // mean, forward, over the take-off run, N
	LongestRun    float64 // asked, m
}

// DefaultWing is a mid-size wing.
func DefaultWing() Wing {
	return Wing{
		GlideRatio: 7.5, TrimSpeed: 10.8, ReferenceMass: 120, Mass: 5.5, LineHeight: 6.3, LineSpread: 4.5,
		TurnRate: 1, LeastClimb: 1,
		LiftDragShare: 0.4, LeastSpeed: 0.65, TopSpeed: 1.25, LiftOffSpeed: 0.9, LongestRun: 40,
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
		param.Number(&w.LiftDragShare, "lift_drag_share", "Drag from lift at trim", unit.Percent).Within(10, 80).
			Typical(35, 50).From("estimate: 50 % at best glide, less where trim is faster").
			Help("share of the drag at trim that grows with the square of lift; the rest grows with the square of speed"),
		param.Number(&w.LeastSpeed, "least_speed", "Slowest over trim speed", unit.Percent).Within(40, 100).
			Typical(60, 75).From("from memory: 60 to 75 %").Help("slowest the wing flies level, deep in the brakes, before it stalls"),
		param.Number(&w.TopSpeed, "top_speed", "Top over trim speed", unit.Percent).Within(100, 200).
			Typical(110, 150).From("from memory: 110 to 150 %").Help("with trimmers open or accelerator pushed"),
		param.Number(&w.LiftOffSpeed, "lift_off_speed", "Lift-off over trim speed", unit.Percent).Within(60, 120).
			Typical(85, 100).From("from memory: 85 to 100 %, with a little brake").Help("where the wing carries all and the feet leave the ground"),
		param.Number(&w.Headwind, "headwind", "Headwind at take-off", unit.KilometrePerHour).Within(0, 40).
			Typical(0, 20).From("own requirement").Help("steady; 0 is a start in still air"),
		param.Number(&w.LegsPush, "legs_push", "Push of the legs in the run", unit.Newton).Within(-200, 200).
			Typical(0, 60).From("estimate").Help("mean over the run; negative when the legs hold back, 0 leaves them out"),
		param.Number(&w.LongestRun, "longest_run", "Longest take-off run", unit.Metre).Within(1, 300).
			Typical(20, 60).From("own requirement").Help("asked at ready mass, on level ground"),
	}
}

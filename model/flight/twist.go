package flight

import (
	"math"

	"backspan/model/param"
)

// Twist is what of the torque turns the body about the lines that it hangs by.
// Angles and moments are positive where the body's nose goes to the pilot's
// right of the wing's.
type Twist struct {
	LineLean float64    // the lines behind the vertical, seen from the body upward, rad
	Tension  float64    // in the lines, N
	Off      float64    // shaft above square to the lines, rad
	Moment   float64    // N·m
	Held     float64    // the most that the lines turn back, N·m
	Angle    param.Slot // at which they do, rad
}

// twist of a body that leans back by lean and hangs by lines that lean aft and
// carry a tension, N. A torque twists about the lines as far as its axis points
// along them: none where the shaft stands square to them. Source: statics,
// mechanics of two lines.
func (in *Input) twist(lean, lineLean, tension, right float64) Twist {
	t := Twist{LineLean: lineLean, Tension: tension, Off: lean - lineLean}
	t.Moment = right * in.ShaftTorque * math.Sin(t.Off)
	t.Held = twistStiffness(tension, in.HangSpacing, in.Wing.LineSpread, in.Wing.LineHeight)
	t.Angle = arcsine(t.Moment, t.Held)
	return t
}

// lines is the force by which the lines hold the body, R = −(W + T + D): how
// far it leans aft of the vertical, rad, and its size, N. Thrust follows the
// leaning shaft, drag the path. ok is false where nothing pulls the lines up.
func (h hung) lines(lean, thrust, drag, climb float64) (aft, tension float64, ok bool) {
	back := thrust*math.Cos(lean) - drag*math.Cos(climb)
	up := h.weight - thrust*math.Sin(lean) + drag*math.Sin(climb)
	return math.Atan2(back, up), math.Hypot(back, up), up > 0
}

// twists finds the twist in the steady climb and that of the moments after the
// throttle is opened, when body and shaft lean back already and the wing has not
// fallen behind: the body swings several times faster than the wing above it.
func (r *Result) twists(in *Input, body hung, drag float64) {
	if !r.HangsFull {
		return
	}
	right := rolls(r.PropellerTurn).other().sign()
	r.Opening = in.twist(r.HangFull, 0, body.weight, right)
	if aft, tension, ok := body.lines(r.HangFull, r.FullThrust, drag, r.ClimbAngle); ok && r.Climbs {
		r.Twist, r.Twists = in.twist(r.HangFull, aft, tension, right), true
	}
}

// worstTwist is the one of the two that the lines have least to hold against.
func (r *Result) worstTwist() (t Twist, when string) {
	const opening, climbing = "just after the throttle is opened", "in the steady climb"
	over := func(t Twist) float64 { return math.Abs(t.Moment) / math.Max(t.Held, math.SmallestNonzeroFloat64) }
	if r.Twists && over(r.Twist) > over(r.Opening) {
		return r.Twist, climbing
	}
	return r.Opening, opening
}

// side is where the nose goes.
func (t Twist) side() side {
	if t.Moment < 0 {
		return left
	}
	return right
}

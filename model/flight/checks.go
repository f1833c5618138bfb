package flight

import (
	"math"

	"backspan/model/reading"
	"backspan/model/unit"
)

// Checks holds the flight against its limits. What lies within the share
// marginAsked above a limit is thin.
func (r Result) Checks(cs []reading.Check, marginAsked float64) []reading.Check {
	const stronger = "raise the thrust at flying speed with Diameter, Nominal pitch or Pitch trim, or the drive's ratio, or lower the ready mass"
	cs = append(cs,
		reading.AtLeast("flight.level_thrust", "Full throttle holds level at trim", r.FullThrust, r.Thrust, marginAsked, unit.Newton).
			Source(mechanics).Advice(stronger),
		r.climb(marginAsked).Source("own requirement, Least climb rate").Advice(stronger),
		r.run(marginAsked).Source("own requirement, Longest take-off run").Advice(stronger+"; or wait for a Headwind"),
		reading.Condition("flight.hang", "Body hangs steadily at full throttle", r.HangsFull).
			Source(statics).
			Advice("raise Thrust line above hip axis, or set Hang points above hip axis so that thrust line and centre of gravity suit the thrust"),
		r.riserTwist(marginAsked),
		reading.Unrated("flight.gyroscopic_couple", "Gyroscopic couple", "no trustworthy limit for what a pilot tolerates is known"),
	)
	return r.cautions(cs)
}

func (r *Result) climb(marginAsked float64) reading.Check {
	const key, label = "flight.climb_rate", "Climb rate"
	if !r.Climbs {
		return reading.Unrated(key, label, tooMuchThrust)
	}
	return reading.AtLeast(key, label, r.ClimbRate, r.LeastClimb, marginAsked, unit.MetrePerSecond)
}

func (r *Result) run(marginAsked float64) reading.Check {
	const key, label = "flight.take_off_run", "Take-off run"
	if !r.Run.Lifts {
		c := reading.Condition(key, label, false)
		c.Why = noRun
		return c
	}
	return reading.AtMost(key, label, r.Run.Distance, r.LongestRun, marginAsked, unit.Metre)
}

// riserTwist asks whether the lines can turn the body back at all, in the worse
// of steady climb and the moments after the throttle is opened.
func (r *Result) riserTwist(marginAsked float64) reading.Check {
	const key, label = "flight.riser_twist", "Lines hold the body against torque"
	if !r.HangsFull {
		return reading.Unrated(key, label, noHang)
	}
	t, when := r.worstTwist()
	return reading.AtMost(key, label, math.Abs(t.Moment), t.Held, marginAsked, unit.NewtonMetre).
		Source("mechanics, two-line suspension, " + when + ": past it the risers twist and nothing stops them").
		Advice("bring the shaft nearer to square with the lines (Thrust line above hip axis, Hang points behind back plane), widen Hang point spacing, take less torque, and open the throttle slowly")
}

// cautions are what no figure here can clear.
func (r *Result) cautions(cs []reading.Check) []reading.Check {
	to := rolls(r.turn())
	const training = "; learn it from an instructor, follow the wing's manual and local rules"
	return append(cs,
		reading.Unrated("flight.power_stall", "Parachutal stall under power",
			"not reckoned: thrust ahead of the wing and brake or slow trim together bring the wing near its stall; never full power with deep brake"+training),
		reading.Unrated("flight.torque_steering", "Torque, brake and risers",
			"not rated: under power the craft turns "+string(to)+"; holding it straight with deep "+string(to.other())+
				" brake can stall that side; opening the throttle suddenly turns the nose to the "+string(r.Opening.side())+" first and can twist the risers: shift weight "+string(to.other())+
				", open it slowly"+training),
		reading.Unrated("flight.runner", "Legs keep up with the take-off run",
			"not rated: lift-off is at "+unit.KilometrePerHour.Text(r.Run.GroundSpeed)+" over the ground under the machine's weight; nobody's running is known here; take off into wind"+training),
		reading.Unrated("flight.surge", "Nodding when power changes",
			"not rated: the angles are those of steady flight; a throttle opened or shut at once swings the body past them, and the wing shoots ahead when power stops"+training),
	)
}

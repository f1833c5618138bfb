package flight

import (
	"fmt"
	"math"

	"backspan/model/param"
	"backspan/model/part"
	"backspan/model/reading"
	"backspan/model/unit"
)

func (r *Result) reaction(rs []reading.Reading) []reading.Reading {
	to := rolls(r.PropellerTurn)
	sides := "propeller " + string(r.turn()) + " seen from behind: torque pushes the pilot's " + string(to) + " side down; "
	return append(rs,
		reading.New("flight.propeller_turn", "Propeller's turn, from behind", r.turn().Sign(), unit.Count).Sided().
			How("+1 clockwise, -1 anticlockwise: Turn of the crank, reversed by a gear's mesh, kept by a belt; this one is "+string(r.turn())).
			Source("geometry"),
		reading.New("flight.torque_side", "Side to which torque turns", to.sign(), unit.Count).Sided().
			How("+1 right, -1 left, as the pilot sits; "+sides+"the craft wants to turn "+string(to)+" under power, the more the harder it pulls").
			Source("mechanics"),
		reading.New("flight.torque_reaction", "Torque reaction", r.TorqueReaction, unit.NewtonMetre).Lower().
			How("shaft torque at the propeller, full throttle standing; rolls the craft against the propeller's turn, wherever the propeller sits; "+
				"ratio and kind of drive enter only through that torque").
			Source("mechanics"),
		reading.New("flight.hang_load_difference", "Load moved between hang points", r.HangLoadDifference, unit.Newton).Lower().
			How("torque reaction / hang point spacing: so much more on the "+string(to)+", so much less on the "+string(to.other())).Source(statics),
		reading.New("flight.weight_shift", "Weight shift that balances torque", r.WeightShift, unit.Millimetre).Lower().
			How("torque reaction / all-up weight, to the pilot's "+string(to.other())+"; right at this power and with the lift of level flight: a steep climb carries less lift and takes more").Source(statics),
		reading.OfSlot("flight.bank_unopposed", "Bank when torque is not balanced", r.Bank, unit.Degree, noBank).Lower().
			How("to the "+string(to)+"; sine is torque reaction / (all-up weight × height from centre of gravity to canopy)").Source(statics),
		reading.OfSlot("flight.twist", "Twist of body against wing", r.climbTwist(), unit.Degree, r.noClimbTwist()).
			How("steady climb at full throttle, + nose to the pilot's right of the wing's, - to the left"+r.Twist.words()+
				"; torque × sine of that angle, against the lines' restoring moment").
			Source(twoLines),
		reading.OfSlot("flight.twist_opening", "Twist just after opening throttle", r.Opening.Angle, unit.Degree, r.noOpening()).
			How("the same before the wing has fallen behind: the body leans back already, the lines still hang plumb"+r.Opening.words()).
			Source(twoLines),
	)
}

// words says how the shaft stands to the lines and where the nose goes.
func (t Twist) words() string {
	if t.Tension <= 0 {
		return ""
	}
	tips := "above"
	if t.Off < 0 {
		tips = "below"
	}
	return fmt.Sprintf(": to the %s, with lines that lean %s aft and carry %s, and the shaft pointing %s %s square to them",
		t.side(), unit.Degree.Text(t.LineLean), unit.Newton.Text(t.Tension), unit.Degree.Text(math.Abs(t.Off)), tips)
}

func (r *Result) climbTwist() param.Slot {
	if !r.Twists {
		return param.Slot{}
	}
	return r.Twist.Angle
}

func (r *Result) noClimbTwist() string {
	if r.HangsFull && !r.Twists {
		return tooMuchThrust
	}
	return r.noOpening()
}

func (r *Result) noOpening() string {
	if !r.HangsFull {
		return noHang
	}
	return noTwist
}

// swing says what few blades make of the net couple.
func (r *Result) swing() string {
	if r.NetSwing <= 0 {
		return ""
	}
	words := fmt.Sprintf("; with so few blades the propeller's share swings between none and twice as much, twice a turn: net %s to %s",
		unit.NewtonMetre.Text(r.NetCouple-r.NetSwing), unit.NewtonMetre.Text(r.NetCouple+r.NetSwing))
	if r.NetCouple < r.NetSwing {
		words += ", so that it turns round for moments"
	}
	return words
}

// turn is the propeller's; a zero Result has none yet.
func (r *Result) turn() part.Turn {
	if r.PropellerTurn == part.Anticlockwise {
		return part.Anticlockwise
	}
	return part.Clockwise
}

// spins is the direction of the net spin momentum: that of the propeller unless
// the crank outweighs it.
func (r *Result) spins() part.Turn {
	if r.AngularMomentum < 0 {
		return after(r.turn(), -1)
	}
	return r.turn()
}

func (r *Result) gyro(rs []reading.Reading) []reading.Reading {
	// Clockwise momentum H forward and a turn to the right: the couple on the
	// frame is H × rate about the lateral axis, nose down.
	forward := rolls(r.spins()).other()
	return append(rs,
		reading.New("flight.gyroscopic_couple", "Gyroscopic couple at 1 rad/s", r.GyroscopicCouple, unit.NewtonMetre).Lower().
			How("propeller polar inertia × propeller speed × 1 rad/s; a couple does not depend on where the propeller sits").
			Source(gyroscope),
		reading.New("flight.crank_momentum", "Spin momentum of the crank", r.CrankMomentum, unit.NewtonMetreSecond).
			How("crank, flywheel and what the drive adds to them; positive turns with the propeller, negative cancels some of it: a single gear mesh reverses the propeller").
			Source("mechanics"),
		reading.New("flight.angular_momentum", "Net spin momentum", r.AngularMomentum, unit.NewtonMetreSecond).
			How("propeller and driven parts, plus the crank with its own direction; positive turns with the propeller").
			Source("mechanics"),
		reading.New("flight.net_couple", "Net couple at the turn rate", r.NetCouple, unit.NewtonMetre).Lower().
			How("propeller, driven parts and crank with its direction × turn rate, "+unit.RadianPerSecond.Text(r.TurnRate)+
				"; a turn to the "+string(forward)+" tips the body forward, one to the "+string(forward.other())+" back; "+
				"depth does not change it"+r.swing()).Source(gyroscope),
		reading.New("flight.angular_acceleration", "Nodding from the net couple", r.AngularAcceleration, unit.RadianPerSecondSquared).Lower().
			How("net couple / pitch inertia of the hung body: how briskly the body starts to nod; depth leaves the couple alone and enlarges "+
				"the inertia by its square: a deeper machine is slower to start and harder to stop").Source("mechanics"),
		reading.New("flight.yaw_acceleration", "Yawing from the net couple", r.YawAcceleration, unit.RadianPerSecondSquared).Lower().
			How("the same couple when the body nods instead of turns, / its yaw inertia: nodding back turns the nose to the "+string(forward)+"; "+
				"depth leaves the couple alone and enlarges the inertia").Source("mechanics"),
		reading.New("flight.turn_pull", "Machine's rearward pull in a turn", r.TurnPull, unit.Newton).Lower().
			How("machine's mass × distance behind the hang points × turn rate²; away from the axis through the hang points; grows in step with depth").Source("mechanics"),
	)
}

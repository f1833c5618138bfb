package flight

import (
	"math"

	"backspan/model/param"
	"backspan/model/part"
)

// Input is the craft in the air. Places are in the package's frame of
// reference; masses in kg, lengths in m.
type Input struct {
	Wing       Wing
	Seat       Seat
	AirDensity float64 // kg/m³

	PilotMass        float64
	UnitMass         float64 // machine, ready
	UnitAft, UnitUp  float64 // its centre of gravity
	UnitPitchInertia float64 // about the hang points, kg·m²
	UnitYawInertia   float64 // likewise
	ThrustHeight     float64 // propeller axis above the hip axis
	HangAft, HangUp  float64
	HangSpacing      float64

	Line          ThrustLine // at full throttle, as installed
	Ceiling       Ceiling
	FullFuelFlow  param.Slot // at full throttle and trim, kg/s
	LevelFuelFlow param.Slot // in level flight at trim, kg/s; empty when no throttle holds it
	LightFuelFlow param.Slot // the same with the tank empty
	FuelMass      float64    // at the start
	FuelDensity   float64    // kg/m³

	ShaftTorque      float64 // at the propeller, full throttle standing, N·m
	PropellerInertia float64 // polar, kg·m²
	PropellerSpeed   float64 // rad/s
	DrivenInertia    float64 // polar, of all else that turns with the propeller, kg·m²
	CrankInertia     float64 // polar, of all that turns with the crank, kg·m²
	CrankSpeed       float64 // rad/s
	Blades           int     // of the propeller
	CrankTurn        part.Turn
	Turn             int // propeller against crank: +1 the same way, −1 reversed
}

// Result is the craft in steady flight.
type Result struct {
	AllUp      float64 // kg
	TrimSpeed  float64 // level, true airspeed, m/s
	Thrust     float64 // for level flight, N
	FullThrust float64 // at trim, N
	LeastClimb float64 // asked, m/s
	Speeds     Speeds
	Run        Run
	LongestRun float64 // asked, m
	Ceiling    Ceiling

	Climbs     bool    // a steady climb exists at full throttle
	ClimbAngle float64 // rad
	ClimbRate  float64 // m/s
	SinkOff    float64 // at trim with the engine stopped, m/s

	FullFuel  param.Slot // full throttle at trim, m³/s
	LevelFuel param.Slot // m³/s
	Endurance param.Slot // s
	Range     param.Slot // m

	HangsOff, HangsLevel, HangsFull bool    // the body finds an angle: power off, level flight, full throttle
	HangOff, HangLevel, HangFull    float64 // leaning back, rad
	ThrustOffset                    float64 // thrust line below the hang points, m
	StaticMoment                    float64 // of the machine's weight about the hang points, N·m
	PitchInertia, YawInertia        float64 // of pilot and machine about the hang points, kg·m²

	PropellerTurn      part.Turn
	TorqueReaction     float64    // N·m
	HangLoadDifference float64    // more on one side and less on the other, N
	WeightShift        float64    // sideways, that balances the torque, m
	Bank               param.Slot // when nothing balances the torque, rad
	Twist              Twist      // in the steady climb
	Twists             bool       // which has lines that hold the body
	Opening            Twist      // just after the throttle is opened

	GyroscopicCouple    float64 // of the propeller, at 1 rad/s, N·m
	CrankMomentum       float64 // of all that turns with the crank, positive with the propeller, kg·m²/s
	AngularMomentum     float64 // net, positive with the propeller, kg·m²/s
	TurnRate            float64 // rad/s
	NetCouple           float64 // of all that spins, at the turn rate, N·m
	AngularAcceleration float64 // in pitch, of the net couple, rad/s²
	YawAcceleration     float64 // in yaw, of the same couple, rad/s²
	NetSwing            float64 // by which it rises and falls twice a turn, N·m
	TurnPull            float64 // rearward pull of the machine's mass at the turn rate, N
}

// Fly puts the craft into steady flight.
func Fly(in *Input) Result {
	w := &in.Wing
	body := in.hung()
	r := Result{
		AllUp:      AllUp(in.Wing, in.Seat, in.PilotMass, in.UnitMass),
		LeastClimb: w.LeastClimb, LongestRun: w.LongestRun, Ceiling: in.Ceiling,
		ThrustOffset: body.thrust, StaticMoment: body.unitMass * gravity * body.unitAft, PitchInertia: body.inertia, YawInertia: body.yaw,
		PropellerTurn: after(in.CrankTurn, in.Turn),
	}
	r.TrimSpeed, r.Thrust = Level(*w, r.AllUp, in.AirDensity)
	r.FullThrust = in.Line.At(r.TrimSpeed)
	r.steadyClimb(in)
	r.SinkOff = sinkOff(*w, r.AllUp, in.AirDensity)
	r.Speeds = LevelSpeeds(*w, r.AllUp, in.AirDensity, in.Line)
	r.Run = TakeOff(*w, r.AllUp, in.AirDensity, in.Line)

	drag := in.AirDensity / 2 * r.TrimSpeed * r.TrimSpeed * in.Seat.DragArea
	r.HangOff, r.HangsOff = body.angle(0, drag)
	r.HangLevel, r.HangsLevel = body.angle(r.Thrust, drag)
	r.HangFull, r.HangsFull = body.angle(r.FullThrust, drag)

	if in.FullFuelFlow.Known && in.FuelDensity > 0 {
		r.FullFuel = param.Known(in.FullFuelFlow.Value / in.FuelDensity)
	}
	r.cruise(in)
	r.torque(in, body)
	r.twists(in, body, drag)
	r.spin(in, body)
	return r
}

// steadyClimb finds the climb at full throttle. In a steep climb the wing
// carries less, so it flies slower and the propeller pulls harder.
func (r *Result) steadyClimb(in *Input) {
	airspeed := r.TrimSpeed
	for range 4 {
		r.ClimbAngle, airspeed, r.Climbs = Climb(in.Wing, r.AllUp, in.Line.At(airspeed), in.AirDensity)
		if !r.Climbs {
			return
		}
	}
	r.ClimbRate = airspeed * math.Sin(r.ClimbAngle)
}

// torque finds what the propeller's torque does to the whole craft. Engine
// torque, ratio and the forces inside the drive cancel inside it.
func (r *Result) torque(in *Input, body hung) {
	weight := r.AllUp * gravity
	r.TorqueReaction = in.ShaftTorque
	r.HangLoadDifference = in.ShaftTorque / in.HangSpacing
	r.WeightShift = in.ShaftTorque / weight
	r.Bank = arcsine(in.ShaftTorque, weight*(in.Wing.LineHeight+body.below))
}

// spin finds the gyroscopic couples: spin momentum times turn rate, at right
// angles to both. One blade or two resist a turn about the axis along them and
// give way about the other: the propeller's share swings between nothing and
// twice its mean.
func (r *Result) spin(in *Input, body hung) {
	r.TurnRate = in.Wing.TurnRate
	r.GyroscopicCouple = in.PropellerInertia * in.PropellerSpeed
	r.CrankMomentum = float64(in.Turn) * in.CrankInertia * in.CrankSpeed
	r.AngularMomentum = r.GyroscopicCouple + in.DrivenInertia*in.PropellerSpeed + r.CrankMomentum
	r.NetCouple = math.Abs(r.AngularMomentum) * r.TurnRate
	if in.Blades > 0 && in.Blades <= 2 {
		r.NetSwing = r.GyroscopicCouple * r.TurnRate
	}
	if body.inertia > 0 {
		r.AngularAcceleration = r.NetCouple / body.inertia
	}
	if body.yaw > 0 {
		r.YawAcceleration = r.NetCouple / body.yaw
	}
	r.TurnPull = body.unitMass * math.Abs(body.unitAft) * r.TurnRate * r.TurnRate
}

// arcsine is the angle at which a restoring moment greatest·sin reaches
// moment; empty when it never does.
func arcsine(moment, greatest float64) param.Slot {
	if !(math.Abs(moment) <= greatest) || greatest <= 0 {
		return param.Slot{}
	}
	return param.Known(math.Asin(moment / greatest))
}

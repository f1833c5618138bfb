package belt

import (
	"math"

	"backspan/model/param"
	"backspan/model/part"
)

// Result is the stage at one operating point, in SI. A slot that is empty has
// no value there.
type Result struct {
	Transmission part.Transmission
	Profile      Profile
	Ribs         int

	// Geometry.
	CrankDiameter   float64  // effective, m
	DrivenDiameter  float64  // effective, m
	Geometry        OpenBelt // on the pitch diameters
	EffectiveLength float64  // of the belt, m
	FaceWidth       float64  // m
	TakeUp          float64  // of the centre distance from slack to set, m
	TakeUpKnown     bool     // false when the belt would stretch more than that can take up
	SettingRate     float64  // standing tension per centre distance, N/m

	// Tension.
	RequiredTension float64 // standing, per strand, N
	StandingTension float64 // as set, per strand, N
	TensionGiven    bool    // by the user; else the required one is set
	Speed           float64 // of the belt, m/s
	Pull            float64 // effective, N
	Tensions        Tensions
	ArcFactor       float64
	DesignFriction  float64
	UsedFriction    param.Slot // that the tensions ask for
	Reserve         Reserve
	Standing        ShaftLoad
	Running         ShaftLoad
	CrankMoment     float64 // greatest bending moment at the crank bearing, N·m
	SpanFrequency   float64 // of a free span at standstill, Hz

	// Losses and heat.
	CreepLoss        float64 // W
	BendingLoss      float64 // W
	WindageLoss      float64 // W
	Creep            float64 // pull over EA, nearly the share of speed lost
	Temperature      float64 // steady, of the belt, K
	TemperatureLimit float64 // K

	// Body.
	BeltMass      float64 // kg
	CrankInertia  float64 // of the crank pulley about its axis, kg·m²
	DrivenInertia float64 // of what turns with the propeller, kg·m²
}

// Reserve is the pull at which the belt skids over the pull at the point, at
// three frictions. Empty when there is no pull.
type Reserve struct {
	Design param.Slot
	Dry    param.Slot
	Wet    param.Slot
}

// Examine works out everything about the stage at an operating point.
func (b Belt) Examine(at part.Duty) Result {
	r := b.laidOut()
	r.Transmission = b.Transmit(at.Power, at.CrankSpeed)
	r.Speed = b.run.Speed(at.CrankSpeed)
	if at.CrankSpeed > 0 {
		r.Pull = at.Power / r.Speed
		r.Creep = r.Pull / b.losses.stiffness
		r.CreepLoss, r.BendingLoss, r.WindageLoss = b.losses.at(at.Power, r.Speed)
	}
	r.Tensions = locked(b.standing, r.Pull, centrifugal(b.massPerLength, r.Speed))
	if f, ok := r.Tensions.demand(b.run.SmallestWrap()); ok {
		r.UsedFriction = param.Known(f)
	}
	r.Reserve = b.reserve(r)
	tilt := b.run.SpanTilt()
	r.Running = r.Tensions.ShaftLoad(tilt)
	r.Standing = locked(b.standing, 0, 0).ShaftLoad(tilt)
	r.CrankMoment = math.Max(r.Standing.Size(), r.Running.Size()) * b.overhang()
	r.Temperature = b.temperature(at, r.CreepLoss+r.BendingLoss+r.WindageLoss)
	return r
}

// overhang is from the crank's last bearing to the middle of the crank pulley:
// what stands between engine and pulley bends the crank as well.
func (b Belt) overhang() float64 {
	return b.spec.BearingToFace + b.standoff + b.spec.Clearance + b.spec.SideWall + b.faceWidth/2
}

// laidOut is the part of the result that holds at every operating point.
func (b Belt) laidOut() Result {
	s, o := &b.spec, b.run
	r := Result{
		Profile: s.Profile, Ribs: s.Ribs,
		CrankDiameter: s.CrankDiameter, DrivenDiameter: s.DrivenDiameter,
		Geometry: o, FaceWidth: b.faceWidth,
		RequiredTension: b.required, StandingTension: b.standing, TensionGiven: b.spec.StandingTension.Known,
		DesignFriction: b.friction, TemperatureLimit: s.TemperatureMax,
		CrankInertia: b.crank.polar, DrivenInertia: b.SpinningInertia(),
	}
	length := o.Length()
	r.EffectiveLength = length - 2*math.Pi*b.profile.lineDifferential
	r.BeltMass = b.massPerLength * length
	r.ArcFactor = arcFactor(s.TractionRatio, o.SmallestWrap())
	r.SpanFrequency = math.Sqrt(b.standing/b.massPerLength) / (2 * o.Span())
	r.SettingRate = 2 * math.Cos(o.SpanTilt()) * b.losses.stiffness / length
	slack, ok := o.withLength(length / (1 + b.standing/b.losses.stiffness))
	r.TakeUp, r.TakeUpKnown = o.CentreDistance-slack.CentreDistance, ok
	return r
}

func (b Belt) reserve(r Result) Reserve {
	if !(r.Pull > 0) {
		return Reserve{}
	}
	over := func(friction float64) param.Slot {
		ratio := traction(friction, b.run.SmallestWrap())
		return param.Known(skidPull(b.standing, r.Tensions.Centrifugal, ratio) / r.Pull)
	}
	return Reserve{
		Design: over(b.friction),
		Dry:    over(wedge(b.spec.DryFriction, grooveAngle)),
		Wet:    over(wedge(b.spec.WetFriction, grooveAngle)),
	}
}

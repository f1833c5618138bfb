package belt

import (
	"math"

	"backspan/model/param"
	"backspan/model/part"
	"backspan/model/pulley"
)

// Result is the stage at one operating point, in SI. A slot that is empty has
// no value there.
type Result struct {
	Transmission part.Transmission
	Profile      Profile
	Ribs         int

	// Geometry.
	CrankDiameter   float64         // effective, m
	DrivenDiameter  float64         // effective, m
	Geometry        pulley.OpenBelt // on the pitch diameters
	EffectiveLength float64         // of the belt, m
	FaceWidth       float64         // m
	TakeUp          float64         // of the centre distance from slack to set, m
	TakeUpKnown     bool            // false when the belt would stretch more than that can take up
	SettingRate     float64         // standing tension per centre distance, N/m
	EccentricOffset float64         // m, 0 without an eccentric

	// Tension.
	RequiredTension float64 // standing, per strand, N
	StandingTension float64 // as set, per strand, N
	TensionGiven    bool    // by the user; else the required one is set
	Speed           float64 // of the belt, m/s
	Pull            float64 // effective, N
	Tensions        pulley.Tensions
	ArcFactor       float64
	DesignFriction  float64
	UsedFriction    param.Slot // that the tensions ask for
	Reserve         Reserve
	Standing        pulley.ShaftLoad
	Running         pulley.ShaftLoad
	CrankMoment     float64    // greatest bending moment at the crank bearing, N·m
	SpanFrequency   float64    // of a free span at standstill, Hz
	TightFrequency  param.Slot // of the running tight span, Hz
	SlackFrequency  param.Slot // of the running slack span, Hz

	// Uneven torque, resonance, rating and life.
	LoadFactor   LoadFactor
	Pulsation    PulsationResult
	Resonance    Resonance
	RatedPower   float64 // per rib, with the arc factor, W
	RatedWhy     string  // why there is none
	RatingSource string
	WantedPower  float64 // per rib, at the service factor, W
	Life         Life
	Adjustment   Adjustment

	// Losses and heat.
	CreepLoss        float64 // W
	BendingLoss      float64 // W
	WindageLoss      float64 // W
	EfficiencyHalf   float64 // at half speed and an eighth of the power
	EfficiencyLevel  float64 // at the power of level flight
	Creep            float64 // pull over EA, nearly the share of speed lost
	Temperature      float64 // steady, of the belt, K
	TemperatureLimit float64 // K

	// Body.
	BeltMass      float64 // kg
	CrankInertia  float64 // of the crank pulley about its axis, kg·m²
	DrivenInertia float64 // of what turns with the propeller, kg·m²
}

// Reserve is the pull at which the belt skids over the pull at the point, at
// several frictions. Empty when there is no pull.
type Reserve struct {
	Design param.Slot
	Dry    param.Slot
	Worn   param.Slot // dry, the flanks worn
	Wet    param.Slot
	Peak   param.Slot // dry, against the greatest pull of a cycle; empty without the pulsation
}

// Examine works out everything about the stage at an operating point. What the
// train does not tell is left out, with the reason.
func (b Belt) Examine(at part.Duty, train part.Train) Result {
	r := b.laidOut()
	r.Transmission = b.Transmit(at.Power, at.CrankSpeed)
	r.Speed = b.Run().Speed(at.CrankSpeed)
	if at.CrankSpeed > 0 {
		r.Pull = at.Power / r.Speed
		r.Creep = r.Pull / b.losses.stiffness
		r.CreepLoss, r.BendingLoss, r.WindageLoss = b.losses.at(at.Power, r.Speed)
	}
	r.Tensions = pulley.Locked(b.standing, r.Pull, b.Centrifugal(r.Speed))
	if f, ok := demand(r.Tensions, b.Run().SmallestWrap()); ok {
		r.UsedFriction = param.Known(f)
	}
	if r.Speed > 0 {
		pair := b.spanPair(b.standing, at.Power, at.CrankSpeed)
		r.TightFrequency = param.Slot{Value: pair.tight, Known: pair.tight > 0}
		r.SlackFrequency = param.Slot{Value: pair.slack, Known: pair.slack > 0}
	}
	tilt := b.Run().SpanTilt()
	r.Running = r.Tensions.ShaftLoad(tilt)
	r.Standing = pulley.Locked(b.standing, 0, 0).ShaftLoad(tilt)
	r.Temperature = b.Temperature(at, r.CreepLoss+r.BendingLoss+r.WindageLoss)
	r.EfficiencyHalf = b.efficiency(at, 0.5)
	r.EfficiencyLevel = b.efficiency(at, math.Cbrt(b.spec.Use.LevelPower))

	w := b.twin(train)
	b.pulse(&r, at, train, w)
	r.Reserve = b.reserve(r)
	r.Life = b.life(r, at, train, w)
	r.RatedPower, r.RatedWhy = b.spec.Rating.power(b.spec.CrankDiameter, at.CrankSpeed)
	r.RatedPower *= r.ArcFactor
	r.RatingSource = b.spec.Rating.Source
	r.WantedPower = b.spec.ServiceFactor * at.Power / float64(b.spec.Ribs)
	r.Adjustment = b.adjustment(r)
	r.CrankMoment = r.greatestShaftLoad() * b.Overhang()
	return r
}

// efficiency is that at a share of the speed, the power following its cube.
func (b Belt) efficiency(at part.Duty, n float64) float64 {
	return b.Transmit(n*n*n*at.Power, n*at.CrankSpeed).Efficiency()
}

// laidOut is the part of the result that holds at every operating point.
func (b Belt) laidOut() Result {
	s, o := &b.spec, b.Run()
	r := Result{
		Profile: s.Profile, Ribs: s.Ribs,
		CrankDiameter: s.CrankDiameter, DrivenDiameter: s.DrivenDiameter,
		LoadFactor: s.Pulsing.LoadFactor, EccentricOffset: s.Setting.EccentricOffset,
		Geometry: o, FaceWidth: b.FaceWidth(),
		RequiredTension: b.required, StandingTension: b.standing, TensionGiven: b.spec.StandingTension.Known,
		DesignFriction: b.friction, TemperatureLimit: s.TemperatureMax,
		CrankInertia: b.CrankInertia(), DrivenInertia: b.SpinningInertia(),
	}
	length := o.Length()
	r.EffectiveLength = length - 2*math.Pi*b.profile.lineDifferential
	r.BeltMass = b.BeltMass()
	r.ArcFactor = arcFactor(s.TractionRatio, o.SmallestWrap())
	r.SpanFrequency = b.spanFrequency(b.standing)
	r.SettingRate = 2 * math.Cos(o.SpanTilt()) * b.losses.stiffness / length
	slack, ok := o.WithLength(length / (1 + b.standing/b.losses.stiffness))
	r.TakeUp, r.TakeUpKnown = o.CentreDistance-slack.CentreDistance, ok
	return r
}

func (b Belt) reserve(r Result) Reserve {
	if !(r.Pull > 0) {
		return Reserve{}
	}
	over := func(friction float64) param.Slot {
		ratio := traction(friction, b.Run().SmallestWrap())
		return param.Known(skidPull(b.standing, r.Tensions.Centrifugal, ratio) / r.Pull)
	}
	reserve := Reserve{
		Design: over(b.friction),
		Dry:    over(wedge(b.spec.DryFriction, grooveAngle)),
		Wet:    over(wedge(b.spec.WetFriction, grooveAngle)),
	}
	// At a locked centre the sum of the contact tensions stands, so the skid
	// pull falls as the traction, their difference over their sum, does.
	reserve.Worn = param.Known(reserve.Dry.Value * (1 - b.spec.WornLoss))
	if peak := r.Pulsation.Surge.HeldPull; peak > 0 {
		reserve.Peak = param.Known(reserve.Dry.Value * r.Pull / peak)
	}
	return reserve
}

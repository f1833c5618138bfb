package toothedbelt

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
	Section      Section
	BeltWidth    float64 // m

	// Geometry.
	BeltTeeth      int
	Geometry       pulley.OpenBelt // on the pitch diameters
	CrankOutside   float64         // diameter, m
	DrivenOutside  float64         // diameter, m
	CentreShorter  param.Slot      // centre distance with one belt tooth less, m
	CentreLonger   param.Slot      // with one more, m
	SmallestTeeth  int             // of the two pulleys
	SmallestSpeed  float64         // of that pulley, rad/s
	TeethEngaged   float64         // on the smaller pulley
	TeethInMesh    int             // whole ones of them
	FaceWidth      float64         // m
	StiffnessGiven bool
	TakeUp         param.Slot // of the centre distance from slack to set, m
	SettingRate    param.Slot // standing tension per centre distance, N/m

	// Frequencies, Hz.
	MeshFrequency  float64
	PassFrequency  float64    // of the belt
	SpanFrequency  float64    // of a free span at standstill
	TightFrequency param.Slot // of the tight span, running
	SlackFrequency param.Slot // of the slack span, running

	// Tension.
	RequiredTension float64    // standing, per strand, N
	StandingTension float64    // as set, per strand, N
	TensionGiven    bool       // by the user; else the required one is set
	Speed           float64    // of the belt, m/s
	SpeedMax        param.Slot // m/s
	Pull            float64    // effective, N
	Tensions        pulley.Tensions
	Standing        pulley.ShaftLoad
	Running         pulley.ShaftLoad
	CrankMoment     float64 // greatest bending moment at the crank bearing, N·m
	Swing           Swing   // through a turn

	// Rating.
	DesignPower  float64    // service factor times the power, W
	Rating       param.Slot // W
	RatingWhy    string     // why there is none
	RatingSource string     // where the rating's figures stand

	// Losses and heat.
	MeshingLoss      float64 // W
	BendingLoss      float64 // W
	WindageLoss      float64 // W
	Temperature      float64 // steady, of the belt, K
	TemperatureLimit float64 // K

	// Body.
	BeltMass      float64 // kg
	CrankInertia  float64 // of the crank pulley about its axis, kg·m²
	DrivenInertia float64 // of what turns with the propeller, kg·m²
}

// Examine works out everything about the stage at an operating point. What
// train does not know leaves the pull through a turn of the crank unknown.
func (b Belt) Examine(at part.Duty, train part.Train) Result {
	r := b.laidOut()
	r.Transmission = b.Transmit(at.Power, at.CrankSpeed)
	r.Speed = b.Run().Speed(at.CrankSpeed)
	if at.CrankSpeed > 0 {
		r.Pull = at.Power / r.Speed
		r.MeshingLoss, r.BendingLoss, r.WindageLoss = b.losses.at(at.Power, r.Speed)
	}
	r.SmallestSpeed = at.CrankSpeed / math.Min(1, b.ratio)
	r.MeshFrequency = float64(b.spec.CrankTeeth) * at.CrankSpeed / (2 * math.Pi)
	r.PassFrequency = r.Speed / b.Run().Length()
	r.Tensions = pulley.Locked(b.standing, r.Pull, b.Centrifugal(r.Speed))
	r.TightFrequency = b.runningFrequency(r.Tensions.TightSide, r.Speed)
	r.SlackFrequency = b.runningFrequency(r.Tensions.SlackSide, r.Speed)
	tilt := b.Run().SpanTilt()
	r.Running = r.Tensions.ShaftLoad(tilt)
	r.Standing = pulley.Locked(b.standing, 0, 0).ShaftLoad(tilt)
	r.CrankMoment = math.Max(r.Standing.Size(), r.Running.Size()) * b.Overhang()
	r.Swing = b.swing(at, train)
	r.DesignPower = b.spec.ServiceFactor * at.Power
	r.Rating, r.RatingWhy = b.rating(at)
	r.Temperature = b.Temperature(at, r.MeshingLoss+r.BendingLoss+r.WindageLoss)
	return r
}

// laidOut is the part of the result that holds at every operating point.
func (b Belt) laidOut() Result {
	s, o := &b.spec, b.Run()
	r := Result{
		Section: s.Section, BeltWidth: s.BeltWidth,
		BeltTeeth: b.beltTeeth, Geometry: o,
		CrankOutside: b.row.outsideDiameter(s.CrankTeeth), DrivenOutside: b.row.outsideDiameter(s.DrivenTeeth),
		CentreShorter: b.shorter, CentreLonger: b.longer,
		SmallestTeeth: min(s.CrankTeeth, s.DrivenTeeth), TeethEngaged: b.engaged(), TeethInMesh: b.teethInMesh(),
		FaceWidth: b.FaceWidth(), StiffnessGiven: b.stiffness.Known,
		RequiredTension: b.required, StandingTension: b.standing, TensionGiven: s.StandingTension.Known,
		SpeedMax: s.SpeedMax, TemperatureLimit: s.TemperatureMax, RatingSource: b.ratingSource(),
		CrankInertia: b.CrankInertia(), DrivenInertia: b.SpinningInertia(),
	}
	length := o.Length()
	r.BeltMass = b.BeltMass()
	r.SpanFrequency = math.Sqrt(b.standing/b.MassPerLength()) / (2 * o.Span())
	if b.stiffness.Known {
		r.SettingRate = param.Known(2 * math.Cos(o.SpanTilt()) * b.stiffness.Value / length)
		if slack, ok := o.WithLength(length / (1 + b.standing/b.stiffness.Value)); ok {
			r.TakeUp = param.Known(o.CentreDistance - slack.CentreDistance)
		}
	}
	return r
}

// ratingSource is where the figures behind the rating stand.
func (b Belt) ratingSource() string {
	switch {
	case !b.spec.Section.Trapezoidal():
		return b.spec.TableSource
	case b.spec.AllowableTension.Known:
		return "ISO 5295, with the allowable tension given"
	}
	return "ISO 5295, allowable tension " + allowableOrigin
}

// runningFrequency is that of a free span under a total tension, N, moving at
// a belt speed in m/s, Hz. Empty when the span hangs slack. From memory: Sack,
// Transverse oscillations in travelling strings, 1954.
func (b Belt) runningFrequency(tension, speed float64) param.Slot {
	if !(tension > b.Centrifugal(speed)) {
		return param.Slot{}
	}
	wave := math.Sqrt(tension / b.MassPerLength())
	return param.Known((wave*wave - speed*speed) / (2 * b.Run().Span() * wave))
}

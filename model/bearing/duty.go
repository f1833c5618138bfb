package bearing

import (
	"math"

	"backspan/model/param"
)

// Duty is how the bearings of a shaft are run and what is asked of them.
type Duty struct {
	GeometryFactor    float64 // f0
	Lubrication       Lubrication
	Reliability       Reliability
	LifeAsked         float64 // s
	ApplicationFactor float64 // on every running load
	TurningShare      float64 // of the time, under what a turn adds
}

// Loads is what one bearing bears, N; none is negative.
type Loads struct {
	Running   float64 // radial, straight flight
	Turn      float64 // what a turn adds to it, mean
	TurnWear  float64 // cubic mean of that, where it is more
	Peak      float64 // what pulsation and the greatest of a turn add to it
	Wear      float64 // what pulsation adds to the mean that wears
	Standing  float64 // radial, nothing turns
	Axial     float64
	AxialWear float64 // what pulsation adds to the mean that wears
	AxialPeak float64 // greatest, where that is more than Axial
}

// PulseFactor is the cubic mean of a load that swings as a sine, over its mean;
// swing is the amplitude over the mean, 0 or more. Up to a swing of 1 it is the
// cube root of 1 + 3/2 swing². Source: Palmgren's cubic mean.
func PulseFactor(swing float64) float64 {
	if swing <= 1 {
		return math.Cbrt(1 + 1.5*swing*swing)
	}
	const steps = 64
	sum := 0.0
	for i := range steps {
		x := math.Abs(1 + swing*math.Sin(2*math.Pi*(float64(i)+0.5)/steps))
		sum += x * x * x
	}
	return math.Cbrt(sum / steps)
}

// Rated is one bearing of a shaft. Loads in N, lives in s. An empty slot has
// no value: nothing loads the bearing, or nothing turns.
type Rated struct {
	Size             Size
	Running          float64 // radial, straight flight
	Turning          float64 // radial, with the mean gyroscopic couple
	Standing         float64 // radial
	Axial            float64
	Equivalent       float64 // cubic mean, application factor included
	StaticEquivalent float64 // greatest, running or standing
	LeastLoad        float64
	GreatestThrust   float64
	BasicLife        param.Slot
	Life             param.Slot
	LifeFactor       param.Slot
	ViscosityRatio   param.Slot
	StaticSafety     param.Slot
	SpeedParameter   float64 // mean diameter times speed, m·rev/s
	Survival         float64 // chance to outlive the life asked
}

// Examine finds life and static safety of one bearing at a speed, rad/s. The
// life counts the cubic mean of straight flight and turns, in a turn at most so
// much, because cubic means of parts are added; the static safety the greatest
// load. Source: ISO 281:2007, ISO 76.
func (b DeepGroove) Examine(d *Duty, x Loads, speed float64) Rated {
	r := Rated{
		Size: b.Designation, Running: x.Running, Turning: x.Running + x.Turn, Standing: x.Standing, Axial: x.Axial,
		LeastLoad: b.LeastLoad(), GreatestThrust: b.GreatestThrust(), SpeedParameter: b.SpeedParameter(speed),
		Survival: 1,
	}
	af := d.ApplicationFactor
	axial := af * (x.Axial + x.AxialWear)
	turning := r.Running + math.Max(x.Turn, x.TurnWear)
	loads := [2]float64{b.EquivalentLoad(af*(r.Running+x.Wear), axial, d.GeometryFactor), b.EquivalentLoad(af*(turning+x.Wear), axial, d.GeometryFactor)}
	shares := [2]float64{1 - d.TurningShare, d.TurningShare}
	r.Equivalent = MeanLoad(loads[:], shares[:])
	r.StaticEquivalent = math.Max(StaticLoad(af*(r.Running+x.Peak), af*math.Max(x.Axial, x.AxialPeak)), r.Standing)
	r.StaticSafety = param.Finite(b.StaticRating / r.StaticEquivalent)
	if !(r.Equivalent > 0) || !(speed > 0) {
		return r
	}
	rated := b.Rate(r.Equivalent, speed, d.Lubrication, d.Reliability)
	seconds := 2 * math.Pi / speed
	r.BasicLife, r.Life = param.Finite(rated.BasicLife*seconds), param.Finite(rated.Life*seconds)
	r.LifeFactor, r.ViscosityRatio = param.Known(rated.LifeFactor), param.Known(rated.ViscosityRatio)
	r.Survival = Survival(d.LifeAsked / (seconds * rated.LifeFactor * rated.BasicLife))
	return r
}

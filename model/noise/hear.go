package noise

import (
	"math"

	"backspan/model/param"
)

// far150 is the distance of the level that machines are compared by, m.
const far150 = 150.0

// Input is a machine at full throttle standing, and who hears it.
type Input struct {
	Source
	Spec
	Listener
	DiscAft float64 // propeller disc behind the back plane, m
	ShaftUp float64 // propeller axis above the hip axis, m
}

// Result is what is heard. Levels in dB(A) unless said otherwise.
type Result struct {
	Passing float64 // frequency of the blades, Hz
	Loudest float64 // frequency of the loudest tone far off, A-weighted, Hz
	TipMach float64

	At150     float64    // all of it
	Tones     float64    // at 150 m, propeller alone in smooth air
	Vortex    float64    // at 150 m, the same
	Engine    param.Slot // at 150 m
	Plain     float64    // propeller at 150 m, dB without weighting
	AtOwn     float64
	AtEar     float64 // bare
	Protected float64 // under the hearing protector
	Daily     float64 // over 8 h, under the protector
	Permitted float64 // time in a day, under the protector, s

	spec     Spec
	listener Listener
}

// Hear reckons the levels. It does not allocate.
func Hear(in *Input) Result {
	tones, vortex := in.far(in.Direction), in.vortex()
	behind := tones.times(math.Pow(10, in.PusherExcess/10))
	propeller := behind.plus(vortex).times(in.Ground.gain())

	r := Result{Passing: in.passing(), Loudest: float64(tones.loudest) * in.passing(), TipMach: in.TipMach, spec: in.Spec, listener: in.Listener}
	r.Tones, r.Vortex = level(tones.weighted*at(far150)), level(vortex.weighted*at(far150))
	r.Plain = level(propeller.square * at(far150))
	r.At150 = level(propeller.weighted*at(far150) + in.engine(far150))
	r.AtOwn = level(propeller.weighted*at(in.Distance) + in.engine(in.Distance))
	if in.EngineLevel.Known {
		r.Engine = param.Known(level(in.engine(far150)))
	}
	r.ear(in, vortex)
	return r
}

// ear leaves out the allowance for body and cage: it was measured far off,
// and at arm's length the steady pull of the passing blades is the louder part.
func (r *Result) ear(in *Input, vortex sound) {
	ahead, beside := in.place(in.DiscAft, in.ShaftUp)
	ring := effectiveShare * in.Radius
	gap := math.Sqrt(ahead*ahead + beside*beside + ring*ring)
	r.AtEar = level(in.near(ahead, beside).weighted + vortex.weighted*at(gap) + in.engine(in.EngineToEar))
	r.Protected = max(r.AtEar-in.Attenuation, 0)
	r.Daily = daily(r.Protected, in.Time)
	r.Permitted = permitted(r.Protected, in.Criterion)
}

// at is the fall of the mean square from 1 m to a distance, m: spherical
// spreading.
func at(distance float64) float64 { return 1 / (distance * distance) }

// engine is the engine's weighted mean square at a distance, Pa²; 0 when it
// has not been measured. The ground is in the measurement.
func (in *Input) engine(distance float64) float64 {
	if !in.EngineLevel.Known {
		return 0
	}
	return square(in.EngineLevel.Value) * in.EngineDistance * in.EngineDistance * at(distance)
}

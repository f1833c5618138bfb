package belt

import (
	"backspan/model/param"
	"backspan/model/unit"
)

// LoadFactor says what stands for the unevenness of the load. The two are
// never multiplied.
type LoadFactor string

// The load factors.
const (
	ByServiceFactor LoadFactor = "service factor"
	ByPulsation     LoadFactor = "pulsation"
)

// Pulsing is how the stage answers an uneven torque.
type Pulsing struct {
	LoadFactor LoadFactor
	Reserve    float64 // on the standing tension that the pulsation demands, share
	LossFactor float64 // of the belt's stiffness
	ArcShare   float64 // of the wrapped belt that stretches with the spans
	Detuning   float64 // share of a natural frequency to keep clear of
}

func defaultPulsing() Pulsing {
	return Pulsing{LoadFactor: ByServiceFactor, Reserve: 0.15, LossFactor: 0.12, ArcShare: 0.25, Detuning: 0.15}
}

func (s *Pulsing) params(details bool) []param.Param {
	ps := []param.Param{
		param.Choice(&s.LoadFactor, "load_factor", "Load factor", ByServiceFactor, ByPulsation).
			Help("what the standing tension and the fatigue life allow for uneven torque: a service factor on the mean, or the torque peaks computed"),
		param.Number(&s.Reserve, "pulsation_reserve", "Reserve on the pulsation demand", unit.Percent).
			Within(0, 100).Typical(10, 30).Help("standing tension beyond that which just keeps the slack side pressed on its pulley").
			From("estimate").When(s.LoadFactor == ByPulsation),
		param.Number(&s.LossFactor, "loss_factor", "Loss factor of the belt", unit.One).
			Within(0.02, 0.6).Typical(0.1, 0.15).Help("damping of its stretch").From("estimate: 0.1 to 0.15"),
		param.Number(&s.ArcShare, "stretching_arc", "Wrapped belt that stretches", unit.Percent).
			Within(0, 100).Typical(10, 50).Help("share of both arcs that stretches with each span").From("estimate"),
		param.Number(&s.Detuning, "detuning", "Detuning asked", unit.Percent).
			Within(1, 40).Typical(10, 20).Help("how far an exciting frequency must keep from a span's own").From("common practice, no source"),
	}
	expert(ps, details, "load_factor", "pulsation_reserve")
	return ps
}

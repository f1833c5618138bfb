package shaft

import (
	"math"

	"backspan/model/bearing"
	"backspan/model/param"
	"backspan/model/unit"
)

// Loads is what drive and propeller put on the axle at one duty.
type Loads struct {
	// The belt's mean force, N, at the middle of its face, At m
	// ahead of the propeller plate; the wheel's own weight may be added to it.
	Across, Along float64
	At            float64
	Pulsating     Vector // amplitude of that force, N

	PropellerWeight   float64 // N, along the line to the crank; negative with the propeller's axis below
	PropellerOverhang float64 // centre of the propeller behind the plate, m
	Thrust            float64 // N, positive forward
	GyroCouple        float64 // mean in a turn, N·m
	GyroWear          float64 // cubic mean within a revolution, N·m; with two blades half as much again as the mean
	GyroPeak          float64 // greatest within a revolution, N·m: with two blades twice the mean
	Torque            float64 // mean, N·m
	TorqueAmplitude   float64 // N·m
	Speed             float64 // rad/s

	// The same force with the engine stopped.
	Standing struct{ Across, Along float64 }

	CrankMoment float64 // bending of the engine's overhung crank, N·m; 0 where nothing overhangs it
}

// Support rates the axle and its bearings. An unlisted bearing gives the zero
// Result.
//
// Forces that keep their direction are added as vectors; imbalance and the
// gyroscopic couple have any direction and are added in the worst one.
func Support(s Spec, l Loads) Result {
	prop, engine, ok := s.bearings()
	if !ok {
		return Result{}
	}
	c := casesOf(s, l)
	r := Result{
		Axle: s.Axle, Spacing: s.Spacing, LeastSpacing: (prop.Width + engine.Width) / 2,
		CrankMoment: l.CrankMoment,
		LifeAsked:   s.LifeAsked, SafetyAsked: s.SafetyAsked,
	}
	r.SpeedLimit, r.speedSource = s.SpeedLimitIn(s.Lubricant)
	duty, axial := s.duty(), l.Thrust
	r.PropSide = prop.Examine(&duty, c.propSide().loads(math.Abs(s.carries(PropSide, axial))), l.Speed)
	r.EngineSide = engine.Examine(&duty, c.engineSide().loads(math.Abs(s.carries(EngineSide, axial))), l.Speed)
	r.Survival = r.PropSide.Survival * r.EngineSide.Survival
	r.held, r.thrust = c.steady.reactions, [2]float64{s.carries(PropSide, axial), s.carries(EngineSide, axial)}
	r.examineAxle(&s, &c, prop.Bore, engine.Bore)
	return r
}

// carries is the axial load on a bearing: all of it or none.
func (s *Spec) carries(side Side, axial float64) float64 {
	if s.Locating == side {
		return axial
	}
	return 0
}

// cases are the parts of the load, each balanced on its own.
type cases struct {
	places    Places
	wheel     float64  // its place
	steady    balanced // wheel and propeller running
	standing  balanced
	pulsating balanced
	imbalance balanced
	gyro      balanced  // mean
	wear      balanced  // gyroscopic, cubic mean
	peak      balanced  // gyroscopic, greatest
	torque    Stressing // twisting only
}

// balanced is two loads and what holds them: applied 0 at the wheel, 1 at the
// propeller.
type balanced struct {
	loads     [4]Load
	reactions Reactions
}

func (p Places) balance(wheel, propeller Load) balanced {
	r := p.Reactions(wheel, propeller)
	held := r.Loads(p)
	return balanced{[4]Load{wheel, propeller, held[0], held[1]}, r}
}

func casesOf(s Spec, l Loads) cases {
	p := Places{s.PropSidePlace, s.PropSidePlace + s.Spacing}
	hub := -l.PropellerOverhang
	wheel, propeller := Load{At: l.At}, Load{At: hub}
	at := func(place float64, force, couple Vector) Load { return Load{At: place, Force: force, Couple: couple} }
	weight := at(hub, Vector{Along: l.PropellerWeight}, Vector{})
	mass := math.Abs(l.PropellerWeight) / unit.StandardGravity
	return cases{
		places:    p,
		wheel:     l.At,
		steady:    p.balance(at(l.At, Vector{l.Along, l.Across}, Vector{}), weight),
		standing:  p.balance(at(l.At, Vector{l.Standing.Along, l.Standing.Across}, Vector{}), weight),
		pulsating: p.balance(at(l.At, l.Pulsating, Vector{}), propeller),
		imbalance: p.balance(wheel, at(hub, Vector{Along: mass * s.CentreOffset * l.Speed * l.Speed}, Vector{})),
		gyro:      p.balance(wheel, at(hub, Vector{}, Vector{Along: l.GyroCouple})),
		wear:      p.balance(wheel, at(hub, Vector{}, Vector{Along: math.Max(math.Abs(l.GyroCouple), math.Abs(l.GyroWear))})),
		peak:      p.balance(wheel, at(hub, Vector{}, Vector{Along: math.Max(math.Abs(l.GyroCouple), math.Abs(l.GyroPeak))})),
		torque:    Stressing{MeanTorque: math.Abs(l.Torque), TorqueAmplitude: math.Abs(l.TorqueAmplitude)},
	}
}

// shares are the parts of one bearing's load, N.
type shares struct{ steady, standing, pulsating, imbalance, gyro, wear, peak float64 }

func (c *cases) propSide() shares {
	return shares{c.steady.reactions.PropSide.Size(), c.standing.reactions.PropSide.Size(), c.pulsating.reactions.PropSide.Size(),
		c.imbalance.reactions.PropSide.Size(), c.gyro.reactions.PropSide.Size(), c.wear.reactions.PropSide.Size(), c.peak.reactions.PropSide.Size()}
}

func (c *cases) engineSide() shares {
	return shares{c.steady.reactions.EngineSide.Size(), c.standing.reactions.EngineSide.Size(), c.pulsating.reactions.EngineSide.Size(),
		c.imbalance.reactions.EngineSide.Size(), c.gyro.reactions.EngineSide.Size(), c.wear.reactions.EngineSide.Size(), c.peak.reactions.EngineSide.Size()}
}

// loads is what the parts come to, with the axial load that falls on it.
func (x shares) loads(axial float64) bearing.Loads {
	return bearing.Loads{Running: x.steady + x.imbalance, Turn: x.gyro, TurnWear: x.wear, Peak: x.pulsating + x.peak, Standing: x.standing, Axial: axial}
}

// duty is how the bearings are run.
func (s *Spec) duty() bearing.Duty {
	return bearing.Duty{
		GeometryFactor: s.GeometryFactor, Reliability: s.Reliability, LifeAsked: s.LifeAsked,
		ApplicationFactor: s.ApplicationFactor, TurningShare: s.TurningShare,
		Lubrication: bearing.Lubrication{Viscosity: s.Viscosity, Contamination: s.Contamination, LargestFactor: s.LargestLifeFactor},
	}
}

// inverse is the safety of a share used; there is none where nothing is used.
func inverse(use float64) param.Slot { return param.Finite(1 / use) }

package propeller

import "math"

// station is one cell of the blade with all that does not depend on the flow.
type station struct {
	radius, width float64
	chord, angle  float64
	solidity      float64 // B c/(2πr)
	tipGap        float64 // B/2 (R−r)/r
	hubGap        float64 // B/2 (r−Rh)/Rh; −1 without loss at the hub
	delay         float64 // share of the lift kept by rotation
	flatPlate     float64
	thickness     float64 // m
	area          float64 // of the section, m²
	share         float64 // radius as a share of the tip radius
	section       Section
	table         *polarTable // in place of the section, where one is given
}

// fix sets p to the station's section at a Reynolds and a Mach number.
func (st *station) fix(p *polar, reynolds, mach float64) {
	if st.table != nil {
		st.table.fix(p, reynolds, mach, st.delay)
		return
	}
	st.section.fix(p, reynolds, mach, st.delay, st.flatPlate)
}

// element is one station looked at under one inflow angle.
type element struct {
	phi      float64
	residual float64
	sin, cos float64
	cl, cd   float64
	loss     float64
}

// along and across are the force coefficients along the shaft (thrust) and
// across it (torque).
func (e *element) along() float64  { return e.cl*e.cos - e.cd*e.sin }
func (e *element) across() float64 { return e.cl*e.sin + e.cd*e.cos }

// balance is a station at one advance ratio and with its section at one
// Reynolds and Mach number: the residual to be solved.
type balance struct {
	*station
	advance float64 // λ = V/(Ωr)
	free    float64 // inflow angle without induction, atan λ
	polar   polar
	warm    bool    // a solution for nearly the same polar is at hand
	close   float64 // step after which one more ends the iteration, rad
}

// facing is the balance of a station in a flow, its polar still to be set.
func (st *station) facing(f *Flow) balance {
	advance := f.Airspeed / (f.Speed * st.radius)
	return balance{station: st, advance: advance, free: math.Atan(advance), close: roughStep}
}

// look computes the balance of blade force and momentum at inflow angle phi,
//
//	F sin φ (|sin φ| − λ cos φ) − σ/4 (cn + λ ct),   λ = V/(Ωr),
//
// which has no singularity at V = 0. It is the residual of blade-element
// momentum theory times 4F sin² φ.
func (q *balance) look(phi float64) (e element) {
	e.phi = phi
	e.sin, e.cos = math.Sincos(phi)
	e.loss = lossFactor(q.tipGap, q.hubGap, e.sin)
	q.load(&e)
	return e
}

// load puts the section's forces on an element whose inflow is known.
func (q *balance) load(e *element) {
	e.cl, e.cd = q.polar.coefficients(q.angle - e.phi)
	e.residual = e.loss*e.sin*(math.Abs(e.sin)-q.advance*e.cos) - q.solidity/4*(e.along()+q.advance*e.across())
}

const (
	// leastInflow keeps the swirl finite where almost no air goes through:
	// there the drag would spin up the same air for ever.
	leastInflow = 0.02
	// leastShare bounds speeds while a station is still being solved.
	leastShare = 0.2
)

// speed is the resultant air speed at the blade, m/s, for the element's
// inflow, spin = Ωr and airspeed V: from the greater of the two, where a small
// difference does least harm.
func (st *station) speed(e *element, spin, airspeed float64) float64 {
	if airspeed > spin && e.sin > leastInflow {
		k := st.solidity * e.along() / (4 * e.loss * e.sin * e.sin)
		return airspeed / (e.sin * max(1-k, leastShare))
	}
	swirl := st.solidity / (4 * e.loss) * (math.Copysign(e.cl, e.cl*e.sin)/e.cos + e.cd/max(math.Abs(e.sin), leastInflow))
	return spin / (max(1+swirl, leastShare) * e.cos)
}

// settled is a solved station.
type settled struct {
	element
	start    float64 // inflow angle to begin the search at
	slope    float64 // of the residual there
	speed    float64 // resultant, m/s
	resolved bool

	unbalanced bool // momentum theory has no answer here

	stall, lowerStall float64 // angles of attack at stall, rad
}

// forces of the air on one blade's cell, along the shaft and across it, N.
func (s *settled) forces(st *station, density float64) (along, across float64) {
	load := 0.5 * density * s.speed * s.speed * st.chord * st.width
	return load * s.along(), load * s.across()
}

const (
	speedTolerance = 1e-5 // relative, of the speed behind Reynolds and Mach number
	speedPasses    = 6
	roughStep      = 3e-4 // rad; enough while that speed is still a guess
	fineStep       = 3e-6 // rad; one more step of the secant is then exact
)

// settle solves the station. ratio is the resultant speed of the neighbour as
// a multiple of its speed without induction, 1 when there is none.
func (st *station) settle(f *Flow, ratio float64) settled {
	spin, q := f.Speed*st.radius, st.facing(f)
	speed := ratio * math.Hypot(spin, f.Airspeed)
	var s settled
	for range speedPasses {
		st.fix(&q.polar, f.Density*speed*st.chord/f.Viscosity, speed/f.SoundSpeed)
		s.resolved = q.inflow(&s)
		s.stall, s.lowerStall = q.polar.stall, q.polar.lowerStall
		s.speed = st.speed(&s.element, spin, f.Airspeed)
		if math.Abs(s.speed-speed) <= speedTolerance*speed {
			break
		}
		speed, q.warm, q.close = s.speed, true, fineStep
	}
	return s
}

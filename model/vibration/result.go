package vibration

import (
	"math"

	"backspan/model/part"
	"backspan/model/unit"
)

// Duty is a machine at full throttle standing. Places in m, x from the pilot's
// back plane aft, z from the hip axis up.
type Duty struct {
	Parts     []Part // that swing together
	MountFace float64
	CrankAxis float64 // height
	Cylinder  float64 // plane of the cylinder
	Lean      float64 // of the cylinder from upright to the right, rad

	Plate, PropellerAxis float64 // place and height of the propeller plate
	PropellerRadius      float64
	TipGap               float64 // tip to guard, without sag
	GuardAhead           float64 // guard's plane ahead of the plate

	Thrust float64 // N
	Torque float64 // of the air on the propeller about x, N·m

	Cylinders                       int
	Reciprocating, CrankRadius, Rod float64
	CrankSign                       float64        // +1 turns clockwise seen from behind
	Working, Idle                   float64        // crank speeds, rad/s
	Pulsation                       part.Pulsation // at full throttle standing
	Crank                           part.Crank     // its pulses at other speeds; nil where not known
}

// Result is how the machine shakes.
type Result struct {
	Solved bool
	Held   bool // the mounts hold the body in every direction
	Single bool // one cylinder: its shaking is known

	Shake         Shake
	Modes         [freedoms]float64 // Hz
	Mass          float64           // that swings, kg
	Overhang      float64           // centre of gravity behind the mounts' middle, m
	PassedFirst   float64           // share of the force once a turn
	FirstForce    float64           // N
	SecondForce   float64           // N
	FiringCouple  float64           // about the thrust axis, N·m
	FiringPassed  float64           // share
	Crossed       [2]int            // modes that the first order crosses: below idle, from idle up
	Passage       Passage           // while the engine runs up through the modes
	HubForward    float64           // of the plate under all loads, m
	HubDrop       float64           // m
	HubAside      float64           // to the right, m
	Tilt          float64           // of the disc, rad
	Twist         float64           // about the thrust axis, rad
	TipShift      float64           // of the tips across the thrust axis: sag and passage, m
	TipForward    float64           // of the foremost tip along it: sag, tilt and passage, m
	TipLeft       float64           // m
	AheadLeft     float64           // m
	TipAsked      float64           // m
	PassedAllowed float64
	Working, Idle float64 // crank speeds, rad/s
	NearMode      float64 // least distance of the first two orders from a mode, share of the mode
}

// Swing finds how the machine shakes at full throttle standing.
func Swing(s *Spec, d Duty) Result {
	r := Result{Solved: true, Single: d.Cylinders == 1, TipAsked: s.ClearanceLeft, PassedAllowed: s.PassedLimit, Working: d.Working, Idle: d.Idle}
	sys := system{body: gather(d.Parts), damping: s.Damping}
	mounts := s.mounts(&d, sys.body.centre)
	r.Mass = sys.body.mass
	cylinder := Cylinder{d.Reciprocating, d.CrankRadius, d.Rod, s.Counterweight}
	if r.Single {
		r.Shake = cylinder.At(d.Working)
	}
	if d.Pulsation.Count > 0 {
		r.FiringCouple = d.Pulsation.Harmonics[0].Amplitude()
	}
	sys.modes, r.Held = sys.body.modes(mounts)
	if !r.Held {
		return r
	}
	for _, m := range mounts {
		r.Overhang -= m.at.x / float64(len(mounts))
	}
	for k := range sys.modes {
		r.Modes[k] = sys.modes[k].speed / (2 * math.Pi)
	}
	r.fire(&sys, &d)
	r.count(&sys, &d)
	if r.Single {
		r.shaken(&sys, &d)
		r.Passage = sys.passage(s, &d, cylinder)
	}
	r.sag(&sys, s, &d)
	return r
}

// mounts stand about the body's centre.
func (s *Spec) mounts(d *Duty, centre place) []mount {
	found := make([]mount, len(s.Places))
	for i, row := range s.Places {
		found[i] = mount{at: place{d.MountFace + row[0], row[1], d.CrankAxis + row[2]}.from(centre), stiffness: [3]float64{s.Axial, s.Shear, s.Shear}}
	}
	return found
}

// shaken finds what of the inertia forces reaches the frame.
func (r *Result) shaken(sys *system, d *Duty) {
	first, second := d.waves(r.Shake, sys.body.centre)
	if through := sys.passed(first, d.Working); first.force() > 0 {
		r.FirstForce, r.PassedFirst = through.force(), through.force()/first.force()
	}
	through := sys.passed(second, 2*d.Working)
	r.SecondForce = through.force()
}

// waves are the shaking once and twice a turn as forces on the body.
func (d *Duty) waves(k Shake, centre place) (first, second wave) {
	sin, cos := math.Sincos(d.Lean)
	at := place{d.Cylinder, 0, d.CrankAxis}.from(centre)
	along := func(force float64) vector { return push(place{0, force * sin, force * cos}, at) }
	// A crank that turns clockwise seen from behind carries its pin from the
	// bore to the right of it.
	across := push(place{0, k.Across * d.CrankSign * cos, -k.Across * d.CrankSign * sin}, at)
	for i := range across {
		across[i] = -across[i] // the counterweight stands opposite the pin
	}
	return wave{cos: along(k.Along), sin: across}, wave{cos: along(k.Second)}
}

// fire finds what share of the firing order's couple about the thrust axis
// reaches the frame. The propeller is taken to turn evenly.
func (r *Result) fire(sys *system, d *Duty) {
	if !(r.FiringCouple > 0) {
		return
	}
	h := d.Pulsation.Harmonics[0]
	through := sys.passed(d.couple(h), h.Order*d.Working)
	r.FiringPassed = math.Sqrt(square(through[3])+square(through[4])+square(through[5])) / r.FiringCouple
}

// couple is what a harmonic of the crank's torque does to the body.
func (d *Duty) couple(h part.Harmonic) wave {
	return wave{cos: vector{3: d.CrankSign * h.Cos}, sin: vector{3: d.CrankSign * h.Sin}}
}

// count tells which modes the first order crosses on its way up, and how near
// the first two orders stand to a mode at the working speed.
func (r *Result) count(sys *system, d *Duty) {
	r.NearMode = math.Inf(1)
	for k := range sys.modes {
		own := sys.modes[k].speed
		switch {
		case own <= d.Idle:
			r.Crossed[0]++
		case own <= d.Working:
			r.Crossed[1]++
		}
		for order := 1.0; order <= 2; order++ {
			r.NearMode = math.Min(r.NearMode, math.Abs(order*d.Working/own-1))
		}
	}
}

// hub is the propeller plate from the body's centre.
func (d *Duty) hub(centre place) place { return place{d.Plate, 0, d.PropellerAxis}.from(centre) }

// sag finds where weight, thrust and torque move the propeller. Thrust pulls
// forward; the air's torque on the propeller is all that turns the body from
// outside.
func (r *Result) sag(sys *system, s *Spec, d *Duty) {
	hub := d.hub(sys.body.centre)
	load := push(place{0, 0, -sys.body.mass * unit.StandardGravity}, place{})
	load.add(push(place{-d.Thrust, 0, 0}, hub))
	load.add(vector{3: d.Torque})
	q := sys.shift(load)
	for i := range q {
		q[i] /= s.StaticShare
	}
	moved := q.at(hub)
	r.HubForward, r.HubAside, r.HubDrop = -moved.x, moved.y, -moved.z
	r.Tilt, r.Twist = math.Hypot(q[4], q[5]), q[3]
	r.TipShift = math.Hypot(moved.y, moved.z) + r.Passage.InPlane
	r.TipForward = r.HubForward + d.PropellerRadius*r.Tilt + r.Passage.Axial
	r.TipLeft, r.AheadLeft = d.TipGap-r.TipShift, d.GuardAhead-r.TipForward
}

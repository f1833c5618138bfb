package propeller

import "math"

// Flow is the air a propeller works in and how fast it turns.
type Flow struct {
	Airspeed   float64 // along the shaft, ≥ 0, m/s
	Speed      float64 // of the propeller, rad/s
	Density    float64 // kg/m³
	SoundSpeed float64 // m/s
	Viscosity  float64 // dynamic, Pa·s
}

// Status says what a Point is worth.
type Status int

// The states of a point.
const (
	Standing   Status = iota // the propeller does not turn: all figures are 0
	Valid                    // every station is solved
	Outside                  // the working blade is stalled on its back, or its wake runs backwards
	Unresolved               // a station's balance did not settle
	TooFast                  // the tips pass the Mach number at which the section model ends
)

var statusWords = [...]string{
	Standing:   "the propeller does not turn",
	Valid:      "valid",
	Outside:    "outside the model: air drives the blade on its back, or runs backwards behind it",
	Unresolved: "outside the model: the air flow at a blade station did not settle",
	TooFast:    "outside the model: the tips turn faster than Mach number 0.85, where shocks set in that it does not know",
}

func (s Status) String() string { return statusWords[s] }

// Point is the propeller at one flow. When Status is Outside, Unresolved or
// TooFast the figures are finite but stand for nothing; show the status instead.
type Point struct {
	Flow          Flow
	Status        Status
	Thrust        float64 // isolated, N
	Torque        float64 // N·m
	Power         float64 // absorbed, W
	CT, CP        float64 // T/(ρn²D⁴), P/(ρn³D⁵)
	AdvanceRatio  float64 // V/(nD)
	FigureOfMerit float64 // ideal over absorbed power; 0 when not standing still
	Efficiency    float64 // thrust power over absorbed power; 0 standing still
	TipMach       float64 // helical
	StallMargin   float64 // least angle left to stall from 0.5 to 0.95 of the radius, rad
	InducedSpeed  float64 // mean over the disc, m/s
	Reynolds      float64 // at 0.75 of the radius
}

// At works the propeller at one flow. Airspeed must not be negative. It does
// not allocate and may be called from several goroutines.
func (p *Propeller) At(f Flow) Point {
	pt := Point{Flow: f}
	if f.Speed <= 0 {
		return pt
	}
	sum := sums{margin: math.Inf(1), resolved: true}
	w := walk{&f, 1}
	for i := range p.stations {
		s := w.settle(&p.stations[i])
		sum.add(&p.stations[i], &s, &f)
	}
	pt.Status = Valid
	switch {
	case !sum.resolved:
		pt.Status = Unresolved
	case sum.reversed:
		pt.Status = Outside
	}
	b := float64(p.spec.Blades)
	pt.Thrust, pt.Torque, pt.StallMargin = b*sum.thrust, b*sum.torque, sum.margin
	pt.InducedSpeed, pt.Reynolds = sum.induced/p.DiscArea(), sum.reynolds
	pt.Thrust -= p.hubDrag(&pt)
	p.coefficients(&pt)
	if pt.TipMach > greatestMach && pt.Status == Valid {
		pt.Status = TooFast
	}
	return pt
}

// hubDrag is the drag of the boss in the propeller's own inflow, N: what its
// middle blocks.
func (p *Propeller) hubDrag(pt *Point) float64 {
	through, boss := pt.Flow.Airspeed+pt.InducedSpeed, p.spec.BossDiameter
	return p.spec.HubDrag * 0.5 * pt.Flow.Density * through * math.Abs(through) * math.Pi / 4 * boss * boss
}

// sums gathers one blade's loads, and what the whole disc shows.
type sums struct {
	thrust, torque float64
	induced        float64 // speed times area
	margin         float64
	reynolds       float64 // of the last station up to 0.75 of the radius
	reversed       bool
	resolved       bool
}

// The part of the blade that does most of the work.
const innerShare, outerShare = 0.5, 0.95

func (a *sums) add(st *station, s *settled, f *Flow) {
	along, across := s.forces(st, f.Density)
	a.thrust += along
	a.torque += across * st.radius
	added := s.speed*s.sin - f.Airspeed
	a.induced += added * s.loss * 2 * math.Pi * st.radius * st.width
	a.resolved = a.resolved && s.resolved
	if st.share <= 0.75 {
		a.reynolds = f.Density * s.speed * st.chord / f.Viscosity
	}
	if st.share >= innerShare && st.share <= outerShare {
		a.margin = min(a.margin, s.stall-(st.angle-s.phi))
		a.reversed = a.reversed || s.unbalanced || f.Airspeed+2*added < 0 || st.angle-s.phi < s.lowerStall
	}
}

// coefficients turns loads into the dimensionless figures.
func (p *Propeller) coefficients(pt *Point) {
	f, d := &pt.Flow, p.Diameter()
	n := f.Speed / (2 * math.Pi)
	pt.Power = pt.Torque * f.Speed
	pt.CT = pt.Thrust / (f.Density * n * n * d * d * d * d)
	pt.CP = pt.Power / (f.Density * n * n * n * d * d * d * d * d)
	pt.AdvanceRatio = f.Airspeed / (n * d)
	pt.TipMach = math.Hypot(f.Speed*p.tip, f.Airspeed) / f.SoundSpeed
	if pt.Thrust <= 0 || pt.Power <= 0 {
		return
	}
	if f.Airspeed == 0 {
		pt.FigureOfMerit = pt.Thrust * math.Sqrt(pt.Thrust/(2*f.Density*p.DiscArea())) / pt.Power
	} else {
		pt.Efficiency = pt.Thrust * f.Airspeed / pt.Power
	}
}

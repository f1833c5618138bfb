package carry

import (
	"math"

	"backspan/model/param"
	"backspan/model/unit"
)

// Grip is how well the hands hold the machine.
type Grip string

// The grips.
const (
	GoodGrip Grip = "good"
	FairGrip Grip = "fair"
	PoorGrip Grip = "poor"
)

// Lift is picking the machine up with both hands. Heights of the hands above
// the ground in m, Turn in rad.
type Lift struct {
	From, To  float64
	Turn      float64 // of the trunk, away from straight ahead
	Grip      Grip
	Frequency float64 // multiplier, 1 for a lift now and then
}

func defaultLift() Lift { return Lift{From: 0.3, To: 0.85, Grip: FairGrip, Frequency: 1} }

func (l *Lift) params() []param.Param {
	return []param.Param{
		param.Number(&l.From, "from", "Hands at the start, above ground", unit.Millimetre).Within(0, 1750).
			Typical(150, 600).From("estimate"),
		param.Number(&l.To, "to", "Hands at the end, above ground", unit.Millimetre).Within(0, 1750).
			Typical(600, 1200).From("estimate").Help("a tailgate, or the height at which a shoulder slips into the strap"),
		param.Number(&l.Turn, "turn", "Turn of the trunk while lifting", unit.Degree).Within(0, 135).Typical(0, 60),
		param.Choice(&l.Grip, "grip", "Grip", GoodGrip, FairGrip, PoorGrip).
			Help("good: handles or cut-outs; fair: fingers bent at right angles about a tube; poor: neither"),
		param.Number(&l.Frequency, "frequency_multiplier", "Multiplier for how often", unit.One).Within(0.13, 1).
			Typical(0.85, 1).From("from memory: NIOSH 94-110, table 5").
			Help("1 for a lift now and then; 0.94 for one a minute within an hour"),
	}
}

// The metric constants of the lifting equation. Source: NIOSH 94-110.
const (
	loadConstant = 23.0 // kg

	nearestHands, farthestHands = 0.25, 0.63 // ahead of the ankles, m
	bestHeight, highestHands    = 0.75, 1.75 // m
	leastTravel                 = 0.25       // m
	knuckleHeight               = 0.25       // below it the load is held farther out, m
)

// Reach is how far the hands are ahead of the ankles with the hands at a
// height and the centre of the load at depth behind the face next to the body,
// m. Source: the container rule of NIOSH 94-110, with the depth of the centre of
// gravity in place of half the container.
func (l Lift) Reach(height, depth float64) float64 {
	clear := 0.20
	if height < knuckleHeight {
		clear = 0.25
	}
	return max(nearestHands, clear+depth)
}

// Limit is the recommended weight limit with the hands reach ahead of the
// ankles and at height, kg; 0 out of reach:
//
//	RWL = 23 · 25/H · (1 − 0.003·|V − 75|) · (0.82 + 4.5/D) · (1 − 0.0032·A) · FM · CM
//
// in cm and degrees. For two hands and firm ground; not for carrying, running
// or strapping in. Source: NIOSH 94-110 (revised lifting equation of 1991).
func (l Lift) Limit(reach, height float64) float64 {
	if reach > farthestHands || height > highestHands {
		return 0
	}
	return loadConstant * horizontal(reach) * l.vertical(height) * l.distance(l.travel()) * l.asymmetry() * l.Frequency * l.coupling(height)
}

func horizontal(reach float64) float64 { return min(1, nearestHands/reach) }

func (l Lift) vertical(height float64) float64 { return 1 - 0.3*math.Abs(height-bestHeight) }

func (l Lift) travel() float64 { return max(leastTravel, math.Abs(l.To-l.From)) }

func (l Lift) distance(travel float64) float64 { return 0.82 + 0.045/travel }

func (l Lift) asymmetry() float64 { return 1 - 0.0032*unit.Degree.From(l.Turn) }

func (l Lift) coupling(height float64) float64 {
	switch {
	case l.Grip == PoorGrip:
		return 0.90
	case l.Grip == FairGrip && height < bestHeight:
		return 0.95
	}
	return 1
}

// Hardest is the lower of the limits at the start and at the end, kg.
func (l Lift) Hardest(depth float64) float64 {
	return min(l.Limit(l.Reach(l.From, depth), l.From), l.Limit(l.Reach(l.To, depth), l.To))
}

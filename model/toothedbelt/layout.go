package toothedbelt

import (
	"math"

	"backspan/model/belt"
	"backspan/model/param"
)

// layout is a whole belt on two whole pulleys.
type layout struct {
	run       belt.OpenBelt // on the pitch diameters
	beltTeeth int

	shorter, longer param.Slot // centre distance with one belt tooth less or more, m
}

// pitchDiameter is that of a pulley, m: teeth times pitch over π, ISO 5294.
func (s section) pitchDiameter(teeth int) float64 { return float64(teeth) * s.pitch / math.Pi }

// outsideDiameter is over the pulley's teeth, m. ISO 5294, ISO 13050.
func (s section) outsideDiameter(teeth int) float64 {
	return s.pitchDiameter(teeth) - 2*s.lineDifferential
}

// layOut finds the whole belt and the centre distance it leaves.
func (s *Spec) layOut(row section) (layout, error) {
	l := layout{beltTeeth: s.BeltTeeth, run: belt.OpenBelt{
		Crank: row.pitchDiameter(s.CrankTeeth), Driven: row.pitchDiameter(s.DrivenTeeth),
	}}
	closest := l.run
	closest.CentreDistance = s.touching(row)
	least := int(math.Floor(closest.Length()/row.pitch)) + 1
	if s.LaidOutBy == ByCentreDistance {
		if !(s.CentreDistance > closest.CentreDistance) {
			return layout{}, misfit("Centre distance wanted", "the pulleys touch at %s; give %s or more, or smaller pulleys",
				mm(s.CentreDistance), above(closest.CentreDistance))
		}
		wanted := l.run
		wanted.CentreDistance = s.CentreDistance
		// Where the nearest belt would let the pulleys touch, the next one is
		// the nearest that can be built.
		l.beltTeeth = max(int(math.Round(wanted.Length()/row.pitch)), least)
	}
	if l.beltTeeth < least {
		return layout{}, misfit("Belt teeth", "with %d teeth the pulleys touch; give %d or more, or smaller pulleys", l.beltTeeth, least)
	}
	l.run, _ = withLength(l.run, float64(l.beltTeeth)*row.pitch)
	l.longer = centreWith(l.run, float64(l.beltTeeth+1)*row.pitch)
	if l.beltTeeth > least {
		l.shorter = centreWith(l.run, float64(l.beltTeeth-1)*row.pitch)
	}
	return l, nil
}

// touching is the centre distance at which the side walls meet, m.
func (s *Spec) touching(row section) float64 {
	return (row.outsideDiameter(s.CrankTeeth)+row.outsideDiameter(s.DrivenTeeth))/2 + 2*s.SideWallHeight
}

func centreWith(o belt.OpenBelt, length float64) param.Slot {
	moved, ok := withLength(o, length)
	if !ok {
		return param.Slot{}
	}
	return param.Known(moved.CentreDistance)
}

// withLength moves the pulleys until the pitch line has the given length, m.
// It reports false when the belt is too short to go round both pulleys.
//
// Newton's rule with the exact derivative of the length, 2 cos(tilt). The
// length is convex in the centre distance and never below 2C + π(D+d)/2, so
// from that bound the iteration falls monotonically onto the solution.
func withLength(o belt.OpenBelt, length float64) (belt.OpenBelt, bool) {
	if !(length > math.Pi*math.Max(o.Crank, o.Driven)) {
		return o, false
	}
	o.CentreDistance = (length - math.Pi*(o.Crank+o.Driven)/2) / 2
	for range 100 {
		step := (o.Length() - length) / (2 * math.Cos(o.SpanTilt()))
		next := o.CentreDistance - step
		if !(next < o.CentreDistance) || next <= math.Abs(o.Driven-o.Crank)/2 {
			break
		}
		o.CentreDistance = next
	}
	return o, true
}

// engaged is how many teeth of a pulley the belt lies on over a wrap in rad.
func engaged(teeth int, wrap float64) float64 { return float64(teeth) * wrap / (2 * math.Pi) }

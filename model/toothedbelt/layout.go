package toothedbelt

import (
	"math"

	"backspan/model/param"
	"backspan/model/pulley"
)

// wholeBelt is the belt of whole teeth and what its neighbours would ask for.
type wholeBelt struct {
	beltTeeth int

	shorter, longer param.Slot // centre distance with one belt tooth less or more, m
}

// pitchDiameter is that of a pulley, m: teeth times pitch over π, ISO 5294.
func (s section) pitchDiameter(teeth int) float64 { return float64(teeth) * s.pitch / math.Pi }

// outsideDiameter is over the pulley's teeth, m. ISO 5294, ISO 13050.
func (s section) outsideDiameter(teeth int) float64 {
	return s.pitchDiameter(teeth) - 2*s.lineDifferential
}

// layOut finds the whole belt and the geometry on the pitch diameters it leaves.
func (s *Spec) layOut(row section) (pulley.OpenBelt, wholeBelt, error) {
	w := wholeBelt{beltTeeth: s.BeltTeeth}
	run := pulley.OpenBelt{Crank: row.pitchDiameter(s.CrankTeeth), Driven: row.pitchDiameter(s.DrivenTeeth)}
	closest := run
	closest.CentreDistance = s.touching(row)
	least := int(math.Floor(closest.Length()/row.pitch)) + 1
	if s.LaidOutBy == ByCentreDistance {
		if !(s.CentreDistance > closest.CentreDistance) {
			return run, w, misfit("Centre distance wanted", "the pulleys touch at %s; give %s or more, or smaller pulleys",
				mm(s.CentreDistance), above(closest.CentreDistance))
		}
		wanted := run
		wanted.CentreDistance = s.CentreDistance
		// Where the nearest belt would let the pulleys touch, the next one is
		// the nearest that can be built.
		w.beltTeeth = max(int(math.Round(wanted.Length()/row.pitch)), least)
	}
	if w.beltTeeth < least {
		return run, w, misfit("Belt teeth", "with %d teeth the pulleys touch; give %d or more, or smaller pulleys", w.beltTeeth, least)
	}
	run, _ = run.WithLength(float64(w.beltTeeth) * row.pitch)
	w.longer = centreWith(run, float64(w.beltTeeth+1)*row.pitch)
	if w.beltTeeth > least {
		w.shorter = centreWith(run, float64(w.beltTeeth-1)*row.pitch)
	}
	return run, w, nil
}

// touching is the centre distance at which the side walls meet, m.
func (s *Spec) touching(row section) float64 {
	return (row.outsideDiameter(s.CrankTeeth)+row.outsideDiameter(s.DrivenTeeth))/2 + 2*s.SideWallHeight
}

func centreWith(o pulley.OpenBelt, length float64) param.Slot {
	moved, ok := o.WithLength(length)
	if !ok {
		return param.Slot{}
	}
	return param.Known(moved.CentreDistance)
}

// engaged is how many teeth of a pulley the belt lies on over a wrap in rad.
func engaged(teeth int, wrap float64) float64 { return float64(teeth) * wrap / (2 * math.Pi) }

package toothedbelt

import (
	"fmt"
	"math"

	"backspan/model/param"
	"backspan/model/part"
	"backspan/model/pulley"
	"backspan/model/unit"
)

// Belt is a toothed belt stage, laid out, tensioned and calibrated. Build it
// with New; it is a value and safe to copy.
type Belt struct {
	pulley.Stage
	wholeBelt
	spec  Spec
	row   section
	rated part.Duty
	ratio float64

	stiffness param.Slot // EA of the belt, N
	losses    losses

	required float64 // standing tension per strand, N
	standing float64 // as set, N
}

// New lays out a stage and sets it for the engine's rated point: power and
// speed at the crank, air density. standoff is the depth of what stands between
// the engine's drive face and the stage, m. The tension follows from the
// service factor, so what turns on either side is not needed before Examine.
// The error is one sentence that names the parameter to change.
func New(s Spec, rated part.Duty, standoff float64, _ part.Train) (Belt, error) {
	if !(rated.Power > 0) || !(rated.CrankSpeed > 0) {
		return Belt{}, misfit("Engine", "gives no power at its rated point, so the belt cannot be set")
	}
	row := s.section()
	if err := s.fits(row); err != nil {
		return Belt{}, err
	}
	run, whole, err := s.layOut(row)
	if err != nil {
		return Belt{}, err
	}
	b := Belt{
		Stage: pulley.New(s.Build, pulley.Layout{
			Run: run, CrankOutside: row.outsideDiameter(s.CrankTeeth), DrivenOutside: row.outsideDiameter(s.DrivenTeeth),
			FaceWidth: s.BeltWidth + s.FaceAllowance, BeltWidth: s.BeltWidth,
			MassPerLength: row.massPerWidth * s.BeltWidth, Standoff: standoff,
		}),
		wholeBelt: whole, spec: s, row: row, rated: rated,
		ratio: float64(s.DrivenTeeth) / float64(s.CrankTeeth),
	}
	if s.StiffnessPerMillimetre.Known {
		b.stiffness = param.Known(s.StiffnessPerMillimetre.Value * s.BeltWidth / millimetre)
	}
	b.setTension()
	if err := b.calibrate(); err != nil {
		return Belt{}, err
	}
	return b, nil
}

// fits refuses pulleys that cannot be built.
func (s *Spec) fits(row section) error {
	crank, driven := row.outsideDiameter(s.CrankTeeth), row.outsideDiameter(s.DrivenTeeth)
	if room := crank - 2*s.RimThickness; s.CrankBore >= room {
		return misfit("Crank pulley bore", "%s leaves no metal inside the rim of a pulley %s across; lower it or Pulley rim thickness, or add Crank pulley teeth",
			mm(s.CrankBore), mm(crank))
	}
	if room := driven - 2*s.RimThickness; s.BearingSeat >= room {
		return misfit("Bearing seat in driven pulley", "%s leaves no metal inside the rim of a pulley %s across; lower it or Pulley rim thickness, or add Driven pulley teeth",
			mm(s.BearingSeat), mm(driven))
	}
	return nil
}

// misfit is the one sentence that names a parameter by its label.
func misfit(label, format string, a ...any) error {
	return fmt.Errorf("%s: %s", label, fmt.Sprintf(format, a...))
}

// mm shows tenths, since a pulley misses its neighbour by less than a millimetre.
func mm(length float64) string { return fmt.Sprintf("%.1f mm", unit.Millimetre.From(length)) }

// above is the next tenth of a millimetre above a length in m, which is
// itself too little.
func above(length float64) string { return mm(math.Floor(length*1e4+1) / 1e4) }

// setTension finds the standing tension for the service factor times the rated
// power, and takes it unless the builder gave one.
func (b *Belt) setTension() {
	speed := b.Run().Speed(b.rated.CrankSpeed)
	b.required = atDesign(b.spec.ServiceFactor*b.rated.Power/speed, b.Centrifugal(speed)).Standing()
	b.standing = b.required
	if b.spec.StandingTension.Known {
		b.standing = b.spec.StandingTension.Value
	}
}

// teethInMesh is how many whole teeth of the smaller pulley are in mesh.
func (b Belt) teethInMesh() int {
	const rounding = 1e-9 // so that half of 28 teeth is 14
	return int(math.Floor(b.engaged() + rounding))
}

func (b Belt) engaged() float64 {
	return engaged(min(b.spec.CrankTeeth, b.spec.DrivenTeeth), b.Run().SmallestWrap())
}

// Ratio is the crank's speed over the propeller's, exactly.
func (b Belt) Ratio() float64 { return b.ratio }

// Upkeep is what the stage costs to buy and its belt to change.
func (b Belt) Upkeep() part.Upkeep { return b.spec.OneBelt() }

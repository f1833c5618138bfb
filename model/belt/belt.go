package belt

import (
	"fmt"

	"backspan/model/part"
	"backspan/model/pulley"
	"backspan/model/unit"
)

// Belt is a ribbed belt stage, laid out, tensioned and calibrated. Build it
// with New; it is a value and safe to copy.
type Belt struct {
	pulley.Stage
	spec    Spec
	profile section
	rated   part.Duty
	ratio   float64
	losses  losses

	friction float64 // design, over the wrap
	factor   float64 // on the pull, from the service factor unless the pulsation stands for it
	required float64 // standing tension per strand, N
	standing float64 // as set, N

	skidRatio float64 // of contact tensions, at which a dry belt skids on the smaller wrap
}

// New lays out a stage and sets it for the engine's rated point: power and
// speed at the crank, air density. standoff is the depth of what stands between
// the engine's drive face and the stage, m. The error is one sentence that
// names the parameter to change. The train is asked for its torque only when
// the pulsation is to set the tension.
func New(s Spec, rated part.Duty, standoff float64, train part.Train) (Belt, error) {
	if !(rated.Power > 0) || !(rated.CrankSpeed > 0) {
		return Belt{}, misfit("Engine", "gives no power at its rated point, so the belt cannot be set")
	}
	if err := s.fits(); err != nil {
		return Belt{}, err
	}
	profile := s.section()
	stage := pulley.New(s.Build, pulley.Layout{
		Run: pulley.OpenBelt{
			Crank:          s.CrankDiameter + 2*profile.lineDifferential,
			Driven:         s.DrivenDiameter + 2*profile.lineDifferential,
			CentreDistance: s.CentreDistance,
		},
		CrankOutside: s.CrankDiameter, DrivenOutside: s.DrivenDiameter,
		FaceWidth: profile.faceWidth(s.Ribs), BeltWidth: float64(s.Ribs) * profile.ribPitch,
		MassPerLength: float64(s.Ribs) * profile.massPerRib, Standoff: standoff,
	})
	b := Belt{
		Stage: stage, spec: s, profile: profile, rated: rated,
		ratio:    stage.Run().Ratio(),
		friction: designFriction(s.TractionRatio),
	}
	b.skidRatio = traction(wedge(s.DryFriction, grooveAngle), b.Run().SmallestWrap())
	if err := b.calibrate(); err != nil {
		return Belt{}, err
	}
	if err := b.setTension(train); err != nil {
		return Belt{}, err
	}
	return b, nil
}

// fits refuses pulleys that cannot be built or that touch one another.
func (s *Spec) fits() error {
	least := s.leastCentre()
	if !(s.CentreDistance > least) {
		return misfit("Centre distance", "the pulleys touch at %s; give more than %s, or smaller pulleys",
			mm(s.CentreDistance), mm(least))
	}
	if sum := s.Use.Full + s.Use.Climb + s.Use.Level; sum > 1+1e-9 {
		return misfit("Time at full throttle", "the shares of time add up to %s; lower this, Time in climb or Time in level flight to 100 %% in all",
			unit.Percent.Text(sum))
	}
	if room := s.CrankDiameter - 2*s.RimThickness; s.CrankBore >= room {
		return misfit("Crank pulley bore", "%s leaves no metal inside the rim; give less than %s, or a larger crank pulley",
			mm(s.CrankBore), mm(room))
	}
	if room := s.DrivenDiameter - 2*s.RimThickness; s.BearingSeat >= room {
		return misfit("Bearing seat in driven pulley", "%s leaves no metal inside the rim; give less than %s, or a larger driven pulley",
			mm(s.BearingSeat), mm(room))
	}
	return nil
}

// leastCentre is the centre distance at which the pulleys' side walls touch, m.
func (s *Spec) leastCentre() float64 {
	return (s.CrankDiameter+s.DrivenDiameter)/2 + 2*s.SideWallHeight
}

// misfit is the one sentence that names a parameter by its label.
func misfit(label, format string, a ...any) error {
	return fmt.Errorf("%s: %s", label, fmt.Sprintf(format, a...))
}

func mm(length float64) string { return unit.Millimetre.Text(length) }

// calibrate gives the bending resistance whatever the efficiency at the rated
// point leaves after creep and windage.
func (b *Belt) calibrate() error {
	power, speed := b.rated.Power, b.Run().Speed(b.rated.CrankSpeed)
	b.losses = losses{
		stiffness: float64(b.spec.Ribs) * b.profile.stiffnessPerRib,
		windage:   b.Windage(b.rated.AirDensity),
	}
	creep, _, windage := b.losses.at(power, speed)
	left := (1-b.spec.RatedEfficiency)*power - creep - windage
	if left < 0 {
		return misfit("Efficiency at rated power", "creep and windage alone lose %s, more than %s allows; lower it, add ribs or enlarge the crank pulley",
			unit.Percent.Text((creep+windage)/power), unit.Percent.Text(b.spec.RatedEfficiency))
	}
	b.losses.resistance = left / speed
	return nil
}

// Ratio is the crank's speed over the propeller's, without slip.
func (b Belt) Ratio() float64 { return b.ratio }

// Upkeep is what the stage costs to buy and its belt to change.
func (b Belt) Upkeep() part.Upkeep { return b.spec.OneBelt() }

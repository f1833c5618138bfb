package drive

import (
	"errors"
	"math"
)

// ForRatio is the parameter that sets the ratio of this kind of drive, by its
// path below the drive's table, and its value in SI for the ratio of crank over
// propeller speed nearest to the one asked: a belt's driven pulley, a gear's
// wheel. Crank pulley and pinion stay. A direct drive has none.
func (s *Spec) ForRatio(ratio float64) (path string, value float64, err error) {
	switch s.Kind {
	case RibbedBelt:
		return "ribbed_belt.driven_pulley_effective_diameter", s.RibbedBelt.DrivenFor(ratio), nil
	case ToothedBelt:
		return "toothed_belt.driven_teeth", float64(s.ToothedBelt.DrivenFor(ratio)), nil
	case Gear:
		return "gear.wheel_teeth", math.Round(ratio * float64(s.Gear.PinionTeeth)), nil
	}
	return "", 0, errors.New("a direct drive has no ratio to change; choose another Kind of drive")
}

// FreeRatio makes room for another ratio: a gear's centre distance follows its
// teeth, a toothed belt's length its pulleys, with the axles where they are.
func (s *Spec) FreeRatio() {
	switch s.Kind {
	case Gear:
		s.Gear.CentreDistance.Known = false
	case ToothedBelt:
		s.ToothedBelt.KeepAxles()
	}
}

package bolt

import "backspan/model/param"

// Size is a metric coarse thread.
type Size string

// The sizes.
const (
	M5  Size = "M5"
	M6  Size = "M6"
	M8  Size = "M8"
	M10 Size = "M10"
	M12 Size = "M12"
)

// Class is a property class of ISO 898-1.
type Class string

// The property classes.
const (
	Class8  Class = "8.8"
	Class10 Class = "10.9"
	Class12 Class = "12.9"
)

// Material is what the plate presses on.
type Material string

// The materials of the propeller's hub.
const (
	Wood      Material = "wood"
	Composite Material = "composite"
	Metal     Material = "metal"
)

// Spec is what a builder sets. Lengths m, shares of one.
type Spec struct {
	Count      int
	Size       Size
	Class      Class
	BoltCircle float64

	ThreadFriction   float64 // the lowest to be expected: it gives the greatest preload
	HeadFriction     float64
	TighteningTorque param.Slot // N·m; empty tightens to YieldUse
	YieldUse         float64    // of the yield strength, tension and twist together
	TighteningFactor float64    // greatest over least preload, one wrench and one day
	WrenchError      float64    // of the torque, either way; only the build sheet rests on it

	SettlingLoss float64 // of the least preload
	SeasonLoss   float64 // of the least preload, wood only

	Hub          Material
	HubFriction  float64 // wood or composite on the plate
	MetalFlange  float64 // friction of a metal hub on the plate
	Surfaces     int     // that carry the torque by friction
	WoodCrush    float64 // allowed on wood, Pa
	OtherCrush   param.Slot
	Plate        float64 // diameter of the one under the bolt heads
	Bore         float64
	PeakOverMean float64 // of the propeller's torque, where its swing is not known
	SlipAsked    float64
}

// Default is six M8 on a 75 mm circle, tightened as far as a wooden hub bears
// when their threads run easily.
func Default() Spec {
	return Spec{
		Count: 6, Size: M8, Class: Class8, BoltCircle: 0.075,
		ThreadFriction: 0.08, HeadFriction: 0.08, TighteningTorque: param.Known(8), YieldUse: 0.9, TighteningFactor: 1.8, WrenchError: 0.06,
		SettlingLoss: 0.10, SeasonLoss: 0.15,
		Hub: Wood, HubFriction: 0.25, MetalFlange: 0.15, Surfaces: 1, WoodCrush: 7e6, Plate: 0.110, Bore: 0.025,
		PeakOverMean: 5, SlipAsked: 1.8,
	}
}

// friction between hub and plate.
func (s *Spec) friction() float64 {
	if s.Hub == Metal {
		return s.MetalFlange
	}
	return s.HubFriction
}

// loss is the share of the least preload that goes after tightening.
func (s *Spec) loss() float64 {
	if s.Hub == Wood {
		return s.SettlingLoss + s.SeasonLoss
	}
	return s.SettlingLoss
}

// allowedCrush is the pressure that the hub bears, Pa, where it is known.
func (s *Spec) allowedCrush() param.Slot {
	if s.Hub == Wood {
		return param.Known(s.WoodCrush)
	}
	return s.OtherCrush
}

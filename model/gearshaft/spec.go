package gearshaft

import (
	"backspan/model/bearing"
	"backspan/model/param"
	"backspan/model/shaft"
)

// Fit is how a part is held on its shaft.
type Fit string

// The fits.
const (
	Keyed    Fit = "parallel key"
	Splined  Fit = "involute spline"
	Tapered  Fit = "taper"
	Integral Fit = "one piece"
)

// Carrier is what an overhung pinion sits on.
type Carrier string

// The carriers.
const (
	OwnShaft    Carrier = "a shaft of its own"
	EngineCrank Carrier = "the engine's crank"
)

// Spec is what a builder sets. SI throughout.
type Spec struct {
	PinionOn           Carrier    // of an overhung pinion
	WheelLocating      shaft.Side // the bearing that takes the thrust
	PinionLocating     shaft.Side
	WheelPropDynamic   param.Slot // ratings of a data sheet, N; the table's when empty
	WheelPropStatic    param.Slot
	WheelEngineDynamic param.Slot
	WheelEngineStatic  param.Slot
	PinionDynamic      param.Slot // of either
	PinionStatic       param.Slot
	bearing.Service
	Lubricant         bearing.Lubricant
	Contamination     float64 // eC
	ApplicationFactor float64 // on the bearing loads

	Coupling, Wheel, Flange Seat
	CouplingSeatLength      float64 // m
	FlangeSeatLength        float64 // m
	CouplingStep            float64 // of the diameter, below the bearing seat, m
	WheelStep               float64 // above the propeller-side bearing seat, m
	FlangeStep              float64 // below it, m
	KeyYield                float64 // Pa
	SplineModule            float64 // m
	SplineShare             float64 // of the flanks that carry
	TaperRatio              float64 // length per diameter
	TaperFriction           float64

	PinionTensile, PinionYield float64 // core, Pa
	WheelTensile, WheelYield   float64 // of the wheel's shaft, Pa
	Surface                    shaft.Surface
	EnduranceReliability       float64
	Shoulder, Keyway, Toothed  Notch
	Pressed                    Notch
	NotchSensitivity           float64
	Criterion                  shaft.Criterion
	SafetyAsked                float64
	SeatSafetyAsked            float64
}

// Seat is one that carries torque.
type Seat struct {
	Fit      Fit
	Pressure float64 // allowed in the hub, Pa
	NutForce float64 // of a taper, N
}

// Notch is the concentration of stress at one.
type Notch struct{ Bending, Torsion float64 }

// Default suits the default gear, an engine of about 190 cm³.
func Default() Spec {
	return Spec{
		PinionOn: OwnShaft, WheelLocating: shaft.PropSide, PinionLocating: shaft.EngineSide,
		Service: bearing.DefaultService(bearing.TurningShaft), Lubricant: bearing.Oil, Contamination: 0.2, ApplicationFactor: 1.2,

		Coupling: Seat{Tapered, 200e6, 30e3}, Wheel: Seat{Splined, 200e6, 40e3}, Flange: Seat{Splined, 100e6, 40e3},
		CouplingSeatLength: 20e-3, FlangeSeatLength: 20e-3, CouplingStep: 2e-3, WheelStep: 4e-3,
		KeyYield: 350e6, SplineModule: 1.25e-3, SplineShare: 0.5, TaperRatio: 10, TaperFriction: 0.12,

		PinionTensile: 1000e6, PinionYield: 750e6, WheelTensile: 1000e6, WheelYield: 800e6,
		Surface: shaft.Machined, EnduranceReliability: 0.814,
		Shoulder: Notch{1.7, 1.5}, Keyway: Notch{2.14, 3}, Toothed: Notch{2.2, 2.2}, Pressed: Notch{2, 1.5},
		NotchSensitivity: 0.8, Criterion: shaft.Goodman, SafetyAsked: 1.5, SeatSafetyAsked: 1.5,
	}
}

func (s *Spec) duty(viscosity float64) bearing.Duty {
	return bearing.Duty{
		GeometryFactor: s.GeometryFactor, Reliability: s.Reliability, LifeAsked: s.LifeAsked,
		ApplicationFactor: s.ApplicationFactor, TurningShare: s.TurningShare,
		Lubrication: bearing.Lubrication{Viscosity: viscosity, Contamination: s.Contamination, LargestFactor: s.LargestLifeFactor},
	}
}

// notch is that of a seat.
func (s *Spec) notch(f Fit) Notch {
	switch f {
	case Keyed:
		return s.Keyway
	case Splined:
		return s.Toothed
	case Tapered:
		return s.Pressed
	}
	return s.Shoulder
}

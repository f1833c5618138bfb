// Package engine is the engine: full-throttle power over speed in the air of
// the site, fuel at any load, the heat it gives off, the pulsation of its
// torque, and its place in the stack of pieces.
package engine

import (
	"math"
	"slices"

	"backspan/model/param"
	"backspan/model/part"
	"backspan/model/unit"
)

// Cycle is the working cycle.
type Cycle string

// The working cycles.
const (
	TwoStroke  Cycle = "two-stroke"
	FourStroke Cycle = "four-stroke"
)

// Revolutions is the number of crank revolutions per working cycle.
func (c Cycle) Revolutions() float64 {
	if c == FourStroke {
		return 2
	}
	return 1
}

// CurveSource tells where the full-throttle curve comes from.
type CurveSource string

// The sources of the full-throttle curve.
const (
	Measured CurveSource = "measured curve"
	Concept  CurveSource = "concept"
)

// Shape is the shape of a concept's curve.
type Shape string

// The shapes of a concept's curve.
const (
	Broad     Shape = "broad"
	TunedPipe Shape = "tuned pipe"
)

// Point is one point of the measured full-throttle curve.
type Point struct {
	Speed float64 // of the crank, rad/s
	Power float64 // at the crank in the correction standard's reference air, W
}

// Spec is what a user sets about the engine.
type Spec struct {
	Cycle     Cycle
	Cylinders int
	Bore      float64 // m
	Stroke    float64 // m
	Turns     part.Turn

	CurveSource CurveSource
	Curve       []Point // measured, speeds rising

	// The concept, from which a curve is made before there is an engine.
	MeanEffectivePressure float64 // brake, at peak power, Pa
	PeakPowerSpeed        float64 // rad/s
	Shape                 Shape
	PipeGain              float64 // torque the pipe adds at peak power, share of the broad curve's
	PipeWidth             float64 // of the pipe's hump, share of the peak-power speed

	Correction   Correction
	SpeedLimit   float64 // highest allowed crank speed, rad/s
	IdleSpeed    float64 // rad/s
	SpecificFuel float64 // at peak power in the reference air, kg/J

	FrictionPressure  float64 // friction mean effective pressure, Pa
	HeatingValue      float64 // lower, J/kg
	FuelDensity       float64 // kg/m³
	CylinderHeatShare float64 // heat from cylinder and head, share of brake power

	Mass           float64 // complete, without fuel, kg
	DepthToDrive   float64 // mount face to the drive's mounting face, m
	DepthToRearEnd float64 // mount face to the rearmost point, m
	CGAft          float64 // centre of gravity behind the mount face, m
	CGAboveCrank   float64 // centre of gravity above the crank axis, m
	OutsideRadius  float64 // of a cylinder about as large as the engine, m
	CrankInertia   float64 // crank, flywheel and rotor about the crank axis, kg·m²

	// The crank's two main bearings nearest to the drive.
	MainSpacing param.Slot // between their middles, m
	FaceToMain  param.Slot // drive face to the nearer one's middle, m

	// What makes the torque pulsate.
	CompressionRatio  float64 // over the whole stroke
	BurnStart         float64 // crank angle from top dead centre, negative before it, rad
	BurnDuration      float64 // crank angle, rad
	BurnShape         float64 // exponent of Wiebe's function
	RodLength         float64 // of the connecting rod between its eyes, m
	ReciprocatingMass float64 // of one cylinder, kg
}

// Default is an invented single-cylinder two-stroke with a tuned pipe.
func Default() Spec {
	return Spec{
		Cycle: TwoStroke, Cylinders: 1, Bore: 0.062, Stroke: 0.054, Turns: part.Clockwise,
		CurveSource: Measured,
		Curve: points([][]float64{
			{3000, 3.1}, {4000, 4.6}, {5000, 6.6}, {6000, 9.1}, {7000, 12.2},
			{7500, 13.8}, {8000, 15.1}, {8500, 15.6}, {9000, 14.9}, {9500, 12.8},
		}),
		MeanEffectivePressure: 6.5e5, PeakPowerSpeed: perMinute(8200), Shape: Broad, PipeGain: 0.4, PipeWidth: 0.18,
		Correction: SAEJ1349, SpeedLimit: perMinute(9500), IdleSpeed: perMinute(1900), SpecificFuel: 450 / 3.6e9,
		FrictionPressure: 1.2e5, HeatingValue: 43.5e6, FuelDensity: 745, CylinderHeatShare: 0.55,
		Mass: 12.4, DepthToDrive: 0.13, DepthToRearEnd: 0.175, CGAft: 0.085, CGAboveCrank: 0.04,
		OutsideRadius: 0.13, CrankInertia: 0.0026,
		CompressionRatio: 9.5, BurnStart: unit.Degree.SI(-20), BurnDuration: unit.Degree.SI(55), BurnShape: 2,
		RodLength: 0.105, ReciprocatingMass: 0.2,
	}
}

// Clone is a copy that shares nothing with s.
func (s Spec) Clone() Spec {
	s.Curve = slices.Clone(s.Curve)
	return s
}

// Displacement is the swept volume of all cylinders, m³.
func (s Spec) Displacement() float64 {
	return float64(s.Cylinders) * math.Pi / 4 * s.Bore * s.Bore * s.Stroke
}

func perMinute(n float64) float64 { return n * math.Pi / 30 }

// points makes a curve of rows in rpm and kW.
func points(rows [][]float64) []Point {
	ps := make([]Point, len(rows))
	for i, r := range rows {
		ps[i] = Point{Speed: perMinute(r[0]), Power: 1000 * r[1]}
	}
	return ps
}

// rows and setRows carry the curve through its table parameter, in SI.
func (s *Spec) rows() [][]float64 {
	rows := make([][]float64, len(s.Curve))
	for i, p := range s.Curve {
		rows[i] = []float64{p.Speed, p.Power}
	}
	return rows
}

func (s *Spec) setRows(rows [][]float64) {
	s.Curve = make([]Point, len(rows))
	for i, r := range rows {
		s.Curve[i] = Point{Speed: r[0], Power: r[1]}
	}
}

package pulley

import (
	"math"

	"backspan/model/air"
	"backspan/model/part"
)

// flow is what carries the belt's heat away.
type flow struct {
	viscosity    float64 // kinematic, m²/s
	conductivity float64 // W/(m·K)
}

// prandtl is the Prandtl number of air near room temperature.
const prandtl = 0.71

// flowAt is the air around the drive. Conductivity from memory: U.S. Standard
// Atmosphere 1976, eq. 53.
func flowAt(at part.Duty) flow {
	t := at.AirTemperature
	return flow{
		viscosity:    air.Viscosity(t) / at.AirDensity,
		conductivity: 2.64638e-3 * t * math.Sqrt(t) / (t + 245.4*math.Pow(10, -12/t)),
	}
}

// plate is the heat transfer coefficient of a turbulent flat plate of a length
// in m, W/(m²·K). From memory: Nu = 0.037 Re^0.8 Pr^(1/3).
func (a flow) plate(speed, length float64) float64 {
	re := speed * length / a.viscosity
	return 0.037 * math.Pow(re, 0.8) * math.Cbrt(prandtl) * a.conductivity / length
}

// rim is the heat transfer coefficient of a turning cylinder of a diameter in
// m, W/(m²·K). From memory: Nu = 0.133 Re^(2/3) Pr^(1/3).
func (a flow) rim(speed, diameter float64) float64 {
	re := speed * diameter / a.viscosity
	return 0.133 * math.Cbrt(re*re) * math.Cbrt(prandtl) * a.conductivity / diameter
}

// cooling is the heat the belt and the pulley rims shed per kelvin, W/K. The
// spans shed from both faces; on a pulley the belt sheds from its back and the
// rim from its inner side. Air flowing over the drive adds to the belt's own
// speed at right angles.
func (s Stage) cooling(at part.Duty) float64 {
	speed := math.Hypot(s.laid.Run.Speed(at.CrankSpeed), at.Inflow)
	if !(speed > 0) {
		return 0
	}
	a := flowAt(at)
	span := s.laid.Run.Span()
	belt := s.laid.BeltWidth * (s.laid.Run.Length() + 2*span)
	crank, driven := math.Pi*s.laid.Run.Crank*s.laid.FaceWidth, math.Pi*s.laid.Run.Driven*s.laid.FaceWidth
	return a.plate(speed, span)*belt + a.rim(speed, s.laid.Run.Crank)*crank + a.rim(speed, s.laid.Run.Driven)*driven
}

// Temperature is the belt's steady temperature, K, when it sheds a loss in W.
func (s Stage) Temperature(at part.Duty, loss float64) float64 {
	shed := s.cooling(at)
	if !(loss > 0) || !(shed > 0) {
		return at.AirTemperature
	}
	return at.AirTemperature + loss/shed
}

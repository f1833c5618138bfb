package gearshaft

import (
	"math"

	"backspan/model/param"
	"backspan/model/shaft"
)

// SeatRating is what holds a part on its shaft under the greatest torque.
// Stresses in Pa. An empty slot does not apply to the fit, or is not known.
type SeatRating struct {
	Fit      Fit
	Torque   float64 // greatest, N·m
	Pressure param.Slot
	Shear    param.Slot // of a key
	Capacity param.Slot // of a taper, N·m
	Safety   param.Slot
	Why      string // why there is no safety
}

const (
	onePiece = "the part is of one piece with its shaft"
	noKey    = "no parallel key is listed for that shaft, or the seat is too short for one"
	noSpline = "the seat holds fewer than six spline teeth; lower Spline module"
	noTwist  = "no torque passes at this point"
)

// shearShare is shear strength over yield strength by distortion energy.
// Source: Shigley's Mechanical Engineering Design, section 5-5.
const shearShare = 0.577

// rateSeat finds the safety of a seat of a diameter and a length, m.
func (s *Spec) rateSeat(seat *Seat, diameter, length, torque float64) SeatRating {
	r := SeatRating{Fit: seat.Fit, Torque: torque}
	switch {
	case seat.Fit == Integral:
		r.Why = onePiece
	case !(torque > 0):
		r.Why = noTwist
	case seat.Fit == Keyed:
		s.rateKey(&r, seat, diameter, length)
	case seat.Fit == Splined:
		s.rateSpline(&r, seat, diameter, length)
	default:
		t := shaft.Taper{Diameter: diameter, Ratio: s.TaperRatio, NutForce: seat.NutForce, Friction: s.TaperFriction}
		r.Capacity = param.Known(t.Torque())
		r.Safety = param.Finite(t.Torque() / torque)
	}
	if r.Why == "" && !r.Safety.Known {
		r.Why = noTwist
	}
	return r
}

func (s *Spec) rateKey(r *SeatRating, seat *Seat, diameter, length float64) {
	k, ok := shaft.KeyFor(diameter, length)
	if !ok {
		r.Why = noKey
		return
	}
	shear, pressure := k.Shear(r.Torque, diameter), k.Pressure(r.Torque, diameter)
	r.Shear, r.Pressure = param.Known(shear), param.Known(pressure)
	allowed := math.Min(seat.Pressure, s.KeyYield)
	r.Safety = param.Finite(math.Min(shearShare*s.KeyYield/shear, allowed/pressure))
}

func (s *Spec) rateSpline(r *SeatRating, seat *Seat, diameter, length float64) {
	pressure, ok := shaft.Spline{Diameter: diameter, Module: s.SplineModule, Length: length, Share: s.SplineShare}.Pressure(r.Torque)
	if !ok {
		r.Why = noSpline
		return
	}
	r.Pressure, r.Safety = param.Known(pressure), param.Finite(seat.Pressure/pressure)
}

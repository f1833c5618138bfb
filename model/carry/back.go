package carry

import (
	"math"

	"backspan/model/param"
	"backspan/model/unit"
)

// Back is the body about its lowest disc, L5/S1. Lengths in m.
type Back struct {
	UpperShare   float64 // mass above the disc, share of the body
	UpperAhead   float64 // its centre of gravity ahead of the disc, upright
	UpperAbove   float64 // and above it
	BehindDisc   float64 // back plane behind the disc
	DiscAboveHip float64 // disc above the hip axis
	BackMuscle   float64 // lever arm of the muscles that hold the trunk against falling forward
	BellyMuscle  float64 // and of those against falling back
}

func defaultBack() Back {
	return Back{UpperShare: 0.45, UpperAhead: 0.02, UpperAbove: 0.25, BehindDisc: 0.085, DiscAboveHip: 0.10,
		BackMuscle: 0.055, BellyMuscle: 0.09}
}

func (b *Back) params() []param.Param {
	return []param.Param{
		param.Number(&b.UpperShare, "upper_share", "Mass above the disc, of the body", unit.Percent).Within(30, 65).
			Typical(40, 50).From("estimate").Help("head, arms and the trunk above the lowest disc"),
		param.Number(&b.UpperAhead, "upper_ahead", "Its centre ahead of the disc", unit.Millimetre).Within(0, 80).
			Typical(10, 40).From("estimate").Help("upright"),
		param.Number(&b.UpperAbove, "upper_above", "Its centre above the disc", unit.Millimetre).Within(100, 400).
			Typical(200, 300).From("estimate").Help("upright"),
		param.Number(&b.BehindDisc, "behind_disc", "Back plane behind the disc", unit.Millimetre).Within(30, 180).
			Typical(70, 110).From("estimate"),
		param.Number(&b.DiscAboveHip, "disc_above_hip", "Disc above the hip axis", unit.Millimetre).Within(40, 180).
			Typical(80, 120).From("estimate"),
		param.Number(&b.BackMuscle, "back_muscle_arm", "Lever arm of the back muscles", unit.Millimetre).Within(30, 90).
			Typical(50, 60).From("from memory: Chaffin & Andersson, Occupational Biomechanics, 50 to 60 mm"),
		param.Number(&b.BellyMuscle, "belly_muscle_arm", "Lever arm of the belly muscles", unit.Millimetre).Within(50, 150).
			Typical(80, 100).From("from memory: Chaffin & Andersson, Occupational Biomechanics, 80 to 100 mm"),
	}
}

// Disc is the lowest disc of the back in one posture.
type Disc struct {
	Moment      float64 // of the weights about the disc, forward positive, N·m
	Compression float64 // N
}

// At bears the body of the mass and the load with the trunk leaning forward by
// lean, rad:
//
//	M = g·[f·M·x_u + m·x_l]
//	x_u = e·cos θ + u·sin θ
//	x_l = −(b₅ + d)·cos θ + (h − h₅)·sin θ
//	C = (f·M + m)·g·cos θ + |M| / (lever arm of the muscles that hold it)
//
// Standing still, without the muscles that stiffen the trunk from both sides:
// it ranks machines and says nothing of what a back withstands. Source: the
// single equivalent muscle of Chaffin & Andersson, Occupational Biomechanics.
func (b Back) At(bodyMass float64, l Load, lean float64) Disc {
	sin, cos := math.Sincos(lean)
	upper := b.UpperShare * bodyMass
	ahead := b.UpperAhead*cos + b.UpperAbove*sin
	loadAhead := -(b.BehindDisc+l.CGAft)*cos + (l.CGUp-b.DiscAboveHip)*sin
	d := Disc{Moment: gravity * (upper*ahead + l.Mass*loadAhead)}
	d.Compression = (upper+l.Mass)*gravity*cos + b.muscle(d.Moment)
	return d
}

// muscle is the pull that holds a moment, N.
func (b Back) muscle(moment float64) float64 {
	if moment < 0 {
		return -moment / b.BellyMuscle
	}
	return moment / b.BackMuscle
}

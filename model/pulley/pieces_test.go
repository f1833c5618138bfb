package pulley

import (
	"math"
	"testing"

	"backspan/model/part"
)

// Bodies of plain shapes, their inertia about their own centre of gravity
// worked out by hand: the belt 0.4 kg/m, pulleys of 60 and 180 mm pitch diameter
// 180 mm apart.
func TestPiecesBesideTheDrivenPulley(t *testing.T) {
	b := DefaultBuild()
	b.CarrierMass, b.AxleMass, b.BearingSeat = 0.6, 0.5, 0.04
	s := New(b, Layout{
		Run:          OpenBelt{Crank: 0.06, Driven: 0.18, CentreDistance: 0.18},
		CrankOutside: 0.056, DrivenOutside: 0.176, FaceWidth: 0.03, BeltWidth: 0.028, MassPerLength: 0.4,
	})
	pieces := map[string]part.Piece{}
	for _, p := range s.Pieces() {
		pieces[p.Key] = p
	}
	carrier := pieces["drive.carrier"]
	near(t, "carrier's height", carrier.CGUp, 0.09, 1e-15)
	near(t, "carrier's pitch inertia", carrier.PitchInertia, 0.6*0.0324/12, 1e-12)
	near(t, "carrier's yaw inertia", carrier.YawInertia, 0, 0)

	// Spans tilted by asin(1/3); arcs of π∓2·0.339837 rad.
	length := 2*0.18*math.Sqrt(8.0/9) + 0.03*(math.Pi-2*0.339836909) + 0.09*(math.Pi+2*0.339836909)
	loop := pieces["drive.belt"]
	near(t, "belt", loop.Mass, 0.4*length, 1e-9)
	near(t, "belt's pitch inertia", loop.PitchInertia, loop.Mass*0.3*0.3/12, 1e-12)
	near(t, "belt's yaw inertia", loop.YawInertia, loop.Mass*0.12*0.12/12, 1e-12)
	near(t, "belt's plane", loop.CGAft, 0.018, 1e-12)

	// Face 30, side walls 3 each, web 4.
	axle := pieces["drive.axle"]
	near(t, "axle's middle", axle.CGAft, 0.02, 1e-12)
	near(t, "axle's inertia", axle.PitchInertia, 0.5*(3*0.02*0.02+0.04*0.04)/12, 1e-12)
	for _, key := range []string{"drive.crank_pulley", "drive.belt", "drive.carrier", "drive.axle"} {
		near(t, key+" in depth", pieces[key].Depth, 0, 0)
	}
	near(t, "depth", part.Depth(s.Pieces()), 0.004+0.04+0.008, 1e-12)
}

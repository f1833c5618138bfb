package noise

import (
	"testing"

	"pgregory.net/rapid"

	"backspan/model/internal/anyspec"
	"backspan/model/propeller"
	"backspan/model/reading"
)

func drawn(t *rapid.T) Input {
	in := Input{Spec: Default(), Listener: DefaultListener()}
	anyspec.Set(t, in.Spec.Params(), nil)
	anyspec.Set(t, in.Listener.Params(), nil)
	f := func(name string, lo, hi float64) float64 { return rapid.Float64Range(lo, hi).Draw(t, name) }
	in.DiscAft, in.ShaftUp = f("disc", -0.5, 1), f("shaft", -0.3, 1)
	in.Blades = rapid.IntRange(2, 6).Draw(t, "blades")
	in.Radius, in.Speed = f("radius", 0.3, 1), f("speed", 0.1, 900)
	in.Density, in.SoundSpeed = f("density", 0.5, 1.5), f("sound", 290, 360)
	in.Thrust, in.Torque, in.TipMach = f("thrust", -500, 5000), f("torque", -100, 800), f("tip", 0, 3)
	n := rapid.IntRange(0, 24).Draw(t, "cells")
	for i := range n {
		in.Cells = append(in.Cells, propeller.StationLoad{
			Radius: in.Radius * (0.1 + 0.9*(float64(i)+0.5)/float64(n)), Width: in.Radius / float64(n), Chord: f("chord", 0.002, 0.3),
			Thickness: f("thickness", 1e-4, 0.1), Area: f("area", 0, 0.01), Along: f("along", -300, 600), Across: f("across", -100, 300),
		})
	}
	return in
}

func TestAnyMachineIsHeardInFiniteFigures(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		in := drawn(t)
		r := Hear(&in)
		anyspec.Finite(t, "result", r)
		for _, l := range []float64{r.At150, r.Tones, r.Vortex, r.AtOwn, r.AtEar, r.Protected, r.Daily} {
			if l < 0 || l > 250 {
				t.Fatalf("%g dB(A): %+v", l, r)
			}
		}
		if r.Permitted < 0 || r.Permitted > day {
			t.Fatalf("%g s permitted", r.Permitted)
		}
		for _, c := range r.Checks(nil, 0.1) {
			if c.Verdict == reading.Fails {
				t.Fatalf("%s fails", c.Key)
			}
		}
	})
}

package noise

import (
	"testing"

	"backspan/model/param"
	"backspan/model/propeller"
)

func worked(t testing.TB) Input {
	s := propeller.Default()
	p, err := propeller.New(s)
	if err != nil {
		t.Fatal(err)
	}
	f := propeller.Flow{Speed: 267, Density: 1.225, SoundSpeed: 340.294, Viscosity: 1.789e-5}
	pt := p.At(f)
	in := Input{
		Source: Source{
			Blades: s.Blades, Radius: s.Diameter / 2, Speed: f.Speed, Density: f.Density, SoundSpeed: f.SoundSpeed,
			TipMach: pt.TipMach, Thrust: pt.Thrust, Torque: pt.Torque, Cells: p.AppendLoads(nil, f),
		},
		Spec: Default(), Listener: DefaultListener(), DiscAft: 0.35, ShaftUp: 0.34,
	}
	in.EngineLevel = param.Known(84)
	return in
}

func BenchmarkHear(b *testing.B) {
	in := worked(b)
	b.ReportAllocs()
	for b.Loop() {
		if Hear(&in).At150 <= 0 {
			b.Fatal("nothing heard")
		}
	}
}

func BenchmarkFar(b *testing.B) {
	in := worked(b)
	b.ReportAllocs()
	for b.Loop() {
		if in.far(1.8).square <= 0 {
			b.Fatal("nothing heard")
		}
	}
}

func BenchmarkNear(b *testing.B) {
	in := worked(b)
	b.ReportAllocs()
	for b.Loop() {
		if in.near(0.45, 0.34).square <= 0 {
			b.Fatal("nothing heard")
		}
	}
}

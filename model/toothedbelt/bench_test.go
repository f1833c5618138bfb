package toothedbelt

import (
	"testing"

	"backspan/model/part"
)

func loaded() part.Train {
	var hs []part.Harmonic
	for i := range part.Orders {
		hs = append(hs, part.Harmonic{Order: float64(i + 1), Cos: 1 / float64(i+1), Sin: 0.5})
	}
	return train(1.2e-3, 0.035, hs...)
}

func BenchmarkNew(b *testing.B) {
	s, at := Default(), rated()
	for b.Loop() {
		if _, err := New(s, at, 0, part.Train{}); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkTransmit(b *testing.B) {
	stage, at := build(b, asIs), rated()
	for b.Loop() {
		stage.Transmit(at.Power, at.CrankSpeed)
	}
}

func BenchmarkExamine(b *testing.B) {
	stage, at, tr := build(b, asIs), rated(), loaded()
	for b.Loop() {
		stage.Examine(at, tr)
	}
}

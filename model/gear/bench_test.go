package gear

import (
	"testing"

	"backspan/model/part"
)

func BenchmarkNew(b *testing.B) {
	s, at := Default(), rated()
	for b.Loop() {
		if _, err := New(s, at); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkTransmit(b *testing.B) {
	g := newGear(b, Default())
	b.ReportAllocs()
	for b.Loop() {
		g.Transmit(15000, 890)
	}
}

func BenchmarkExamine(b *testing.B) {
	g, at := newGear(b, Default()), rated()
	b.ReportAllocs()
	for b.Loop() {
		g.Examine(at, part.Train{})
	}
}

package noise

import "testing"

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

package bolt

import "math"

// Thread is an ISO metric bolt: nominal diameter and pitch, the diameter of the
// face under its head, that of its hole, and the head across its corners. All m.
type Thread struct{ Nominal, Pitch, Head, Hole, Corners float64 }

// thread is the coarse thread of a size, with a hexagon head and the medium
// hole; of an unlisted size, M8. Source: from memory, ISO 261, ISO 4014, ISO
// 273.
func (s Size) thread() Thread {
	t := threads()
	for i := range t.sizes {
		if t.sizes[i] == s {
			return t.threads[i]
		}
	}
	return t.usual
}

// yield is the 0.2 % proof stress up to M16, Pa; of an unlisted class, that of
// 8.8. Source: from memory, ISO 898-1.
func (c Class) yield() float64 {
	rows := classes()
	for i := range rows {
		if rows[i].class == c {
			return rows[i].proof
		}
	}
	return rows[0].proof
}

// pitchDiameter and the others are ISO 724, m.
func (t Thread) pitchDiameter() float64  { return t.Nominal - 0.6495*t.Pitch }
func (t Thread) rootDiameter() float64   { return t.Nominal - 1.2269*t.Pitch }
func (t Thread) stressDiameter() float64 { return (t.pitchDiameter() + t.rootDiameter()) / 2 }

// StressArea is the area that carries tension, m².
func (t Thread) StressArea() float64 {
	d := t.stressDiameter()
	return math.Pi / 4 * d * d
}

// combined is the equivalent stress of tension and the twist of tightening
// over the tension alone. Source: VDI 2230, tightening to a share of yield.
func (t Thread) combined(threadFriction float64) float64 {
	d2 := t.pitchDiameter()
	twist := 1.5 * d2 / t.stressDiameter() * (t.Pitch/(math.Pi*d2) + 1.155*threadFriction)
	return math.Sqrt(1 + 3*twist*twist)
}

// Preload is the tension, N, at which tightening uses a share of the yield
// strength (Pa). Source: VDI 2230.
func (t Thread) Preload(yield, use, threadFriction float64) float64 {
	return use * yield * t.StressArea() / t.combined(threadFriction)
}

// Lever is tightening torque over preload, m. Source: VDI 2230.
func (t Thread) Lever(threadFriction, headFriction float64) float64 {
	return 0.16*t.Pitch + 0.58*t.pitchDiameter()*threadFriction + (t.Head+t.Hole)/4*headFriction
}

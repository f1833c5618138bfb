package gearshaft

import (
	"math"

	"backspan/model/param"
	"backspan/model/shaft"
)

// place is a section that is looked at.
type place struct {
	name         string
	at, diameter float64
	notch        Notch
	twisted      bool // the torque passes
}

// Shaft is how one shaft stands its load. Moments in N·m.
type Shaft struct {
	Bending float64 // greatest over the sections
	Torque  float64 // greatest
	Fatigue param.Slot
	Yield   param.Slot
	Weakest string // section for fatigue
}

// steel is a shaft's material, Pa.
type steel struct{ tensile, yield float64 }

// examine finds the least safety over the sections for the working point and
// for the torque's peak below it; ratio is that of this shaft's torque to the
// pinion's.
func (s *Spec) examine(x *line, places []place, m steel, t *twist, ratio float64) Shaft {
	r := Shaft{Torque: ratio * t.greatest()}
	fatigue, yield := 0.0, 0.0
	for i := range places {
		p := &places[i]
		strength := shaft.Strength{Tensile: m.tensile, Yield: m.yield,
			Endurance: shaft.EnduranceLimit(m.tensile, p.diameter, s.Surface, s.EnduranceReliability)}
		section := shaft.Section{Diameter: p.diameter, BendingNotch: shaft.NotchFactor(p.notch.Bending, s.NotchSensitivity),
			TorsionNotch: shaft.NotchFactor(p.notch.Torsion, s.NotchSensitivity)}
		for _, c := range [...]shaft.Stressing{x.stressing(p, t.mean, t.swing, t, ratio, 1), x.stressing(p, t.peakMean, t.peakSwing, t, ratio, t.peakSpeed)} {
			r.Bending = math.Max(r.Bending, c.MeanBending+c.BendingAmplitude)
			if use := section.FatigueUse(s.Criterion, c, strength); use > fatigue {
				fatigue, r.Weakest = use, p.name
			}
			yield = math.Max(yield, section.YieldUse(c, strength))
		}
	}
	r.Fatigue, r.Yield = param.Finite(1/fatigue), param.Finite(1/yield)
	return r
}

// stressing tells steady from alternating at a section. What keeps its
// direction in space is reversed every turn; imbalance turns with the
// propeller and stands still on the shaft; the mesh force counts at the peak
// of the torque. speed is over the working speed.
func (x *line) stressing(p *place, mean, swing float64, t *twist, ratio, speed float64) shaft.Stressing {
	s := shaft.Stressing{
		MeanBending:      speed * speed * x.imbalance.bending(p.at, x.places),
		BendingAmplitude: x.fixed(p.at, t.over(mean+swing)) + speed*x.gyroPeak.bending(p.at, x.places),
	}
	if p.twisted {
		s.MeanTorque, s.TorqueAmplitude = ratio*mean, ratio*swing
	}
	return s
}

package gearshaft

import (
	"math"
	"testing"

	"backspan/model/bearing"
	"backspan/model/gear"
	"backspan/model/internal/published"
	"backspan/model/part"
	"backspan/model/shaft"
)

func TestPublished(t *testing.T) {
	published.Run(t, "gearshaft", map[string]published.Runner{
		"limits": func(testing.TB, published.Case) map[string]float64 {
			at := func(module float64) float64 { return (&Result{module: module}).shiftLimit() / inch }
			return map[string]float64{"gear_slope": gearSlope, "bearing_slope": bearingSlope,
				"shift_coarse_in": at(inch / 9), "shift_middle_in": at(inch / 15), "shift_fine_in": at(inch / 30)}
		},
		"helix": func(t testing.TB, c published.Case) map[string]float64 {
			g := gear.Shafting{Hand: gear.Hand(c.Word(t, "hand")), Axial: c.Num(t, "axial")}
			return map[string]float64{"wheel": g.WheelAxial(part.Turn(c.Word(t, "turn")).Sign())}
		},
		"reduction": reduction,
		"spur":      spur,
	})
}

func listed(t testing.TB, s bearing.Size) bearing.DeepGroove {
	t.Helper()
	b, ok := s.DeepGroove()
	if !ok {
		t.Fatalf("no bearing %s", s)
	}
	return b
}

// threeToOne is a reduction of round figures: 20 N·m on the pinion with a
// swing of 5, working circles of 40 and 120 mm, 270 N along the shafts.
func threeToOne(t testing.TB) gear.Shafting {
	const wall = 0.022 + 0.016 // flange, seal, cover and propeller-side bearing
	torque := 20.0
	return gear.Shafting{
		Places: gear.Places{FlangeFront: 0.010, Gears: wall + 0.013, WheelPropBearing: wall - 0.008, WheelEngineBearing: wall + 0.026 + 0.0075,
			PinionPropBearing: wall - 0.007, PinionEngineBearing: wall + 0.026 + 0.007, CouplingRear: wall + 0.026 + 0.019, DriveFace: wall + 0.075},
		Helical: true, FaceWidth: 0.020, SealAndCover: 0.012, Pinion: listed(t, "6204"), WheelEngine: listed(t, "6205"), WheelProp: listed(t, "6206"),
		Ratio: 3, Module: 0.002, PinionRoot: 0.035, PinionWorking: 0.040, WheelWorking: 0.120, Hand: gear.RightHand,
		Torque: torque, Tangential: 2 * torque / 0.040, Radial: 2 * torque / 0.040 * math.Tan(21*math.Pi/180), Axial: 270,
		Viscosity: 15e-6, Application: 1.75, Pulsation: gear.MeshPulsation{Mean: torque, Most: torque + 5, Least: torque - 5, Wear: bearing.PulseFactor(0.25)},
	}
}

func threeToOneLoads() shaft.Loads {
	return shaft.Loads{PropellerWeight: 11, PropellerOverhang: 0.015, Thrust: 650, GyroCouple: 30, GyroPeak: 60, Speed: 2800 * rpm}
}

// spur is a pair without helix, each gear midway between its bearings, in any
// units.
func spur(t testing.TB, c published.Case) map[string]float64 {
	g := threeToOne(t)
	p := &g.Places
	p.WheelPropBearing, p.WheelEngineBearing = p.Gears-0.03, p.Gears+0.03
	g.Torque, g.PinionWorking, g.WheelWorking, g.Axial = c.Num(t, "torque"), c.Num(t, "pinion"), c.Num(t, "wheel"), 0
	g.Tangential = 2 * g.Torque / g.PinionWorking
	g.Radial = g.Tangential * math.Tan(c.Num(t, "pressure_angle")*math.Pi/180)
	r := Rate(Default(), g, part.Clockwise, shaft.Loads{Speed: 100})
	rows := r.Rows()
	return map[string]float64{"tangential": rows[pinionProp].Across + rows[pinionEngine].Across, "radial": rows[pinionProp].Along + rows[pinionEngine].Along,
		"wheel_prop": rows[wheelProp].Radial(), "wheel_engine": rows[wheelEngine].Radial(), "pinion_prop": rows[pinionProp].Radial(), "pinion_engine": rows[pinionEngine].Radial()}
}

func reduction(t testing.TB, _ published.Case) map[string]float64 {
	r := Rate(Default(), threeToOne(t), part.Clockwise, threeToOneLoads())
	got := map[string]float64{"axial_net": r.WheelAxial + r.Thrust, "wheel_fatigue": r.Wheel.Fatigue.Value,
		"wheel_prop_slope_urad": r.Bend.Bearings[wheelProp] * 1e6, "wheel_prop_static": r.Bearings[wheelProp].StaticSafety.Value}
	for i, row := range r.Rows() {
		key := [...]string{"wheel_prop", "wheel_engine", "pinion_prop", "pinion_engine"}[i]
		got[key+"_along"], got[key+"_across"] = row.Along, row.Across
		got[key+"_load"], got[key+"_hours"] = row.Equivalent.Value, row.Life.Value/3600
		if i == pinionEngine {
			got["axial_pinion"] = row.Axial
		}
	}
	return got
}

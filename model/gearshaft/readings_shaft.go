package gearshaft

import (
	"cmp"

	"backspan/model/reading"
	"backspan/model/unit"
)

func (r *Result) forceReadings(rs []reading.Reading) []reading.Reading {
	with := r.WheelAxial
	if r.Thrust < 0 {
		with = -with
	}
	return append(rs,
		reading.New("gearshaft.axial_with_thrust", "Tooth push along with the thrust", with, unit.Newton).Lower().
			How("axial tooth force on the wheel; positive adds to the propeller's thrust, negative takes from it").
			Source("statics; hand of the helix and turn of the crank"),
		reading.New("gearshaft.axial_net", "Net push forward, propeller shaft", r.WheelAxial+r.Thrust, unit.Newton).
			How("thrust and axial tooth force on the locating bearing; negative pushes aft").Source(statics),
		reading.New("gearshaft.torque_mean", "Torque on the pinion shaft, mean", r.TorqueMean, unit.NewtonMetre).
			How("power over speed, full throttle standing").Source("definition"),
		reading.New("gearshaft.torque_swing", "Torque on the pinion shaft, swing", r.Swing, unit.NewtonMetre).Lower().
			How("greatest departure from the mean in the mesh, each harmonic with its phase, standing; or what the Application factor adds where the pulsation is not known").Source("the gear's own pulsation"),
	)
}

func (r *Result) shaftReadings(rs []reading.Reading) []reading.Reading {
	for _, x := range [...]struct {
		s          *Shaft
		key, label string
		why        string
	}{{&r.Pinion, "pinion", "pinion shaft", r.pinionWhy()}, {&r.Wheel, "wheel", "propeller shaft", ""}} {
		none := cmp.Or(x.why, noStress)
		rs = append(rs,
			reading.OfSlot("gearshaft.fatigue_safety_"+x.key, "Fatigue safety, "+x.label, x.s.Fatigue, unit.One, none).Higher().
				How("least over the sections, here at the "+x.s.Weakest+"; distortion energy with the criterion chosen").Source(shaftSource),
			reading.OfSlot("gearshaft.yield_safety_"+x.key, "Yield safety, "+x.label, x.s.Yield, unit.One, none).Higher().
				How("least over the sections, peak with the notch factors").Source(shaftSource),
			reading.Unless(x.why, "gearshaft.bending_moment_"+x.key, "Largest bending, "+x.label, x.s.Bending, unit.NewtonMetre).Lower().
				How("mesh force at its peak, weight, imbalance and gyroscopic couple").Source(statics),
			reading.Unless(x.why, "gearshaft.peak_torque_"+x.key, "Greatest torque, "+x.label, x.s.Torque, unit.NewtonMetre).Lower().
				How("at the working point or where the torque peaks from idle up").Source("the gear's own pulsation"))
	}
	return rs
}

func (r *Result) bendReadings(rs []reading.Reading) []reading.Reading {
	b := &r.Bend
	slope := func(why, key, label string, x float64) reading.Reading {
		return reading.Unless(why, key, label, x, unit.Milliradian).Lower().Source(beamSource)
	}
	return append(rs,
		slope(r.pinionWhy(), "gearshaft.mesh_slope", "Slope between the gears", b.MeshSlope).How("of one shaft to the other at the teeth, in the worst plane, in a turn"),
		reading.Unless(r.pinionWhy(), "gearshaft.separation", "Gears pushed apart", b.Separation, unit.Micrometre).
			How("deflections along the line of centres, in a turn").Source(beamSource).Lower(),
		slope("", "gearshaft.bearing_slope_wheel", "Bearing slope, propeller shaft", max(b.Bearings[wheelProp], b.Bearings[wheelEngine])).How("at the bearing that tilts more, in a turn"),
		slope(r.pinionWhy(), "gearshaft.bearing_slope_pinion", "Bearing slope, pinion shaft", max(b.Bearings[pinionProp], b.Bearings[pinionEngine])).How("at the bearing that tilts more"),
	)
}

func (r *Result) seatReadings(rs []reading.Reading) []reading.Reading {
	for _, x := range r.seats() {
		why := x.s.Why
		if why == "" {
			why = "does not apply to " + string(x.s.Fit)
		}
		rs = append(rs,
			reading.OfSlot("gearshaft."+x.key+"_seat_safety", x.name+" seat, safety", x.s.Safety, unit.One, why).Higher().
				How("least of shear, pressure or slip under the greatest torque").Source(seatSource),
			reading.OfSlot("gearshaft."+x.key+"_seat_pressure", x.name+" seat, pressure", x.s.Pressure, unit.Megapascal, why).Lower().
				How("mean on the flanks of key or spline under the greatest torque").Source(seatSource),
			reading.OfSlot("gearshaft."+x.key+"_key_shear", x.name+" key, shear stress", x.s.Shear, unit.Megapascal, why).Lower().
				How("mean in the key under the greatest torque").Source(seatSource),
			reading.OfSlot("gearshaft."+x.key+"_taper_torque", x.name+" taper, torque it holds", x.s.Capacity, unit.NewtonMetre, why).Higher().
				How("by friction, from the nut's force").Source("statics of a cone"))
	}
	return rs
}

type namedSeat struct {
	s         *SeatRating
	key, name string
}

func (r *Result) seats() [3]namedSeat {
	return [3]namedSeat{{&r.Coupling, "coupling", "Coupling"}, {&r.WheelSeat, "wheel", "Wheel"}, {&r.Flange, "flange", "Flange"}}
}

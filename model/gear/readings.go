package gear

import (
	"backspan/model/reading"
	"backspan/model/unit"
)

const (
	isoGeometry = "ISO 21771"
)

// Readings declares every figure of the reduction.
func (r Result) Readings(rs []reading.Reading) []reading.Reading {
	rs = r.safetyReadings(rs)
	rs = r.geometryReadings(rs)
	rs = r.forceReadings(rs)
	rs = r.strengthReadings(rs)
	rs = r.depthReadings(rs)
	rs = r.torsionReadings(rs)
	rs = r.Coupling.Readings(rs)
	rs = r.lossReadings(rs)
	return r.oilReadings(rs)
}

func (r *Result) geometryReadings(rs []reading.Reading) []reading.Reading {
	g := &r.Geometry
	return append(rs,
		reading.New("gear.centre_distance", "Centre distance", g.CentreDistance, unit.Millimetre).
			How("as given, or from the profile shifts").Source(isoGeometry),
		reading.New("gear.pinion_shift", "Pinion profile shift", g.Pinion.Shift, unit.One).
			How("as given, in modules").Source(isoGeometry),
		reading.New("gear.wheel_shift", "Wheel profile shift", g.Driven.Shift, unit.One).
			How("as given, or what the centre distance leaves for it").Source(isoGeometry),
		reading.New("gear.working_pressure_angle", "Working pressure angle", g.WorkingPressureAngle, unit.Degree).
			How("transverse, from the sum of profile shifts").Source(isoGeometry),
		reading.New("gear.pinion_tip_diameter", "Pinion tip diameter", g.Pinion.TipDiameter, unit.Millimetre).
			How("reference diameter, addendum, shift and tip alteration").Source(isoGeometry),
		reading.New("gear.wheel_tip_diameter", "Wheel tip diameter", g.Driven.TipDiameter, unit.Millimetre).
			How("reference diameter, addendum, shift and tip alteration").Source(isoGeometry),
		reading.New("gear.pinion_root_diameter", "Pinion root diameter", g.Pinion.RootDiameter, unit.Millimetre).
			How("reference diameter, dedendum and shift; before backlash is cut").Source(isoGeometry),
		reading.New("gear.wheel_root_diameter", "Wheel root diameter", g.Driven.RootDiameter, unit.Millimetre).
			How("reference diameter, dedendum and shift; before backlash is cut").Source(isoGeometry),
		reading.New("gear.contact_ratio", "Transverse contact ratio", g.ContactRatio, unit.One).Higher().
			How("length of the path of contact between both tips over the base pitch; the check of it counts involute only").Source(isoGeometry),
		reading.New("gear.overlap_ratio", "Overlap ratio", g.OverlapRatio, unit.One).Higher().
			How("advance of the helix over the face width, in axial pitches").Source(isoGeometry),
		reading.New("gear.tip_thickness_pinion", "Pinion tip thickness", g.Pinion.TipThickness, unit.Millimetre).Higher().
			How("in the normal section").Source(isoGeometry),
		reading.New("gear.tip_thickness_wheel", "Wheel tip thickness", g.Driven.TipThickness, unit.Millimetre).Higher().
			How("in the normal section").Source(isoGeometry),
		reading.New("gear.least_pinion_teeth", "Least teeth without shift", r.LeastPinionTeeth, unit.One).
			How("pinion teeth below which unshifted teeth of this ratio interfere").
			Source("Budynas & Nisbett, Shigley's Mechanical Engineering Design, section 13-7"),
		reading.New("gear.common_factor", "Common factor of the teeth", float64(g.CommonFactor), unit.Count).Lower().
			How("greatest number that divides both numbers of teeth; 1 spreads wear over all").Source("geometry"),
		r.backlashReading(),
	)
}

func (r *Result) backlashReading() reading.Reading {
	const key, label = "gear.backlash_running", "Normal backlash, running"
	if !r.Backlash.Known {
		return reading.Missing(key, label, unit.Millimetre, "no backlash is given")
	}
	return reading.New(key, label, r.Backlash.Running, unit.Millimetre).
		How("drawn backlash plus what the warm aluminium case spreads the shafts").Source("geometry")
}

func (r *Result) forceReadings(rs []reading.Reading) []reading.Reading {
	const statics = "ISO 21771 geometry and statics"
	return append(rs,
		reading.New("gear.pitch_line_speed", "Pitch-line speed", r.PitchLineSpeed, unit.MetrePerSecond).Lower().
			How("of the working circles").Source("geometry"),
		reading.New("gear.sliding_speed", "Greatest sliding speed", r.SlidingSpeed, unit.MetrePerSecond).Lower().
			How("of the flanks at the tip farther from the pitch point").Source(isoGeometry),
		reading.New("gear.mesh_frequency", "Mesh frequency", r.MeshFrequency, unit.Hertz).
			How("pinion teeth times its speed").Source("geometry"),
		reading.New("gear.tangential_force", "Tangential force", r.Forces.Tangential, unit.Newton).Lower().
			How("mean torque at the pinion's reference circle, without shock").Source(statics),
		reading.New("gear.radial_force", "Radial force", r.Forces.Radial, unit.Newton).Lower().
			How("pushes the shafts apart").Source(statics),
		reading.New("gear.axial_force", "Axial force", r.Forces.Axial, unit.Newton).Lower().
			How("from the helix; choose its hand to oppose the propeller's thrust").Source(statics),
	)
}

func (r *Result) lossReadings(rs []reading.Reading) []reading.Reading {
	oil := reading.New("gear.oil_temperature", "Oil temperature", r.Sump.Temperature, unit.Celsius).Lower().
		How("where the losses equal the heat shed to the air and to the engine").
		Source("heat balance; viscosity by ASTM D341, heat transfer an estimate")
	if !r.Sump.Balanced {
		oil = reading.Missing("gear.oil_temperature", "Oil temperature", unit.Celsius,
			"the case cannot shed the losses below 300 °C").Lower()
	}
	return append(rs,
		oil,
		reading.New("gear.oil_viscosity", "Oil viscosity, running", r.Sump.Viscosity, unit.SquareMillimetrePerSecond).
			How("at the oil's temperature").Source("Walther's equation, ASTM D341"),
		reading.New("gear.mesh_loss", "Mesh loss", r.Losses.Mesh, unit.Watt).Lower().
			How("mean coefficient of friction and tooth loss factor; all five losses at the oil temperature of this duty, Power lost in the drive at that of the rated power").Source(lossOrigin),
		reading.New("gear.mesh_loss_low", "Mesh loss, low estimate", r.LeanMeshLoss, unit.Watt).Lower().
			How("by the other report: the lower end of the band").Source(leanOrigin),
		reading.New("gear.churning_loss", "Churning loss", r.Losses.Churning, unit.Watt).Lower().
			How("larger of two methods; it may be three times more or less").Source(churningOrigin),
		reading.New("gear.windage_loss", "Windage loss", r.Losses.Windage, unit.Watt).Lower().
			How("both gears in oil mist").Source(windageOrigin),
		reading.New("gear.bearing_drag", "Bearing drag", r.Losses.Bearings, unit.Watt).Lower().
			How("the case's bearings under the mesh forces, each shaft's radial one shared alike, without the propeller's; at the table's static ratings").Source(bearingOrigin),
		reading.New("gear.seal_drag", "Seal drag", r.Losses.Seals, unit.Watt).Lower().
			How("lip seals on the propeller shaft and, if there is one, the pinion shaft").Source(sealOrigin),
	)
}

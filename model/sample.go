package model

import (
	"fmt"
	"slices"

	"backspan/model/param"
)

// Sample is the built-in study: an invented builder of small series, who must
// settle on a drive for each of three engines. Every figure of it is invented.
func Sample() *Study {
	s := NewStudy("Saddle Meadow trials")
	s.Notes = "Invented for practice: no real engine, maker, person or place. " +
		"A small workshop has three single-cylinder two-strokes on the shelf and asks, for each, belt or gear. " +
		"Prices and decisions are invented too."
	s.Decisions = []Decision{
		{"2026-03-02", "The 190 first: behind this wing the 80 climbs little more than 2 m/s, and nobody here wants to carry the 300."},
		{"2026-03-09", "Ribbed belt. The gear with its fan sits 92 mm deeper and feels 6 kg heavier, and the fan eats what the gear saves."},
		{"2026-03-16", "The open gear stays on the list until a head temperature has been measured: it hangs on that."},
	}
	tune(s.Sections(), [][2]string{
		{"margin_asked", "10"},
		{"site.altitude", "640 m"}, {"site.temperature_offset", "8"}, {"site.relative_humidity", "55"},
		{"pilot.mass", "82 kg"}, {"pilot.stature", "1.79 m"},
		{"wing.glide_ratio", "7.6"}, {"wing.trim_speed", "38.5 km/h"}, {"wing.reference_mass", "125 kg"},
		{"listener.protector_attenuation", "25"},
	})
	for _, e := range []struct {
		size       string
		both       [][2]string
		belt, gear [][2]string
	}{
		{"190", middleEngine, middleBelt, middleGear},
		{"80", smallEngine, smallBelt, smallGear},
		{"300", largeEngine, largeBelt, largeGear},
	} {
		s.Variants = append(s.Variants,
			sampled("Belt "+e.size, common, e.both, e.belt),
			sampled("Gear "+e.size, common, e.both, gearCommon, e.gear))
	}
	open := s.Variants[1].Clone()
	open.Name = "Gear 190 open"
	open.Notes = "What if the case left the cylinder in the wind? Head temperature is for the builder to measure."
	// Its case is taken to be built slim behind the cylinder; without that even
	// the low end of the band would be past the limit.
	tune(open.Sections(), [][2]string{{"cooling.kind", "free air"}, {"cooling.head.case_shade", "20"}})
	s.Variants = slices.Insert(s.Variants, 2, open, sampled("Toothed 190", common, middleEngine, middleToothed))
	s.Reference = s.Variants[0].Name
	return s
}

var common = [][2]string{
	{"frame.pad_depth", "25 mm"}, {"frame.frame_depth", "35 mm"}, {"frame.mount_depth", "28 mm"},
	{"frame.thrust_height", "340 mm"}, {"frame.hang_up", "430 mm"},
	{"frame.harness.harness_mass", "3.2 kg"}, {"frame.harness.other_mass", "0 kg"},
	{"tank.capacity", "10 L"}, {"tank.fill", "80"},
	{"propeller.boss_diameter", "130 mm"}, {"drive.propeller_bolts.plate_diameter", "130 mm"},
	{"drive.propeller_bolts.bolt_circle", "90 mm"}, {"drive.propeller_bolts.tightening_torque", "11.5"},
	{"drive.ribbed_belt.flange_diameter", "130 mm"}, {"drive.toothed_belt.flange_diameter", "130 mm"}, {"drive.gear.flange_diameter", "130 mm"},
}

// A gear case stands between the cylinder and the propeller's inflow, so a gear
// machine usually takes a fan, and a clutch in the case: common practice, no
// source.
var gearCommon = [][2]string{{"cooling.kind", "fan"}, {"drive.kind", "gear"}, {"drive.gear.change_cost", "45"}, {"drive.gear.coupling_stiffness", "100"},
	{"drive.gear.coupling_kind", "centrifugal clutch"}, {"drive.gear.case_depth", "0.35 mm"}}

// About 190 cm³: the engine that most pilots would be given.
var (
	middleEngine = [][2]string{
		{"engine.bore", "66 mm"}, {"engine.stroke", "55.5 mm"}, {"engine.curve_source", "measured curve"},
		{"engine.power_curve", "3000 3.6; 4000 5.6; 5000 8.3; 6000 11.9; 6500 13.9; 7000 15.8; 7500 17.3; 8000 18.0; 8500 17.2; 9000 14.6"},
		{"engine.mass", "9.6 kg"}, {"engine.depth_to_drive", "164 mm"}, {"engine.depth_to_rear_end", "186 mm"},
		{"engine.cg_aft", "88 mm"}, {"engine.crank_inertia", "0.0024"}, {"engine.specific_fuel", "430"},
		{"propeller.diameter", "1300 mm"}, {"propeller.pitch", "660 mm"},
		{"frame.guard.diameter", "1450 mm"},
	}
	middleBelt = [][2]string{
		{"drive.ribbed_belt.ribs", "12"}, {"drive.ribbed_belt.crank_pulley_effective_diameter", "68 mm"},
		{"drive.ribbed_belt.driven_pulley_effective_diameter", "201 mm"}, {"drive.ribbed_belt.centre_distance", "176 mm"},
		{"drive.ribbed_belt.price", "390"},
	}
	// Teeth cannot skid: the belt is set to keep its slack side through the peaks.
	middleToothed = [][2]string{
		{"drive.kind", "toothed belt"}, {"drive.toothed_belt.crank_teeth", "30"}, {"drive.toothed_belt.driven_teeth", "86"},
		{"drive.toothed_belt.belt_teeth", "106"}, {"drive.toothed_belt.standing_tension", "1400 N"}, {"drive.toothed_belt.bearing_seat", "55 mm"},
		{"drive.support.prop_side_place", "18 mm"}, {"drive.support.bearing_spacing", "22 mm"}, {"drive.toothed_belt.price", "470"}, {"drive.support.axle_diameter", "30 mm"},
		{"drive.support.prop_side_bearing", "6006"}, {"drive.support.engine_side_bearing", "6006"},
	}
	middleGear = [][2]string{
		{"drive.gear.pinion_teeth", "19"}, {"drive.gear.wheel_teeth", "54"}, {"drive.gear.price", "690"},
		{"drive.gear.clutch_take_up_speed", "3000 rpm"}, {"drive.gear.clutch_torque", "60"}, {"drive.gear.clutch_torque_speed", "6000 rpm"},
	}
)

// About 80 cm³: light, fast and short of torque.
var (
	smallEngine = [][2]string{
		{"engine.bore", "48 mm"}, {"engine.stroke", "44 mm"}, {"engine.curve_source", "measured curve"},
		{"engine.power_curve", "4000 2.2; 5000 3.2; 6000 4.4; 7000 6.0; 8000 8.2; 8500 9.5; 9000 10.4; 9500 10.8; 10000 10.3; 10500 8.9"},
		{"engine.speed_limit", "10500"},
		{"engine.mass", "6.1 kg"}, {"engine.depth_to_drive", "132 mm"}, {"engine.depth_to_rear_end", "150 mm"},
		{"engine.cg_aft", "70 mm"}, {"engine.crank_inertia", "0.0009"}, {"engine.rod_length", "88 mm"}, {"engine.reciprocating_mass", "0.11 kg"}, {"engine.specific_fuel", "450"},
		{"cooling.head.fin_height", "38 mm"}, {"cooling.head.finned_length", "140 mm"},
		{"propeller.diameter", "1250 mm"}, {"propeller.pitch", "560 mm"},
		{"frame.guard.diameter", "1400 mm"}, {"frame.guard.mass", "2.4 kg"}, {"frame.frame_mass", "2.8 kg"},
		{"frame.exhaust.mass", "1.2 kg"},
	}
	smallBelt = [][2]string{
		{"drive.ribbed_belt.ribs", "8"}, {"drive.ribbed_belt.crank_pulley_effective_diameter", "55 mm"},
		{"drive.ribbed_belt.driven_pulley_effective_diameter", "208 mm"}, {"drive.ribbed_belt.centre_distance", "176 mm"},
		{"drive.support.prop_side_place", "18 mm"}, {"drive.support.bearing_spacing", "22 mm"}, {"drive.ribbed_belt.price", "360"}, {"drive.ribbed_belt.belt_price", "28"},
	}
	smallGear = [][2]string{
		{"drive.gear.module", "1.75 mm"}, {"drive.gear.pinion_teeth", "17"}, {"drive.gear.wheel_teeth", "61"}, {"drive.gear.face_width", "16 mm"},
		{"drive.gear.pinion_bearings", "6203"}, {"drive.gear.wheel_engine_bearing", "6204"}, {"drive.gear.wheel_propeller_bearing", "6205"},
		{"drive.gear.clutch_take_up_speed", "3800 rpm"}, {"drive.gear.clutch_torque", "32"}, {"drive.gear.clutch_torque_speed", "8000 rpm"},
		{"drive.gear.price", "620"}, {"drive.gear.coupling_depth", "26 mm"}, {"drive.gear.coupling_mass", "0.5 kg"},
		{"cooling.fan_depth", "36 mm"}, {"cooling.fan_mass", "0.8 kg"},
	}
)

// About 300 cm³: slow and strong, for heavy pilots and two seats.
var (
	largeEngine = [][2]string{
		{"engine.bore", "76 mm"}, {"engine.stroke", "66 mm"}, {"engine.curve_source", "measured curve"},
		{"engine.power_curve", "2500 5.0; 3500 8.4; 4500 12.8; 5000 15.6; 5500 18.7; 6000 21.8; 6500 24.2; 6800 24.8; 7200 24.0; 7600 21.4"},
		{"engine.speed_limit", "7600"},
		{"engine.mass", "13.4 kg"}, {"engine.depth_to_drive", "185 mm"}, {"engine.depth_to_rear_end", "205 mm"},
		{"engine.cg_aft", "98 mm"}, {"engine.crank_inertia", "0.0042"}, {"engine.rod_length", "125 mm"}, {"engine.reciprocating_mass", "0.34 kg"}, {"engine.specific_fuel", "420"},
		{"propeller.diameter", "1450 mm"}, {"propeller.pitch", "720 mm"},
		{"frame.guard.diameter", "1600 mm"}, {"frame.guard.mass", "3.2 kg"}, {"frame.frame_mass", "3.8 kg"},
		{"frame.exhaust.mass", "2.1 kg"},
	}
	largeBelt = [][2]string{
		{"drive.ribbed_belt.ribs", "15"}, {"drive.ribbed_belt.crank_pulley_effective_diameter", "74 mm"},
		{"drive.ribbed_belt.driven_pulley_effective_diameter", "196 mm"}, {"drive.ribbed_belt.centre_distance", "180 mm"},
		{"drive.ribbed_belt.bearing_seat", "55 mm"}, {"drive.support.axle_diameter", "30 mm"},
		{"drive.support.prop_side_bearing", "6006"}, {"drive.support.engine_side_bearing", "6006"}, {"drive.ribbed_belt.price", "460"}, {"drive.ribbed_belt.belt_price", "46"},
	}
	largeGear = [][2]string{
		{"drive.gear.module", "2.25 mm"}, {"drive.gear.centre_tolerance", "17.5"}, {"drive.gear.pinion_teeth", "20"}, {"drive.gear.wheel_teeth", "51"}, {"drive.gear.face_width", "25 mm"},
		{"drive.gear.pinion_bearings", "6205"}, {"drive.gear.wheel_engine_bearing", "6206"}, {"drive.gear.wheel_propeller_bearing", "6207"},
		{"drive.gear.clutch_take_up_speed", "2600 rpm"}, {"drive.gear.clutch_torque", "100"}, {"drive.gear.clutch_torque_speed", "5500 rpm"},
		{"drive.gear.price", "840"}, {"drive.gear.coupling_mass", "0.9 kg"}, {"cooling.fan_depth", "50 mm"}, {"cooling.fan_mass", "1.4 kg"},
	}
)

func sampled(name string, settings ...[][2]string) Variant {
	v := NewVariant(name)
	for _, set := range settings {
		tune(v.Sections(), set)
	}
	return v
}

// tune sets parameters as a user would type them. A refusal is a mistake in
// the sample itself, which its test finds.
func tune(sections []param.Section, settings [][2]string) {
	for _, s := range settings {
		p, ok := param.Find(sections, s[0])
		if !ok {
			panic(fmt.Sprintf("sample: no parameter %s", s[0]))
		}
		if err := p.Set(s[1]); err != nil {
			panic(fmt.Sprintf("sample: %s: %v", s[0], err))
		}
	}
}

package stack

import (
	"backspan/model/reading"
	"backspan/model/unit"
)

// Result is the machine put together, in the package's frame of reference.
type Result struct {
	Items []Item // from the back plane aft, then what hangs beside; the fuel comes last

	Depth        float64 // back plane to propeller plate, m
	DriveDepth   float64 // engine mount face to propeller plate, m
	OverallDepth float64 // engine mount face to the rearmost of engine and propeller hub, m

	MassDry   float64 // everything but fuel, kg
	MassReady float64 // with fuel, kg
	FuelMass  float64 // kg

	CGAft, CGUp       float64 // ready, m
	CGAftDry, CGUpDry float64 // without fuel, m

	MassFull            float64 // with a full tank, kg
	CGAftFull, CGUpFull float64 // with a full tank, m

	ThrustHeight float64 // propeller axis above the hip axis, m
	HangAft      float64 // hang points behind the back plane, m
	HangUp       float64 // hang points above the hip axis, m
	HangSpacing  float64 // m

	// Inertia of the ready machine about the hang points, kg·m².
	PitchInertia float64 // about the lateral axis
	YawInertia   float64 // about the vertical axis

	EngineClear       float64 // engine's rear end ahead of the propeller plate, m
	TipClearance      float64 // propeller tip to guard, m; negative when they meet
	TipClearanceAsked float64 // m
}

// Readings lists what was found.
func (r Result) Readings(rs []reading.Reading) []reading.Reading {
	const about = "own inertia and mass × distance² of every piece, ready; that of frame, tank, exhaust and harness about themselves is left out"
	return append(rs,
		reading.New("stack.depth", "Depth, back to propeller plate", r.Depth, unit.Millimetre).Lower().
			How("sum of the depths of pad, frame, mount, engine, fan and drive").Source("geometry"),
		reading.New("stack.drive_depth", "Depth, engine mount to plate", r.DriveDepth, unit.Millimetre).Lower().
			How("sum of the depths of engine, fan and drive").Source("geometry"),
		reading.New("stack.overall_depth", "Depth, engine mount to rear end", r.OverallDepth, unit.Millimetre).Lower().
			How("to the rearmost of the engine's rear end and the propeller hub").Source("geometry"),
		reading.New("stack.mass_dry", "Mass without fuel", r.MassDry, unit.Kilogram).Lower().
			How("sum of all pieces, with harness and other loads").Source("geometry"),
		reading.New("stack.mass_ready", "Mass ready to go", r.MassReady, unit.Kilogram).Lower().
			How("mass without fuel, and the fuel at the start").Source("geometry"),
		reading.New("stack.fuel_mass", "Fuel mass at the start", r.FuelMass, unit.Kilogram).
			How("tank capacity × fill × fuel density").Source("geometry"),
		reading.New("stack.cg_aft", "Centre of gravity behind back", r.CGAft, unit.Millimetre).Lower().
			How("mean of the pieces' places weighted by their masses, ready").Source("geometry"),
		reading.New("stack.cg_up", "Centre of gravity above hip axis", r.CGUp, unit.Millimetre).
			How("mean of the pieces' places weighted by their masses, ready").Source("geometry"),
		reading.New("stack.cg_aft_dry", "The same behind back, no fuel", r.CGAftDry, unit.Millimetre).Lower().
			How("mean of the pieces' places weighted by their masses, tank empty").Source("geometry"),
		reading.New("stack.cg_up_dry", "The same above hip axis, no fuel", r.CGUpDry, unit.Millimetre).
			How("mean of the pieces' places weighted by their masses, tank empty").Source("geometry"),
		reading.New("stack.mass_full", "Mass with a full tank", r.MassFull, unit.Kilogram).Lower().
			How("mass without fuel, and the tank capacity × fuel density").Source("geometry"),
		reading.New("stack.cg_aft_full", "Centre behind back, full tank", r.CGAftFull, unit.Millimetre).Lower().
			How("mean of the pieces' places weighted by their masses, tank full").Source("geometry"),
		reading.New("stack.cg_up_full", "Centre above hip axis, full tank", r.CGUpFull, unit.Millimetre).
			How("mean of the pieces' places weighted by their masses, tank full").Source("geometry"),
		reading.New("stack.pitch_inertia", "Pitch inertia about hang points", r.PitchInertia, unit.KilogramSquareMetre).Lower().
			How(about).Source("mechanics, parallel axes"),
		reading.New("stack.yaw_inertia", "Yaw inertia about hang points", r.YawInertia, unit.KilogramSquareMetre).Lower().
			How(about).Source("mechanics, parallel axes"),
		reading.New("stack.tip_clearance", "Propeller tip to guard", r.TipClearance, unit.Millimetre).
			How("half of guard diameter less propeller diameter, at rest").Source("geometry"),
	)
}

// Checks holds the stack against its limits. A clearance within the share
// marginAsked above the one asked is thin.
func (r Result) Checks(cs []reading.Check, marginAsked float64) []reading.Check {
	return append(cs,
		reading.AtLeast("stack.tip_clearance", "Propeller tip to guard", r.TipClearance, r.TipClearanceAsked, marginAsked, unit.Millimetre).
			Source("common practice, no source; set as Tip clearance asked").
			Advice("choose a smaller propeller Diameter or a larger Guard diameter"),
		reading.AtLeast("stack.engine_clear", "Engine ends ahead of the blades", r.EngineClear, 0, 0, unit.Millimetre).
			Source("geometry").
			Advice("shorten Mount face to rear end, or stand the propeller further back: a deeper drive or hub"),
	)
}

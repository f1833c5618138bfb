package stack

import (
	"backspan/model/param"
	"backspan/model/unit"
)

// Spec is the frame and what hangs on it. Lengths in m, masses in kg; places
// in the package's frame of reference.
type Spec struct {
	PadDepth, PadMass     float64 // harness pad and back plate, compressed by the back
	FrameDepth, FrameMass float64 // frame without guard
	FrameUp               float64 // centre of gravity of pad and frame above the hip axis
	MountDepth, MountMass float64 // rubber mounts and their plate

	ThrustHeight float64 // propeller axis above the hip axis
	HangAft      float64 // hang points behind the back plane; negative is ahead
	HangUp       float64 // hang points above the hip axis
	HangSpacing  float64 // between left and right hang point

	GuardDiameter float64 // inside, about the propeller axis
	GuardMass     float64 // hoops, spars and net
	GuardAhead    float64 // its plane ahead of the propeller plate
	TipClearance  float64 // asked between propeller tip and guard

	ExhaustMass float64 // pipe and silencer
	ExhaustAft  float64 // centre of gravity behind the engine's mount face
	ExhaustUp   float64 // centre of gravity above the crank axis

	HarnessMass, HarnessAft, HarnessUp float64
	OtherMass, OtherAft, OtherUp       float64 // reserve, instruments, ballast
}

// Default is a plain frame for a 1.25 m propeller.
func Default() Spec {
	return Spec{
		PadDepth: 0.03, PadMass: 0.5, FrameDepth: 0.06, FrameMass: 3.2, FrameUp: 0.2, MountDepth: 0.03, MountMass: 0.5,
		ThrustHeight: 0.3, HangAft: -0.17, HangUp: 0.44, HangSpacing: 0.45,
		GuardDiameter: 1.4, GuardMass: 2.8, GuardAhead: 0.1, TipClearance: 0.06,
		ExhaustMass: 1.6, ExhaustAft: 0.08, ExhaustUp: -0.15,
		HarnessMass: 3.5, HarnessAft: -0.12, HarnessUp: 0.08,
		OtherMass: 2, OtherAft: -0.15, OtherUp: 0.1,
	}
}

// Sections lists what a user may set, in the order a form shows it.
func (s *Spec) Sections() []param.Section {
	return []param.Section{
		{Key: "frame", Label: "Frame", Params: s.frame(),
			Help: "from the back plane aft to the engine's mount face, and where the machine hangs"},
		{Key: "frame.guard", Label: "Guard", Params: s.guard(), Help: "hoops and net about the propeller"},
		{Key: "frame.exhaust", Label: "Exhaust", Params: s.exhaust(), Help: "pipe and silencer, placed from the engine"},
		{Key: "frame.harness", Label: "Harness and other loads", Params: s.loads(),
			Help: "what is worn and carried besides the machine, in x aft of the back plane and z above the hip axis"},
	}
}

func (s *Spec) frame() []param.Param {
	return []param.Param{
		param.Number(&s.PadDepth, "pad_depth", "Pad depth", unit.Millimetre).Within(0, 120).Typical(20, 50).
			Help("back plane to frame, pressed together by the back"),
		param.Number(&s.PadMass, "pad_mass", "Pad mass", unit.Kilogram).Within(0, 5).Typical(0.3, 1),
		param.Number(&s.FrameDepth, "frame_depth", "Frame depth", unit.Millimetre).Within(5, 300).Typical(40, 100).
			Help("front of the frame to the face that carries the rubber mounts"),
		param.Number(&s.FrameMass, "frame_mass", "Frame mass", unit.Kilogram).Within(0.5, 15).Typical(2.5, 5).
			Help("without guard"),
		param.Number(&s.FrameUp, "frame_up", "Frame above hip axis", unit.Millimetre).Within(-300, 700).Typical(100, 300).
			Help("centre of gravity of pad and frame"),
		param.Number(&s.MountDepth, "mount_depth", "Rubber mount depth", unit.Millimetre).Within(0, 100).Typical(20, 40).
			Help("frame to the engine's mount face, at rest"),
		param.Number(&s.MountMass, "mount_mass", "Rubber mount mass", unit.Kilogram).Within(0, 5).Typical(0.3, 0.8),
		param.Number(&s.ThrustHeight, "thrust_height", "Thrust line above hip axis", unit.Millimetre).Within(-200, 700).
			Typical(200, 400).Help("propeller axis; the crank axis is lower or higher by the drive's offset"),
		param.Number(&s.HangAft, "hang_aft", "Hang points behind back plane", unit.Millimetre).Within(-500, 300).
			Typical(-250, -50).Help("negative is ahead of the back plane"),
		param.Number(&s.HangUp, "hang_up", "Hang points above hip axis", unit.Millimetre).Within(50, 900).Typical(250, 500),
		param.Number(&s.HangSpacing, "hang_spacing", "Hang point spacing", unit.Millimetre).Within(200, 900).Typical(400, 550).
			Help("between the left and the right hang point"),
	}
}

func (s *Spec) guard() []param.Param {
	return []param.Param{
		param.Number(&s.GuardDiameter, "diameter", "Guard diameter", unit.Millimetre).Within(700, 2200).Typical(1300, 1650).
			Help("inside the hoop, about the propeller axis"),
		param.Number(&s.GuardMass, "mass", "Guard mass", unit.Kilogram).Within(0, 15).Typical(2, 4),
		param.Number(&s.GuardAhead, "ahead", "Guard ahead of propeller plate", unit.Millimetre).Within(-300, 400).
			Typical(60, 150).Help("plane of the guard's centre of gravity; negative is behind the plate"),
		param.Number(&s.TipClearance, "tip_clearance", "Tip clearance asked", unit.Millimetre).Within(0, 300).
			Typical(50, 80).From("from memory: common practice 50 to 80 mm").
			Help("least gap between propeller tip and guard, at rest"),
	}
}

func (s *Spec) exhaust() []param.Param {
	return []param.Param{
		param.Number(&s.ExhaustMass, "mass", "Exhaust mass", unit.Kilogram).Within(0, 8).Typical(1, 2.5),
		param.Number(&s.ExhaustAft, "aft", "Exhaust behind mount face", unit.Millimetre).Within(-300, 500).Typical(0, 150).
			Help("centre of gravity, from the engine's mount face"),
		param.Number(&s.ExhaustUp, "up", "Exhaust above crank axis", unit.Millimetre).Within(-600, 600).Typical(-300, 100).
			Help("centre of gravity; negative is below"),
	}
}

func (s *Spec) loads() []param.Param {
	place := func(mass, aft, up *float64, key, label string) []param.Param {
		return []param.Param{
			param.Number(mass, key+"_mass", label+" mass", unit.Kilogram).Within(0, 25),
			param.Number(aft, key+"_aft", label+" behind back plane", unit.Millimetre).Within(-600, 600).
				Help("centre of gravity; negative is ahead of the back plane"),
			param.Number(up, key+"_up", label+" above hip axis", unit.Millimetre).Within(-500, 900).
				Help("centre of gravity; negative is below"),
		}
	}
	return append(place(&s.HarnessMass, &s.HarnessAft, &s.HarnessUp, "harness", "Harness"),
		place(&s.OtherMass, &s.OtherAft, &s.OtherUp, "other", "Other load")...)
}

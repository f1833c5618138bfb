package drive

import (
	"sync"

	"backspan/model/belt"
	"backspan/model/gear"
	"backspan/model/param"
	"backspan/model/part"
	"backspan/model/reading"
	"backspan/model/shaft"
	"backspan/model/toothedbelt"
	"backspan/model/unit"
)

// Result is what every kind of drive reports at the standing match.
type Result struct {
	Kind     Kind
	Ratio    float64
	Turn     int
	Standing part.Transmission
	Mass     float64 // kg
	Depth    float64 // m
	Upkeep   part.Upkeep
	Findings Findings // of the kind itself

	OnAxle    bool        // its wheel turns on an axle of the builder's own
	Axle      shaft.Loads // on that axle; the propeller's part is still to be added
	CrankPull shaft.CrankPull
	Shafting  gear.Shafting // of a gear
	SeatFits  bool          // the larger bearing fits the driven pulley's seat
	HubDepth  float64       // of the driven pulley ahead of the propeller plate, m
	Inboard   float64       // face of the engine-side bearing ahead of the plate, m
	Torsional param.Slot    // first frequency of crank against propeller, Hz
	Second    param.Slot    // second one, of pinion against wheel, Hz
	Idle      param.Slot    // propeller speed while the engine idles, rad/s
	Speeds    part.SpeedMap

	DipsAbove bool // the gear that dips into the oil is the upper one
	Dips      bool // one does
	OnCrank   bool // the pinion is fast on the engine's crank
	Coupled   bool // a coupling is chosen all the same
}

// Report examines d at the standing duty.
func Report(s Spec, d Drive, standing part.Transmission, at part.Duty, train part.Train) Result {
	pieces := d.Pieces()
	r := Result{Kind: s.Kind, Ratio: d.Ratio(), Turn: d.Turn(), Standing: standing,
		Mass: part.Mass(pieces), Depth: part.Depth(pieces), Upkeep: d.Upkeep(), Findings: d.Examine(at, train),
		Idle:      idling(d, train),
		DipsAbove: s.Kind == Gear && (s.Gear.DippingGear == gear.DipPinion) == (s.PropellerAxis == Below)}
	r.Dips = s.Gear.DipDepth > 0
	r.OnCrank, r.Coupled = s.coupledCrank()
	if h, ok := r.Findings.(hung); ok {
		r.OnAxle, r.Axle, r.SeatFits = true, h.axle(), s.seatFits()
		r.Speeds, r.Inboard, r.CrankPull = h.speeds(), s.Support.InboardFace(), h.crankPull()
	}
	if g, ok := r.Findings.(geared); ok {
		r.Shafting = g.Shafting()
	}
	if e, ok := r.Findings.(elastic); ok {
		r.Torsional = e.Torsional()
	}
	if m, ok := r.Findings.(meshing); ok {
		r.Second = m.TorsionalSecond()
	}
	if b, ok := d.(interface{ HubDepth() float64 }); ok {
		r.HubDepth = b.HubDepth()
	}
	return r
}

// Readings lists what every drive reports, then what this kind adds.
func (r Result) Readings(rs []reading.Reading) []reading.Reading {
	rs = append(rs,
		reading.New("drive.ratio", "Ratio", r.Ratio, unit.One).How("crank speed over propeller speed, without slip").Source("geometry"),
		reading.New("drive.turn", "Turn of the propeller", float64(r.Turn), unit.Count).Sided().
			How("+1 turns as the crank does, -1 is reversed; one external gear mesh reverses").Source("geometry"),
		reading.New("drive.efficiency", "Drive efficiency, standing", r.Standing.Efficiency(), unit.Percent).Higher().
			How("power at the propeller over power at the crank, full throttle standing").Source("the drive's own losses"),
		reading.New("drive.loss", "Power lost in the drive", r.Standing.Loss(), unit.Watt).Lower().
			How("power at the crank less power at the propeller, full throttle standing"+r.lossOil()).Source("the drive's own losses"),
		reading.New("drive.output_speed", "Propeller speed, standing", r.Standing.SpeedOut, unit.RPM).
			How("crank speed over ratio, less slip, full throttle standing").Source("balance of power"),
		reading.New("drive.mass", "Drive mass", r.Mass, unit.Kilogram).Lower().How("sum of the drive's pieces").Source("geometry"),
		reading.New("drive.depth", "Drive depth", r.Depth, unit.Millimetre).Lower().
			How("sum of the drive's pieces along the thrust axis, drive face to propeller plate").Source("geometry"),
		reading.New("drive.price", "Drive price", r.Upkeep.Price, unit.Currency).Lower().How("as entered").Source("the study"),
		reading.New("drive.upkeep", "Drive upkeep", r.Upkeep.CostPerTime(), unit.CurrencyPerHour).Lower().
			How("cost of one scheduled change over its interval").Source("the study"),
		r.idleReading(),
		r.interval(),
		reading.New("drive.wearing_parts", "Kinds of wearing part", float64(r.Upkeep.WearingParts), unit.Count).Lower().
			How("kinds of part in the drive that are changed on schedule").Source("the kind of drive"),
	)
	found := r.Findings
	if found == nil {
		found = unexamined(r.Kind)
	}
	rs = found.Readings(rs)
	return r.without(rs)
}

// unexamined stands for a drive that could not be built: it declares the keys
// that its kind owes.
func unexamined(k Kind) Findings {
	switch k {
	case RibbedBelt:
		return belt.Result{}
	case ToothedBelt:
		return toothedbelt.Result{}
	case Gear:
		return gear.Result{}
	}
	return nothing{}
}

// BlankStanding takes away what depends on a standing working point, for a
// machine that has none. What is left holds at the rated point.
func BlankStanding(rs []reading.Reading, why string) {
	for i := range rs {
		switch rs[i].Key {
		case "drive.efficiency", "drive.loss", "drive.output_speed":
			rs[i].Value, rs[i].Why = 0, why
		}
	}
}

func (r *Result) interval() reading.Reading {
	const key, label = "drive.change_interval", "Wearing part changed every"
	if r.Upkeep.ChangeInterval <= 0 {
		return reading.Without([]reading.Reading{reading.New(key, label, 0, unit.Hour)}, "nothing in this drive is changed on schedule")[0]
	}
	return reading.New(key, label, r.Upkeep.ChangeInterval, unit.Hour).Higher().How("as entered").Source("common practice, no source")
}

// core are the readings of one kind of drive that scripts may ask of any
// machine; where there is no such drive they say so.
var core = map[string]bool{
	"belt.static_tension": true, "belt.shaft_load_standing": true, "belt.shaft_load_running": true,
	"gear.pitting_safety": true, "gear.bending_safety": true,
}

func (r *Result) without(rs []reading.Reading) []reading.Reading {
	if !r.Kind.Belt() {
		rs = append(rs, noBelt()...)
	}
	if r.Kind != Gear {
		rs = append(rs, noGear()...)
	}
	return rs
}

// What a machine of another kind lacks never changes.
var (
	noBelt = sync.OnceValue(func() []reading.Reading {
		return reading.Without(onlyCore(belt.Result{}.Readings(nil)), "this machine has no belt")
	})
	noGear = sync.OnceValue(func() []reading.Reading {
		return reading.Without(onlyCore(gear.Result{}.Readings(nil)), "this machine has no gear")
	})
)

func onlyCore(rs []reading.Reading) []reading.Reading {
	kept := rs[:0]
	for _, r := range rs {
		if core[r.Key] {
			kept = append(kept, r)
		}
	}
	return kept
}

// Checks lists what every drive is held against, then what this kind adds.
func (r Result) Checks(cs []reading.Check, marginAsked float64) []reading.Check {
	cs = append(cs,
		reading.AtLeast("drive.ratio", "Ratio not below one", r.Ratio, 1, 0, unit.One).Source("geometry").
			Advice("a drive here slows the propeller down: make the driven pulley larger than the crank pulley, or the wheel teeth more than the pinion teeth"),
	)
	cs = append(cs, r.idleCheck())
	if r.OnAxle {
		cs = append(cs, reading.Condition("drive.bearing_seat", "Bearings fit the pulley's seat", r.SeatFits).Source("geometry; ISO 15").
			Advice("set Bearing seat in driven pulley to the outside diameter of the larger of the two bearings, or choose other bearings"),
			reading.AtMost("drive.bearings_inside", "Bearings lie inside the pulley", r.Inboard, r.HubDepth, 0, unit.Millimetre).Source("geometry").
				Advice("lower Bearing spacing or Plate to propeller-side bearing, choose a narrower Bearing, engine side, or a wider belt"))
	}
	if r.Kind == Gear {
		cs = r.gearChecks(cs)
	}
	return r.Findings.Checks(cs, marginAsked)
}

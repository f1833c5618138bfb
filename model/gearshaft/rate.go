package gearshaft

import (
	"math"

	"backspan/model/bearing"
	"backspan/model/gear"
	"backspan/model/part"
	"backspan/model/shaft"
)

// The four bearings, in the order of Result.Bearings.
const (
	wheelProp = iota
	wheelEngine
	pinionProp
	pinionEngine
	bearingCount
)

var names = [bearingCount]string{"propeller shaft, propeller side", "propeller shaft, engine side", "pinion shaft, propeller side", "pinion shaft, engine side"}

// Result is both shafts on their bearings. Forces in N.
type Result struct {
	Bearings   [bearingCount]bearing.Rated
	Survival   float64 // chance that all bearings outlive the life asked
	Pinion     Shaft
	Wheel      Shaft
	Coupling   SeatRating
	WheelSeat  SeatRating
	Flange     SeatRating
	Bend       Bend
	TorqueMean float64 // on the pinion, N·m
	Swing      float64
	WheelAxial float64    // of the mesh on the wheel, positive forward, with the thrust
	Thrust     float64    // positive forward
	Room       float64    // least between a bearing of the pinion and its teeth, m
	SeatRoom   [2]float64 // what coupling and flange seat have, m

	pull    shaft.CrankPull
	onCrank bool // the pinion sits on the engine's crank: nothing of it is rated here
	spec    Spec
	held    [bearingCount]shaft.Vector // steady, of bearings on shafts
	axial   [bearingCount]float64      // positive forward
	limit   float64                    // of the speed parameter

	limitSource string
	helical     bool
	module      float64
}

// Rate finds what the shafts and bearings of a reduction bear at one duty. l
// holds the propeller's part: weight, overhang, thrust, gyroscopic couple and
// speed; crankTurn is seen from behind.
func Rate(s Spec, g gear.Shafting, crankTurn part.Turn, l shaft.Loads) Result {
	turn := crankTurn.Sign()
	wheelMesh, pinionMesh := meshes(&g, turn)
	wheel, pinion := wheelLine(&s, &g, wheelMesh, turn, &l), pinionLine(&g, pinionMesh, turn)
	t := newTwist(&g, l.Speed*g.Ratio)
	r := Result{spec: s, TorqueMean: t.mean, Swing: t.swing, WheelAxial: wheel.meshAxial, Thrust: l.Thrust,
		onCrank: s.PinionOn == EngineCrank && g.Overhung,
		Room:    room(&g), SeatRoom: [2]float64{g.Places.DriveFace - g.Places.CouplingRear, g.Places.FlangeFront + g.SealAndCover},
		module: g.Module, helical: g.Helical, Survival: 1}
	r.limit, r.limitSource = s.SpeedLimitIn(s.Lubricant)
	g.WheelProp = g.WheelProp.WithRatings(s.WheelPropDynamic, s.WheelPropStatic)
	g.WheelEngine = g.WheelEngine.WithRatings(s.WheelEngineDynamic, s.WheelEngineStatic)
	g.Pinion = g.Pinion.WithRatings(s.PinionDynamic, s.PinionStatic)
	shake := newShaking(&g, &t)
	duty := s.duty(g.Viscosity)
	r.rateBearings(&duty, &wheel, s.WheelLocating, shake, l.Speed, wheelProp, g.WheelProp, g.WheelEngine)
	d := s.diameters(&g)
	greatest := t.greatest()
	if r.onCrank {
		r.Coupling.Why, r.pull = onCrank, crankPull(&g, &pinion, t.over(greatest))
	} else {
		r.rateBearings(&duty, &pinion, s.PinionLocating, shake, l.Speed*g.Ratio, pinionProp, g.Pinion, g.Pinion)
		places := s.pinionPlaces(&g, &d)
		r.Pinion = s.examine(&pinion, places[:], steel{s.PinionTensile, s.PinionYield}, &t, 1)
		r.Coupling = s.rateSeat(&s.Coupling, d.coupling, s.CouplingSeatLength, greatest)
	}
	wheelPlaces := s.wheelPlaces(&g, &d)
	r.Wheel = s.examine(&wheel, wheelPlaces[:], steel{s.WheelTensile, s.WheelYield}, &t, g.Ratio)
	r.WheelSeat = s.rateSeat(&s.Wheel, d.wheel, g.FaceWidth, greatest*g.Ratio)
	r.Flange = s.rateSeat(&s.Flange, d.flange, s.FlangeSeatLength, greatest*g.Ratio)
	r.Bend = s.bend(&g, &d, &wheel, &pinion)
	return r
}

// shaking is what the swing of the torque adds to the mesh force, over its
// mean: to the mean that wears bearings, and at most; drop is what it takes
// away at most.
type shaking struct{ wear, peak, drop float64 }

// newShaking takes the cubic mean over the wave; where that is not known the
// torque is taken to swing as a sine.
func newShaking(g *gear.Shafting, t *twist) shaking {
	s := shaking{
		wear: bearing.PulseFactor(t.over(t.swing)) - 1,
		peak: math.Max(0, t.over(t.greatest())-1),
		drop: math.Max(t.over(t.swing), t.over(t.mean-t.peakMean+t.peakSwing)),
	}
	if p := &g.Pulsation; p.Why == "" {
		s.wear = math.Max(1, p.Wear) - 1
	}
	return s
}

// rateBearings rates the two bearings of one shaft.
func (r *Result) rateBearings(d *bearing.Duty, x *line, locating shaft.Side, shake shaking, speed float64, first int, prop, engine bearing.DeepGroove) {
	for i, side := range [...]struct {
		b    bearing.DeepGroove
		side shaft.Side
		of   func(shaft.Reactions) shaft.Vector
	}{
		{prop, shaft.PropSide, func(h shaft.Reactions) shaft.Vector { return h.PropSide }},
		{engine, shaft.EngineSide, func(h shaft.Reactions) shaft.Vector { return h.EngineSide }},
	} {
		at := first + i
		r.held[at] = side.of(x.steady)
		mesh := side.of(x.mesh.held).Size()
		loads := bearing.Loads{
			Running: r.held[at].Size() + side.of(x.imbalance.held).Size(), Turn: side.of(x.gyro.held).Size(), TurnWear: side.of(x.gyroWear.held).Size(),
			Wear: shake.wear * mesh, Peak: shake.peak*mesh + side.of(x.gyroPeak.held).Size(), Standing: side.of(x.weight.held).Size(),
		}
		if side.side == locating {
			r.axial[at] = x.axial
			loads.Axial, loads.AxialWear = math.Abs(x.axial), shake.wear*math.Abs(x.meshAxial)
			loads.AxialPeak = math.Max(math.Abs(x.axial+shake.peak*x.meshAxial), math.Abs(x.axial-shake.drop*x.meshAxial))
		}
		r.Bearings[at] = side.b.Examine(d, loads, speed)
		r.Survival *= r.Bearings[at].Survival
	}
}

// Rows lists the bearings with the steady forces on them.
func (r *Result) Rows() []bearing.Row {
	rows := make([]bearing.Row, bearingCount)
	if r.onCrank {
		rows = rows[:pinionProp]
	}
	for i := range rows {
		rows[i] = r.Bearings[i].Row(names[i], -r.held[i].Along, -r.held[i].Across, r.axial[i], r.limit)
	}
	return rows
}

// room is the least distance between the faces of the pinion's bearings and of
// its teeth, and between the bearings themselves, m.
func room(g *gear.Shafting) float64 {
	p, half := &g.Places, (g.FaceWidth+g.Pinion.Width)/2
	between := p.PinionEngineBearing - p.PinionPropBearing - g.Pinion.Width
	least := math.Min(between, math.Abs(p.PinionPropBearing-p.Gears)-half)
	return math.Min(least, math.Abs(p.PinionEngineBearing-p.Gears)-half)
}

package gear

import (
	"errors"
	"fmt"
	"math"

	"backspan/model/bearing"
	"backspan/model/part"
)

// Gear is a solved reduction. It is plain data; copies share nothing.
type Gear struct {
	spec     Spec
	geometry Geometry
	bearings bearings
	outline  outline
	sump     Sump    // at the rated duty
	law      lossLaw // with the oil of the rated duty
	teeth    toothFactors
	second   crossGeometry
}

type bearings struct {
	pinion, wheelEngine, wheelPropeller bearing.DeepGroove
}

// New solves the teeth and the oil temperature at the rated duty. The error is
// a sentence that names the parameter to change when the teeth cannot mesh.
func New(s Spec, rated part.Duty) (Gear, error) {
	geometry, err := Solve(s)
	if err != nil {
		return Gear{}, err
	}
	g := Gear{spec: s, geometry: geometry}
	if g.bearings, err = s.findBearings(); err != nil {
		return Gear{}, err
	}
	if !(s.ViscosityAt100 < s.ViscosityAt40) {
		return Gear{}, errors.New("oil thins as it warms; lower Oil viscosity at 100 °C below Oil viscosity at 40 °C")
	}
	dipping := geometry.Pinion
	if s.DippingGear == DipWheel {
		dipping = geometry.Driven
	}
	if s.DipDepth > dipping.TipDiameter {
		return Gear{}, fmt.Errorf("the Dip depth is more than the %.4g mm of the gear that dips; lower Dip depth", dipping.TipDiameter*1000)
	}
	g.outline = newOutline(s, geometry)
	g.sump = g.solveSump(rated)
	g.law = g.lossLaw(g.sump.Temperature)
	build, ok := g.toothBuild()
	g.teeth = newToothFactors(&g.geometry, build)
	if !ok {
		g.teeth.why = wrongHardness
	}
	g.second = newCrossGeometry(&g.geometry, &build)
	return g, nil
}

func (s *Spec) findBearings() (b bearings, err error) {
	for _, f := range []struct {
		to   *bearing.DeepGroove
		size bearing.Size
		name string
	}{
		{&b.pinion, s.PinionBearings, "Pinion bearings"},
		{&b.wheelEngine, s.WheelEngineBearing, "Wheel bearing, engine side"},
		{&b.wheelPropeller, s.WheelPropellerBearing, "Wheel bearing, propeller side"},
	} {
		found, ok := f.size.DeepGroove()
		if !ok {
			return bearings{}, fmt.Errorf("no deep-groove bearing %q is listed; choose another for %s", f.size, f.name)
		}
		*f.to = found
	}
	return b, nil
}

// Ratio is the speed of the crank over that of the propeller.
func (g Gear) Ratio() float64 { return g.geometry.Ratio() }

// Turn is the propeller's direction against the crank's: one mesh reverses it.
func (g Gear) Turn() int { return -1 }

// AxisOffset is the height of the propeller's axis above the crank's, m.
func (g Gear) AxisOffset() float64 { return g.geometry.CentreDistance }

// Upkeep is the price and the change of oil and shaft seals.
func (g Gear) Upkeep() part.Upkeep {
	return part.Upkeep{
		Price:          g.spec.Price,
		ChangeInterval: g.spec.ChangeInterval,
		ChangeCost:     g.spec.ChangeCost,
		WearingParts:   2,
	}
}

// Transmit passes a power in W at a crank speed in rad/s, with the oil as warm
// as at the rated duty. Where drag would eat more than comes in, or nothing
// comes in, or the crank stands, nothing goes out.
func (g Gear) Transmit(power, crankSpeed float64) part.Transmission {
	t := part.Transmission{PowerIn: power, SpeedIn: crankSpeed, SpeedOut: crankSpeed / g.geometry.Ratio()}
	if power > 0 && crankSpeed > standstill {
		t.PowerOut = math.Max(0, power-g.law.at(power, crankSpeed).Total())
	}
	return t
}

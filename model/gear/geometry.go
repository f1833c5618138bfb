package gear

import (
	"errors"
	"fmt"
	"math"
	"strings"
)

// Wheel is one of the two gears, solved.
type Wheel struct {
	Teeth             int
	Shift             float64 // profile shift, modules
	ReferenceDiameter float64 // m
	BaseDiameter      float64 // m
	TipDiameter       float64 // m
	RootDiameter      float64 // m
	WorkingDiameter   float64 // m
	TipThickness      float64 // in the normal section, m
	LeastShift        float64 // below which the tooth is undercut, modules
	BottomClearance   float64 // between the mate's tip and this root, m
	TipContactRatio   float64 // part of the contact ratio from pitch point to this tip
	StartRollLength   float64 // radius of curvature where contact starts, m; negative inside the base circle
	FormRollLength    float64 // radius of curvature where the involute starts, m
}

// Undercut reports whether the rack cuts into the involute.
func (w Wheel) Undercut() bool { return w.Shift < w.LeastShift }

// Geometry is the solved pair of gears. Source: ISO 21771.
type Geometry struct {
	Module                  float64 // normal, m
	FaceWidth               float64 // m
	HelixAngle              float64 // at the reference cylinder, rad
	BaseHelixAngle          float64 // rad
	TransversePressureAngle float64 // rad
	WorkingPressureAngle    float64 // transverse, rad
	CentreDistance          float64 // m
	TipAlteration           float64 // modules, 0 or negative
	BasePitch               float64 // transverse, m
	ContactRatio            float64 // transverse
	OverlapRatio            float64
	CommonFactor            int // of the two numbers of teeth; 1 is hunting
	Pinion, Driven          Wheel
}

// Ratio is the speed of the crank over that of the propeller.
func (g Geometry) Ratio() float64 { return float64(g.Driven.Teeth) / float64(g.Pinion.Teeth) }

// Solve finds the geometry of the pair. With a centre distance given the
// wheel's shift follows from it; without one the centre distance follows from
// the shifts. The error says which parameter leaves the teeth unable to mesh.
func Solve(s Spec) (Geometry, error) {
	rack := s.Rack.Rack()
	z1, z2 := float64(s.PinionTeeth), float64(s.WheelTeeth)
	g := Geometry{Module: s.Module, FaceWidth: s.FaceWidth, HelixAngle: s.HelixAngle,
		CommonFactor: commonFactor(s.PinionTeeth, s.WheelTeeth)}
	g.TransversePressureAngle = math.Atan(math.Tan(s.PressureAngle) / math.Cos(s.HelixAngle))
	g.BaseHelixAngle = math.Asin(math.Sin(s.HelixAngle) * math.Cos(s.PressureAngle))
	transverseModule := s.Module / math.Cos(s.HelixAngle)
	g.BasePitch = math.Pi * transverseModule * math.Cos(g.TransversePressureAngle)
	unshifted := transverseModule * (z1 + z2) / 2

	shiftSum, err := g.solveWorkingAngle(s, unshifted)
	if err != nil {
		return Geometry{}, err
	}
	g.TipAlteration = math.Min(0, (g.CentreDistance-unshifted)/s.Module-shiftSum)
	g.Pinion = g.wheel(rack, s, s.PinionTeeth, s.PinionShift)
	g.Driven = g.wheel(rack, s, s.WheelTeeth, shiftSum-s.PinionShift)
	g.Pinion.WorkingDiameter = 2 * g.CentreDistance * z1 / (z1 + z2)
	g.Driven.WorkingDiameter = 2 * g.CentreDistance * z2 / (z1 + z2)
	if err := g.mustHaveTips(); err != nil {
		return Geometry{}, err
	}
	g.engage(&g.Pinion, g.Driven)
	g.engage(&g.Driven, g.Pinion)
	g.ContactRatio = g.Pinion.TipContactRatio + g.Driven.TipContactRatio
	g.OverlapRatio = s.FaceWidth * math.Sin(s.HelixAngle) / (math.Pi * s.Module)
	return g, g.mustMesh()
}

// solveWorkingAngle sets the working pressure angle and the centre distance
// and returns the sum of the profile shifts.
func (g *Geometry) solveWorkingAngle(s Spec, unshifted float64) (shiftSum float64, err error) {
	teeth := float64(s.PinionTeeth + s.WheelTeeth)
	at := g.TransversePressureAngle
	perShift := 2 * math.Tan(s.PressureAngle) / teeth
	if s.CentreDistance.Known {
		g.CentreDistance = s.CentreDistance.Value
		c := unshifted * math.Cos(at) / g.CentreDistance
		if !(c < 1) {
			return 0, fmt.Errorf("the Centre distance of %.4g mm is inside the base circles of these teeth; raise it above %.4g mm or use fewer teeth",
				g.CentreDistance*1000, unshifted*math.Cos(at)*1000)
		}
		g.WorkingPressureAngle = math.Acos(c)
		return (Involute(g.WorkingPressureAngle) - Involute(at)) / perShift, nil
	}
	shiftSum = s.PinionShift + s.WheelShift
	working := Involute(at) + perShift*shiftSum
	if !(working > 1e-9) {
		return 0, errors.New("no working pressure angle exists for these teeth; raise Pinion profile shift or Wheel profile shift")
	}
	g.WorkingPressureAngle = InvoluteAngle(working)
	g.CentreDistance = unshifted * math.Cos(at) / math.Cos(g.WorkingPressureAngle)
	return shiftSum, nil
}

// wheel gives what one gear is by itself.
func (g *Geometry) wheel(rack Rack, s Spec, teeth int, shift float64) Wheel {
	z, at := float64(teeth), g.TransversePressureAngle
	w := Wheel{Teeth: teeth, Shift: shift, LeastShift: rack.LeastShift(z, s.PressureAngle, s.HelixAngle)}
	w.ReferenceDiameter = z * s.Module / math.Cos(s.HelixAngle)
	w.BaseDiameter = w.ReferenceDiameter * math.Cos(at)
	w.TipDiameter = w.ReferenceDiameter + 2*s.Module*(shift+rack.Addendum+g.TipAlteration)
	w.RootDiameter = w.ReferenceDiameter - 2*s.Module*(rack.Dedendum-shift)
	w.FormRollLength = w.ReferenceDiameter/2*math.Sin(at) -
		(rack.StraightDedendum(s.PressureAngle)-shift)*s.Module/math.Sin(at)
	w.TipThickness = tipThickness(w, s, at)
	return w
}

// tipThickness is the normal thickness of the tooth at its tip, m; negative
// when the flanks cross below it.
func tipThickness(w Wheel, s Spec, transverse float64) float64 {
	if w.TipDiameter <= w.BaseDiameter {
		return 0
	}
	thickness := s.Module / math.Cos(s.HelixAngle) * (math.Pi/2 + 2*w.Shift*math.Tan(s.PressureAngle))
	atTip := math.Acos(w.BaseDiameter / w.TipDiameter)
	arc := w.TipDiameter * (thickness/w.ReferenceDiameter + Involute(transverse) - Involute(atTip))
	return arc * math.Cos(math.Atan(math.Tan(s.HelixAngle)*w.TipDiameter/w.ReferenceDiameter))
}

// engage gives what one gear does against its mate.
func (g *Geometry) engage(w *Wheel, mate Wheel) {
	tip := rollLengthAt(w.TipDiameter, w.BaseDiameter)
	pitch := w.BaseDiameter / 2 * math.Tan(g.WorkingPressureAngle)
	line := g.CentreDistance * math.Sin(g.WorkingPressureAngle)
	w.TipContactRatio = (tip - pitch) / g.BasePitch
	w.StartRollLength = line - rollLengthAt(mate.TipDiameter, mate.BaseDiameter)
	w.BottomClearance = g.CentreDistance - mate.TipDiameter/2 - w.RootDiameter/2
}

// rollLengthAt is the involute's radius of curvature at a diameter, m.
func rollLengthAt(diameter, base float64) float64 {
	return math.Sqrt(math.Max(0, diameter*diameter-base*base)) / 2
}

func (g *Geometry) mustHaveTips() error {
	for _, w := range []struct {
		Wheel
		name string
	}{{g.Pinion, "Pinion"}, {g.Driven, "Wheel"}} {
		if w.TipDiameter <= w.BaseDiameter {
			return fmt.Errorf("at a shift of %.3g the %s teeth end inside their base circle; raise %s profile shift or Centre distance", w.Shift, strings.ToLower(w.name), w.name)
		}
		if w.TipThickness <= 0 {
			return fmt.Errorf("at a shift of %.3g the %s teeth are pointed; lower %s profile shift or Centre distance", w.Shift, strings.ToLower(w.name), w.name)
		}
		if w.RootDiameter <= 0 {
			return fmt.Errorf("no body is left below the %s teeth; raise %s profile shift or %s teeth", strings.ToLower(w.name), w.name, w.name)
		}
	}
	return nil
}

func (g *Geometry) mustMesh() error {
	if g.ContactRatio <= 0 {
		return errors.New("the teeth do not reach each other; lower Centre distance")
	}
	if math.Min(g.Pinion.BottomClearance, g.Driven.BottomClearance) <= 0 {
		return errors.New("tips run into the roots of the mate; raise Centre distance")
	}
	return nil
}

func commonFactor(a, b int) int {
	for b != 0 {
		a, b = b, a%b
	}
	return a
}

package belt

import (
	"math"
	"reflect"
	"testing"

	"backspan/model/param"
	"backspan/model/part"
	"backspan/model/reading"
	"pgregory.net/rapid"
)

// drawSpec sets every parameter anywhere in its declared range.
func drawSpec(t *rapid.T) Spec {
	s := Default()
	for _, p := range s.Params() {
		var err error
		switch p.Kind {
		case param.KindChoice:
			err = p.Set(rapid.SampledFrom(p.Options).Draw(t, p.Key))
		case param.KindWhole:
			err = p.SetNumber(float64(rapid.IntRange(int(p.Min), int(p.Max)).Draw(t, p.Key)))
		case param.KindNumber:
			if p.Optional && rapid.Bool().Draw(t, p.Key+" empty") {
				err = p.Set("")
				break
			}
			err = p.SetNumber(p.Unit.SI(rapid.Float64Range(p.Min, p.Max).Draw(t, p.Key)))
		default:
			t.Fatalf("%s: no draw for its kind", p.Key)
		}
		if err != nil {
			t.Fatal(err)
		}
	}
	return s
}

func drawRated(t *rapid.T) part.Duty {
	return part.Duty{
		Power:          rapid.Float64Range(500, 60e3).Draw(t, "rated power"),
		CrankSpeed:     rapid.Float64Range(200, 1500).Draw(t, "rated speed"),
		AirTemperature: rapid.Float64Range(230, 325).Draw(t, "air temperature"),
		AirDensity:     rapid.Float64Range(0.5, 1.5).Draw(t, "air density"),
	}
}

func drawBelt(t *rapid.T) (Belt, part.Duty) {
	rated := drawRated(t)
	b, err := New(drawSpec(t), rated, 0)
	if err != nil {
		t.Skip(err)
	}
	return b, rated
}

func TestRandomStagesHaveFiniteAnswers(t *testing.T) {
	noValue := map[string]bool{
		"there is no pull at this point":                                   true,
		"the slack side does not press on the pulley":                      true,
		"the belt would stretch more than the centre distance can take up": true,
	}
	rapid.Check(t, func(t *rapid.T) {
		b, at := drawBelt(t)
		at.Power *= rapid.OneOf(rapid.Just(0.0), rapid.Float64Range(1e-6, 1.5)).Draw(t, "power share")
		at.CrankSpeed *= rapid.OneOf(rapid.Just(0.0), rapid.Float64Range(0.01, 1.5)).Draw(t, "speed share")
		at.Inflow = rapid.Float64Range(0, 30).Draw(t, "inflow")
		r := b.Examine(at)
		finite(t, "result", reflect.ValueOf(r))
		finite(t, "pieces", reflect.ValueOf(b.Pieces()))
		for _, x := range r.Readings() {
			if !x.Known() && !noValue[x.Why] {
				t.Errorf("%s has no value: %s", x.Key, x.Why)
			}
		}
		for _, c := range r.Checks(0.1) {
			rated := c.Key != "belt.tension_per_rib" && c.Key != "belt.power_rating" && c.Key != "belt.slack_side_peak"
			if rated && c.Verdict == reading.NotRated && c.Why != noPull {
				t.Errorf("%s is not rated: %s", c.Key, c.Why)
			}
		}
	})
}

func finite(t *rapid.T, name string, v reflect.Value) {
	switch v.Kind() {
	case reflect.Float64:
		if x := v.Float(); math.IsNaN(x) || math.IsInf(x, 0) {
			t.Errorf("%s is %v", name, x)
		}
	case reflect.Struct:
		for i := range v.NumField() {
			finite(t, name+"."+v.Type().Field(i).Name, v.Field(i))
		}
	case reflect.Slice:
		for i := range v.Len() {
			finite(t, name, v.Index(i))
		}
	}
}

func TestLengthAndCentreDistanceAreInverse(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		o := OpenBelt{Crank: rapid.Float64Range(0.02, 0.2).Draw(t, "crank"), Driven: rapid.Float64Range(0.02, 0.42).Draw(t, "driven")}
		o.CentreDistance = (o.Crank+o.Driven)/2 + rapid.Float64Range(0.001, 1).Draw(t, "gap")
		back, ok := OpenBelt{Crank: o.Crank, Driven: o.Driven}.withLength(o.Length())
		if !ok || math.Abs(back.CentreDistance-o.CentreDistance) > 1e-10*o.CentreDistance {
			t.Errorf("centre distance %.15g came back as %.15g", o.CentreDistance, back.CentreDistance)
		}
	})
}

func TestTensionsClose(t *testing.T) {
	near := func(t *rapid.T, what string, got, want, scale float64) {
		if math.Abs(got-want) > 1e-9*scale {
			t.Errorf("%s is %.12g, want %.12g", what, got, want)
		}
	}
	rapid.Check(t, func(t *rapid.T) {
		b, at := drawBelt(t)
		r := b.Examine(at)
		tight, slack := r.Tensions.Contact()
		scale := math.Abs(tight) + math.Abs(slack) + r.Tensions.Centrifugal
		near(t, "power from the spans", (tight-slack)*r.Speed, at.Power, scale*r.Speed)
		near(t, "sum of the spans", r.Tensions.TightSide+r.Tensions.SlackSide, 2*r.StandingTension, scale)
		// Law of cosines: the spans meet at twice their tilt.
		square := tight*tight + slack*slack + 2*tight*slack*math.Cos(2*b.run.SpanTilt())
		near(t, "running shaft load", math.Pow(r.Running.Size(), 2), square, scale*scale)
		// At the required tension the design reserve is the service factor.
		if !b.spec.StandingTension.Known {
			near(t, "design slip reserve", r.Reserve.Design.Value, b.spec.ServiceFactor, 1000)
		}
	})
}

func TestTransmissionIsMonotone(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		b, at := drawBelt(t)
		speed := at.CrankSpeed * rapid.Float64Range(0.1, 1.5).Draw(t, "speed share")
		power := at.Power * rapid.Float64Range(0, 1.5).Draw(t, "power share")
		x, more, faster := b.Transmit(power, speed), b.Transmit(power*1.01+1, speed), b.Transmit(power, speed*1.01)
		if !(more.PowerOut > x.PowerOut) || !(more.SpeedOut < x.SpeedOut) {
			t.Errorf("more power in: %+v after %+v", more, x)
		}
		if !(faster.SpeedOut > x.SpeedOut) {
			t.Errorf("more speed in: %+v after %+v", faster, x)
		}
		if x.Loss() < 0 || x.SpeedOut > speed/b.Ratio() {
			t.Errorf("gains on the way: %+v", x)
		}
	})
}

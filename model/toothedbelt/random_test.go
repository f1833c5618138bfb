package toothedbelt

import (
	"math"
	"testing"

	"backspan/model/internal/anyspec"
	"backspan/model/param"
	"backspan/model/part"
	"backspan/model/reading"
	"pgregory.net/rapid"
)

func drawSpec(t *rapid.T) Spec {
	s := Default()
	anyspec.Set(t, s.Params(), map[string]anyspec.Own{
		"power_table": func(t *rapid.T, p param.Param) error {
			s.PowerTable = drawTable(t)
			return p.Set(p.Editable())
		},
		"power_table_source": anyspec.OneOf("", "a test bench"),
	})
	return s
}

// drawTable is empty, or covers much of what may be asked of it.
func drawTable(t *rapid.T) []PowerPoint {
	var rows []PowerPoint
	if rapid.Bool().Draw(t, "no table") {
		return rows
	}
	for _, teeth := range []int{10, rapid.IntRange(11, 79).Draw(t, "teeth"), 80} {
		for _, speed := range []float64{1, rapid.Float64Range(10, 500).Draw(t, "speed"), 2000} {
			rows = append(rows, PowerPoint{Teeth: teeth, Speed: speed, Power: rapid.Float64Range(1, 1e5).Draw(t, "power")})
		}
	}
	return rows
}

func drawTrain(t *rapid.T) part.Train {
	if rapid.Bool().Draw(t, "no train") {
		return part.Train{}
	}
	tr := part.Train{
		CrankInertia:     rapid.Float64Range(0, 0.1).Draw(t, "crank inertia"),
		PropellerInertia: rapid.Float64Range(0, 2).Draw(t, "propeller inertia"),
	}
	var hs shaking
	for i := range rapid.IntRange(0, part.Orders).Draw(t, "orders") {
		hs = append(hs, part.Harmonic{
			Order: float64(i+1) / 2,
			Cos:   rapid.Float64Range(-5, 5).Draw(t, "cos"), Sin: rapid.Float64Range(-5, 5).Draw(t, "sin"),
		})
	}
	tr.Crank = hs
	return tr
}

func drawBelt(t *rapid.T) (Belt, part.Duty) {
	rated := anyspec.Rated(t)
	b, err := New(drawSpec(t), rated, 0, part.Train{})
	if err != nil {
		t.Skip(err)
	}
	return b, rated
}

func TestRandomStagesHaveFiniteAnswers(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		b, at := drawBelt(t)
		at.Power *= rapid.OneOf(rapid.Just(0.0), rapid.Float64Range(1e-6, 1.5)).Draw(t, "power share")
		at.CrankSpeed *= rapid.OneOf(rapid.Just(0.0), rapid.Float64Range(0.01, 1.5)).Draw(t, "speed share")
		at.Inflow = rapid.Float64Range(0, 30).Draw(t, "inflow")
		r := b.Examine(at, drawTrain(t))
		anyspec.Finite(t, "result", r)
		anyspec.Finite(t, "pieces", b.Pieces())
		const notFinite = "the sum has no finite answer for these parameters"
		for _, x := range r.Readings(nil) {
			if x.Why == notFinite {
				t.Errorf("%s has no value: %s", x.Key, x.Why)
			}
		}
		for _, c := range r.Checks(nil, 0.1) {
			if c.Why == notFinite || c.Verdict == reading.NotRated && c.Why == "" {
				t.Errorf("%s is not rated: %s", c.Key, c.Why)
			}
		}
	})
}

// Whatever lays a stage out, the belt is whole and just fits.
func TestEveryBeltIsWhole(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		b, _ := drawBelt(t)
		teeth := b.Run().Length() / b.row.pitch
		if math.Abs(teeth-float64(b.beltTeeth)) > 1e-9*teeth {
			t.Errorf("a belt of %.12g teeth", teeth)
		}
		if !(b.AxisOffset() >= b.spec.touching(b.row)*(1-1e-12)) {
			t.Errorf("the pulleys touch at %g", b.AxisOffset())
		}
		if b.spec.LaidOutBy == ByCentreDistance && b.shorter.Known && b.longer.Known &&
			(b.spec.CentreDistance < b.shorter.Value || b.spec.CentreDistance > b.longer.Value) {
			t.Errorf("%g wanted, %g to %g found", b.spec.CentreDistance, b.shorter.Value, b.longer.Value)
		}
	})
}

func TestTensionsClose(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		b, at := drawBelt(t)
		r := b.Examine(at, part.Train{})
		tight, slack := r.Tensions.Contact()
		scale := math.Abs(tight) + math.Abs(slack) + r.Tensions.Centrifugal
		close := func(what string, got, want, scale float64) {
			if math.Abs(got-want) > 1e-9*scale {
				t.Errorf("%s is %.12g, want %.12g", what, got, want)
			}
		}
		close("power from the spans", (tight-slack)*r.Speed, at.Power, scale*r.Speed)
		close("sum of the spans", r.Tensions.TightSide+r.Tensions.SlackSide, 2*r.StandingTension, scale)
		// Law of cosines: the spans meet at twice their tilt.
		square := tight*tight + slack*slack + 2*tight*slack*math.Cos(2*b.Run().SpanTilt())
		close("running shaft load", math.Pow(r.Running.Size(), 2), square, scale*scale)
	})
}

func TestTransmissionIsMonotone(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		b, at := drawBelt(t)
		speed := at.CrankSpeed * rapid.Float64Range(0.1, 1.5).Draw(t, "speed share")
		power := at.Power * rapid.Float64Range(0, 1.5).Draw(t, "power share")
		x, more := b.Transmit(power, speed), b.Transmit(power*1.01+1, speed)
		if !(more.PowerOut > x.PowerOut) || x.Loss() < 0 || x.SpeedOut != speed/b.Ratio() {
			t.Errorf("%+v, then %+v", x, more)
		}
	})
}

// The table never gives more than its rows do.
func TestTableStaysBetweenItsRows(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		rows := drawTable(t)
		got, err := lookUp(rows, rapid.IntRange(10, 80).Draw(t, "crank teeth"), rapid.Float64Range(1, 2000).Draw(t, "crank speed"))
		if len(rows) == 0 {
			if err == nil {
				t.Error("an empty table answers")
			}
			return
		}
		least, most := math.Inf(1), 0.0
		for _, p := range rows {
			least, most = math.Min(least, p.Power), math.Max(most, p.Power)
		}
		if err != nil || got < least*(1-1e-12) || got > most*(1+1e-12) {
			t.Errorf("%g outside %g to %g: %v", got, least, most, err)
		}
	})
}

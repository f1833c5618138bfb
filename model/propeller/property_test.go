package propeller

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"backspan/model/internal/anyspec"
	"backspan/model/param"
)

func drawn(t *rapid.T) Spec {
	s := Default()
	anyspec.Set(t, s.Params(), map[string]anyspec.Own{"stations": drawnRows, "polar": drawnPolar})
	return s
}

func drawnRows(t *rapid.T, p param.Param) error {
	n := rapid.IntRange(4, 9).Draw(t, "rows")
	rows := make([]any, n)
	for i := range rows {
		x := 0.1 + 0.9*(float64(i)+rapid.Float64Range(0, 0.9).Draw(t, "radius"))/float64(n)
		row := []any{x}
		for _, c := range p.Columns[1:] {
			row = append(row, 0.999999*rapid.Float64Range(c.Min, c.Max).Draw(t, c.Label)+1e-6*(c.Min+c.Max)/2)
		}
		rows[i] = row
	}
	return p.SetFile(rows)
}

// drawnPolar is a section's polar at one to three Reynolds numbers: a slope
// with rounded ends, bent at random.
func drawnPolar(t *rapid.T, p param.Param) error {
	var rows []any
	re := rapid.Float64Range(2e3, 1e5).Draw(t, "lowest Reynolds number")
	for range rapid.IntRange(1, 3).Draw(t, "Reynolds numbers") {
		zero, most := rapid.Float64Range(-7, 0).Draw(t, "zero lift"), rapid.Float64Range(0.6, 1.8).Draw(t, "greatest lift")
		n := rapid.IntRange(2, 15).Draw(t, "rows above")
		below := rapid.IntRange(2, 6).Draw(t, "rows below")
		for i := -below; i <= n; i++ {
			alpha := zero + float64(i) + rapid.Float64Range(-0.4, 0.4).Draw(t, "off step")
			lift := most*math.Tanh((alpha-zero)*0.1/most) - rapid.Float64Range(0, 0.02).Draw(t, "bend")*float64(max(i, 0))
			rows = append(rows, []any{alpha, lift, rapid.Float64Range(0.005, 0.2).Draw(t, "drag"), re})
		}
		re *= rapid.Float64Range(1.5, 10).Draw(t, "next Reynolds number")
	}
	return p.SetFile(rows)
}

func drawnFlow(t *rapid.T) Flow {
	f := Flow{
		Airspeed: rapid.SampledFrom([]float64{0, 0, 0.01, 1, 11, 30, 60}).Draw(t, "airspeed"),
		Speed:    rapid.Float64Range(1, 600).Draw(t, "speed"), Density: rapid.Float64Range(0.6, 1.4).Draw(t, "density"),
		SoundSpeed: rapid.Float64Range(300, 360).Draw(t, "sound speed"), Viscosity: standardViscosity,
	}
	if f.Airspeed > 0 {
		f.Airspeed *= rapid.Float64Range(0.5, 1.5).Draw(t, "gust")
	}
	return f
}

func drawnPropeller(t *rapid.T) Propeller {
	p, err := New(drawn(t))
	if err != nil {
		t.Skip(err)
	}
	return p
}

func TestNoFigureIsEverWithoutNumber(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p, f := drawnPropeller(t), drawnFlow(t)
		pt := p.At(f)
		anyspec.Finite(t, "point", pt.Thrust, pt.Torque, pt.Power, pt.CT, pt.CP, pt.AdvanceRatio, pt.FigureOfMerit, pt.Efficiency, pt.TipMach, pt.StallMargin, pt.InducedSpeed)
		anyspec.Finite(t, "body", p.Mass(), p.PolarInertia())
		if pt.Status == Unresolved {
			t.Fatalf("a station did not settle: %+v", pt)
		}
	})
}

// What a propeller gives is bounded by the ideal disc, and thrust costs torque.
func TestNeverBetterThanTheIdealDisc(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p, f := drawnPropeller(t), drawnFlow(t)
		pt := p.At(f)
		if pt.Status != Valid || pt.Thrust <= 0 {
			t.Skip(pt.Status)
		}
		if pt.Torque <= 0 {
			t.Fatalf("thrust %g N for a torque of %g N·m", pt.Thrust, pt.Torque)
		}
		ideal := pt.Thrust * (f.Airspeed + DiscSpeed(pt.Thrust, f.Airspeed, f.Density, p.DiscArea()))
		if pt.Power < ideal {
			t.Fatalf("thrust %g N for %g W, an ideal disc needs %g W", pt.Thrust, pt.Power, ideal)
		}
	})
}

// The quick solution is the root nearest to attached flow, which an exhaustive
// walk down from 90° meets first.
func TestQuickRootIsTheAttachedOne(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p, f := drawnPropeller(t), drawnFlow(t)
		st := &p.stations[rapid.IntRange(0, Cells-1).Draw(t, "station")]
		q := st.facing(&f)
		q.close = fineStep
		speed := math.Hypot(f.Speed*st.radius, f.Airspeed)
		st.fix(&q.polar, f.Density*speed*st.chord/f.Viscosity, speed/f.SoundSpeed)
		if math.Atan(q.advance) > st.angle-q.polar.lowerStall || f.Airspeed > 0 && st.angle < q.polar.zeroLift {
			t.Skip("the air drives a blade on its back: outside the model")
		}
		var s settled
		if !q.inflow(&s) {
			t.Fatal("did not settle")
		}
		if low, high, e := attached(&q); s.phi < low-1e-6 || s.phi > high+1e-6 {
			t.Fatalf("quick root %.6f, walk finds it within %.6f and %.6f (residual %g)", s.phi, low, high, e)
		}
	})
}

// attached walks down from 90° to the root nearest to attached flow.
func attached(q *balance) (low, high, residual float64) {
	const steps = 4000
	end := math.Min(-0.5, q.angle-q.polar.zeroLift-0.1)
	width := (math.Pi/2 - end) / steps
	phi := math.Pi/2 - 1e-9
	for q.look(phi).residual > 0 && phi > end {
		phi -= width
	}
	return phi, phi + width, q.look(phi).residual
}

// Deep in stall two roots may lie between the steps of the quick search.
func TestRootsOfACoarseBladeAreTheAttachedOnes(t *testing.T) {
	s := Default()
	s.Pitch, s.PitchTrim, s.RootChord, s.GreatestChord, s.TipChord = 1.1317, degrees(7.482), 0.1134, 0.1967, 0.03
	o, err := s.outline()
	if err != nil {
		t.Fatal(err)
	}
	const speed = 237.3
	for r := 0.095; r < 0.12; r += 0.0001 {
		st := o.station(r, 0.01)
		q := balance{station: &st, close: fineStep}
		st.fix(&q.polar, standardDensity*speed*r*st.chord/standardViscosity, speed*r/standardSound)
		var got settled
		low, high, _ := attached(&q)
		if !q.inflow(&got) || got.phi < low-1e-6 || got.phi > high+1e-6 {
			t.Errorf("radius %.4f m: quick root %.6f, walk finds it within %.6f and %.6f", r, got.phi, low, high)
		}
	}
}

func TestThrustRisesWithSpeedAndFallsWithAirspeed(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := Default()
		s.Pitch = rapid.Float64Range(0.4, 0.7).Draw(t, "pitch")
		s.Planform = rapid.SampledFrom([]Planform{Tapered, Elliptic, BroadTip}).Draw(t, "planform")
		s.Blades = rapid.IntRange(2, 4).Draw(t, "blades")
		p, err := New(s)
		if err != nil {
			t.Fatal(err)
		}
		f := standard(rapid.Float64Range(0, 15).Draw(t, "airspeed"), rapid.Float64Range(2000, 2600).Draw(t, "rpm"))
		here := p.At(f)
		faster, quicker := f, f
		faster.Airspeed += 1
		quicker.Speed *= 1.02
		if a := p.At(faster); a.CT >= here.CT {
			t.Fatalf("CT rises from %g to %g with airspeed", here.CT, a.CT)
		}
		if a := p.At(quicker); a.Thrust <= here.Thrust || a.Power <= here.Power {
			t.Fatalf("thrust or power falls with speed of rotation")
		}
	})
}

func standard(airspeed, turns float64) Flow {
	return Flow{Airspeed: airspeed, Speed: rpm(turns), Density: standardDensity, SoundSpeed: standardSound, Viscosity: standardViscosity}
}

// What the stations carry is what the propeller gives.
func TestLoadingSumsToThePoint(t *testing.T) {
	into := make([]StationLoad, 0, Cells)
	rapid.Check(t, func(t *rapid.T) {
		p, f := drawnPropeller(t), drawnFlow(t)
		pt := p.At(f)
		into = p.Loading(f, into)
		thrust, torque, carried := 0.0, 0.0, 0.0
		for _, s := range into {
			anyspec.Finite(t, "station", s)
			thrust += float64(p.Blades()) * s.Along
			torque += float64(p.Blades()) * s.Across * s.Radius
			carried += float64(p.Blades()) * math.Abs(s.Along)
		}
		if len(into) != Cells || math.Abs(thrust-pt.Thrust-p.hubDrag(&pt)) > 1e-9*(1+carried) || math.Abs(torque-pt.Torque) > 1e-9*(1+math.Abs(torque)) {
			t.Fatalf("%d stations give %g N and %g N·m, the point %g N and %g N·m", len(into), thrust, torque, pt.Thrust, pt.Torque)
		}
	})
}

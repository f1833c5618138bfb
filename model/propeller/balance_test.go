package propeller

import (
	"math"
	"testing"

	"pgregory.net/rapid"
)

// What the blade elements feel is what the air takes up: along the shaft
// 4πrρF(V+u)u, across it 4πr²ρF(V+u)w, for every station that is solved.
func TestBladeAndMomentumBalance(t *testing.T) {
	seen := 0
	rapid.Check(t, func(t *rapid.T) {
		p, f := drawnPropeller(t), drawnFlow(t)
		pt := p.At(f)
		if pt.Status != Valid {
			t.Skip(pt.Status)
		}
		b := float64(p.Blades())
		for i, s := range p.Loading(f, nil) {
			st := &p.stations[i]
			sin, cos := math.Sincos(s.Inflow)
			free := math.Atan2(f.Airspeed, f.Speed*s.Radius)
			if math.Abs(sin) < 2*leastInflow || st.share < innerShare || st.share > outerShare && s.Inflow == free {
				continue // a tip that drives air back works without induction; further in the point is not valid
			}
			loss := lossFactor(st.tipGap, st.hubGap, sin)
			axial, swirl := s.Speed*sin-f.Airspeed, f.Speed*s.Radius-s.Speed*cos
			through := 4 * math.Pi * s.Radius * f.Density * loss * math.Abs(s.Speed*sin)
			scale := 0.5 * f.Density * s.Speed * s.Speed * s.Chord * b
			if d := b*s.Along/s.Width - through*axial; math.Abs(d) > 6e-3*scale {
				t.Fatalf("station %d: thrust %g N/m, momentum %g N/m", i, b*s.Along/s.Width, through*axial)
			}
			if d := b*s.Across/s.Width - through*swirl; math.Abs(d) > 6e-3*scale {
				t.Fatalf("station %d: torque %g N, momentum %g N", i, b*s.Across/s.Width, through*swirl)
			}
			seen++
		}
	})
	if seen < 100 {
		t.Errorf("only %d stations seen", seen)
	}
}

// Shaft power is what moves the air, what the sections' drag takes and what
// goes into swirl; nothing is lost or won.
func TestPowerIsAccountedFor(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p, f := drawnPropeller(t), drawnFlow(t)
		pt := p.At(f)
		if pt.Status != Valid {
			t.Skip(pt.Status)
		}
		moved, drag, swirl := 0.0, 0.0, 0.0
		for _, s := range p.Loading(f, nil) {
			sin, cos := math.Sincos(s.Inflow)
			b := float64(p.Blades()) * s.Width
			moved += b * s.Along / s.Width * s.Speed * sin
			drag += b * 0.5 * f.Density * s.Speed * s.Speed * s.Speed * s.Chord * s.Drag
			swirl += b * s.Across / s.Width * (f.Speed*s.Radius - s.Speed*cos)
		}
		if sum := moved + drag + swirl; math.Abs(sum-pt.Power) > 1e-6*(math.Abs(moved)+drag+math.Abs(swirl)) {
			t.Fatalf("power %g W, %g W moves the air, %g W is drag, %g W swirl", pt.Power, moved, drag, swirl)
		}
		if drag <= 0 {
			t.Fatalf("the sections' drag gives %g W", -drag)
		}
	})
}

// With the same blade area in more blades the tips lose less.
func TestMoreBladesOfTheSameAreaLoseLess(t *testing.T) {
	s := Default()
	o, err := s.outline()
	if err != nil {
		t.Fatal(err)
	}
	o.section.DragReynolds = 0 // the same section whatever its chord
	chord, last := o.chord, 0.0
	for b := 1; b <= 24; b++ {
		o.blades = b
		o.chord = func(r float64) float64 { return chord(r) * 2 / float64(b) }
		p := tested(o, Cells)
		for i := range p.stations {
			p.stations[i].delay = 0
		}
		pt := p.At(standard(11, 2550))
		if pt.Status != Valid || pt.Thrust <= last {
			t.Errorf("%d blades: %v, %.1f N after %.1f N", b, pt.Status, pt.Thrust, last)
		}
		last = pt.Thrust
	}
}

// The bench's questions, answered in the words that a user reads.
func TestWhatIsSaidOfOddBlades(t *testing.T) {
	narrow := func(s *Spec) {
		s.Blades, s.Shape = 4, Stations
		for _, x := range []float64{0.15, 0.4, 0.7, 1} {
			s.Rows = append(s.Rows, []float64{x, 0.02, math.Atan(s.Pitch / (math.Pi * x * s.Diameter))})
		}
	}
	coarse := func(s *Spec) {
		s.Shape = Stations
		for _, x := range []float64{0.15, 0.4, 0.7, 1} {
			s.Rows = append(s.Rows, []float64{x, 0.1, degrees(40)})
		}
	}
	for _, tc := range []struct {
		name         string
		change       func(*Spec)
		turns        float64
		key, verdict string
		text, cure   string
	}{
		{"tip Mach 0.9", nothing, 4676.6, "propeller.tip_mach", "fails", "0.9000, at most 0.8500",
			"shocks on the tips add drag and noise that this model does not know: thrust and power here stand for nothing; " +
				"reduce more: a smaller crank pulley or pinion, or a larger driven pulley or wheel; or lower Diameter"},
		{"four blades of 2 cm", narrow, 2550, "propeller.stall_margin", "thin", "-0.948°, at least 3.00°",
			"the working blade is stalled: it takes much power for little thrust and is loud; lower Nominal pitch or Pitch trim, or raise the chords or Blades"},
		{"standing at 40 degrees", coarse, 2550, "propeller.stall_margin", "thin", "-21.4°, at least 3.00°",
			"the working blade is stalled: it takes much power for little thrust and is loud; lower Nominal pitch or Pitch trim, or raise the chords or Blades"},
	} {
		p := made(t, tc.change)
		pt := p.At(standard(0, tc.turns))
		r := p.Report(pt, p.At(standard(11, tc.turns)))
		found := false
		for _, c := range r.Checks(nil, 0.1) {
			found = found || c.Key == tc.key
			if c.Key == tc.key && (string(c.Verdict) != tc.verdict || c.Text() != tc.text || c.Cure != tc.cure) {
				t.Errorf("%s: %s %q %q", tc.name, c.Verdict, c.Text(), c.Cure)
			}
		}
		if !found {
			t.Errorf("%s: there is no check %s", tc.name, tc.key)
		}
		t.Logf("%s: %v, %.0f N for %.1f kW, figure of merit %.2f, Reynolds number %.0f", tc.name, pt.Status, pt.Thrust, pt.Power/1000, pt.FigureOfMerit, pt.Reynolds)
	}
}

package propeller

import (
	"math"
	"strings"
	"testing"

	"backspan/model/internal/anyspec"
	"backspan/model/reading"
)

// sectionRows is an invented section at two Reynolds numbers.
func sectionRows() [][]float64 {
	var rows [][]float64
	for _, g := range []struct{ re, zero, most, drag float64 }{{2e5, -3.5, 1.1, 0.018}, {8e5, -4, 1.4, 0.010}} {
		for a := -8.0; a <= 14; a++ {
			lift := 0.1 * (a - g.zero)
			if lift > g.most {
				lift = g.most - 0.03*(lift-g.most)
			}
			off := lift - 0.4
			rows = append(rows, []float64{degrees(a), lift, g.drag + 0.01*off*off, g.re})
		}
	}
	return rows
}

func sectionTable(t testing.TB) *polarTable {
	t.Helper()
	table, err := newPolarTable(sectionRows(), flatPlateDrag(6))
	if err != nil {
		t.Fatal(err)
	}
	return table
}

func alike(t testing.TB, what string, got, want, tolerance float64) {
	t.Helper()
	if !(math.Abs(got-want) <= tolerance) {
		t.Errorf("%s is %.9g, want %.9g", what, got, want)
	}
}

// Given rows come back as they are; half way between two Reynolds numbers, on
// a logarithmic scale, lift and drag are half way too.
func TestMeasuredPolarGivesItsRowsBack(t *testing.T) {
	table, rows := sectionTable(t), sectionRows()
	half := len(rows) / 2
	for i, row := range rows {
		p := table.at(row[colReynolds], 0)
		cl, cd := p.coefficients(row[colAlpha])
		alike(t, "lift", cl, row[colLift], 1e-9)
		alike(t, "drag", cd, row[colDrag], 1e-9)
		if i < half {
			q := table.at(4e5, 0)
			cl, cd = q.coefficients(row[colAlpha])
			alike(t, "lift between", cl, (row[colLift]+rows[i+half][colLift])/2, 1e-9)
			alike(t, "drag between", cd, (row[colDrag]+rows[i+half][colDrag])/2, 1e-9)
		}
	}
	for _, re := range []float64{1e3, 2e5, 3e5, 8e5, 1e8} {
		p := table.at(re, 0.3)
		lift, _ := p.coefficients(p.zeroLift)
		alike(t, "lift at zero lift", lift, 0, 1e-12)
	}
}

// Prandtl and Glauert: the slope grows by 1/√(1−M²), the greatest lift stays.
func TestMeasuredPolarRisesWithMachNumber(t *testing.T) {
	table := sectionTable(t)
	slow, fast := table.at(8e5, 0), table.at(8e5, 0.6)
	a, _ := slow.coefficients(slow.zeroLift + degrees(5))
	b, _ := fast.coefficients(fast.zeroLift + degrees(5)*0.8)
	alike(t, "lift at four fifths of the angle", b, a, 1e-9)
	a, _ = slow.coefficients(slow.stall)
	b, _ = fast.coefficients(fast.stall)
	alike(t, "greatest lift", b, a, 1e-9)
	wave := table.at(8e5, 0.85)
	if _, cd := wave.coefficients(wave.zeroLift + degrees(2)); cd < 0.011 {
		t.Errorf("no drag of shocks at Mach 0.85: %g", cd)
	}
}

// Past its rows the section is a flat plate across the wind, and nothing jumps.
func TestMeasuredPolarGoesAllTheWayRound(t *testing.T) {
	p := sectionTable(t).at(3e5, 0.4)
	last, _ := p.coefficients(-math.Pi)
	for a := -math.Pi; a <= math.Pi; a += degrees(0.05) {
		cl, cd := p.coefficients(a)
		if math.Abs(cl-last) > 0.02 && math.Abs(a) < degrees(60) || cd <= 0 {
			t.Fatalf("at %.2f degrees lift goes from %g to %g, drag is %g", a*180/math.Pi, last, cl, cd)
		}
		last = cl
	}
	cl, cd := p.coefficients(math.Pi / 2)
	alike(t, "lift at 90 degrees", cl, 0, 1e-9)
	alike(t, "drag at 90 degrees", cd, flatPlateDrag(6), 1e-9)
}

// The generic section written down as rows gives the generic propeller.
func TestMeasuredPolarOfTheGenericSection(t *testing.T) {
	s := Default()
	section := flatBottomed()
	for _, re := range []float64{1e5, 2e5, 3e5, 4e5, 6e5, 8e5, 1.2e6} {
		p := section.at(re, 0, 0, flatPlateDrag(5.5))
		for a := -14.0; a <= 18; a += 0.5 {
			cl, cd := p.coefficients(degrees(a))
			s.Polar = append(s.Polar, []float64{degrees(a), cl, cd, re})
		}
	}
	generic := made(t, nothing)
	s.Family = OwnPolar
	own, err := New(s)
	if err != nil {
		t.Fatal(err)
	}
	for _, v := range []float64{0, 11, 20} {
		a, b := generic.At(standard(v, 2550)), own.At(standard(v, 2550))
		if math.Abs(b.Thrust/a.Thrust-1) > 0.01 || math.Abs(b.Power/a.Power-1) > 0.015 {
			t.Errorf("at %g m/s rows give %.1f N for %.0f W, the formula %.1f N for %.0f W", v, b.Thrust, b.Power, a.Thrust, a.Power)
		}
	}
}

// Rows that end before stall are told of.
func TestMeasuredPolarThatEndsTooEarly(t *testing.T) {
	for short, want := range map[bool]reading.Verdict{false: reading.Holds, true: reading.Thin} {
		p := made(t, func(s *Spec) {
			s.Family, s.Polar = OwnPolar, sectionRows()
			if short {
				s.Polar = s.Polar[:40] // the second Reynolds number up to 8 degrees
			}
		})
		pt := p.At(standard(0, 2550))
		if c := anyspec.Check(t, p.Report(pt, pt).Checks(nil, 0.1), "propeller.polar"); c.Verdict != want {
			t.Errorf("short %v: %s", short, c.Verdict)
		}
	}
	plain := made(t, nothing)
	pt := plain.At(standard(0, 2550))
	for _, c := range plain.Report(pt, pt).Checks(nil, 0.1) {
		if c.Key == "propeller.polar" {
			t.Error("a generic section has no polar to check")
		}
	}
}

func TestMeasuredPolarRefusals(t *testing.T) {
	for _, tc := range []struct {
		name   string
		change func(rows [][]float64) [][]float64
		says   string
	}{
		{"order", func(r [][]float64) [][]float64 { r[3], r[4] = r[4], r[3]; return r }, "row 5: the angle of attack must rise"},
		{"no zero", func(r [][]float64) [][]float64 { return r[8:] }, "row 1: the rows at the Reynolds number 200000 do not pass through zero lift"},
		{"few", func(r [][]float64) [][]float64 { return r[:26] }, "row 24: only 3 rows"},
		{"again", func(r [][]float64) [][]float64 { return append(r, r[:23]...) }, "row 47: the Reynolds number 200000 comes again"},
		{"falls", func(r [][]float64) [][]float64 { r[20][colLift] = -0.1; return r }, "row 21: the lift falls back"},
	} {
		err := PolarFits(tc.change(sectionRows()))
		if err == nil || !strings.Contains(err.Error(), tc.says) {
			t.Errorf("%s: %v, want %q", tc.name, err, tc.says)
		}
	}
}

func BenchmarkAtMeasuredPolar(b *testing.B) {
	s := Default()
	s.Family, s.Polar = OwnPolar, sectionRows()
	p, err := New(s)
	if err != nil {
		b.Fatal(err)
	}
	f := standard(0, 2550)
	b.ReportAllocs()
	for b.Loop() {
		p.At(f)
	}
}

func (t *polarTable) at(reynolds, mach float64) (p polar) {
	t.fix(&p, reynolds, mach, 0)
	return p
}

func (s *Section) at(reynolds, mach, delay, flatPlate float64) (p polar) {
	s.fix(&p, reynolds, mach, delay, flatPlate)
	return p
}

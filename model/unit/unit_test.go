package unit

import (
	"math"
	"strings"
	"testing"

	"pgregory.net/rapid"
)

// Factors: NIST SP 811 (2008), appendix B.8/B.9, to the digits printed there.
func TestPublishedFactors(t *testing.T) {
	for _, tc := range []struct {
		u    Unit
		want float64
		tol  float64
	}{
		{Horsepower, 7.456999e2, 1e-7}, {MetricHorsepower, 7.354988e2, 1e-7},
		{PoundForce, 4.448222, 1e-7}, {KilogramForce, 9.80665, 1e-15},
		{PoundForceFoot, 1.355818, 1e-6}, {PSI, 6.894757e3, 1e-7},
		{Inch, 2.54e-2, 1e-15}, {Foot, 3.048e-1, 1e-15}, {PoundMass, 4.535924e-1, 1e-7},
		{Knot, 5.144444e-1, 1e-6}, {KilometrePerHour, 2.777778e-1, 1e-7},
		{RPM, 1.047198e-1, 1e-6}, {Degree, 1.745329e-2, 1e-6},
		{SlugPerCubicFoot, 515.3788, 1e-6}, {PoundPerHorsepowerHr, 1.689659e-7, 1e-6},
	} {
		if got := tc.u.SI(1); math.Abs(got/tc.want-1) > tc.tol {
			t.Errorf("1 %s = %.9g SI, want %.9g", tc.u, got, tc.want)
		}
	}
	if got := Fahrenheit.SI(212); math.Abs(got-373.15) > 1e-10 {
		t.Errorf("212 °F = %.12g K", got)
	}
}

func TestParse(t *testing.T) {
	for _, tc := range []struct {
		text string
		u    Unit
		want float64
	}{
		{"62", Millimetre, 0.062}, {" 62 mm ", Millimetre, 0.062}, {"62mm", Millimetre, 0.062},
		{"10 in", Millimetre, 0.254}, {"3/8 in", Millimetre, 0.009525}, {"1 3/8 in", Millimetre, 0.034925},
		{`3/8"`, Millimetre, 0.009525}, {"-1 1/2 in", Millimetre, -0.0381},
		{"4,5", Kilogram, 4.5}, {"11.5 hp", Kilowatt, 8575.548523196107}, {"4.2 kgf", Newton, 41.18793},
		{"1e3", Newton, 1000}, {"20 °C", Celsius, 293.15}, {"68 F", Celsius, 293.15}, {"35 Nm", NewtonMetre, 35},
		{"80 cc", CubicCentimetre, 80e-6}, {"97", Percent, 0.97}, {"−5", Celsius, 268.15}, {"8500 rpm", RPM, 890.1179185171081},
	} {
		got, err := Parse(tc.text, tc.u)
		if err != nil || math.Abs(got-tc.want) > 1e-12*math.Abs(tc.want) {
			t.Errorf("Parse(%q, %s) = %.15g, %v; want %.15g", tc.text, tc.u, got, err, tc.want)
		}
	}
}

func TestParseRefuses(t *testing.T) {
	for _, tc := range []struct {
		text, says string
		u          Unit
	}{
		{"", "is not a number", Millimetre}, {"nan", "is not a number", Millimetre}, {"inf", "is not a number", Millimetre},
		{"+Inf", "is not a number", Newton}, {"five", "is not a number", Newton},
		{"5 kg", "is a mass, but this is a length", Millimetre}, {"5 parsec", "unknown unit", Millimetre},
		{"1,234.5", "thousands", Newton}, {"1/0", "divides by zero", Newton}, {"1e999", "too large", Newton},
		{"1e308 kN", "too large", Newton}, {"--5", "is not a number", Newton}, {"5 5", "is not a number", Newton},
		{"3/8/2", "is not a number", Millimetre},
	} {
		if x, err := Parse(tc.text, tc.u); err == nil || !strings.Contains(err.Error(), tc.says) {
			t.Errorf("Parse(%q, %s) = %g, %v; want an error with %q", tc.text, tc.u, x, err, tc.says)
		}
	}
}

func TestFormat(t *testing.T) {
	for _, tc := range []struct {
		u    Unit
		si   float64
		want string
	}{
		{Millimetre, 0.2384, "238 mm"}, {Millimetre, 0.0625, "62.5 mm"}, {Newton, 612.4, "612 N"},
		{Newton, 12345, "12345 N"}, {One, 2.71875, "2.719"}, {Percent, 0.971, "97.1 %"}, {Celsius, 344.65, "71.5 °C"},
		{Degree, math.Pi / 10, "18.0°"}, {MetrePerSecond, -0.004, "-0.00400 m/s"}, {Kilogram, 0, "0 kg"},
	} {
		if got := tc.u.Text(tc.si); got != tc.want {
			t.Errorf("Text(%g) = %q, want %q", tc.si, got, tc.want)
		}
	}
	for _, tc := range []struct {
		u        Unit
		si, like float64
		want     string
	}{
		{Millimetre, 0.0084, 0.238, "+8"}, {Kilogram, -0.34, 24.1, "-0.3"}, {Celsius, 4.2, 344.65, "+4.2"},
		{Newton, 0.3, 0, "+0.300"}, {Newton, 0, 600, "+0"},
	} {
		if got := tc.u.Delta(tc.si, tc.like); got != tc.want {
			t.Errorf("Delta(%g, %g) = %q, want %q", tc.si, tc.like, got, tc.want)
		}
	}
}

func TestConversionRoundTrip(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		u := all[rapid.IntRange(0, len(all)-1).Draw(t, "unit")]
		x := rapid.Float64Range(-1e6, 1e6).Draw(t, "x")
		scale := math.Abs(x) + math.Abs(u.Shift)
		if back := u.From(u.SI(x)); math.Abs(back-x) > 1e-12*scale {
			t.Fatalf("%.17g %s came back as %.17g", x, u, back)
		}
	})
}

// What is typed, kept in SI, written and read again must be the same bits.
func TestExactReadsBackToTheSameBits(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		u := all[rapid.IntRange(0, len(all)-1).Draw(t, "unit")]
		si := u.SI(rapid.Float64Range(-1e6, 1e6).Draw(t, "typed"))
		text := u.Exact(si)
		back, err := Parse(text, u)
		if err != nil || back != si {
			t.Fatalf("%.17g in %s wrote %q, read %.17g, %v", si, u, text, back, err)
		}
	})
}

func TestExactIsShort(t *testing.T) {
	for _, text := range []string{"62", "62.5", "0.29", "165.25", "29", "57", "2.34"} {
		si, err := Parse(text, Millimetre)
		if err != nil {
			t.Fatal(err)
		}
		if got := Millimetre.Exact(si); got != text {
			t.Errorf("typed %s, kept as %s", text, got)
		}
	}
}

func TestSettleDropsTheNoiseOfAConversion(t *testing.T) {
	for _, tc := range []struct {
		typed string
		u     Unit
		want  string
	}{
		{"2 7/8 in", Millimetre, "73.025"}, {"62", Millimetre, "62"}, {"11.5 hp", Kilowatt, "8.575548523196"}, {"20 lb", Kilogram, "9.0718474"},
		{"68 °F", Celsius, "20"}, {"0.1234567890123456", Millimetre, "0.1234567890123456"}, {"15", Degree, "15"},
	} {
		si, err := Parse(tc.typed, tc.u)
		if err != nil {
			t.Fatal(err)
		}
		settled := tc.u.Settle(si)
		if got := tc.u.Exact(settled); !strings.HasPrefix(got, tc.want) || len(tc.want) < 12 && got != tc.want {
			t.Errorf("%s became %s, want %s", tc.typed, got, tc.want)
		}
		if again := tc.u.Settle(settled); again != settled {
			t.Errorf("%s does not stay settled", tc.typed)
		}
	}
}

func TestSymbolsAreUniqueWithinADimension(t *testing.T) {
	seen := map[string]bool{}
	for _, u := range all {
		id := string(u.Dimension) + "|" + u.Symbol
		if seen[id] {
			t.Errorf("%s stands twice for %s", u.Symbol, u.Dimension)
		}
		seen[id] = true
	}
}

package theme

import (
	"github.com/charmbracelet/x/ansi"
	"io"
	"strings"
	"testing"
	"unicode/utf8"

	"github.com/charmbracelet/lipgloss"
	"github.com/muesli/termenv"
	"pgregory.net/rapid"

	"backspan/model/unit"
)

func plainTheme(ascii bool) *Theme {
	r := lipgloss.NewRenderer(io.Discard)
	r.SetColorProfile(termenv.Ascii)
	return New(r, ascii)
}

func TestClean(t *testing.T) {
	for _, tc := range []struct{ given, drawn, typed string }{
		{"plain", "plain", "plain"}, {"20 °C", "20 °C", "20 degC"}, {"N·m", "N·m", "N*m"}, {"kg·m²", "kg·m²", "kg*m2"},
		{"a\nb", `a\nb`, `a\nb`}, {"a\x1b[2J", `a\x1b[2J`, `a\x1b[2J`}, {"\u202ex", `\u202ex`, `\u202ex`}, {"\u009b", `\x9b`, `\x9b`},
		{"\xff", `\xff`, `\xff`}, {"Élan", "Élan", "Elan"}, {"Größe", "Größe", "Grosse"}, {"漢", "漢", "?"}, {"A → B", "A → B", "A -> B"},
	} {
		if got := plainTheme(false).Clean(tc.given); got != tc.drawn {
			t.Errorf("%q becomes %q, want %q", tc.given, got, tc.drawn)
		}
		if got := plainTheme(true).Clean(tc.given); got != tc.typed {
			t.Errorf("in ASCII %q becomes %q, want %q", tc.given, got, tc.typed)
		}
	}
}

// What an ASCII terminal shows as a unit, a form takes back.
func TestASCIIUnitsAreTakenBack(t *testing.T) {
	for _, u := range []unit.Unit{unit.NewtonMetre, unit.Celsius, unit.Degree, unit.Micrometre, unit.SquareMetre, unit.CubicCentimetre,
		unit.KilogramPerCubicMetre, unit.KilogramSquareMetre, unit.NewtonSquareMetre, unit.WattPerSquareMetreKelvin, unit.SquareMillimetrePerSecond} {
		spelt := plainTheme(true).Clean(u.Symbol)
		if si, err := unit.Parse("2 "+spelt, u); err != nil || si != u.SI(2) {
			t.Errorf("%s, shown as %s: %v", u.Symbol, spelt, err)
		}
	}
}

func TestAnyTextBecomesOneHarmlessLine(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		given := rapid.OneOf(rapid.String(), rapid.Map(rapid.SliceOf(rapid.Byte()), func(b []byte) string { return string(b) })).Draw(t, "text")
		ascii := rapid.Bool().Draw(t, "ascii")
		th := plainTheme(ascii)
		got := th.Clean(given)
		if !utf8.ValidString(got) {
			t.Fatalf("%q is no text", got)
		}
		for _, r := range got {
			if r < ' ' || r >= 0x7f && r < 0xa0 || ascii && r > 0x7f {
				t.Fatalf("%q holds %q", got, r)
			}
		}
		w := rapid.IntRange(0, 20).Draw(t, "width")
		if n := Width(th.Fit(got, w)); n != w {
			t.Fatalf("fitted to %d cells %q takes %d", w, got, n)
		}
	})
}

func TestHeadingFillsItsWidth(t *testing.T) {
	for _, focus := range []bool{false, true} {
		for w := range 90 {
			if got := Width(plainTheme(false).Heading("Readings", "1-9 of 40", w, focus)); got != w {
				t.Errorf("focus %v: %d cells in %d", focus, got, w)
			}
		}
	}
}

func TestGauge(t *testing.T) {
	for _, tc := range []struct {
		span Span
		want string
	}{
		{Span{0, 10, 0, 0, 0}, "O.........."}, {Span{0, 10, 2, 5, 8}, "..----..O.."}, {Span{0, 10, 2, 5, 99}, "..----....O"}, {Span{5, 5, 0, 0, 5}, ""},
	} {
		if got := plainTheme(true).Gauge(tc.span, 11); got != tc.want {
			t.Errorf("%+v: %q, want %q", tc.span, got, tc.want)
		}
	}
}

func TestScreenStaysInTheWindow(t *testing.T) {
	got := plainTheme(true).Screen([]string{"abcdef", "° ", "c"}, 4, 2)
	if got != "abcd\n?" || strings.Count(got, "\n") != 1 {
		t.Errorf("%q", got)
	}
}

// The quick way of measuring agrees with the library wherever it answers.
func TestOwnWidth(t *testing.T) {
	for _, s := range []string{"", "depth 318 mm", "\x1b[1;38;5;31m━┫ Engine ┣──\x1b[0m 15 °C … ⣿⣿", "a\x1b[0m", "±0.05 m², ≤ 3"} {
		if w, ok := ownWidth(s); !ok || w != ansi.StringWidth(s) {
			t.Errorf("%q: %d, %v, want %d", s, w, ok, ansi.StringWidth(s))
		}
	}
	for _, s := range []string{"漢字", "e\u0301", "a\x1b[2K", "a\x1b]0;x\x07", "a\x1b[3", "\xff", "…\ufe0f", "a\nb"} {
		if _, ok := ownWidth(s); ok {
			t.Errorf("%q was measured without the library", s)
		}
	}
	rapid.Check(t, func(t *rapid.T) {
		s := strings.Join(rapid.SliceOf(rapid.OneOf(rapid.String(), rapid.SampledFrom([]string{"\x1b[0m", "\x1b[31;1m", "│", "⣿", "°", "\ufe0f", "\u0301", " "}))).Draw(t, "pieces"), "")
		if w, ok := ownWidth(s); ok && w != ansi.StringWidth(s) {
			t.Fatalf("%q: %d, the library says %d", s, w, ansi.StringWidth(s))
		}
	})
}

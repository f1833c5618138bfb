package raster

import (
	"strings"
	"testing"

	"pgregory.net/rapid"

	"backspan/tui/theme"
)

func shown(c *Canvas) string { return strings.Join(c.Lines(), "\n") }

func TestStrokesDifferWithoutColour(t *testing.T) {
	for _, ascii := range []bool{false, true} {
		seen := map[string]Stroke{}
		for s := Solid; s <= Chain; s++ {
			c := New(12, 1, ascii)
			c.Path(Pen{Stroke: s}, [2]float64{0, 0.5}, [2]float64{12, 0.5})
			look := shown(c)
			if was, taken := seen[look]; taken {
				t.Errorf("strokes %d and %d both look %q", was, s, look)
			}
			seen[look] = s
		}
	}
}

func TestLines(t *testing.T) {
	for _, tc := range []struct {
		name   string
		ascii  bool
		points [][2]float64
		want   string
	}{
		{"level", false, [][2]float64{{0, 0}, {3, 0}}, "⠉⠉⠉"},
		{"upright", false, [][2]float64{{1, 0}, {1, 2}}, " ⡇\n ⡇"},
		{"falling", false, [][2]float64{{0, 0}, {2, 1}}, "⠑⢄\n  ⠁"},
		{"on the far edge", false, [][2]float64{{3, 0}, {3, 2}}, "  ⢸\n  ⢸"},
		{"from outside", false, [][2]float64{{-5, 0.5}, {9, 0.5}}, "⠤⠤⠤"},
		{"outside", false, [][2]float64{{-5, -1}, {9, -1}}, ""},
		{"corner in ASCII", true, [][2]float64{{0.5, 1.5}, {0.5, 0.5}, {2.5, 0.5}}, "+--\n|"},
		{"slopes in ASCII", true, [][2]float64{{0, 1}, {2, 0}}, " //\n/"},
	} {
		c := New(3, 2, tc.ascii)
		c.Path(Pen{}, tc.points...)
		if got := strings.TrimRight(shown(c), "\n"); got != tc.want {
			t.Errorf("%s:\n%s\nwant\n%s", tc.name, got, tc.want)
		}
	}
}

func TestWordsCoverLinesAndNotOneAnother(t *testing.T) {
	c := New(8, 1, false)
	if !c.Put(2, 0, "cog", theme.Ink{}) || c.Put(4, 0, "x", theme.Ink{}) || c.Put(6, 0, "xyz", theme.Ink{}) {
		t.Error("words over words, or outside")
	}
	c.Path(Pen{}, [2]float64{0, 0}, [2]float64{8, 0})
	if got := shown(c); got != "⠉⠉cog⠉⠉⠉" {
		t.Errorf("%q", got)
	}
}

func TestMeasure(t *testing.T) {
	for _, tc := range []struct {
		from, to float64
		figure   string
		want     string
	}{
		{0, 10, "318", "|- 318 --|"},
		{0, 5, "318", "|318|"},
		{0, 3, "318", "|-| 318"},
		{14, 17, "318", "          318 |-|"},
		{4, 4.2, "3", "    | 3"},
		{9, 2, "7", "  |- 7 -|"},
		{-9, 8, "7", "-- 7 --|"},
		{3, 8, "", "   |---|"},
	} {
		c := New(17, 1, true)
		c.Measure(0, tc.from, tc.to, tc.figure, theme.Ink{}, theme.Ink{})
		if got := shown(c); got != tc.want {
			t.Errorf("%g to %g: %q, want %q", tc.from, tc.to, got, tc.want)
		}
	}
}

// One scale both ways: what is square stays square, a column for two rows.
func TestFrameIsTrueBothWays(t *testing.T) {
	f := Frame{Left: -1, Top: 2, Column: 0.1}
	a, b := f.At(0, 0), f.At(1, -1)
	if across, down := b[0]-a[0], b[1]-a[1]; across != 2*down || across != 10 {
		t.Errorf("a square is %g columns and %g rows", across, down)
	}
	if got := Fit(10, 10, 20, 20); got != 0.5 {
		t.Errorf("ten by ten in 20x20: %g a column", got)
	}
	if got := Fit(1, 10, 20, 5); got != 1 {
		t.Errorf("one by ten in 20x5: %g a column", got)
	}
}

// Whatever is drawn stays on the canvas.
func TestAnythingStaysInside(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		w, h := rapid.IntRange(0, 30).Draw(t, "w"), rapid.IntRange(0, 12).Draw(t, "h")
		c := New(w, h, rapid.Bool().Draw(t, "ascii"))
		place := rapid.Float64Range(-1e6, 1e6)
		for range 20 {
			a, b := [2]float64{place.Draw(t, "x"), place.Draw(t, "y")}, [2]float64{place.Draw(t, "x"), place.Draw(t, "y")}
			c.Path(Pen{Stroke: Stroke(rapid.IntRange(0, 3).Draw(t, "stroke"))}, a, b, [2]float64{3, 3}, a)
			c.Measure(rapid.IntRange(-2, 14).Draw(t, "row"), a[0], b[0], "123", theme.Ink{}, theme.Ink{})
		}
		lines := c.Lines()
		if len(lines) != h {
			t.Fatalf("%d lines of %d", len(lines), h)
		}
		for _, l := range lines {
			if theme.Width(l) > w {
				t.Fatalf("%q is wider than %d", l, w)
			}
		}
	})
}

package chart

import (
	"io"
	"math"
	"strings"
	"testing"

	"github.com/charmbracelet/lipgloss"
	"pgregory.net/rapid"

	"backspan/tui/theme"
)

func plain() *theme.Theme { return theme.New(lipgloss.NewRenderer(io.Discard), true) }

func TestTicksAreRound(t *testing.T) {
	for _, tc := range []struct {
		from, to float64
		n        int
		want     string
	}{
		{0, 17.3, 6, "0 5 10 15"}, {1900, 9500, 5, "2000 4000 6000 8000"}, {2.13, 3.78, 4, "2.5 3.0 3.5"},
		{-0.4, 0.4, 4, "-0.4 -0.2 0.0 0.2 0.4"}, {5, 5, 4, "4.8 5.0 5.2"},
	} {
		a := tight(tc.from, tc.to, tc.n)
		var got []string
		for _, x := range a.ticks {
			got = append(got, a.text(x))
		}
		if s := strings.Join(got, " "); s != tc.want {
			t.Errorf("%g to %g: %s, want %s", tc.from, tc.to, s, tc.want)
		}
	}
}

// An upright axis begins at nought where that wastes little.
// However little the data differ, the ticks are few and the data are held.
func TestHardlyAnyRangeHasFewTicks(t *testing.T) {
	for _, from := range []float64{-1e5, -1, 0, 5e-324, 1, 7644, 1e5, 1e12} {
		for _, to := range []float64{from, math.Nextafter(from, math.Inf(1)), from + 1e-13, from + 1e-9*math.Abs(from), from + 2e-9*math.Abs(from)} {
			for _, n := range []int{2, 20} {
				for what, a := range map[string]axis{"tight": tight(from, to, n), "wide": wide(from, to, n)} {
					slack := 1e-6 * (a.to - a.from)
					if len(a.ticks) > 2*n+2 || a.from > from+slack || a.to < to-slack {
						t.Errorf("%s, %g to %g: %d ticks from %g to %g", what, from, to, len(a.ticks), a.from, a.to)
					}
				}
			}
		}
	}
}

func TestWideAxisHoldsTheData(t *testing.T) {
	if a := wide(3, 17.3, 5); a.from != 0 || a.to != 20 {
		t.Errorf("%g to %g", a.from, a.to)
	}
	if a := wide(0.94, 0.97, 5); a.from < 0.9 || a.to > 1 {
		t.Errorf("%g to %g", a.from, a.to)
	}
	rapid.Check(t, func(t *rapid.T) {
		lo := rapid.Float64Range(-1e6, 1e6).Draw(t, "lo")
		hi := lo + rapid.Float64Range(0, 1e6).Draw(t, "span")
		a := wide(lo, hi, rapid.IntRange(2, 20).Draw(t, "n"))
		slack := 1e-6 * (math.Abs(lo) + math.Abs(hi))
		if a.from > lo+slack || a.to < hi-slack || len(a.ticks) < 1 {
			t.Fatalf("%g to %g: axis %g to %g with %d ticks", lo, hi, a.from, a.to, len(a.ticks))
		}
	})
}

func TestReadingIsBetweenThePoints(t *testing.T) {
	s := Series{Points: [][2]float64{{1, 10}, {2, 20}, {4, 0}}}
	for x, want := range map[float64]float64{1: 10, 1.5: 15, 3: 10, 4: 0} {
		if got, ok := s.At(x); !ok || got != want {
			t.Errorf("at %g: %g, want %g", x, got, want)
		}
	}
	for _, x := range []float64{0.9, 4.1} {
		if _, ok := s.At(x); ok {
			t.Errorf("the line reaches %g", x)
		}
	}
}

// The line is where its figures say: the letter set into it stands in the row
// of its value.
func TestLetterStandsAtItsValue(t *testing.T) {
	c := Chart{Series: []Series{{Letter: "Q", Points: [][2]float64{{0, 0}, {100, 50}}}}, Reading: math.NaN()}
	if !c.Lay(plain(), 60, 20) {
		t.Fatal("no room")
	}
	from, to, columns := c.Span()
	if from != 0 || to != 100 {
		t.Fatalf("axis from %g to %g", from, to)
	}
	seen := 0
	for row, line := range c.View() {
		col := strings.IndexRune(line, 'Q')
		if col < 0 {
			continue
		}
		seen++
		x := (float64(col-c.left-1) + 0.5) / float64(columns) * 100
		if want := (1 - x/100) * float64(c.h); math.Abs(float64(row)+0.5-want) > 1 {
			t.Errorf("at %g the letter is in row %d, its value in %g", x, row, want)
		}
	}
	if seen == 0 {
		t.Error("no letter")
	}
}

func TestAnyChartFits(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		c := Chart{XUnit: "rpm", YUnit: "N·m", Reading: rapid.Float64Range(-10, 10).Draw(t, "reading")}
		for range rapid.IntRange(0, 5).Draw(t, "lines") {
			s := Series{Letter: "A", Stroke: 1}
			x := rapid.Float64Range(-5, 5).Draw(t, "x")
			for range rapid.IntRange(0, 8).Draw(t, "points") {
				x += rapid.Float64Range(0, 3).Draw(t, "dx")
				s.Points = append(s.Points, [2]float64{x, rapid.Float64Range(-1e5, 1e5).Draw(t, "y")})
				s.Marks = append(s.Marks, Mark{[2]float64{x + 1, 0}, "o"})
			}
			c.Series = append(c.Series, s)
		}
		w, h := rapid.IntRange(0, 120).Draw(t, "w"), rapid.IntRange(0, 40).Draw(t, "h")
		if !c.Lay(plain(), w, h) {
			return
		}
		lines := c.View()
		if len(lines) != h {
			t.Fatalf("%d lines of %d", len(lines), h)
		}
		for _, l := range lines {
			if theme.Width(l) > w {
				t.Fatalf("%d cells in %d: %q", theme.Width(l), w, l)
			}
		}
	})
}

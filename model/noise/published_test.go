package noise

import (
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"
	"testing"

	"backspan/model/internal/published"
	"backspan/model/propeller"
	"backspan/model/unit"
)

// each computes the wanted figures named at_x from x.
func each(t testing.TB, c published.Case, f func(x float64) float64) map[string]float64 {
	got := map[string]float64{}
	for name := range c.Want {
		x, err := strconv.ParseFloat(strings.TrimPrefix(name, "at_"), 64)
		if err != nil {
			t.Fatal(err)
		}
		got[name] = f(x)
	}
	return got
}

// oneCell is a propeller whose blades work at Gutin's radius alone.
func oneCell(t testing.TB, c published.Case) Source {
	s := Source{Blades: int(c.Num(t, "blades")), Radius: c.Num(t, "radius"), Speed: unit.RPM.SI(c.Num(t, "turns")), SoundSpeed: c.Num(t, "sound_speed")}
	s.Cells = []propeller.StationLoad{{Radius: effectiveShare * s.Radius, Width: 1}}
	return s
}

func rms(t testing.TB, c published.Case, s Source) map[string]float64 {
	got := map[string]float64{}
	for m := 1; m <= 3; m++ {
		got[fmt.Sprintf("m%d", m)] = math.Sqrt(s.farHarmonic(m, unit.Degree.SI(c.Num(t, "direction")))) / c.Num(t, "distance")
	}
	return got
}

func TestPublished(t *testing.T) {
	published.Run(t, "noise", map[string]published.Runner{
		"weighting": func(t testing.TB, c published.Case) map[string]float64 {
			return each(t, c, func(k float64) float64 { return 10 * math.Log10(weight(1000*math.Pow(10, k/10))) })
		},
		"sum": func(t testing.TB, c published.Case) map[string]float64 {
			total := 0.0
			for _, l := range c.List(t, "levels") {
				total += square(l)
			}
			return map[string]float64{"total": level(total)}
		},
		"permitted": func(t testing.TB, c published.Case) map[string]float64 {
			return each(t, c, func(l float64) float64 { return permitted(l, c.Num(t, "criterion")) / c.Num(t, "unit") })
		},
		"daily": func(t testing.TB, c published.Case) map[string]float64 {
			var days []float64
			for i, l := range c.List(t, "levels") {
				days = append(days, daily(l, 60*c.List(t, "minutes")[i]))
			}
			return map[string]float64{"least": slices.Min(days), "greatest": slices.Max(days)}
		},
		"gutin": func(t testing.TB, c published.Case) map[string]float64 {
			s := oneCell(t, c)
			cell, blades := &s.Cells[0], float64(s.Blades)
			cell.Along, cell.Across = c.Num(t, "thrust")/blades, c.Num(t, "torque")/cell.Radius/blades
			return rms(t, c, s)
		},
		"deming": func(t testing.TB, c published.Case) map[string]float64 {
			s := oneCell(t, c)
			s.Cells[0].Area, s.Density = c.Num(t, "volume"), c.Num(t, "density")
			return rms(t, c, s)
		},
		"near": func(t testing.TB, c published.Case) map[string]float64 {
			s := Source{Blades: int(c.Num(t, "blades")), Radius: c.Num(t, "radius"), Speed: c.Num(t, "speed"),
				SoundSpeed: c.Num(t, "sound_speed"), Thrust: c.Num(t, "thrust"), Torque: c.Num(t, "torque")}
			if _, given := c.Given["volume"]; given {
				s.Density = c.Num(t, "density")
				s.Cells = []propeller.StationLoad{{Radius: effectiveShare * s.Radius, Width: 1, Area: c.Num(t, "volume")}}
			}
			heard := s.near(c.Num(t, "ahead"), c.Num(t, "beside"))
			return map[string]float64{"plain": level(heard.square), "weighted": level(heard.weighted)}
		},
		"vortex": func(t testing.TB, c published.Case) map[string]float64 {
			s := Source{Blades: 2, Radius: c.Num(t, "radius"), Speed: unit.RPM.SI(c.Num(t, "turns")), Density: c.Num(t, "density"), Thrust: c.Num(t, "thrust")}
			chord := c.Num(t, "chord")
			s.Cells = []propeller.StationLoad{{Radius: 0.7 * s.Radius, Width: c.Num(t, "area") / 2 / chord, Chord: chord, Thickness: c.Num(t, "thickness")}}
			heard, distance := s.vortex(), unit.Foot.SI(300)
			return map[string]float64{"lift": s.lift(c.Num(t, "area")),
				"plain": level(heard.square * at(distance)), "weighted": level(heard.weighted * at(distance))}
		},
	})
}

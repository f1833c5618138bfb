package bearing

import (
	"testing"

	"backspan/model/internal/published"
)

func TestPublished(t *testing.T) {
	published.Run(t, "bearing", map[string]published.Runner{
		"rating_for_life": ratingForLife,
		"survival": func(t testing.TB, c published.Case) map[string]float64 {
			return map[string]float64{"reliability": Survival(lifeMultiple(t, c, c.Num(t, "rating")))}
		},
		"equivalent_load":     equivalentLoad,
		"reliability_factors": reliabilityFactors,
		"pulse": func(t testing.TB, c published.Case) map[string]float64 {
			return map[string]float64{"factor": PulseFactor(c.Num(t, "swing"))}
		},
		"thrust_factors": func(t testing.TB, c published.Case) map[string]float64 {
			e, y := ThrustFactors(c.Num(t, "relative"))
			return map[string]float64{"e": e, "y": y}
		},
		"life_factor": func(t testing.TB, c published.Case) map[string]float64 {
			return map[string]float64{"factor": LifeFactor(c.Num(t, "viscosity_ratio"), c.Num(t, "clean_load"))}
		},
		"reference_viscosity": func(t testing.TB, c published.Case) map[string]float64 {
			return map[string]float64{"viscosity": ReferenceViscosity(c.Num(t, "rpm")*rpm, c.Num(t, "mean_diameter")/1000) / mm2}
		},
		"dimensions": func(t testing.TB, c published.Case) map[string]float64 {
			b := listed(t, Size(c.Word(t, "size")))
			return map[string]float64{"bore": b.Bore * 1000, "outside": b.Outside * 1000, "width": b.Width * 1000}
		},
		"speed_parameter": func(t testing.TB, c published.Case) map[string]float64 {
			b := listed(t, Size(c.Word(t, "size")))
			return map[string]float64{"speed_parameter": b.SpeedParameter(c.Num(t, "rpm")*rpm) * 60000}
		},
	})
}

func listed(t testing.TB, s Size) DeepGroove {
	t.Helper()
	b, ok := s.DeepGroove()
	if !ok {
		t.Fatalf("no %s", s)
	}
	return b
}

// lifeMultiple is the life asked over the basic life with a rating, in the
// unit of the load.
func lifeMultiple(t testing.TB, c published.Case, rating float64) float64 {
	revolutions := c.Num(t, "hours") * 60 * c.Num(t, "rpm")
	return revolutions / BasicLife(rating, c.Num(t, "load")*c.Num(t, "application_factor"))
}

func ratingForLife(t testing.TB, c published.Case) map[string]float64 {
	lo, hi := 1e-3, 1e6
	for range 100 {
		mid := (lo + hi) / 2
		if Survival(lifeMultiple(t, c, mid)) < c.Num(t, "reliability") {
			lo = mid
		} else {
			hi = mid
		}
	}
	return map[string]float64{"million_revolutions": c.Num(t, "hours") * 60 * c.Num(t, "rpm") / 1e6, "rating": lo}
}

func equivalentLoad(t testing.TB, c published.Case) map[string]float64 {
	b := DeepGroove{Rating: c.Num(t, "rating"), StaticRating: c.Num(t, "static_rating")}
	load := b.EquivalentLoad(c.Num(t, "radial"), c.Num(t, "axial"), c.Num(t, "f0"))
	life := BasicLife(b.Rating, load)
	return map[string]float64{"load": load, "million_revolutions": life / 1e6, "hours": life / 60 / c.Num(t, "rpm")}
}

func reliabilityFactors(t testing.TB, c published.Case) map[string]float64 {
	return map[string]float64{
		"a1_90": Reliability90.Factor(), "a1_95": Reliability95.Factor(), "a1_96": Reliability96.Factor(),
		"a1_97": Reliability97.Factor(), "a1_98": Reliability98.Factor(), "a1_99": Reliability99.Factor(),
	}
}

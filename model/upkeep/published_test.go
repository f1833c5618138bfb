package upkeep

import (
	"testing"

	"backspan/model/internal/published"
)

func TestPublished(t *testing.T) {
	published.Run(t, "upkeep", map[string]published.Runner{
		"age": func(t testing.TB, c published.Case) map[string]float64 {
			a := Age{Shape: c.Num(t, "shape"), Scale: c.Num(t, "scale"), Planned: c.Num(t, "planned"), Failed: c.Num(t, "failed")}
			best := a.Best()
			found := map[string]float64{"best": best.Value, "unplanned": a.RunRate()}
			if best.Known {
				found["rate"], found["survival"] = a.Rate(best.Value), a.Survival(best.Value)
			}
			return found
		},
		"line": func(t testing.TB, c published.Case) map[string]float64 {
			var items []scheduled
			prices := c.List(t, "prices")
			for i, interval := range c.List(t, "intervals") {
				items = append(items, scheduled{parts: prices[i], interval: interval})
			}
			changes, cost := line(items, c.Num(t, "horizon")), 0.0
			for _, x := range changes {
				cost += x.Cost()
			}
			return map[string]float64{"changes": float64(len(changes)), "cost": cost}
		},
	})
}

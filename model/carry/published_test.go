package carry

import (
	"fmt"
	"testing"

	"backspan/model/internal/published"
	"backspan/model/stack"
	"backspan/model/unit"
)

func TestPublished(t *testing.T) {
	published.Run(t, "carry", map[string]published.Runner{
		"segments": segmentShares, "stand": standing, "disc": disc, "leaning": leaning, "flexed_spine": flexedSpine,
		"pandolf": pandolf, "looney": looney, "measured_rise": measuredRise,
		"lift": lifting, "lift_inches": liftingInches, "container": container, "percentile": percentile,
		"split": splitting, "thickness": thickness,
	})
}

func segmentShares(t testing.TB, c published.Case) map[string]float64 {
	s := Of(Table(c.Word(t, "table")))
	return map[string]float64{
		"sum": s.UpperMass + 2*(s.Thigh+s.Shank+s.Foot), "upper": s.UpperMass,
		"thigh": s.Thigh, "shank": s.Shank, "foot": s.Foot,
		"centre": s.Centre, "upper_centre": s.UpperCentre,
	}
}

func standing(t testing.TB, c published.Case) map[string]float64 {
	p := DefaultPilot()
	p.Mass, p.Stature = 85.52, 1.7562
	r := Stand(p, Load{Mass: c.Num(t, "mass"), CGAft: c.Num(t, "aft"), CGUp: 0.25})
	return map[string]float64{
		"hip_moment": r.HipMoment, "lean": unit.Degree.From(r.Lean), "lean_ankle": unit.Degree.From(r.LeanAnkle),
		"strap_pull": r.StrapPull, "shoulder": r.ShoulderForce,
		"equivalent": r.EquivalentMass, "equivalent_lean": r.EquivalentMassLean,
		"kg_per_cm": unit.KilogramPerCentimetre.From(r.MassPerDepth),
	}
}

func disc(t testing.TB, c published.Case) map[string]float64 {
	d := defaultBack().At(c.Num(t, "body"), Load{Mass: c.Num(t, "mass"), CGAft: c.Num(t, "aft")}, unit.Degree.SI(c.Num(t, "lean")))
	return map[string]float64{"compression": d.Compression}
}

func leaning(t testing.TB, c published.Case) map[string]float64 {
	p, l := DefaultPilot(), Load{Mass: c.Num(t, "mass"), CGAft: c.Num(t, "aft"), CGUp: 0.25}
	p.Mass, p.Stature = 85.52, 1.7562
	r := Stand(p, l)
	b := Bear(p, &r, Machine{Ready: l})
	return map[string]float64{"moment": b.Leaning.Moment, "compression": b.Leaning.Compression}
}

// flexedSpine has its weights along the spine, which is drawn from the
// horizontal: upright they stand ahead of the disc.
func flexedSpine(t testing.TB, c published.Case) map[string]float64 {
	b := Back{UpperShare: 1, UpperAhead: c.Num(t, "upper_along"), BackMuscle: c.Num(t, "muscle_arm"), BellyMuscle: 1}
	object := Load{Mass: c.Num(t, "object") / gravity, CGAft: -c.Num(t, "object_along")}
	d := b.At(c.Num(t, "upper")/gravity, object, unit.Degree.SI(c.Num(t, "angle")))
	return map[string]float64{"muscle": b.muscle(d.Moment), "compression": d.Compression}
}

func pandolf(t testing.TB, c published.Case) map[string]float64 {
	w := Walk{Speed: c.Num(t, "speed"), Grade: c.Num(t, "grade") / 100, Ground: Ground(c.Word(t, "ground"))}
	watts := w.Pandolf(c.Num(t, "body"), c.Num(t, "load"))
	return map[string]float64{"watts": watts, "kilocalories_per_hour": watts * 3600 / 4184}
}

func looney(t testing.TB, c published.Case) map[string]float64 {
	w := Walk{Speed: c.Num(t, "speed"), Grade: c.Num(t, "grade") / 100, Ground: Paved}
	return map[string]float64{"watts_per_kilogram": w.Looney(1, 0)}
}

// measuredRise is steeper than both formulas, so it is the top of the band.
func measuredRise(t testing.TB, c published.Case) map[string]float64 {
	w, body := Walk{Speed: c.Num(t, "speed"), Ground: Paved}, c.Num(t, "body")
	_, light := w.Band(body, 20)
	_, heavy := w.Band(body, 30)
	return map[string]float64{"watts_per_kilogram": (heavy - light) / 10}
}

func lifting(t testing.TB, c published.Case) map[string]float64 {
	return lifted(t, c, 0.01)
}

// liftingInches takes the manual's two sets of constants for one: they are
// each other's at 1 in to 2.5 cm and 51 lb to 23 kg.
func liftingInches(t testing.TB, c published.Case) map[string]float64 {
	got := lifted(t, c, 0.025)
	got["limit"] *= 51 / loadConstant
	got["index"] /= 51 / loadConstant
	return got
}

func lifted(t testing.TB, c published.Case, length float64) map[string]float64 {
	l := Lift{From: length * c.Num(t, "from"), To: length * c.Num(t, "to"), Grip: Grip(c.Word(t, "grip")), Frequency: c.Num(t, "frequency")}
	reach := length * c.Num(t, "reach")
	limit := l.Limit(reach, l.From)
	return map[string]float64{
		"horizontal": horizontal(reach), "vertical": l.vertical(l.From), "distance": l.distance(l.travel()), "coupling": l.coupling(l.From),
		"limit": limit, "index": c.Num(t, "load") / limit,
	}
}

// container is a box with its centre in its middle.
func container(t testing.TB, c published.Case) map[string]float64 {
	l := Lift{From: c.Num(t, "from") / 100, To: c.Num(t, "to") / 100, Grip: Grip(c.Word(t, "grip")), Frequency: 1}
	reach := l.Reach(l.From, c.Num(t, "depth")/200)
	limit := l.Limit(reach, l.From)
	return map[string]float64{"reach": 100 * reach, "limit": limit, "index": c.Num(t, "load") / limit}
}

func percentile(t testing.TB, c published.Case) map[string]float64 {
	p := DefaultPilot()
	p.Percentile = Percentile(c.Word(t, "who"))
	p = p.Measured()
	return map[string]float64{"mass": p.Mass, "stature": 1000 * p.Stature, "foot": 1000 * p.FootLength, "buttock_depth": 2000 * (p.BackBehindHip + pressed)}
}

func splitting(t testing.TB, c published.Case) map[string]float64 {
	machine := func(mass, aft string) []stack.Item {
		var items []stack.Item
		x := c.List(t, aft)
		for i, m := range c.List(t, mass) {
			items = append(items, stack.Item{Key: fmt.Sprint(i), Mass: m, X: x[i]})
		}
		return items
	}
	p := DefaultPilot()
	p.BackBehindHip = c.Num(t, "back_behind_hip")
	s := p.SplitPieces(machine("mass_from", "aft_from"), machine("mass_to", "aft_to"))
	got := map[string]float64{"total": s.Total / gravity}
	for i, q := range s.Pieces {
		got[fmt.Sprintf("mass_%d", i+1)], got[fmt.Sprintf("place_%d", i+1)] = q.FromMass/gravity, q.FromPlace/gravity
	}
	return got
}

func thickness(t testing.TB, c published.Case) map[string]float64 {
	p := DefaultPilot()
	p.BackBehindHip, p.ReferenceDepth = c.Num(t, "back_behind_hip"), c.Num(t, "reference_depth")
	var items []stack.Item
	face, depth := 0.0, c.List(t, "depth")
	for i, m := range c.List(t, "mass") {
		items = append(items, stack.Item{Key: fmt.Sprint(i), Front: face, Depth: depth[i], Mass: m, X: face + depth[i]/2, Ahead: i})
		face += depth[i]
	}
	items = append(items, stack.Item{Key: "tank", Mass: c.Num(t, "beside")})
	got := map[string]float64{}
	for i, piece := range p.Thicknesses(items) {
		got[fmt.Sprintf("per_cm_%d", i+1)], got[fmt.Sprintf("felt_%d", i+1)] = unit.KilogramPerCentimetre.From(piece.PerDepth), piece.Felt
	}
	return got
}

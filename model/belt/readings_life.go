package belt

import (
	"backspan/model/param"
	"backspan/model/reading"
	"backspan/model/unit"
)

func (r *Result) lifeReadings(rs []reading.Reading) []reading.Reading {
	l := r.Life
	of := func(key, label string, x float64, u unit.Unit) reading.Reading {
		return reading.OfSlot(key, label, param.Slot{Value: x, Known: l.Why == "" && r.Ribs > 0}, u, r.noLife())
	}
	return append(rs,
		reading.OfSlot("belt.rated_power", "Rated power per rib", param.Slot{Value: r.RatedPower, Known: r.RatedWhy == "" && r.Ribs > 0}, unit.Kilowatt, r.noRating()).Higher().
			How("from the rating table, linear in speed and diameter, times the arc factor; a length factor is left out").Source("the source given with the table"),
		reading.New("belt.wanted_power", "Power per rib to be rated", r.WantedPower, unit.Kilowatt).Lower().
			How("power times service factor over the ribs; ratings presuppose a service factor").Source("common practice, no source"),
		of("belt.fatigue_life", "Fatigue life claimed", l.Claim, unit.Hour).Higher().
			How(l.method()).Source(lawSource),
		of("belt.fatigue_tension", "Peak tension per rib for fatigue", l.Peak, unit.Newton).Lower().
			How("tight side per rib at the torque peaks or at the service factor, as Load factor says").Source(lockedSource),
		of("belt.fatigue_sensitivity", "Life lost by 10 % more tension", l.Sensitivity, unit.One).Lower().
			How("the fatigue life is divided by this when the peak tension rises by 10 %").Source(lawSource),
		reading.New("belt.fatigue_heat", "Wear rate by temperature", l.Heat, unit.One).Lower().
			How("times that of a belt below the temperature from which warming counts").Source("from memory: halving per 10 to 15 K above about 80 °C"),
		reading.New("belt.replacement", "Change the belt after", l.Change, unit.Hour).Higher().
			How("least of fatigue life over its uncertainty, wear life and change interval").Source("common practice, no source: inspection every 100 h"),
	)
}

const lawSource = "Shigley's Mechanical Engineering Design, eqs 17-27 and 17-28; " + lawOrigin

// method says what the claim rests on.
func (l Life) method() string {
	text := "durability law, damage summed over the use, faster when hot"
	if l.Fatigue > l.Claim {
		text = "more than this, other limits govern: " + text
	}
	switch {
	case l.Calibrated:
		return text + "; calibrated on the known life"
	case l.Unfinished:
		return text + "; not calibrated, for the known life lacks a figure; uncertain by ten times either way"
	}
	return text + "; not calibrated, uncertain by ten times either way"
}

func (r *Result) noLife() string {
	if r.Life.Why == "" {
		return noPassing
	}
	return r.Life.Why
}

func (r *Result) noRating() string {
	if r.RatedWhy == "" {
		return noRating
	}
	return r.RatedWhy
}

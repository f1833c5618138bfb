package upkeep

import (
	"backspan/model/param"
	"backspan/model/reading"
	"backspan/model/unit"
)

const (
	unsolved  = "the machine finds no level flight or no full throttle at trim speed, so its fuel is not known"
	source    = "prices and intervals as set; " + practice
	barlow    = "age replacement, Barlow and Proschan, Mathematical Theory of Reliability, from memory; life data as given"
	noneSpent = "life data are not given: Weibull shape and Weibull scale"
)

// Readings lists what was found. Money stands in the study's currency.
func (r *Result) Readings(rs []reading.Reading) []reading.Reading {
	hourly := 0.0
	if r.Hours > 0 {
		hourly = r.Total() / r.Hours
	}
	rs = append(rs,
		r.solved("upkeep.cost_per_hour", "Cost per hour", hourly, unit.CurrencyPerHour).
			How("fuel, oil, parts and labour until the horizon over its running time; changes counted whole, those due exactly at the horizon go to the next owner: see Due at the horizon").Source(source),
		r.solved("upkeep.horizon_cost", "Cost until the horizon", r.Total(), unit.Currency).
			How("fuel, oil, parts and labour, changes counted whole").Source(source),
		r.solved("upkeep.horizon_due", "Due at the horizon", r.Due, unit.Currency).
			How("parts and labour of the changes due exactly at the horizon; in no other figure but the long run's").Source(source),
		r.solved("upkeep.horizon_with_drive", "Horizon's cost with drive bought", r.Total()+r.DrivePrice, unit.Currency).
			How("what one drive or another costs to buy and to keep").Source(source),
		r.solved("upkeep.fuel_cost", "Fuel and oil until the horizon", r.FuelCost, unit.Currency).
			How("mean fuel flow over the profile of use, with the oil of a mixture").Source("the study"),
		r.solved("upkeep.parts_cost", "Parts until the horizon", r.PartsCost, unit.Currency).
			How("whole changes; the drive's change with its labour, as set with the drive").Source(source),
		r.solved("upkeep.labour_cost", "Labour until the horizon", r.LabourCost, unit.Currency).
			How("time of the changes × labour rate, without the drive's").Source(source),
		r.solved("upkeep.downtime", "Standing time until the horizon", r.Stands, unit.Hour).
			How("time of all changes, one after the other").Source(source),
		r.solved("upkeep.changes", "Changes until the horizon", float64(r.Count), unit.Count).
			How(r.listed()).Source(source),
		r.solved("upkeep.dearest_year", "Dearest year", r.Dearest, unit.Currency).
			How("fuel of a year and the changes that fall into the dearest"+r.cut()).Source(source),
		r.solved("upkeep.steady_cost_per_hour", "Cost per hour in the long run", r.Steady, unit.CurrencyPerHour).
			How("each change by its share, without a horizon").Source(source),
		r.solved("upkeep.mean_fuel", "Mean fuel in use", r.MeanFlow, unit.LitrePerHour).
			How("idle, full throttle at trim speed and level flight by their shares of time").Source("the study"),
	)
	rs = r.TopEnd.readings(rs, "top_end", "Piston and ring")
	rs = r.BigEnd.readings(rs, "big_end", "Big end")
	return r.Drive.readings(rs, "drive", "Drive's part")
}

func (r *Result) solved(key, label string, si float64, u unit.Unit) reading.Reading {
	why := ""
	if !r.Solved {
		why = unsolved
	}
	return reading.Unless(why, key, label, si, u).Lower()
}

func (a *Advice) readings(rs []reading.Reading, key, label string) []reading.Reading {
	why := a.Why
	if why == "" {
		why = noneSpent
	}
	of := func(noun, text string, s param.Slot, u unit.Unit) reading.Reading {
		return reading.OfSlot("upkeep."+key+noun, label+text, s, u, why).Source(barlow)
	}
	return append(rs,
		of("_best_interval", ", best interval", a.Best, unit.Hour).How("age of a planned change at which planned changes and failures together cost least"+a.flat()),
		of("_rate_as_set", ", cost as set", a.AtSet, unit.CurrencyPerHour).Lower().How("planned changes and failures expected at the interval set"),
		of("_rate_at_best", ", cost at best", a.AtBest, unit.CurrencyPerHour).Lower().How("planned changes and failures expected at the best interval"),
		of("_rate_unplanned", ", run to failure", a.Running, unit.CurrencyPerHour).Lower().How("failures expected without planned changes"),
	)
}

// listed says whether the list of changes holds them all.
func (r *Result) listed() string { return "whole changes of all parts" + r.cut() }

func (r *Result) cut() string {
	if r.Count > len(r.Changes) {
		return "; the list of changes ends after " + unit.Count.Text(float64(len(r.Changes))) + ", and the dearest year is looked for in it"
	}
	return ""
}

// flat says between which ages the cost hardly changes.
func (a *Advice) flat() string {
	if !a.Earliest.Known {
		return ""
	}
	s := "; " + unit.Percent.Text(worth) + " dearer at most "
	if !a.Latest.Known {
		return s + "from " + unit.Hour.Text(a.Earliest.Value) + " on, without end"
	}
	return s + "from " + unit.Hour.Text(a.Earliest.Value) + " to " + unit.Hour.Text(a.Latest.Value)
}

// check holds the cost at the interval set against that at the best.
func (a *Advice) check(key, label string) reading.Check {
	way := "lengthen"
	if a.Set > a.Best.Value {
		way = "shorten"
	}
	return reading.AtMost(key, label, a.AtSet.Value, (1+worth)*a.AtBest.Value, 0, unit.CurrencyPerHour).Warn().
		Source(barlow + "; the limit is the cost at the best interval and " + unit.Percent.Text(worth)).
		Advice(way + " the interval of this part towards " + unit.Hour.Text(a.Best.Value) + a.flat() + ". Or look at its life data again")
}

// Checks holds the profile and the intervals against what they should be.
func (r *Result) Checks(cs []reading.Check) []reading.Check {
	if !r.Solved {
		return cs
	}
	cs = append(cs,
		reading.AtLeast("upkeep.shares", "Time is left for level flight", r.ShareLeft, 0, 0, unit.Percent).Source("arithmetic").
			Advice("lower Share of time at idle or Share of time in full climb"),
	)
	for _, a := range []struct {
		key, label string
		advice     *Advice
	}{
		{"upkeep.top_end_interval", "Piston and ring, interval", &r.TopEnd},
		{"upkeep.big_end_interval", "Big end, interval", &r.BigEnd},
		{"upkeep.drive_interval", "Drive's part, interval", &r.Drive},
	} {
		if a.advice.Best.Known && a.advice.AtSet.Known && a.advice.AtBest.Known {
			cs = append(cs, a.advice.check(a.key, a.label))
		}
	}
	return cs
}

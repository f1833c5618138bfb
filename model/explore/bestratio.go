package explore

import (
	"fmt"
	"slices"

	"backspan/model"
	"backspan/model/match"
	"backspan/model/param"
	"backspan/model/reading"
	"backspan/model/unit"
)

// bars are the checks that keep a ratio from being the best when they fail,
// with the word for each; where the match says itself why, its word comes first.
var bars = map[string]string{
	"match.static":       match.Lugging.Short(),
	"match.static_light": match.OverSpeed.Short(),
	"match.trim":         match.OverSpeed.Short(),
	"engine.speed_limit": match.OverSpeed.Short(),
	"propeller.tip_mach": "tip Mach number past its limit",
	"propeller.model":    "outside the propeller's model",
}

// take reads an outcome.
func (p *Ratio) take(o model.Outcome) {
	for key, to := range map[string]*param.Slot{
		"drive.ratio": &p.Ratio, "propeller.static_thrust": &p.Thrust, "flight.climb_rate": &p.Climb,
		"propeller.tip_mach": &p.TipMach, "engine.speed": &p.Static, "match.trim_speed": &p.Trim,
	} {
		if r, ok := o.Reading(key); ok && r.Known() {
			*to = param.Known(r.Value)
		}
	}
	if r, ok := o.Reading("drive.ratio"); ok && !r.Known() {
		p.Barred = append(p.Barred, r.Why)
		return
	}
	for _, c := range o.Checks {
		word, bar := bars[c.Key]
		if said := match.Said(c.Why).Short(); bar && said != "" {
			word = said
		}
		switch {
		case bar && slices.Contains(p.Barred, word):
		case bar && c.Verdict == reading.Fails, c.Key == "propeller.tip_mach" && c.Past:
			p.Barred = append(p.Barred, word)
		case c.Verdict == reading.Fails:
			p.Others++
		}
	}
	if r, ok := o.Reading("flight.climb_rate"); len(p.Barred) == 0 && ok && !r.Known() {
		p.Barred = append(p.Barred, r.Why)
	}
}

// choose marks the ratio that climbs best of those not barred, and says why.
func (c *Chart) choose() {
	free, top := 0, -1
	for i := range c.Points {
		p := &c.Points[i]
		if p.Climb.Known && (top < 0 || p.Climb.Value > c.Points[top].Climb.Value) {
			top = i
		}
		if len(p.Barred) > 0 {
			continue
		}
		free++
		if c.Best < 0 || p.Climb.Value > c.Points[c.Best].Climb.Value {
			c.Best = i
		}
	}
	if c.Best < 0 {
		c.Reason = "no ratio looked at keeps the engine within its speeds and the tip Mach number within its limit: " + commonBar(len(c.Points), func(i int) []string { return c.Points[i].Barred }) +
			"; change the propeller, or look at other ratios"
		return
	}
	best := &c.Points[c.Best]
	c.Reason = fmt.Sprintf("greatest climb, %s, where the engine neither lugs nor over-speeds and the tip Mach number keeps its limit (%d of %d ratios)",
		unit.MetrePerSecond.Text(best.Climb.Value), free, len(c.Points))
	if top != c.Best {
		p := &c.Points[top]
		c.Reason += fmt.Sprintf("; %s would climb %s, but %s", unit.One.Text(p.Ratio.Value), unit.MetrePerSecond.Text(p.Climb.Value), p.Barred[0])
	}
	if c.Best == 0 || c.Best == len(c.Points)-1 {
		c.Reason += "; it lies at the end of the ratios looked at: look further"
	}
	if best.Others > 0 {
		c.Reason += fmt.Sprintf("; %d other checks fail there", best.Others)
	}
}

// commonBar is the bar that most of n points meet first.
func commonBar(n int, barred func(i int) []string) string {
	count, most := map[string]int{}, ""
	for i := range n {
		bars := barred(i)
		if len(bars) == 0 {
			continue
		}
		if count[bars[0]]++; count[bars[0]] > count[most] {
			most = bars[0]
		}
	}
	return most
}

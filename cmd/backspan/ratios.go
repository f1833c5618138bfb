package main

import (
	"flag"
	"fmt"
	"strconv"
	"strings"

	"backspan/model/explore"
	"backspan/model/param"
	"backspan/model/unit"
	"backspan/store/report"
)

// ratios prints what other ratios would make of one machine.
func (p program) ratios(args []string) int {
	fs := flag.NewFlagSet("ratios", flag.ContinueOnError)
	variant := fs.String("variant", "", "the machine looked at; without it the reference")
	from := fs.Float64("from", 0, "lowest ratio of crank over propeller speed; without it a quarter below the present one")
	to := fs.Float64("to", 0, "highest ratio; without it a third above the present one")
	steps := fs.Int("steps", 21, "how many ratios; whole teeth may leave fewer")
	s, f, status, done := p.opened(fs, args)
	if done {
		return status
	}
	if *variant != "" {
		named, err := only(s, []string{*variant}, false)
		if err != nil {
			return p.cannot(err)
		}
		s = named
	}
	i := s.ReferenceIndex()
	if i < 0 {
		return p.cannot(fmt.Errorf("the study has no variants; add at least one [[variant]]"))
	}
	chart, err := explore.Ratios(s, &s.Variants[i], *from, *to, *steps)
	if err != nil {
		return p.cannot(fmt.Errorf("%s: %w", report.Printable(s.Variants[i].Name), err))
	}
	if err := ratioSheet(s.Name, chart).Write(p.out, f); err != nil {
		return p.cannot(err)
	}
	return statusFine
}

func ratioSheet(study string, c explore.Chart) report.Sheet {
	curve := newCurve(c.Points)
	sheet := report.Sheet{
		Title: c.Variant + ": thrust, climb and tip Mach number over the ratio",
		Head:  []string{"Ratio", c.Parameter, "Standing", "At trim", "Thrust", "Climb", "Tip Mach", curve.head(), ""},
		Plain: [][]string{{"ratio", "set", "engine_speed_rpm", "trim_speed_rpm", "static_thrust_n", "climb_rate_m_s", "tip_mach", "best", "barred", "other_checks_failing"}},
		Note: "Best: " + c.Reason + ". T thrust, c climb, m tip Mach, each from its least on the left to its greatest on the right, * where they meet. " +
			"Engine and propeller as they are; other checks of the drive are for \"backspan check\".",
	}
	data := ratioData{Study: study, Variant: c.Variant, Parameter: c.Parameter, Reason: c.Reason, Points: []ratioPoint{}}
	for i, p := range c.Points {
		best := i == c.Best
		sheet.Rows = append(sheet.Rows, []string{
			shownSlot(p.Ratio, unit.One), p.Set, shownSlot(p.Static, unit.RPM), shownSlot(p.Trim, unit.RPM), shownSlot(p.Thrust, unit.Newton),
			shownSlot(p.Climb, unit.MetrePerSecond), shownSlot(p.TipMach, unit.One), curve.line(p), remark(p, best),
		})
		sheet.Plain = append(sheet.Plain, []string{
			bare(p.Ratio, unit.One), p.Set, bare(p.Static, unit.RPM), bare(p.Trim, unit.RPM), bare(p.Thrust, unit.Newton),
			bare(p.Climb, unit.MetrePerSecond), bare(p.TipMach, unit.One), fmt.Sprint(best), strings.Join(p.Barred, "; "), fmt.Sprint(p.Others),
		})
		data.Points = append(data.Points, ratioPoint{
			Ratio: value(p.Ratio, unit.One), Set: p.Set, Standing: value(p.Static, unit.RPM), Trim: value(p.Trim, unit.RPM), Thrust: value(p.Thrust, unit.Newton),
			Climb: value(p.Climb, unit.MetrePerSecond), TipMach: value(p.TipMach, unit.One), Best: best, Barred: append([]string{}, p.Barred...), Others: p.Others,
		})
	}
	if c.Best >= 0 {
		data.Best = value(c.Points[c.Best].Ratio, unit.One)
	}
	sheet.Data = data
	return sheet
}

type ratioData struct {
	Study     string       `json:"study"`
	Variant   string       `json:"variant"`
	Parameter string       `json:"parameter"`
	Best      *float64     `json:"best_ratio"`
	Reason    string       `json:"reason"`
	Points    []ratioPoint `json:"points"`
}

type ratioPoint struct {
	Ratio    *float64 `json:"ratio"`
	Set      string   `json:"set"`
	Standing *float64 `json:"engine_speed_rpm"`
	Trim     *float64 `json:"trim_speed_rpm"`
	Thrust   *float64 `json:"static_thrust_n"`
	Climb    *float64 `json:"climb_rate_m_s"`
	TipMach  *float64 `json:"tip_mach"`
	Best     bool     `json:"best"`
	Barred   []string `json:"barred"`
	Others   int      `json:"other_checks_failing"`
}

func shownSlot(s param.Slot, u unit.Unit) string {
	if !s.Known {
		return "-"
	}
	return u.Text(s.Value)
}

func bare(s param.Slot, u unit.Unit) string {
	if !s.Known {
		return ""
	}
	return strconv.FormatFloat(u.From(s.Value), 'g', 12, 64)
}

func value(s param.Slot, u unit.Unit) *float64 {
	if !s.Known {
		return nil
	}
	x, err := strconv.ParseFloat(strconv.FormatFloat(u.From(s.Value), 'g', 12, 64), 64)
	if err != nil {
		return nil
	}
	return &x
}

func remark(p explore.Ratio, best bool) string {
	var words []string
	if best {
		words = append(words, "<- best")
	}
	words = append(words, p.Barred...)
	switch {
	case p.Others == 1:
		words = append(words, "1 other check fails")
	case p.Others > 1:
		words = append(words, fmt.Sprintf("%d other checks fail", p.Others))
	}
	return strings.Join(words, "; ")
}

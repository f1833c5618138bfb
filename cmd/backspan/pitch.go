package main

import (
	"flag"
	"fmt"
	"strings"

	"backspan/model/explore"
	"backspan/model/unit"
	"backspan/store/report"
)

// pitch prints what other pitches would make of one machine.
func (p program) pitch(args []string) int {
	fs := flag.NewFlagSet("pitch", flag.ContinueOnError)
	variant := fs.String("variant", "", "the machine looked at; without it the reference")
	from := fs.String("from", "", "finest pitch, such as 500 mm or 22 in; without it a quarter below the present one")
	to := fs.String("to", "", "coarsest pitch; without it a third above the present one")
	steps := fs.Int("steps", 21, "how many pitches")
	goal := fs.String("for", string(explore.BestClimb), "climb or thrust: what the best pitch is chosen by")
	s, f, status, done := p.opened(fs, args)
	if done {
		return status
	}
	i, err := pick(s, *variant)
	if err != nil {
		return p.cannot(err)
	}
	v := &s.Variants[i]
	low, high, err := ends(*from, *to, explore.PitchParameter(v).Unit)
	if err != nil {
		return p.cannot(fmt.Errorf("pitch: %w", err))
	}
	search, err := explore.Pitches(s, v, low, high, *steps, explore.PitchGoal(*goal))
	if err != nil {
		return p.cannot(fmt.Errorf("%s: %w", report.Printable(v.Name), err))
	}
	if err := pitchSheet(s.Name, search).Write(p.out, f); err != nil {
		return p.cannot(err)
	}
	return statusFine
}

// ends reads two quantities of which both or neither are given.
func ends(from, to string, u unit.Unit) (low, high float64, err error) {
	if from == "" && to == "" {
		return 0, 0, nil
	}
	if from == "" || to == "" {
		return 0, 0, fmt.Errorf("give both --from and --to, or neither")
	}
	if low, err = unit.Parse(from, u); err != nil {
		return 0, 0, fmt.Errorf("--from: %w", err)
	}
	if high, err = unit.Parse(to, u); err != nil {
		return 0, 0, fmt.Errorf("--to: %w", err)
	}
	return low, high, nil
}

func pitchSheet(name string, s explore.PitchSearch) report.Sheet {
	u := s.Unit
	sheet := report.Sheet{
		Title: s.Variant + ": engine speed, thrust and climb over " + strings.ToLower(s.Parameter),
		Head:  []string{s.Parameter, "Standing", "At trim", "Thrust", "Climb", "Tip Mach", "Stall margin", ""},
		Plain: [][]string{{"pitch_" + u.Key, "engine_speed_rpm", "trim_speed_rpm", "static_thrust_n", "climb_rate_m_s", "tip_mach", "stall_margin_deg", "best", "barred", "other_checks_failing"}},
		Note: "Best: " + s.Reason + ". Engine, reduction and diameter as they are. Makers measure pitch in different ways: " +
			"compare a bought propeller by its engine speed standing.",
	}
	data := pitchData{Study: name, Variant: s.Variant, Parameter: s.Parameter, Unit: u.Symbol, Reason: s.Reason, Points: []pitchPoint{}}
	for i := range s.Points {
		q := &s.Points[i]
		best := i == s.Best
		asked := u.Number(q.Asked)
		sheet.Rows = append(sheet.Rows, []string{
			q.Set, shownSlot(q.Static, unit.RPM), shownSlot(q.Trim, unit.RPM), shownSlot(q.Thrust, unit.Newton),
			shownSlot(q.Climb, unit.MetrePerSecond), shownSlot(q.TipMach, unit.One), shownSlot(q.StallMargin, unit.Degree),
			remark(explore.Ratio{Barred: q.Barred, Others: q.Others}, best),
		})
		sheet.Plain = append(sheet.Plain, []string{
			asked, bare(q.Static, unit.RPM), bare(q.Trim, unit.RPM), bare(q.Thrust, unit.Newton), bare(q.Climb, unit.MetrePerSecond),
			bare(q.TipMach, unit.One), bare(q.StallMargin, unit.Degree), fmt.Sprint(best), strings.Join(q.Barred, "; "), fmt.Sprint(q.Others),
		})
		data.Points = append(data.Points, pitchPoint{
			Pitch: u.From(q.Asked), Standing: value(q.Static, unit.RPM), Trim: value(q.Trim, unit.RPM), Thrust: value(q.Thrust, unit.Newton),
			Climb: value(q.Climb, unit.MetrePerSecond), TipMach: value(q.TipMach, unit.One), StallMargin: value(q.StallMargin, unit.Degree),
			Best: best, Barred: append([]string{}, q.Barred...), Others: q.Others,
		})
	}
	if s.Best >= 0 {
		x := u.From(s.Points[s.Best].Asked)
		data.Best = &x
	}
	sheet.Data = data
	return sheet
}

type pitchData struct {
	Study     string       `json:"study"`
	Variant   string       `json:"variant"`
	Parameter string       `json:"parameter"`
	Unit      string       `json:"unit"`
	Best      *float64     `json:"best_pitch"`
	Reason    string       `json:"reason"`
	Points    []pitchPoint `json:"points"`
}

type pitchPoint struct {
	Pitch       float64  `json:"pitch"`
	Standing    *float64 `json:"engine_speed_rpm"`
	Trim        *float64 `json:"trim_speed_rpm"`
	Thrust      *float64 `json:"static_thrust_n"`
	Climb       *float64 `json:"climb_rate_m_s"`
	TipMach     *float64 `json:"tip_mach"`
	StallMargin *float64 `json:"stall_margin_deg"`
	Best        bool     `json:"best"`
	Barred      []string `json:"barred"`
	Others      int      `json:"other_checks_failing"`
}

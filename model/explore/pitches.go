package explore

import (
	"fmt"

	"backspan/model"
	"backspan/model/param"
	"backspan/model/propeller"
	"backspan/model/reading"
	"backspan/model/unit"
)

// PitchGoal is what a pitch is chosen for.
type PitchGoal string

// The goals.
const (
	BestClimb  PitchGoal = "climb"
	BestThrust PitchGoal = "thrust"
)

// Pitch is one pitch of a search. The figures are those of the readings of the
// same names, in SI; each has a value only where it is Known.
type Pitch struct {
	Asked       float64    // m, or rad for a blade given by stations
	Set         string     // as a form shows it
	Static      param.Slot // engine standing, rad/s
	Trim        param.Slot // engine at trim, rad/s
	Thrust      param.Slot // standing, N
	Climb       param.Slot // m/s
	TipMach     param.Slot
	StallMargin param.Slot // rad

	Barred  []string // why it cannot be the best; empty when it can
	Stalled bool     // less stall margin than asked
	Others  int      // other checks that fail
}

// PitchSearch is one machine over many pitches of its propeller.
type PitchSearch struct {
	Variant   string
	Parameter string // the one that was changed, by its label
	Unit      unit.Unit
	Goal      PitchGoal
	Points    []Pitch
	Best      int // −1 when every pitch is barred
	Reason    string
}

// PitchParameter is the parameter that turns the variant's blade: its nominal
// pitch, or the pitch trim of one given by stations.
func PitchParameter(v *model.Variant) param.Param {
	key := "propeller.pitch"
	if v.Propeller.Shape == propeller.Stations {
		key = "propeller.pitch_trim"
	}
	p, _ := param.Find(v.Sections(), key)
	return p
}

// Pitches tries n pitches evenly from one to another (m, or rad of trim for a
// blade given by stations) on a variant as it is otherwise. Equal from and to
// look from a quarter below to a third above the present pitch, or over the
// whole trim.
func Pitches(s *model.Study, v *model.Variant, from, to float64, n int, goal PitchGoal) (PitchSearch, error) {
	p := PitchParameter(v)
	from, to, err := pitchSpan(p, from, to, n)
	if err != nil {
		return PitchSearch{}, err
	}
	if goal != BestClimb && goal != BestThrust {
		return PitchSearch{}, fmt.Errorf("a pitch is chosen for %q or for %q, not for %q", BestClimb, BestThrust, goal)
	}
	search := PitchSearch{Variant: v.Name, Parameter: p.Label, Unit: p.Unit, Goal: goal, Best: -1}
	machines := make([]*model.Variant, n)
	for i := range n {
		m := v.Clone()
		asked := from + (to-from)*float64(i)/float64(n-1)
		set := PitchParameter(&m)
		if err := set.SetNumber(p.Unit.Settle(asked)); err != nil {
			return PitchSearch{}, err
		}
		machines[i] = &m
		search.Points = append(search.Points, Pitch{Asked: asked, Set: p.Unit.Text(asked)})
	}
	evaluate(s, machines, func(i int, o model.Outcome) { search.Points[i].take(o) })
	search.choose()
	return search, nil
}

// pitchSpan fills in the pitches looked at and holds them to the parameter's
// range.
func pitchSpan(p param.Param, from, to float64, n int) (low, high float64, err error) {
	if n < 2 || n > MostSteps {
		return 0, 0, fmt.Errorf("give 2 to %d steps, not %d", MostSteps, n)
	}
	least, most := p.Unit.SI(p.Min), p.Unit.SI(p.Max)
	if from == to {
		from, to = least, most
		if now, _ := p.Number(); p.Unit.Dimension == unit.Length {
			from, to = max(least, 0.75*now), min(most, 1.33*now)
		}
	}
	if !(from >= least-1e-9 && to <= most+1e-9 && from < to) {
		return 0, 0, fmt.Errorf("%s: give pitches within %s, the first below the last; not %s to %s", p.Label, p.Range(), p.Unit.Text(from), p.Unit.Text(to))
	}
	return max(from, least), min(to, most), nil
}

// take reads an outcome; what bars a ratio bars a pitch.
func (p *Pitch) take(o model.Outcome) {
	var r Ratio
	r.take(o)
	p.Static, p.Trim, p.Thrust, p.Climb, p.TipMach = r.Static, r.Trim, r.Thrust, r.Climb, r.TipMach
	p.Barred, p.Others = r.Barred, r.Others
	if m, ok := o.Reading("propeller.stall_margin"); ok && m.Known() {
		p.StallMargin = param.Known(m.Value)
	}
	for _, c := range o.Checks {
		p.Stalled = p.Stalled || c.Key == "propeller.stall_margin" && c.Verdict != reading.Holds && c.Verdict != reading.NotRated
	}
}

// worth is the figure that the pitch is chosen by.
func (s *PitchSearch) worth(p *Pitch) param.Slot {
	if s.Goal == BestThrust {
		return p.Thrust
	}
	return p.Climb
}

func (s *PitchSearch) say(p *Pitch) string {
	if s.Goal == BestThrust {
		return unit.Newton.Text(p.Thrust.Value)
	}
	return unit.MetrePerSecond.Text(p.Climb.Value)
}

// choose marks the pitch that does best of those not barred, and says why.
func (s *PitchSearch) choose() {
	free, top := 0, -1
	better := func(i, than int) bool {
		w := s.worth(&s.Points[i])
		return w.Known && (than < 0 || w.Value > s.worth(&s.Points[than]).Value)
	}
	for i := range s.Points {
		if better(i, top) {
			top = i
		}
		if len(s.Points[i].Barred) > 0 {
			continue
		}
		free++
		if better(i, s.Best) {
			s.Best = i
		}
	}
	s.Reason = s.reason(free, top)
}

func (s *PitchSearch) reason(free, top int) string {
	if s.Best < 0 {
		return "no pitch looked at keeps the engine within its speeds and the tip Mach number within its limit: " + commonBar(len(s.Points), func(i int) []string { return s.Points[i].Barred }) +
			"; look at other pitches, or change the reduction or the diameter"
	}
	best := &s.Points[s.Best]
	why := fmt.Sprintf("greatest %s, %s, where the engine neither lugs nor over-speeds and the tip Mach number keeps its limit (%d of %d pitches)",
		s.Goal, s.say(best), free, len(s.Points))
	if top != s.Best {
		p := &s.Points[top]
		why += fmt.Sprintf("; %s would give %s, but %s", p.Set, s.say(p), p.Barred[0])
	}
	if s.Best == 0 || s.Best == len(s.Points)-1 {
		why += "; it lies at the end of the pitches looked at: look further"
	}
	if best.Stalled && best.StallMargin.Known {
		why += "; its stall margin standing is only " + unit.Degree.Text(best.StallMargin.Value)
	}
	if best.Others > 0 {
		why += fmt.Sprintf("; %d other checks fail there", best.Others)
	}
	return why
}

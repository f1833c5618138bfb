package reading

import (
	"fmt"
	"math"

	"backspan/model/unit"
)

// Verdict is the outcome of a check, in the word shown.
type Verdict string

// The verdicts, from best to worst; NotRated stands apart, because no
// trustworthy limit is known.
const (
	Holds    Verdict = "holds"
	Thin     Verdict = "thin"
	NotRated Verdict = "not rated"
	Fails    Verdict = "fails"
)

// rank orders verdicts for finding the worst.
func (v Verdict) rank() int {
	switch v {
	case Fails:
		return 3
	case Thin:
		return 2
	case NotRated:
		return 1
	}
	return 0
}

// Worse reports whether v is worse news than w.
func (v Verdict) Worse(w Verdict) bool { return v.rank() > w.rank() }

// Side is the side of a limit on which a value must stay, in the words shown.
type Side string

// The sides.
const (
	Least Side = "at least"
	Most  Side = "at most"
)

// Check is a reading held against a limit. Build it with AtLeast, AtMost,
// Condition or Unrated.
type Check struct {
	Key     string
	Label   string
	Verdict Verdict
	Value   float64 // SI
	Limit   float64 // SI
	Side    Side    // on which of the limit the value must stay
	Unit    unit.Unit
	Margin  float64 // share of the limit left over; negative when it fails
	Past    bool    // past a limit that is a guide value only
	Valued  bool    // Value, Limit and Margin mean something
	Origin  string  // of the limit
	Cure    string  // what to do when it does not hold, naming the parameters
	Why     string  // why it is not rated
}

// AtLeast holds value against a least value. Within thin (a share of the
// limit) above it the verdict is Thin.
func AtLeast(key, label string, value, limit, thin float64, u unit.Unit) Check {
	return judge(key, label, value, limit, thin, u, Least, value-limit)
}

// AtMost holds value against a greatest value. Within thin (a share of the
// limit) below it the verdict is Thin.
func AtMost(key, label string, value, limit, thin float64, u unit.Unit) Check {
	return judge(key, label, value, limit, thin, u, Most, limit-value)
}

func judge(key, label string, value, limit, thin float64, u unit.Unit, side Side, room float64) Check {
	c := Check{Key: key, Label: label, Value: value, Limit: limit, Side: side, Unit: u, Valued: true}
	if math.IsNaN(room) || math.IsInf(room, 0) {
		return Unrated(key, label, "the sum has no finite answer for these parameters")
	}
	scale := math.Abs(limit)
	if u.Shift != 0 {
		scale = math.Abs(u.From(limit))
	}
	if share := room / scale; !math.IsNaN(share) && !math.IsInf(share, 0) {
		c.Margin = share
	}
	switch {
	case room < 0:
		c.Verdict = Fails
	case room < thin*scale:
		c.Verdict = Thin
	default:
		c.Verdict = Holds
	}
	return c
}

// Condition is a check without a figure: it holds or it fails.
func Condition(key, label string, holds bool) Check {
	c := Check{Key: key, Label: label, Verdict: Fails}
	if holds {
		c.Verdict = Holds
	}
	return c
}

// Warn marks the limit as a guide value: past it the check is thin, worth a
// look, and does not fail.
func (c Check) Warn() Check {
	if c.Verdict == Fails {
		c.Verdict, c.Past = Thin, true
	}
	return c
}

// Unrated is a check for which no trustworthy limit is known.
func Unrated(key, label, why string) Check {
	return Check{Key: key, Label: label, Verdict: NotRated, Why: why}
}

// Source names where the limit stands.
func (c Check) Source(s string) Check { c.Origin = s; return c }

// Advice says what to do about a check that does not hold, naming parameters.
func (c Check) Advice(s string) Check { c.Cure = s; return c }

// Text is the comparison in words: "12.3 mm, at least 10.0 mm".
func (c Check) Text() string {
	switch {
	case c.Valued:
		return c.Unit.Text(c.Value) + ", " + string(c.Side) + " " + c.Unit.Text(c.Limit)
	case c.Why != "":
		return c.Why
	}
	return string(c.Verdict)
}

// MarginText is the margin as a signed percentage, "+12 %", or how far a guide
// value is passed, "past 6 %"; empty where there
// is none, or where a limit of zero leaves no share to speak of.
func (c Check) MarginText() string {
	const most = 9.99
	percent := 100 * c.Margin
	switch {
	case !c.Valued || c.Limit == 0:
		return ""
	case c.Past:
		return fmt.Sprintf("past %.0f %%", math.Min(math.Abs(percent), 100*most))
	case math.Abs(c.Margin) > most:
		return fmt.Sprintf("over %+.0f %%", 100*math.Copysign(most, c.Margin))
	case percent < 0 && percent > -0.5:
		return fmt.Sprintf("%+.1f %%", percent)
	}
	return fmt.Sprintf("%+.0f %%", percent)
}

// Worst returns the check with the worst news, the smallest margin first
// among equals; ok is false when there is none.
func Worst(cs []Check) (worst Check, ok bool) {
	for i, c := range cs {
		if i == 0 || c.Verdict.Worse(worst.Verdict) ||
			c.Verdict == worst.Verdict && c.Valued && (!worst.Valued || c.Margin < worst.Margin) {
			worst = c
		}
	}
	return worst, len(cs) > 0
}

// Count tells how many checks have the verdict.
func Count(cs []Check, v Verdict) int {
	n := 0
	for _, c := range cs {
		if c.Verdict == v {
			n++
		}
	}
	return n
}

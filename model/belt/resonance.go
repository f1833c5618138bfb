package belt

import (
	"fmt"
	"math"

	"backspan/model/part"
	"backspan/model/pulley"
)

// Exciter is what shakes a span.
type Exciter string

// The exciters.
const (
	EngineOrder  Exciter = "engine order"
	CrankPulley  Exciter = "crank pulley run-out"
	DrivenPulley Exciter = "driven pulley run-out"
	BeltPass     Exciter = "belt passage"
)

// Cause is an exciter meeting a mode of a span.
type Cause struct {
	Exciter    Exciter
	Order      float64 // per turn of the crank; of belt passage and driven pulley, per turn of those
	Slack      bool    // the slack span; else the tight one
	Mode       int     // half waves in the span
	Parametric bool    // the tension swings at twice the span's own frequency
}

// String names the cause in words.
func (c Cause) String() string {
	span, what := "tight", string(c.Exciter)
	if c.Slack {
		span = "slack"
	}
	if c.Exciter == EngineOrder || c.Order != 1 {
		what = fmt.Sprintf("%s %g", c.Exciter, c.Order)
	}
	if c.Parametric {
		return fmt.Sprintf("%s at twice mode %d of the %s span", what, c.Mode, span)
	}
	return fmt.Sprintf("%s on mode %d of the %s span", what, c.Mode, span)
}

// strong causes are the engine's first two orders on a span's first mode: they
// swing it visibly. The others are worth knowing and are listed with them.
func (c Cause) strong() bool { return c.Exciter == EngineOrder && c.Order <= 2 && c.Mode == 1 }

// Band is a range of crank speeds, rad/s, in which an exciting frequency lies
// within the detuning asked of a span's own; At is where they come nearest.
type Band struct {
	Cause        Cause
	From, To, At float64
}

// holds reports whether any speed from low to high is in the band.
func (b Band) holds(low, high float64) bool { return b.From <= high && b.To >= low }

// movingSpan is the first frequency of a span that runs lengthwise, Hz, or 0
// when its tension carries nothing but its own mass. Higher modes are its
// multiples. Source from memory: Sack 1954, Mote.
func movingSpan(tension, massPerLength, speed, span float64) float64 {
	square := tension / massPerLength
	if square <= speed*speed {
		return 0
	}
	c := math.Sqrt(square)
	return (square - speed*speed) / (2 * span * c)
}

// modes is how many half waves of a span are looked at.
const modes = 2

// spanPair is the first frequencies of both spans at a speed along the line.
type spanPair struct{ tight, slack float64 }

func (b Belt) spanPair(standing, power, speed float64) spanPair {
	v := b.Run().Speed(speed)
	t, span := pulley.Locked(standing, power/v, 0), b.Run().Span()
	return spanPair{
		movingSpan(t.TightSide, b.MassPerLength(), v, span),
		movingSpan(t.SlackSide, b.MassPerLength(), v, span),
	}
}

// exciter is a source of shaking: its frequency per crank speed in Hz per
// rad/s, and whether it also swings the tension.
type exciter struct {
	kind     Exciter
	order    float64
	perSpeed float64
	tension  bool
	halved   bool // half its order shakes the spans too
}

// meets is the cause when the exciter stands at a multiple of a span's first
// frequency. A swinging tension feeds a mode at twice its frequency, which
// counts before the mode that the multiple itself stands for.
//
// A harmonic at twice a mode is left out when half its order is in the torque
// as well: that one meets the mode itself at the very same speeds.
func (e exciter) meets(multiple int, slack bool) (Cause, bool) {
	c := Cause{Exciter: e.kind, Order: e.order, Slack: slack, Mode: multiple}
	if e.tension && multiple%2 == 0 {
		c.Mode, c.Parametric = multiple/2, true
		if e.halved {
			return c, false
		}
	}
	return c, c.Mode <= modes
}

// exciters lists what shakes the spans at a torque like p. Run-out of the crank
// pulley stands at the engine's first order and counts only without it.
func (b Belt) exciters(p *part.Pulsation, into []exciter) []exciter {
	const turn = 1 / (2 * math.Pi)
	first := false
	for _, h := range p.Harmonics[:p.Count] {
		if h.Order > 0 && h.Order <= 3 && h.Amplitude() > 0 {
			first = first || h.Order == 1
			into = append(into, exciter{EngineOrder, h.Order, h.Order * turn, h.Order <= 2, hasOrder(p, h.Order/2)})
		}
	}
	pass := b.Run().Crank / 2 / b.Run().Length()
	if !first {
		into = append(into, exciter{kind: CrankPulley, order: 1, perSpeed: turn})
	}
	return append(into,
		exciter{kind: DrivenPulley, order: 1, perSpeed: turn / b.ratio},
		exciter{kind: BeltPass, order: 1, perSpeed: pass}, exciter{kind: BeltPass, order: 2, perSpeed: 2 * pass})
}

func hasOrder(p *part.Pulsation, order float64) bool {
	for _, h := range p.Harmonics[:p.Count] {
		if h.Order == order && h.Amplitude() > 0 {
			return true
		}
	}
	return false
}

// bands finds the speeds to avoid along the load line.
func (b Belt) bands(l *part.LoadLine, p *part.Pulsation) []Band {
	speeds := l.Speeds()
	var pairs [part.LineSteps]spanPair
	for i, speed := range speeds {
		pairs[i] = b.spanPair(b.standing, l.Power(speed), speed)
	}
	var room [part.Orders + 4]exciter
	found := make([]Band, 0, 32)
	for _, e := range b.exciters(p, room[:0]) {
		for multiple := 1; multiple <= 2*modes; multiple++ {
			for _, slack := range [2]bool{false, true} {
				if c, meets := e.meets(multiple, slack); meets {
					found = b.trace(found, c, e.perSpeed/float64(multiple), &speeds, &pairs)
				}
			}
		}
	}
	return found
}

// trace follows one cause along the speeds and adds its bands. perSpeed is
// the exciting frequency per crank speed, over the mode's multiple.
func (b Belt) trace(found []Band, c Cause, perSpeed float64, speeds *[part.LineSteps]float64, pairs *[part.LineSteps]spanPair) []Band {
	width := b.spec.Pulsing.Detuning
	var band Band
	inside, before, nearest := false, 0.0, 0.0
	for i, speed := range speeds {
		own := pairs[i].tight
		if c.Slack {
			own = pairs[i].slack
		}
		off := math.MaxFloat32 // a span without stiffness has no frequency to meet
		if own > 0 {
			off = perSpeed*speed/own - 1
		}
		edge := func(limit float64) float64 {
			if i == 0 {
				return speed
			}
			share := math.Min(1, math.Max(0, (limit-before)/(off-before)))
			return speeds[i-1] + share*(speed-speeds[i-1])
		}
		crossed := i > 0 && before*off < 0
		if within := math.Abs(off) <= width; within && !inside || crossed && !inside {
			band, inside, nearest = Band{Cause: c, From: edge(math.Copysign(width, before)), At: speed}, true, math.Abs(off)
		}
		if inside {
			if crossed {
				band.At, nearest = edge(0), 0
			} else if math.Abs(off) < nearest {
				band.At, nearest = speed, math.Abs(off)
			}
			if math.Abs(off) > width {
				band.To, inside = edge(math.Copysign(width, off)), false
				found = append(found, band)
			}
		}
		before = off
	}
	if inside {
		band.To = speeds[part.LineSteps-1]
		found = append(found, band)
	}
	return found
}

// detuning is how far the nearest exciter is from a span's own frequency at
// one speed, as a share of it, and which it is; false when neither span has one.
func (b Belt) detuning(p *part.Pulsation, at part.Duty) (least float64, cause Cause, ok bool) {
	pair := b.spanPair(b.standing, at.Power, at.CrankSpeed)
	var room [part.Orders + 4]exciter
	for _, e := range b.exciters(p, room[:0]) {
		for multiple := 1; multiple <= 2*modes; multiple++ {
			for _, slack := range [2]bool{false, true} {
				own := pair.tight
				if slack {
					own = pair.slack
				}
				c, meets := e.meets(multiple, slack)
				if own <= 0 || !meets {
					continue
				}
				if off := math.Abs(e.perSpeed*at.CrankSpeed/(float64(multiple)*own) - 1); !ok || off < least {
					least, cause, ok = off, c, true
				}
			}
		}
	}
	return least, cause, ok
}

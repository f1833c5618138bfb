package belt

import (
	"math"

	"backspan/model/part"
	"backspan/model/pulley"
)

// Surge is what the spans' tensions do over a cycle, N.
type Surge struct {
	Tight float64          // greatest tight side
	Slack float64          // least slack side; it cannot fall below the centrifugal tension
	Need  float64          // standing tension that keeps the slack side pressed on its pulley
	Pull  float64          // greatest effective pull
	Least float64          // least effective pull; negative when the propeller drives the crank
	Load  pulley.ShaftLoad // at the greatest tight side

	// What the same cycle would do if the belt could not skid.
	HeldTight float64 // greatest tight side
	HeldPull  float64 // greatest effective pull
	Open      float64 // share of the cycle with the slack side off its pulley
}

// Skids reports whether the cycle asks for more than dry friction holds.
func (s Surge) Skids() bool { return s.HeldPull > s.Pull }

// surge follows the spans over a cycle: standing tension as set, mean pull,
// centrifugal tension, all N.
//
// A belt that is asked for more than dry friction holds skids through that part
// of the cycle, long before its slack side lifts: at a locked centre the sum of
// the contact tensions stands, and their ratio cannot pass the traction. The
// skid caps the pull and what it puts on the shafts.
func (b Belt) surge(w twin, p *part.Pulsation, speed, pull, standing, centrifugal float64) Surge {
	s := b.held(w, p, speed, pull, standing, centrifugal)
	s.HeldTight, s.HeldPull = s.Tight, s.Pull
	limit := skidPull(standing, centrifugal, b.skidRatio)
	if !(limit > 0) {
		return s
	}
	s.Least = max(s.Least, -limit)
	if s.Pull <= limit {
		return s
	}
	s.Tight, s.Slack, s.Pull = standing+limit/2, standing-limit/2, limit
	s.Load = pulley.Tensions{TightSide: s.Tight, SlackSide: s.Slack, Centrifugal: centrifugal}.ShaftLoad(b.Run().SpanTilt())
	return s
}

// held follows the spans of a belt that cannot skid.
//
// A strand whose contact tension is gone hangs free at the centrifugal tension
// and no longer pulls: the loop is then half as stiff. The swing with that
// branch is found for an equivalent stiffness: that which fits the branched
// one over the cycle with the least square error. Against a step-by-step
// solution for one harmonic the peak comes out within 8 % from half the taut
// natural frequency up, and up to 17 % low below that, where a loop that opens
// wide rings at multiples of the excitation. A swing at half the excitation,
// which a wide open loop can take up at twice its natural frequency, is not
// found (there the peak came out 29 % low); and where the slackening loop can
// swing in two ways, one of them is.
func (b Belt) held(w twin, p *part.Pulsation, speed, pull, standing, centrifugal float64) Surge {
	room := standing - centrifugal
	mean, taut := pull/2, w.swing(p, speed, 2)
	high := taut.highest()
	s := Surge{Need: centrifugal + mean + high}
	switch {
	case room <= 0:
		taut, mean = w.swing(p, speed, 1), pull-room
		high = taut.highest()
		s.Open = 1
	case s.Need > standing || room+mean+taut.lowest() < 0:
		taut, mean = w.branched(taut, p, speed, pull, room)
		high = taut.highest()
		for _, x := range taut {
			if mean+x > room {
				s.Open += 1.0 / samples
			}
		}
	}
	tight, slack := max(0, room+mean+high), max(0, room-mean-high)
	s.Tight, s.Slack, s.Pull = centrifugal+tight, centrifugal+slack, tight-slack
	s.Least = pulled(mean+taut.lowest(), max(0, room))
	s.Load = pulley.Tensions{TightSide: s.Tight, SlackSide: s.Slack, Centrifugal: centrifugal}.ShaftLoad(b.Run().SpanTilt())
	return s
}

// branched solves the cycle in which a strand leaves its pulley, from the one
// with both spans taut. It returns the swing and the mean of the stretch, both
// as the tension they would put on a taut strand.
func (w twin) branched(s swing, p *part.Pulsation, speed, pull, room float64) (swing, float64) {
	// Between one span and two: the fit lies above the first and below the
	// second. Regula falsi, the stagnant end's weight halved (Illinois).
	mean := s.balance(pull/2, pull, room)
	low, high, fLow, fHigh := 1.0, 2.0, 1.0, s.spans(mean, room)-2
	for range 8 {
		spans := high - fHigh*(high-low)/(fHigh-fLow)
		s = w.swing(p, speed, spans)
		mean = s.balance(mean, pull, room)
		f := s.spans(mean, room) - spans
		if math.Abs(f) < 0.01 {
			break
		}
		if f > 0 {
			low, fLow, fHigh = spans, f, fHigh/2
		} else {
			high, fHigh, fLow = spans, f, fLow/2
		}
	}
	return s, mean
}

// pulled is the effective pull at a stretch, both strands free to leave.
func pulled(stretch, room float64) float64 {
	return max(0, room+stretch) - max(0, room-stretch)
}

// balance is the mean stretch that carries the mean pull. Newton's rule; the
// pull rises with the stretch, by one or by two.
func (s *swing) balance(mean, pull, room float64) float64 {
	for range 6 {
		sum, slope := 0.0, 0.0
		for _, x := range s {
			u := mean + x
			if tight := room + u; tight > 0 {
				sum, slope = sum+tight, slope+1
			}
			if slack := room - u; slack > 0 {
				sum, slope = sum-slack, slope+1
			}
		}
		step := (sum/samples - pull) / (slope / samples)
		mean -= step
		if math.Abs(step) < 1e-4*room {
			break
		}
	}
	return mean
}

// spans is the number of spans in tension that fits the branched pull best
// over the cycle.
func (s *swing) spans(mean, room float64) float64 {
	both, square := 0.0, 0.0
	for _, x := range s {
		both += pulled(mean+x, room) * x
		square += x * x
	}
	if !(square > 0) {
		return 2
	}
	return min(2, max(1, both/square))
}

package pulley

import "math"

// OpenBelt is the geometry of an uncrossed belt on two pulleys, on the pitch
// line. Lengths in m, angles in rad. CentreDistance exceeds half the
// difference of the diameters.
//
// Source: Shigley's Mechanical Engineering Design, eqs 17-1 and 17-2. The
// common series for the length is not used: at short centres it is off by
// tenths of a millimetre.
type OpenBelt struct {
	Crank          float64 // pitch diameter
	Driven         float64 // pitch diameter
	CentreDistance float64
}

// SpanTilt is the angle between a free span and the line of centres, rad;
// positive when the driven pulley is the larger.
func (o OpenBelt) SpanTilt() float64 {
	return math.Asin((o.Driven - o.Crank) / (2 * o.CentreDistance))
}

// CrankWrap is the angle over which the belt lies on the crank pulley, rad.
func (o OpenBelt) CrankWrap() float64 { return math.Pi - 2*o.SpanTilt() }

// DrivenWrap is the angle over which the belt lies on the driven pulley, rad.
func (o OpenBelt) DrivenWrap() float64 { return math.Pi + 2*o.SpanTilt() }

// SmallestWrap is the smaller of the two wraps, where a belt slips first, rad.
func (o OpenBelt) SmallestWrap() float64 { return math.Min(o.CrankWrap(), o.DrivenWrap()) }

// Span is the length of one free span, m.
func (o OpenBelt) Span() float64 { return o.CentreDistance * math.Cos(o.SpanTilt()) }

// Length is the length of the pitch line, m.
func (o OpenBelt) Length() float64 {
	return 2*o.Span() + (o.Crank*o.CrankWrap()+o.Driven*o.DrivenWrap())/2
}

// Ratio is the speed of the crank over that of the driven pulley, without slip.
func (o OpenBelt) Ratio() float64 { return o.Driven / o.Crank }

// Speed is the belt's speed at a crank speed in rad/s, m/s.
func (o OpenBelt) Speed(crankSpeed float64) float64 { return crankSpeed * o.Crank / 2 }

// Centroid is the height of the loop's centre of mass above the crank axis, m,
// the driven pulley being straight above.
func (o OpenBelt) Centroid() float64 {
	tilt, r, R := o.SpanTilt(), o.Crank/2, o.Driven/2
	spans := 2 * o.Span() * (o.CentreDistance - (r+R)*math.Sin(tilt)) / 2
	// An arc's first moment about its own centre is 2r² sin(wrap/2).
	crank := -2 * r * r * math.Cos(tilt)
	driven := o.CentreDistance*R*o.DrivenWrap() + 2*R*R*math.Cos(tilt)
	return (spans + crank + driven) / o.Length()
}

// WithLength moves the pulleys apart or together until the pitch line has the
// given length, m. It reports false when the belt is too short to go round
// both pulleys.
//
// Newton's rule with the exact derivative of the length, 2 cos(tilt). The
// length is convex in the centre distance and never below 2C + π(D+d)/2, so
// from that bound the iteration falls monotonically onto the solution.
func (o OpenBelt) WithLength(length float64) (OpenBelt, bool) {
	if !(length > math.Pi*math.Max(o.Crank, o.Driven)) {
		return o, false
	}
	o.CentreDistance = (length - math.Pi*(o.Crank+o.Driven)/2) / 2
	for range 100 {
		step := (o.Length() - length) / (2 * math.Cos(o.SpanTilt()))
		next := o.CentreDistance - step
		if !(next < o.CentreDistance) || next <= math.Abs(o.Driven-o.Crank)/2 {
			break
		}
		o.CentreDistance = next
	}
	return o, true
}

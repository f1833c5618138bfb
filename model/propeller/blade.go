package propeller

import (
	"errors"
	"math"

	"gonum.org/v1/gonum/interp"
)

// outline is a blade as functions of the radius: what both ways of giving it
// come down to.
type outline struct {
	blades      int
	tip, root   float64 // radius of the tip and of the hub cut-out, m
	chord       func(radius float64) float64
	angle       func(radius float64) float64 // trim included, rad
	thickness   func(radius float64) float64 // share of the chord
	section     Section
	table       *polarTable // a measured polar in place of section
	lossAtHub   bool
	aspectChord float64 // chord at 0.75 of the radius, m
}

func (s *Spec) outline() (outline, error) {
	o := outline{blades: s.Blades, tip: s.Diameter / 2, root: s.HubRadius, section: s.section(), lossAtHub: s.HubLoss}
	if o.root >= 0.45*o.tip {
		return o, errors.New("the hub takes nearly half of the blade: lower Hub cut-out radius or raise Diameter")
	}
	var err error
	if s.Shape == Stations {
		o.chord, o.angle, err = s.fromRows()
	} else {
		o.chord, o.angle, err = s.fromPitch()
	}
	if err != nil {
		return o, err
	}
	o.thickness = s.thickness
	o.aspectChord = o.chord(0.75 * o.tip)
	if s.Family == OwnPolar {
		o.table, err = newPolarTable(s.Polar, flatPlateDrag(o.tip/o.aspectChord))
	}
	return o, err
}

// thickness of the section at a radius, as a share of its chord.
func (s *Spec) thickness(r float64) float64 {
	x := (r - s.HubRadius) / (s.Diameter/2 - s.HubRadius)
	return s.RootThickness + max(x, 0)*(s.TipThickness-s.RootThickness)
}

// fromPitch is the blade of constant geometric pitch: tan β = pitch/(2πr).
func (s *Spec) fromPitch() (chord, angle func(float64) float64, err error) {
	if s.GreatestChord < s.RootChord || s.GreatestChord < s.TipChord {
		return nil, nil, errors.New("the blade is not widest at its greatest chord: raise Greatest chord above Root chord and Tip chord")
	}
	pitch, trim := s.Pitch, s.PitchTrim
	angle = func(r float64) float64 { return math.Atan(pitch/(2*math.Pi*r)) + trim }
	tip, root, wide := s.Diameter/2, s.HubRadius, s.GreatestAt*s.Diameter/2
	planform, a, b, c := s.Planform, s.RootChord, s.GreatestChord, s.TipChord
	chord = func(r float64) float64 {
		if r < wide {
			x := max(r-root, 0) / (wide - min(root, wide))
			return a + (b-a)*math.Sin(math.Pi/2*x)
		}
		return c + (b-c)*planform.fall((r-wide)/(tip-wide))
	}
	return chord, angle, nil
}

// fall goes from 1 at the greatest chord (x = 0) to 0 at the tip (x = 1).
func (p Planform) fall(x float64) float64 {
	x = min(x, 1)
	switch p {
	case Elliptic:
		return math.Sqrt(1 - x*x)
	case BroadTip:
		return 1 - x*x*x*x
	}
	return 1 - x
}

// fromRows joins the stations by straight lines of chord and of local
// geometric pitch 2πr·tan β, so that a blade of constant pitch needs few rows.
func (s *Spec) fromRows() (chord, angle func(float64) float64, err error) {
	if len(s.Rows) < 4 {
		return nil, nil, errors.New("the blade is not given: give at least four rows of Blade stations, or set Blade given by to nominal pitch")
	}
	var radius, chords, angles []float64
	for _, row := range s.Rows {
		radius = append(radius, row[0]*s.Diameter/2)
		chords = append(chords, row[1])
		angles = append(angles, row[2])
	}
	chord, untrimmed, err := joined(radius, chords, angles)
	if err != nil {
		return nil, nil, err
	}
	trim := s.PitchTrim
	return chord, func(r float64) float64 { return untrimmed(r) + trim }, nil
}

func joined(radius, chords, angles []float64) (chord, angle func(float64) float64, err error) {
	pitches := make([]float64, len(angles))
	for i, beta := range angles {
		pitches[i] = 2 * math.Pi * radius[i] * math.Tan(beta)
	}
	// The fit panics on radii that do not rise.
	for i := 1; i < len(radius); i++ {
		if !(radius[i] > radius[i-1]) {
			return nil, nil, errors.New("the radius does not rise from row to row: put the rows of Blade stations in order")
		}
	}
	var c, p interp.PiecewiseLinear
	if err := errors.Join(c.Fit(radius, chords), p.Fit(radius, pitches)); err != nil {
		return nil, nil, err
	}
	first, last := radius[0], radius[len(radius)-1]
	angle = func(r float64) float64 {
		r = min(max(r, first), last)
		return math.Atan(p.Predict(r) / (2 * math.Pi * r))
	}
	return c.Predict, angle, nil
}

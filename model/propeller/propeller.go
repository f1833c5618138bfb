package propeller

import (
	"errors"
	"math"
)

// Cells is the number of stations along a blade; doubling it moves thrust and
// power by less than 0.3 %.
const Cells = 24

// Propeller is a blade cut into stations, ready to be worked at any flow.
type Propeller struct {
	spec     Spec
	tip      float64
	aspect   float64 // tip radius over the chord at 0.75 of it
	stations []station
}

// Single is why what carries a propeller of one blade is not rated: the
// counterweight balances mass, never thrust.
const Single = "a single blade pulls beside the shaft, at about 0.7 of the radius: its thrust bends the shaft once a turn, " +
	"and neither axle, bearings, bolts nor mounts are rated for that here; set Blades to 2 or more to have them rated"

// New cuts the blade into stations. It fails when the hub, the chords or the
// stations given do not make a blade.
func New(s Spec) (Propeller, error) {
	s = s.Clone()
	o, err := s.outline()
	if err != nil {
		return Propeller{}, err
	}
	if s.BossDiameter/2 > s.HubRadius {
		return Propeller{}, errors.New("the boss reaches past the blade's root: lower Boss diameter or raise Hub cut-out radius")
	}
	p := Propeller{spec: s, tip: o.tip, aspect: o.tip / o.aspectChord, stations: o.stations(Cells)}
	for i := range p.stations {
		if st := &p.stations[i]; st.solidity*math.Cos(st.angle) > 1 {
			return Propeller{}, errors.New("the blades overlap one another near the hub: lower Root chord or Blades, or raise Hub cut-out radius")
		}
	}
	return p, nil
}

// stations cuts the blade into n cells, finer towards tip and hub where the
// load falls away steeply: equal steps of an angle whose cosine runs along the
// blade, each cell worked at the middle of its step.
func (o *outline) stations(n int) []station {
	half, step := (o.tip-o.root)/2, math.Pi/float64(n)
	sts := make([]station, n)
	for i := range sts {
		middle := (float64(i) + 0.5) * step
		r := o.root + half*(1-math.Cos(middle))
		sts[i] = o.station(r, 2*half*math.Sin(middle)*math.Sin(step/2))
	}
	return sts
}

func (o *outline) station(r, width float64) station {
	b, c := float64(o.blades), o.chord(r)
	st := station{
		radius: r, width: width, chord: c, angle: o.angle(r),
		solidity: b * c / (2 * math.Pi * r), tipGap: b / 2 * (o.tip - r) / r, hubGap: -1,
		delay: min(1, 3*(c/r)*(c/r)), flatPlate: flatPlateDrag(o.tip / o.aspectChord),
		thickness: c * o.thickness(r), area: sectionArea(c, o.thickness(r)), share: r / o.tip, section: o.section, table: o.table,
	}
	if o.lossAtHub {
		st.hubGap = b / 2 * (r - o.root) / o.root
	}
	return st
}

// Diameter is the propeller's diameter, m.
func (p *Propeller) Diameter() float64 { return 2 * p.tip }

// DiscArea is the area swept, m².
func (p *Propeller) DiscArea() float64 { return math.Pi * p.tip * p.tip }

// Installed is the thrust left of an isolated thrust, N, behind body and cage.
func (p *Propeller) Installed(thrust float64) float64 { return thrust * (1 - p.spec.InstallationLoss) }

// Isolated is the thrust the propeller must give by itself for an installed
// thrust, N.
func (p *Propeller) Isolated(thrust float64) float64 { return thrust / (1 - p.spec.InstallationLoss) }

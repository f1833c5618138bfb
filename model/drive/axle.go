package drive

import (
	"math"

	"backspan/model/belt"
	"backspan/model/gear"
	"backspan/model/param"
	"backspan/model/part"
	"backspan/model/pulley"
	"backspan/model/shaft"
	"backspan/model/toothedbelt"
)

// hung are findings of a drive whose wheel turns, with the propeller, on an
// axle of the builder's own.
type hung interface {
	// axle is what the drive puts on that axle and on the crank.
	axle() shaft.Loads
	// speeds is where the drive is set swinging.
	speeds() part.SpeedMap
	// crankPull is what the belt does to the crank.
	crankPull() shaft.CrankPull
}

// geared are findings of a drive with two shafts in a case.
type geared interface{ Shafting() gear.Shafting }

// elastic are findings of a drive that twists between crank and propeller.
type elastic interface {
	// Torsional is the first frequency of crank against propeller, Hz.
	Torsional() param.Slot
}

// meshing are findings of a drive whose teeth twist as well.
type meshing interface {
	// TorsionalSecond is the frequency of pinion against wheel, Hz.
	TorsionalSecond() param.Slot
}

type beltFindings struct {
	belt.Result
	plane    float64 // of the belt ahead of the propeller plate, m
	overhang float64 // of the crank pulley behind the crank's bearing, m
}

func (f beltFindings) crankPull() shaft.CrankPull { return onCrank(f.axle(), f.overhang) }

func (f beltFindings) speeds() part.SpeedMap {
	m := part.SpeedMap{From: f.Pulsation.Sweep.From, To: f.Pulsation.Sweep.To, Working: f.Resonance.Working}
	for _, b := range f.Resonance.Bands {
		m.Bands = append(m.Bands, part.SpeedBand{Cause: b.Cause.String(), From: b.From, To: b.To})
	}
	return m
}

func (f beltFindings) axle() shaft.Loads {
	a := &f.Adjustment
	l := pulled(f.Running, f.Standing, f.plane, f.CrankMoment)
	// A frame that warms stretches the loop: both strands bear the growth. A
	// new belt is set higher still, standing.
	l.Along += a.HotLoad - f.Standing.Size()
	l.Standing.Along = max(l.Standing.Along, a.HotLoad, a.NewLoad)
	if f.Pulsation.Known {
		s := &f.Pulsation.Surge
		swing(&l, max(s.Pull-f.Pull, f.Pull-s.Least), f.Geometry)
	}
	return l
}

type toothedFindings struct {
	toothedbelt.Result
	plane, overhang float64
}

func (f toothedFindings) crankPull() shaft.CrankPull { return onCrank(f.axle(), f.overhang) }

// onCrank is the belt's pull on the crank: what it does to the axle, turned
// round.
func onCrank(l shaft.Loads, overhang float64) shaft.CrankPull {
	p := shaft.CrankPull{Steady: shaft.Vector{Along: -l.Along, Across: -l.Across}, Behind: overhang}
	p.Greatest = max(p.Steady.Size()+l.Pulsating.Size(), math.Hypot(l.Standing.Along, l.Standing.Across))
	if overhang > 0 {
		p.Greatest = max(p.Greatest, l.CrankMoment/overhang)
	}
	return p
}

func (f toothedFindings) Torsional() param.Slot {
	return param.Slot{Value: f.Swing.First, Known: f.Swing.Known && f.Swing.First > 0}
}

func (f toothedFindings) speeds() part.SpeedMap { return part.SpeedMap{} }

func (f toothedFindings) axle() shaft.Loads {
	l := pulled(f.Running, f.Standing, f.plane, f.CrankMoment)
	if f.Swing.Known {
		swing(&l, max(f.Swing.Most-f.Pull, f.Pull-f.Swing.Least), f.Geometry)
	}
	return l
}

// swing adds what a pull that swings by an amplitude, N, does to the axle: it
// pulls across the line of centres and twists; the sum of the strands along it
// stands.
func swing(l *shaft.Loads, amplitude float64, run pulley.OpenBelt) {
	l.Pulsating = shaft.Vector{Across: amplitude * math.Sin(run.SpanTilt())}
	l.TorqueAmplitude = amplitude * run.Driven / 2
}

func pulled(running, standing pulley.ShaftLoad, at, crank float64) shaft.Loads {
	l := shaft.Loads{Along: running.Along, Across: running.Across, At: at, CrankMoment: crank}
	l.Standing.Along, l.Standing.Across = standing.Along, standing.Across
	return l
}

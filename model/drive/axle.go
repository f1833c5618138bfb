package drive

import (
	"backspan/model/belt"
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
	// torsional is the first torsional frequency of crank against propeller, Hz.
	torsional() param.Slot
	// speeds is where the drive is set swinging.
	speeds() part.SpeedMap
}

type beltFindings struct {
	belt.Result
	at float64 // middle of the driven pulley ahead of the propeller plate, m
}

func (f beltFindings) torsional() param.Slot { return f.Torsional() }

func (f beltFindings) speeds() part.SpeedMap {
	m := part.SpeedMap{From: f.Pulsation.Sweep.From, To: f.Pulsation.Sweep.To, Working: f.Resonance.Working}
	for _, b := range f.Resonance.Bands {
		m.Bands = append(m.Bands, part.SpeedBand{Cause: b.Cause.String(), From: b.From, To: b.To})
	}
	return m
}

func (f beltFindings) axle() shaft.Loads {
	l := pulled(f.Running, f.Standing, f.at, max(f.CrankMoment, f.Pulsation.Moment))
	if f.Pulsation.Known {
		peak := f.Pulsation.Surge.Load
		l.Pulsating = shaft.Vector{Along: peak.Along - f.Running.Along, Across: peak.Across - f.Running.Across}
	}
	return l
}

type toothedFindings struct {
	toothedbelt.Result
	at float64
}

func (f toothedFindings) torsional() param.Slot {
	return param.Slot{Value: f.Swing.First, Known: f.Swing.Known && f.Swing.First > 0}
}

func (f toothedFindings) speeds() part.SpeedMap { return part.SpeedMap{} }

func (f toothedFindings) axle() shaft.Loads {
	return pulled(f.Running, f.Standing, f.at, f.CrankMoment)
}

func pulled(running, standing pulley.ShaftLoad, at, crank float64) shaft.Loads {
	l := shaft.Loads{Along: running.Along, Across: running.Across, At: at, CrankMoment: crank}
	l.Standing.Along, l.Standing.Across = standing.Along, standing.Across
	return l
}

// plateToPulley is from the propeller plate to the middle of the driven
// pulley, m.
func plateToPulley(pieces []part.Piece) float64 {
	behind := 0.0
	for i := len(pieces) - 1; i >= 0; i-- {
		if pieces[i].Key == "drive.driven_pulley" {
			return behind + pieces[i].Depth/2
		}
		behind += pieces[i].Depth
	}
	return behind
}

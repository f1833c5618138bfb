package noise

import (
	"backspan/model/reading"
	"backspan/model/unit"
)

const (
	toneTheory   = "Gutin 1936 (NACA TM 1195) and Deming 1937, steady loading; A-weighting of IEC 61672-1"
	vortexTheory = "Marte & Kurtz, JPL TR 32-1462, and Schlegel, King & Mull 1966; plus or minus 5 dB"
	nearTheory   = "Garrick & Watkins, NACA Report 1198, and the vortex formula; near field, plus or minus 10 dB"
	both         = "Gutin, Deming and vortex formula; allowance for body and cage as set; plus or minus 8 dB, an estimate"
	exposureRule = "NIOSH 98-126: 3 dB more halve the time"

	noEngine = "Engine noise, measured, is not given"
)

// parts says what a total holds.
func (r *Result) parts() string {
	if r.Engine.Known {
		return "propeller and engine"
	}
	return "propeller only, because the engine's noise is not given"
}

// Readings lists what was found.
func (r Result) Readings(rs []reading.Reading) []reading.Reading {
	rs = r.farReadings(rs)
	return r.earReadings(rs)
}

func (r *Result) farReadings(rs []reading.Reading) []reading.Reading {
	standing := "; full throttle standing, heard from Direction, from straight ahead; 6 dB less for each doubling of distance"
	return append(rs,
		reading.New("noise.level_at_150m", "Noise at 150 m", r.At150, unit.Decibel).Lower().How(r.parts()+standing).Source(both),
		reading.New("noise.tones", "Tones at 150 m, smooth air", r.Tones, unit.Decibel).Lower().
			How("harmonics of blade passing from steady load and blade thickness, propeller alone, free field").Source(toneTheory),
		reading.New("noise.vortex", "Vortex noise at 150 m, smooth air", r.Vortex, unit.Decibel).Lower().
			How("sixth power of the tip's speed, blade area and lift, propeller alone, free field").Source(vortexTheory),
		reading.OfSlot("noise.engine", "Engine at 150 m", r.Engine, unit.Decibel, noEngine).Lower().
			How("as measured, falling by 6 dB for each doubling of distance").Source("own measurement"),
		reading.New("noise.plain_level", "Propeller at 150 m, unweighted", r.Plain, unit.PlainDecibel).Lower().
			How("tones with their allowance for body and cage, and vortex noise, every frequency alike").Source(both),
		reading.New("noise.level_at_distance", "Noise at own listening distance", r.AtOwn, unit.Decibel).Lower().
			How(r.parts()+" at "+unit.Metre.Text(r.listener.Distance)+standing).Source(both),
		reading.New("noise.blade_passing", "Blade passing frequency", r.Passing, unit.Hertz).
			How("blades times turns a second").Source("geometry"),
		reading.New("noise.loudest_tone", "Loudest tone far off", r.Loudest, unit.Hertz).
			How("harmonic of blade passing with the greatest A-weighted level").Source(toneTheory),
	)
}

func (r *Result) earReadings(rs []reading.Reading) []reading.Reading {
	return append(rs,
		reading.New("noise.level_at_ear", "Noise at the pilot's ear, bare", r.AtEar, unit.Decibel).Lower().
			How(r.parts()+"; full throttle standing, at the place of Ear above hip axis and Ear ahead of back plane; "+
				"so near the blades the figure is rough: measure it").Source(nearTheory),
		reading.New("noise.level_protected", "Noise under the hearing protector", r.Protected, unit.Decibel).Lower().
			How("at the ear less Hearing protector attenuation, which low tones pass more easily").Source(nearTheory),
		reading.New("noise.daily_exposure", "Noise over the day, 8 h mean", r.Daily, unit.Decibel).Lower().
			How("under the protector, Engine running in a day at full throttle, spread over 8 h").Source("ISO 1999, as in directive 2003/10/EC"),
		reading.New("noise.permitted_time", "Time a day at full throttle", r.Permitted, unit.Minute).Higher().
			How("under the protector, by Level allowed for 8 h a day; a guide to hearing damage, no permission; local rules decide").Source(exposureRule),
	)
}

package model

import (
	"backspan/model/reading"
	"backspan/model/unit"
)

// later lists the contract's keys whose chapters this version lacks.
func later() []reading.Reading {
	return []reading.Reading{
		reading.Missing("noise.level_at_150m", "Noise at 150 m", unit.Decibel, "noise is not computed in this version").Lower(),
	}
}

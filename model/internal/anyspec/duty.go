package anyspec

import (
	"backspan/model/part"
	"pgregory.net/rapid"
)

// Rated is the rated point of any engine a drive may be built for, in any air.
func Rated(t *rapid.T) part.Duty {
	return part.Duty{
		Power:          rapid.Float64Range(500, 60e3).Draw(t, "rated power"),
		CrankSpeed:     rapid.Float64Range(200, 1500).Draw(t, "rated speed"),
		AirTemperature: rapid.Float64Range(230, 325).Draw(t, "air temperature"),
		AirDensity:     rapid.Float64Range(0.5, 1.5).Draw(t, "air density"),
	}
}

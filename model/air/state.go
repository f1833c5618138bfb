package air

import (
	"backspan/model/reading"
	"backspan/model/unit"
)

// State is air at rest.
type State struct {
	Altitude         float64 // geopotential, m
	Pressure         float64 // Pa
	Temperature      float64 // K
	Density          float64 // of the humid air, kg/m³
	SoundSpeed       float64 // m/s
	DynamicViscosity float64 // Pa·s
	VapourPressure   float64 // partial pressure of the water vapour, Pa
	DensityAltitude  float64 // at which dry standard air is as dense, m
}

const atmosphereSource = "from memory: ISO 2533, standard atmosphere"

// Readings lists the figures for people.
func (s State) Readings(rs []reading.Reading) []reading.Reading {
	return append(rs,
		reading.New("air.pressure", "Air pressure", s.Pressure, unit.Hectopascal).
			How("standard pressure of the altitude").Source(atmosphereSource),
		reading.New("air.temperature", "Air temperature", s.Temperature, unit.Celsius).
			How("standard temperature of the altitude and the offset").Source(atmosphereSource),
		reading.New("air.density", "Air density", s.Density, unit.KilogramPerCubicMetre).Higher().
			How("dry air and water vapour as ideal gases").Source(atmosphereSource),
		reading.New("air.density_altitude", "Density altitude", s.DensityAltitude, unit.Metre).Lower().
			How("altitude at which dry standard air is as dense").Source(atmosphereSource),
		reading.New("air.sound_speed", "Speed of sound", s.SoundSpeed, unit.MetrePerSecond).
			How("dry air at the air temperature").Source(atmosphereSource),
		reading.New("air.vapour_pressure", "Water vapour pressure", s.VapourPressure, unit.Hectopascal).
			How("relative humidity of the saturation pressure, with the enhancement by air").
			Source("Buck, J. Appl. Meteorol. 20 (1981) 1527, eq. 8"),
	)
}

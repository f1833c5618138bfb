package air

import (
	"backspan/model/param"
	"backspan/model/unit"
)

// Spec is the site and the day.
type Spec struct {
	Altitude          float64 // geopotential, above sea level, m
	TemperatureOffset float64 // above the standard temperature of the altitude, K
	RelativeHumidity  float64 // 0 to 1
}

// Default is dry standard air at sea level, in which results compare best.
func Default() Spec { return Spec{} }

// Params lists what a user may set.
func (s *Spec) Params() []param.Param {
	return []param.Param{
		param.Number(&s.Altitude, "altitude", "Site altitude", unit.Metre).
			Within(-400, 6000).Typical(0, 2000).Help("Above sea level; sets the pressure by the standard atmosphere."),
		param.Number(&s.TemperatureOffset, "temperature_offset", "Warmer than standard by", unit.KelvinDifference).
			Within(-40, 40).Typical(-15, 20).Help("Standard is 15 °C at sea level and 6.5 °C less for each 1000 m."),
		param.Number(&s.RelativeHumidity, "relative_humidity", "Relative humidity", unit.Percent).
			Within(0, 100).Typical(0, 90).Help("Humid air is a little lighter and feeds the engine less oxygen."),
	}
}

// State is the air on site: the standard pressure of the altitude with the
// day's temperature and humidity.
func (s Spec) State() State {
	p := standardPressure(s.Altitude)
	t := standardTemperature(s.Altitude) + s.TemperatureOffset
	e := s.RelativeHumidity * enhancement(p) * saturationPressure(t)
	rho := density(p, e, t)
	return State{
		Altitude: s.Altitude, Pressure: p, Temperature: t, Density: rho,
		SoundSpeed: soundSpeed(t), DynamicViscosity: Viscosity(t),
		VapourPressure: e, DensityAltitude: densityAltitude(rho),
	}
}

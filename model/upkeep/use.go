package upkeep

import (
	"backspan/model/param"
	"backspan/model/unit"
)

// Use is how a machine is used and what its running costs hang on. It is the
// same for every variant of a study.
type Use struct {
	HoursPerYear float64 // running time, s
	Years        float64 // of ownership
	IdleShare    float64 // of the running time
	ClimbShare   float64 // at full throttle at trim speed
	FuelPrice    float64 // money by the litre
	OilPrice     float64 // money by the litre
	FuelPerOil   float64 // by volume, of a two-stroke's mixture
	LabourRate   float64 // money/s
}

const (
	invented = "invented"
	practice = "common practice, no source"
)

// DefaultUse is an invented owner who flies for pleasure.
func DefaultUse() Use {
	return Use{HoursPerYear: unit.Hour.SI(60), Years: 5, IdleShare: 0.1, ClimbShare: 0.2,
		FuelPrice: 1.8, OilPrice: 14, FuelPerOil: 50, LabourRate: unit.CurrencyPerHour.SI(30)}
}

// Params lists what a user may set.
func (u *Use) Params() []param.Param {
	return []param.Param{
		param.Number(&u.HoursPerYear, "hours_per_year", "Running time a year", unit.Hour).
			Within(1, 500).Typical(30, 120).From(invented).Help("of the engine"),
		param.Number(&u.Years, "years", "Years looked ahead", unit.One).
			Within(1, 20).Typical(3, 8).From(invented).Help("costs are added up until then"),
		param.Number(&u.IdleShare, "idle_share", "Share of time at idle", unit.Percent).
			Within(0, 50).Typical(5, 20).From(invented).Help("warming up, waiting and gliding with the engine running"),
		param.Number(&u.ClimbShare, "climb_share", "Share of time in full climb", unit.Percent).
			Within(0, 50).Typical(10, 35).From(invented).Help("full throttle at trim speed; what is left is level flight. For cost and fuel; a belt's life goes by the shares of time set with the belt"),
		param.Number(&u.FuelPrice, "fuel_price", "Fuel price by the litre", unit.Currency).
			Within(0, 10).Typical(1, 3).From(invented).Help("in the study's currency"),
		param.Number(&u.OilPrice, "oil_price", "Oil price by the litre", unit.Currency).
			Within(0, 100).Typical(8, 25).From(invented).Help("in the study's currency; for the mixture of a two-stroke"),
		param.Number(&u.FuelPerOil, "fuel_per_oil", "Litres of fuel to one of oil", unit.One).
			Within(10, 200).Typical(30, 80).From(practice).Help("the mixture of a two-stroke; the engine maker's figure where there is one"),
		param.Number(&u.LabourRate, "labour_rate", "Labour rate", unit.CurrencyPerHour).
			Within(0, 300).Typical(0, 60).From(invented).Help("0 where the owner's own work is not counted; the drive's change does not follow it: its work is set with the drive, in money"),
	}
}

// Hours is the running time until the horizon, s.
func (u Use) Hours() float64 { return u.HoursPerYear * u.Years }

// perVolume is what fuel costs by volume with the oil in its mixture, money/m³.
func (u Use) perVolume(mixture bool) float64 {
	const litres = 1000.0
	if mixture {
		return litres * (u.FuelPrice + u.OilPrice/u.FuelPerOil)
	}
	return litres * u.FuelPrice
}

// CruiseShare is the share of time in level flight.
func (u Use) CruiseShare() float64 { return 1 - u.IdleShare - u.ClimbShare }

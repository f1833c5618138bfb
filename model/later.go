package model

import (
	"backspan/model/reading"
	"backspan/model/unit"
)

// later lists the contract's keys whose chapters this version lacks.
func later() []reading.Reading {
	return []reading.Reading{
		reading.Missing("upkeep.cost_per_hour", "Cost per hour", unit.CurrencyPerHour, "the cost per hour of the whole machine is not computed in this version").Lower(),
	}
}

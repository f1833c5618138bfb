package pulley

import (
	"backspan/model/param"
	"backspan/model/part"
	"backspan/model/unit"
)

// Upkeep is what a stage costs and how often its belt is changed.
type Upkeep struct {
	Price          float64 // of the stage
	BeltPrice      float64 // of one belt
	ChangeLabour   float64 // of one belt change
	ChangeInterval float64 // between belt changes, s
}

// Params lists what a builder may set of the upkeep, in the order a form shows
// it.
func (u *Upkeep) Params() []param.Param {
	return []param.Param{
		param.Number(&u.Price, "price", "Price of the stage", unit.Currency).
			Within(0, 1e5).Typical(200, 1000).From("invented"),
		param.Number(&u.BeltPrice, "belt_price", "Price of a belt", unit.Currency).
			Within(0, 1e4).Typical(15, 80).From("invented"),
		param.Number(&u.ChangeLabour, "change_labour", "Labour of a belt change", unit.Currency).
			Within(0, 1e4).Typical(0, 80).From("invented").
			Help("in money; it does not follow Labour rate of Use, and Drive, time of one change of Upkeep is standing time only"),
		param.Number(&u.ChangeInterval, "change_interval", "Belt change interval", unit.Hour).
			Within(5, 2000).Typical(50, 200).From("common practice, no source"),
	}
}

// OneBelt is the upkeep of a stage that wears out one belt at a time.
func (u Upkeep) OneBelt() part.Upkeep {
	return part.Upkeep{
		Price:          u.Price,
		ChangeInterval: u.ChangeInterval,
		ChangeCost:     u.BeltPrice + u.ChangeLabour,
		WearingParts:   1,
	}
}

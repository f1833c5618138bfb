package reading

import (
	"backspan/model/param"
	"backspan/model/unit"
)

// Unless declares a reading that has no value where there is a reason why not.
func Unless(why, key, label string, si float64, u unit.Unit) Reading {
	if why != "" {
		return Missing(key, label, u, why)
	}
	return New(key, label, si, u)
}

// OfSlot declares the reading of a slot, missing for that reason where the slot
// is empty.
func OfSlot(key, label string, s param.Slot, u unit.Unit, why string) Reading {
	if s.Known {
		why = ""
	}
	return Unless(why, key, label, s.Value, u)
}

package gear

import (
	"backspan/model/param"
	"backspan/model/reading"
	"backspan/model/unit"
)

// limitReading is an endurance limit, from the builder's own source or from the
// table.
func (r *Result) limitReading(key, label string, si float64, own param.Slot) reading.Reading {
	x := r.Strength.rated(key, label, si, unit.Megapascal).Higher()
	if own.Known {
		return x.How("as set; the table is not used").Source("the builder's own")
	}
	return x.How("nominal, of the material at its hardness, from the table").Source(materials().origin)
}

func (r *Result) ownContact(gear int) param.Slot {
	return [2]param.Slot{r.spec.PinionContact, r.spec.WheelContact}[gear]
}

func (r *Result) ownBending(gear int) param.Slot {
	return [2]param.Slot{r.spec.PinionBending, r.spec.WheelBending}[gear]
}

package upkeep

import (
	"math"

	"backspan/model/param"
	"backspan/model/part"
)

// Machine is what other chapters know of a machine's running. Flows in m³/s.
type Machine struct {
	IdleFlow, ClimbFlow, CruiseFlow float64
	Mixture                         bool // a two-stroke burns oil with its fuel
	Drive                           part.Upkeep
	DrivePart                       string // what of the drive is changed: "Belt"
}

// Advice is what age replacement says of one part.
type Advice struct {
	Set     float64    // interval as set, s; 0 where the part is not changed
	Best    param.Slot // s
	AtSet   param.Slot // expected cost at the interval set, money/s
	AtBest  param.Slot
	Running param.Slot // run to failure
	// Ages between which the cost is at most Worth above the best, s. Latest is
	// empty where any later one is.
	Earliest, Latest param.Slot
	Why              string // why there is no best age
}

// Result is what a machine costs until the horizon.
type Result struct {
	Solved     bool
	Hours      float64 // running time, s
	MeanFlow   float64 // of fuel, m³/s
	FuelCost   float64 // money, with oil
	PartsCost  float64
	LabourCost float64
	Stands     float64  // s
	Steady     float64  // money/s in the long run, changes counted by shares
	Dearest    float64  // cost of the dearest year, money
	DrivePrice float64  // money
	Changes    []Change // listed; fewer than Count where the list is cut
	Count      int      // of changes before the horizon
	Due        float64  // cost of the changes due at the horizon itself, money
	ShareLeft  float64  // of the time for level flight

	TopEnd, BigEnd, Drive Advice
}

// Total is what is paid until the horizon, money.
func (r *Result) Total() float64 { return r.FuelCost + r.PartsCost + r.LabourCost }

// Keep adds up what a machine costs under a use.
func Keep(u Use, s *Spec, m Machine) Result {
	r := Result{Solved: true, Hours: u.Hours(), ShareLeft: u.CruiseShare(), DrivePrice: m.Drive.Price}
	r.MeanFlow = u.IdleShare*m.IdleFlow + u.ClimbShare*m.ClimbFlow + math.Max(0, r.ShareLeft)*m.CruiseFlow
	r.Steady = r.MeanFlow * u.perVolume(m.Mixture)
	r.FuelCost = r.Steady * r.Hours
	items := s.scheduled(u, m)
	for i := range items {
		if it := &items[i]; it.interval > 0 {
			r.Steady += (it.parts + it.labour) / it.interval
		}
	}
	r.add(items)
	r.Changes = line(items, r.Hours)
	r.findDearest(u)
	r.TopEnd = s.TopEndLife.advise(s.TopEnd.Interval, s.TopEnd.Price+s.TopEnd.Labour*u.LabourRate)
	r.BigEnd = s.BigEndLife.advise(s.BigEnd.Interval, s.BigEnd.Price+s.BigEnd.Labour*u.LabourRate)
	r.Drive = s.DriveLife.advise(m.Drive.ChangeInterval, m.Drive.ChangeCost)
	return r
}

// scheduled lists every part that is changed. What the drive's change costs,
// and how often it comes, is the drive's own.
func (s *Spec) scheduled(u Use, m Machine) []scheduled {
	items := make([]scheduled, 0, 8+len(s.Others))
	of := func(part string, it Item) {
		items = append(items, scheduled{part, it.Price, it.Labour * u.LabourRate, it.Labour, it.Interval})
	}
	of("Spark plug", s.Plug)
	of("Reed valve", s.Reed)
	of("Exhaust packing", s.Packing)
	of("Piston and ring", s.TopEnd)
	of("Big end and main bearings", s.BigEnd)
	of("Rubber mounts", s.Mounts)
	of("Propeller", s.Propeller)
	if m.Drive.ChangeInterval > 0 {
		items = append(items, scheduled{m.DrivePart, m.Drive.ChangeCost, 0, s.DriveLabour, m.Drive.ChangeInterval})
	}
	for _, row := range s.Others {
		of("Other part", Item{row[0], row[1], row[2]})
	}
	return items
}

// add sums up all changes before the horizon, and those due at it.
func (r *Result) add(items []scheduled) {
	for i := range items {
		it := &items[i]
		n := it.times(r.Hours)
		r.Count += n
		r.PartsCost += float64(n) * it.parts
		r.LabourCost += float64(n) * it.labour
		r.Stands += float64(n) * it.stands
		if it.due(r.Hours) {
			r.Due += it.parts + it.labour
		}
	}
}

// findDearest goes along the line by years.
func (r *Result) findDearest(u Use) {
	fuel := 0.0
	if r.Hours > 0 {
		fuel = r.FuelCost / r.Hours * u.HoursPerYear
	}
	year, sum := 0, 0.0
	for i := range r.Changes {
		c := &r.Changes[i]
		if y := int(c.At / u.HoursPerYear); y != year {
			year, sum = y, 0
		}
		sum += c.Cost()
		r.Dearest = math.Max(r.Dearest, sum)
	}
	r.Dearest += fuel
}

// advise finds the best age of a part that costs planned to change and is
// changed at an interval, s.
func (l Life) advise(interval, planned float64) Advice {
	a := Advice{Set: interval}
	switch {
	case !(interval > 0) || !(planned > 0):
		a.Why = "no part is changed on schedule here"
		return a
	case !l.Shape.Known || !l.Scale.Known:
		a.Why = "life data are not given: Weibull shape and Weibull scale"
		return a
	}
	age := Age{Shape: l.Shape.Value, Scale: l.Scale.Value, Planned: planned, Failed: planned + l.Extra}
	a.Best, a.AtSet, a.Running = age.Best(), param.Finite(age.Rate(interval)), param.Finite(age.RunRate())
	if !a.Best.Known {
		a.Why = "running it until it fails is cheapest: it does not wear out, or its failure costs too little more"
		return a
	}
	a.AtBest = param.Finite(age.Rate(a.Best.Value))
	a.Earliest, a.Latest = age.around(a.Best.Value)
	return a
}

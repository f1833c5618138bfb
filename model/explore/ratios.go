package explore

import (
	"errors"
	"fmt"
	"math"
	"runtime"
	"sync"

	"backspan/model"
	"backspan/model/param"
)

// The ratios that can be asked for, of crank over propeller speed.
const (
	leastRatio, mostRatio = 0.5, 12
	// MostSteps is how many ratios one chart may try.
	MostSteps = 400
)

// Ratio is one ratio of a chart. The figures are those of the readings of the
// same names, in SI; each has a value only where it is Known.
type Ratio struct {
	Asked   float64
	Set     string // the parameter's value: "201 mm", "86"
	Ratio   param.Slot
	Thrust  param.Slot // standing, N
	Climb   param.Slot // m/s
	TipMach param.Slot
	Static  param.Slot // engine standing, rad/s
	Trim    param.Slot // engine at trim, rad/s

	Barred []string // why it cannot be the best; empty when it can
	Others int      // other checks that fail at this ratio
}

// Chart is one machine over many ratios.
type Chart struct {
	Variant   string
	Parameter string // the one that was changed, by its label
	Points    []Ratio
	Best      int // −1 when every ratio is barred
	Reason    string
}

// Ratios tries up to n ratios evenly from one to another, with the variant's
// engine and propeller. Where teeth make the ratio, each whole number comes
// once. Zero from and to look from a quarter below to a third above the ratio
// as it is.
func Ratios(s *model.Study, v *model.Variant, from, to float64, n int) (Chart, error) {
	from, to, err := span(s, v, from, to, n)
	if err != nil {
		return Chart{}, err
	}
	c := Chart{Variant: v.Name, Best: -1}
	machines, err := c.layOut(v, from, to, n)
	if err != nil {
		return Chart{}, err
	}
	evaluate(s, machines, func(i int, o model.Outcome) { c.Points[i].take(o) })
	c.choose()
	return c, nil
}

// span fills in the ratios looked at and holds them to reason.
func span(s *model.Study, v *model.Variant, from, to float64, n int) (low, high float64, err error) {
	if _, _, err := v.Drive.ForRatio(1); err != nil {
		return 0, 0, err
	}
	if n < 2 || n > MostSteps {
		return 0, 0, fmt.Errorf("give 2 to %d steps, not %d", MostSteps, n)
	}
	if from == 0 || to == 0 {
		now, ok := model.Evaluate(s, v).Reading("drive.ratio")
		if !ok || !now.Known() {
			return 0, 0, fmt.Errorf("the drive as it is cannot be built, so name the ratios from and to: %s", now.Why)
		}
		if from == 0 {
			from = 0.75 * now.Value
		}
		if to == 0 {
			to = math.Max(1.33*now.Value, from*1.1)
		}
	}
	if !(from >= leastRatio && to <= mostRatio && from < to) {
		return 0, 0, fmt.Errorf("give ratios of crank over propeller speed from %g to %d, the first below the last; not %.4g to %.4g", leastRatio, mostRatio, from, to)
	}
	return from, to, nil
}

// layOut makes a machine for each ratio, and none where the parameter's range
// ends before it: the point then says so.
func (c *Chart) layOut(v *model.Variant, from, to float64, n int) ([]*model.Variant, error) {
	var machines []*model.Variant
	last := math.NaN()
	for i := range n {
		ratio := from + (to-from)*float64(i)/float64(n-1)
		m := v.Clone()
		m.Drive.FreeRatio()
		path, value, err := m.Drive.ForRatio(ratio)
		if err != nil {
			return nil, err
		}
		if value == last {
			continue
		}
		last = value
		p, ok := param.Find(m.Sections(), "drive."+path)
		if !ok {
			return nil, fmt.Errorf("there is no parameter drive.%s", path)
		}
		point, machine := Ratio{Asked: ratio}, &m
		if err := p.SetNumber(value); err != nil {
			point.Barred, machine, point.Set = []string{refused(err)}, nil, tried(p, value)
		} else {
			point.Set = p.Show()
		}
		c.Parameter = p.Label
		c.Points, machines = append(c.Points, point), append(machines, machine)
	}
	return machines, nil
}

// refused is why a parameter did not take a value that nobody typed: what it
// kept instead is not of interest.
func refused(err error) string {
	var r *param.Refusal
	if errors.As(err, &r) {
		return r.Param.Label + ": " + r.Reason
	}
	return err.Error()
}

// tried is a value that the parameter did not take, as a form would show it.
func tried(p param.Param, value float64) string {
	if p.Kind == param.KindWhole {
		return fmt.Sprint(value)
	}
	return p.Unit.Text(value)
}

// evaluate works the machines on all processors and hands each outcome to take.
func evaluate(s *model.Study, machines []*model.Variant, take func(i int, o model.Outcome)) {
	next := make(chan int)
	var wait sync.WaitGroup
	for range min(runtime.GOMAXPROCS(0), len(machines)) {
		wait.Go(func() {
			for i := range next {
				take(i, model.Evaluate(s, machines[i]))
			}
		})
	}
	for i, m := range machines {
		if m != nil {
			next <- i
		}
	}
	close(next)
	wait.Wait()
}

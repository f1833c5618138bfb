package propeller

import (
	"errors"
	"fmt"
	"math"

	"backspan/model/unit"
)

// Aim is what a blade is designed for.
type Aim struct {
	Flow          Flow    // airspeed ≥ 0 and speed of rotation > 0 to work best at
	Thrust, Power float64 // isolated thrust N or power W wanted; exactly one of them > 0
	Lift          float64 // section lift coefficient, the same all along
	LeastChord    float64 // of what can be built, m
	GreatestChord float64 // m
	Stations      int     // rows of the blade, leastStations to mostStations
}

// DesignRow is one station of a designed blade.
type DesignRow struct {
	Radius, Share float64 // m, and as a share of the tip radius
	Chord         float64 // as built, m
	IdealChord    float64 // of least loss, m
	Thickness     float64 // of the section as built, m
	Angle         float64 // of the blade, rad
	Inflow        float64 // of the least-loss blade, rad
	Reynolds      float64 // of the least-loss blade
}

// Design is a blade of least induced loss, cut to chords that can be built
// and turned so that it does what was wanted.
type Design struct {
	Rows   []DesignRow
	Blade  Spec    // the blade as stations, to be used in place of the one given
	Turned float64 // by how much the blade as built is turned against the least-loss one, rad
	// Ideal thrust, power and efficiency (0 standing still) are those of the
	// least-loss blade, whose chords may be impossible to build; never quote
	// them for the blade as built.
	IdealThrust, IdealPower, IdealEfficiency float64
	Built                                    Point // the blade as built, analysed at the aim
	Clipped                                  bool  // some chord is not the ideal one
}

// Design lays out a blade of least induced loss of the spec's blade number,
// diameter, cut-out and section. The error says in one sentence what to change.
func (s *Spec) Design(aim Aim) (Design, error) {
	if err := aim.sound(); err != nil {
		return Design{}, err
	}
	p, err := New(*s)
	if err != nil {
		return Design{}, err
	}
	d := screwWake{blades: float64(s.Blades), tip: p.tip, root: s.HubRadius, flow: aim.Flow, section: p.working(aim.Lift)}
	w, err := d.displacement(aim.Thrust, aim.Power)
	if err != nil {
		return Design{}, err
	}
	out := Design{}
	thrust, torque := d.sum(w)
	out.IdealThrust, out.IdealPower = thrust, torque*aim.Flow.Speed
	out.IdealEfficiency = out.IdealThrust * aim.Flow.Airspeed / out.IdealPower
	out.lay(s, &d, w, aim)
	return out, out.turn(s, aim)
}

// The rows a designed blade may have: more lie closer than a workshop measures.
const leastStations, mostStations = 4, 60

func (a *Aim) sound() error {
	switch {
	case (a.Thrust > 0) == (a.Power > 0):
		return errors.New("give either the thrust or the power that the blade is for")
	case a.Flow.Speed <= 0 || a.Flow.Airspeed < 0:
		return errors.New("give a propeller speed above 0 and an airspeed of 0 or more")
	case !(a.Lift >= 0.1 && a.Lift <= 1.5):
		return errors.New("the lift coefficient must be from 0.1 to 1.5; 0.5 to 0.8 is usual")
	case a.Stations < leastStations || a.Stations > mostStations:
		return fmt.Errorf("a blade takes %d to %d stations, not %d", leastStations, mostStations, a.Stations)
	case a.LeastChord <= 0 || a.GreatestChord < a.LeastChord:
		return errors.New("the greatest chord must not be less than the least one")
	}
	return nil
}

// working finds the angle of attack at which the section has the lift asked,
// or most of what it can give where the Reynolds number is too low for that.
func (p *Propeller) working(lift float64) func(radius, reynolds, mach float64) worksAt {
	const (
		mostOfIt    = 0.85
		attackSteps = 24 // halve the angle of attack to a ten-millionth
	)
	return func(radius, reynolds, mach float64) worksAt {
		st := p.stations[len(p.stations)/2]
		st.delay = 0
		var q polar
		st.fix(&q, reynolds, mach)
		most, _ := q.coefficients(q.stall)
		want := min(lift, mostOfIt*most)
		low, high := q.zeroLift, q.stall
		for range attackSteps {
			middle := (low + high) / 2
			if cl, _ := q.coefficients(middle); cl < want {
				low = middle
			} else {
				high = middle
			}
		}
		cl, cd := q.coefficients(high)
		return worksAt{high, cl, cd / cl}
	}
}

// lay puts the stations at equal steps from cut-out to tip.
func (out *Design) lay(spec *Spec, d *screwWake, w float64, aim Aim) {
	for i := range aim.Stations {
		r := d.root + (d.tip-d.root)*float64(i)/float64(aim.Stations-1)
		s := d.at(r, w)
		row := DesignRow{Radius: r, Share: r / d.tip, IdealChord: s.chord, Inflow: s.inflow, Reynolds: s.reynolds,
			Chord: min(max(s.chord, aim.LeastChord), aim.GreatestChord), Angle: s.inflow + s.attack}
		row.Thickness = row.Chord * spec.thickness(r)
		out.Clipped = out.Clipped || row.Chord != row.IdealChord && i < aim.Stations-1
		out.Rows = append(out.Rows, row)
	}
}

const (
	turnFrom = -12 * math.Pi / 180
	turnTo   = 15 * math.Pi / 180
	turnStep = math.Pi / 180
	turnFine = 1e-6
	// closeEnough is the share of what was wanted by which the blade may miss it.
	closeEnough = 0.002
	leastTurn   = -4.9 * math.Pi / 180 // blade angles that the stations take
	mostTurn    = 74.9 * math.Pi / 180
)

// turn turns the blade as built, from fine pitch up, until it first gives the
// thrust or takes the power wanted.
func (out *Design) turn(s *Spec, aim Aim) error {
	lacks := func(by float64) (float64, error) {
		out.Blade = out.turned(s, by)
		p, err := New(out.Blade)
		if err != nil {
			return 0, err
		}
		out.Built, out.Turned = p.At(aim.Flow), by
		if aim.Thrust > 0 {
			return aim.Thrust - out.Built.Thrust, nil
		}
		return aim.Power - out.Built.Power, nil
	}
	low, high := turnFrom, turnFrom
	for {
		lack, err := lacks(high)
		if err != nil {
			return err
		}
		if lack <= 0 && high == turnFrom {
			return fmt.Errorf("a blade at least %.0f mm wide gives more than that however fine it is set: lower the least chord, Blades or Diameter", 1000*aim.LeastChord)
		}
		if lack <= 0 {
			break
		}
		if high >= turnTo {
			return fmt.Errorf("a blade no wider than %.0f mm stalls before it gives that: raise the greatest chord or Blades, or ask for less", 1000*aim.GreatestChord)
		}
		low, high = high, high+turnStep
	}
	for high-low > turnFine {
		middle := (low + high) / 2
		if lack, _ := lacks(middle); lack > 0 {
			low = middle
		} else {
			high = middle
		}
	}
	lack, err := lacks(high)
	if wanted := aim.Thrust + aim.Power; err == nil && math.Abs(lack) > closeEnough*wanted {
		return fmt.Errorf("a blade no wider than %.0f mm jumps into stall where it would give that: raise the greatest chord or Blades, or ask for less", 1000*aim.GreatestChord)
	}
	if err == nil && out.Built.Status != Valid {
		return fmt.Errorf("the blade as built is %s; ask for another speed, airspeed or thrust", out.Built.Status)
	}
	for i := range out.Rows {
		out.Rows[i].Angle = out.Blade.Rows[i][2]
	}
	return err
}

// rounded is a figure as a file and a workshop take it.
func rounded(si float64, u unit.Unit, parts float64) float64 {
	return u.Settle(u.SI(math.Round(u.From(si)*parts) / parts))
}

// turned is the spec with the designed rows for its blade.
func (out *Design) turned(s *Spec, by float64) Spec {
	b := s.Clone()
	b.Shape, b.PitchTrim, b.Rows = Stations, 0, nil
	for _, r := range out.Rows {
		b.Rows = append(b.Rows, []float64{
			rounded(r.Share, unit.One, 1e4), rounded(r.Chord, unit.Millimetre, 100), rounded(min(max(r.Angle+by, leastTurn), mostTurn), unit.Degree, 1000)})
	}
	return b
}

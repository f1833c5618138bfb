package main

import (
	"errors"
	"flag"
	"fmt"

	"backspan/model/explore"
	"backspan/model/param"
	"backspan/model/unit"
	"backspan/store/report"
)

// bladeWords are the options of blade as a person gives them.
type bladeWords struct {
	variant, saveAs, format                        string
	thrust, power, airspeed, speed, narrow, widest string
	diameter                                       string
	lift                                           float64
	blades, stations                               int
}

func (w *bladeWords) flags() *flag.FlagSet {
	fs := flag.NewFlagSet("blade", flag.ContinueOnError)
	fs.StringVar(&w.variant, "variant", "", "the machine that the blade is for; without it the reference")
	fs.StringVar(&w.power, "power", "", "power that it takes, such as 11 kW; without it the engine's at trim")
	fs.StringVar(&w.thrust, "thrust", "", "thrust that it gives by itself, such as 400 N, in place of a power")
	fs.StringVar(&w.airspeed, "airspeed", "", "where it works best, such as 40 km/h; without it trim speed")
	fs.StringVar(&w.speed, "speed", "", "of the propeller, such as 2500 rpm; without it that at trim")
	fs.Float64Var(&w.lift, "lift", 0.6, "lift coefficient along the blade")
	fs.StringVar(&w.narrow, "least-chord", "", "narrowest chord that can be built; without it 25 mm")
	fs.StringVar(&w.widest, "greatest-chord", "", "widest chord that can be built; without it that of the present blade")
	fs.StringVar(&w.diameter, "diameter", "", "another diameter than the present one")
	fs.IntVar(&w.blades, "blades", 0, "another number of blades than the present one")
	fs.IntVar(&w.stations, "stations", 12, "how many rows, 4 to 60")
	fs.StringVar(&w.saveAs, "save-as", "", "keep the blade as a new variant of this name in the study's file")
	fs.StringVar(&w.format, "format", string(report.Table), "table, json, csv or markdown")
	return fs
}

// blade designs a blade of least induced loss for one machine.
func (p program) blade(args []string) int {
	var w bladeWords
	s, status, done := p.toChange(w.flags(), args)
	if done {
		return status
	}
	f, err := report.ParseFormat(w.format)
	if err != nil {
		return p.cannot(err)
	}
	found, err := w.design(s)
	if err != nil {
		return p.cannot(fmt.Errorf("blade: %w", err))
	}
	if w.saveAs != "" {
		if err := p.keepBlade(s, found, w.saveAs); err != nil {
			return p.cannot(err)
		}
	}
	if err := bladeSheet(s.Name, found).Write(p.out, f); err != nil {
		return p.cannot(err)
	}
	return statusFine
}

func (w *bladeWords) design(s study) (explore.BladeFound, error) {
	i, err := pick(s.Study, w.variant)
	if err != nil {
		return explore.BladeFound{}, err
	}
	v := s.Variants[i].Clone()
	for _, c := range []struct{ option, key, text string }{{"diameter", "propeller.diameter", w.diameter}, {"blades", "propeller.blades", count(w.blades)}} {
		if q, ok := param.Find(v.Sections(), c.key); ok && c.text != "" {
			if err := q.Set(c.text); err != nil {
				return explore.BladeFound{}, optionError(c.option, err)
			}
		}
	}
	wish, err := w.wish()
	if err != nil {
		return explore.BladeFound{}, err
	}
	return explore.Blade(s.Study, &v, wish)
}

// optionError names the option whose value the parameter did not take.
func optionError(option string, err error) error {
	var r *param.Refusal
	if errors.As(err, &r) {
		return fmt.Errorf("--%s: %s", option, r.Reason)
	}
	return fmt.Errorf("--%s: %w", option, err)
}

func count(n int) string {
	if n == 0 {
		return ""
	}
	return fmt.Sprint(n)
}

func (w *bladeWords) wish() (explore.BladeWish, error) {
	wish := explore.BladeWish{Lift: w.lift, Stations: w.stations}
	for _, q := range []struct {
		name, text string
		unit       unit.Unit
		to         *param.Slot
	}{
		{"thrust", w.thrust, unit.Newton, &wish.Thrust}, {"power", w.power, unit.Watt, &wish.Power},
		{"airspeed", w.airspeed, unit.MetrePerSecond, &wish.Airspeed}, {"speed", w.speed, unit.RPM, &wish.Speed},
		{"least-chord", w.narrow, unit.Millimetre, &wish.LeastChord}, {"greatest-chord", w.widest, unit.Millimetre, &wish.GreatestChord},
	} {
		if q.text == "" {
			continue
		}
		x, err := unit.Parse(q.text, q.unit)
		if err != nil {
			return wish, fmt.Errorf("--%s: %w", q.name, err)
		}
		*q.to = param.Known(x)
	}
	return wish, nil
}

// keepBlade adds the machine with the blade to the study and saves it.
func (p program) keepBlade(s study, found explore.BladeFound, name string) error {
	v := found.Variant.Clone()
	v.Name = s.FreeName(v.Name)
	s.Variants = append(s.Variants, v)
	if err := s.Rename(len(s.Variants)-1, name); err != nil {
		return err
	}
	return p.save(s, "the blade is kept as variant "+s.Variants[len(s.Variants)-1].Name)
}

func bladeSheet(name string, f explore.BladeFound) report.Sheet {
	sheet := report.Sheet{
		Title: f.Variant.Name + ": " + f.Brief,
		Head:  []string{"Share of radius", "Radius", "Chord", "Least-loss chord", "Thickness", "Blade angle", "Reynolds number"},
		Plain: [][]string{{"share_of_radius", "radius_mm", "chord_mm", "least_loss_chord_mm", "thickness_mm", "blade_angle_deg", "reynolds"}},
		Note:  bladeNote(f),
	}
	data := bladeData{Study: name, Variant: f.Variant.Name, Stations: []bladeRow{}}
	d := &f.Design
	data.Thrust, data.Power, data.TurnedDegrees = f.Design.Built.Thrust, d.Built.Power, unit.Degree.From(d.Turned)
	for _, r := range d.Rows {
		sheet.Rows = append(sheet.Rows, []string{fmt.Sprintf("%.3f", r.Share), unit.Millimetre.Text(r.Radius), unit.Millimetre.Text(r.Chord),
			unit.Millimetre.Text(r.IdealChord), unit.Millimetre.Text(r.Thickness), unit.Degree.Text(r.Angle), fmt.Sprintf("%.0f", r.Reynolds)})
		row := bladeRow{r.Share, unit.Millimetre.From(r.Radius), unit.Millimetre.From(r.Chord), unit.Millimetre.From(r.IdealChord), unit.Millimetre.From(r.Thickness), unit.Degree.From(r.Angle), r.Reynolds}
		sheet.Plain = append(sheet.Plain, []string{plain(row.Share), plain(row.Radius), plain(row.Chord), plain(row.LeastLossChord), plain(row.Thickness), plain(row.Angle), plain(row.Reynolds)})
		data.Stations = append(data.Stations, row)
	}
	for _, key := range bladeReadings {
		before, _ := f.Before.Reading(key)
		after, _ := f.After.Reading(key)
		data.Machine = append(data.Machine, bladeEffect{key, value(slotOf(before), before.Unit), value(slotOf(after), after.Unit), after.Unit.Symbol, after.Why})
	}
	sheet.Data = data
	return sheet
}

package upkeep

import (
	"backspan/model/param"
	"backspan/model/unit"
)

// Item is a part that is changed on schedule. One with neither price nor
// labour is left out.
type Item struct {
	Price    float64 // of the part, money
	Labour   float64 // of one change, s
	Interval float64 // running time between changes, s
}

// Life is what is known of the life of a part, by Weibull's distribution.
type Life struct {
	Shape param.Slot
	Scale param.Slot // running time, s
	Extra float64    // what a failure costs beyond a planned change, money
}

// Spec is what a user sets about one machine.
type Spec struct {
	Plug, Reed, Packing, TopEnd, BigEnd, Mounts, Propeller Item
	DriveLabour                                            float64     // of one change of the drive's part, s
	Others                                                 [][]float64 // rows of price, labour and interval, SI

	TopEndLife, BigEndLife, DriveLife Life
}

// Default is common practice for a single-cylinder two-stroke, at invented
// prices.
func Default() Spec {
	item := func(price, labour, interval float64) Item {
		return Item{price, unit.Hour.SI(labour), unit.Hour.SI(interval)}
	}
	return Spec{
		Plug: item(9, 0.2, 25), Reed: item(38, 0.7, 100), Packing: item(14, 1, 50), TopEnd: item(150, 3, 150),
		BigEnd: item(320, 8, 350), Mounts: item(48, 1.5, 100), Propeller: item(180, 0.5, 200),
		DriveLabour: unit.Hour.SI(0.7),
		TopEndLife:  Life{Extra: 250}, BigEndLife: Life{Extra: 400}, DriveLife: Life{Extra: 100},
	}
}

// Clone is a copy that shares nothing with s.
func (s Spec) Clone() Spec {
	s.Others = copied(s.Others)
	return s
}

func copied(rows [][]float64) [][]float64 {
	if len(rows) == 0 {
		return nil
	}
	out := make([][]float64, len(rows))
	for i, r := range rows {
		out[i] = append([]float64(nil), r...)
	}
	return out
}

// Params lists what a user may set, in the order a form shows it.
func (s *Spec) Params() []param.Param {
	var ps []param.Param
	for _, it := range []struct {
		item       *Item
		key, label string
		help       string
		// What is usual: price in money, labour and interval in hours.
		price, labour, interval [2]float64
	}{
		{&s.Plug, "plug", "Spark plug", "worn gap and fouling", band(4, 20), band(0.1, 0.4), band(15, 50)},
		{&s.Reed, "reed", "Reed valve", "chipped or frayed petals; 0 price and labour where there is none", band(20, 90), band(0.4, 1.5), band(50, 200)},
		{&s.Packing, "packing", "Exhaust packing", "silencer wool, springs and joints", band(8, 40), band(0.5, 2), band(25, 100)},
		{&s.TopEnd, "top_end", "Piston and ring", "with pin and needle bearing", band(80, 300), band(2, 5), band(80, 250)},
		{&s.BigEnd, "big_end", "Big end and mains", "crank apart and back together", band(200, 700), band(5, 14), band(200, 500)},
		{&s.Mounts, "mounts", "Rubber mounts", "all of them; they also age by the calendar", band(25, 120), band(0.8, 3), band(50, 200)},
		{&s.Propeller, "propeller", "Propeller", "strikes and repairs come when they come; give the running time that one lasts on average", band(120, 600), band(0.2, 1), band(100, 400)},
	} {
		ps = append(ps,
			param.Number(&it.item.Price, it.key+"_price", it.label+", price", unit.Currency).
				Within(0, 5000).Typical(it.price[0], it.price[1]).From(invented).Help(it.help),
			param.Number(&it.item.Labour, it.key+"_labour", it.label+", labour", unit.Hour).
				Within(0, 60).Typical(it.labour[0], it.labour[1]).From("estimate").Help("of one change; the machine stands still meanwhile"),
			param.Number(&it.item.Interval, it.key+"_interval", it.label+", interval", unit.Hour).
				Within(5, 5000).Typical(it.interval[0], it.interval[1]).From(practice).Help("running time between changes; the maker's figure where there is one"))
	}
	ps = append(ps,
		param.Number(&s.DriveLabour, "drive_labour", "Drive, time of one change", unit.Hour).
			Within(0, 60).Typical(0.3, 3).From("estimate").Help("standing time only: what the change costs, work and all, is set with the drive in money and does not follow Labour rate"),
		param.Table(func() [][]float64 { return copied(s.Others) }, func(rows [][]float64) { s.Others = copied(rows) }, "others", "Other parts",
			param.Column{Label: "price", Unit: unit.Currency, Min: 0, Max: 5000}, param.Column{Label: "labour", Unit: unit.Hour, Min: 0, Max: 60},
			param.Column{Label: "interval", Unit: unit.Hour, Min: 5, Max: 5000}).Help("one row a part: price, labour, interval"))
	return append(ps, s.lives()...)
}

func band(low, high float64) [2]float64 { return [2]float64{low, high} }

func (s *Spec) lives() []param.Param {
	var ps []param.Param
	for _, l := range []struct {
		life       *Life
		key, label string
	}{
		{&s.TopEndLife, "top_end", "Piston and ring"},
		{&s.BigEndLife, "big_end", "Big end"},
		{&s.DriveLife, "drive", "Drive's part"},
	} {
		ps = append(ps,
			param.Open(&l.life.Shape, l.key+"_life_shape", l.label+", Weibull shape", unit.One).
				Within(0.3, 10).Typical(1.5, 4).Help("from your own failures: above 1 wears out, 1 fails at random"),
			param.Open(&l.life.Scale, l.key+"_life_scale", l.label+", Weibull scale", unit.Hour).
				Within(5, 20000).Typical(50, 1000).Help("running time by which 63 % have failed"),
			param.Number(&l.life.Extra, l.key+"_failure_extra", l.label+", cost of failing", unit.Currency).
				Within(0, 20000).Typical(50, 1000).From(invented).Help("beyond a planned change: what else breaks, retrieving, a spoilt day"))
	}
	return ps
}

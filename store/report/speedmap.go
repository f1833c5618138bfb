package report

import (
	"strings"

	"backspan/model"
	"backspan/model/part"
	"backspan/model/unit"
)

// mapWidth is the number of cells a speed map is drawn in.
const mapWidth = 48

// speedGrid draws the bands of crank speed to stay out of: "#" inside a band,
// "." outside; the standing speed is "|", or "!" inside the band. ok is false when there are
// none.
func speedGrid(o model.Outcome) (g grid, ok bool) {
	m := o.Speeds
	if len(m.Bands) == 0 || !(m.To > m.From) {
		return grid{}, false
	}
	g = grid{
		title: o.Variant + ": crank speeds that set the drive or the mounts swinging, " + unit.RPM.Number(m.From) + " to " + unit.RPM.Text(m.To) +
			"; | is the standing speed, ! inside a band, " + unit.RPM.Text(m.Working),
		head: []string{"from", "to", "map", "cause"},
		note: "crank against propeller, pinion against wheel and the mount modes: " + unit.Percent.Text(model.AroundMode) + " to both sides of where the order meets them, an estimate",
	}
	for _, b := range m.Bands {
		g.rows = append(g.rows, []string{unit.RPM.Number(b.From), unit.RPM.Number(b.To), speedLine(m, b), b.Cause})
	}
	return g, true
}

func speedLine(m part.SpeedMap, b part.SpeedBand) string {
	cell := func(speed float64) int {
		return min(max(int((speed-m.From)/(m.To-m.From)*mapWidth), 0), mapWidth-1)
	}
	line := []byte(strings.Repeat(".", mapWidth))
	for i := cell(b.From); i <= cell(b.To); i++ {
		line[i] = '#'
	}
	if m.Working >= m.From && m.Working <= m.To {
		mark := byte('|')
		if m.Working >= b.From && m.Working <= b.To {
			mark = '!'
		}
		line[cell(m.Working)] = mark
	}
	return string(line)
}

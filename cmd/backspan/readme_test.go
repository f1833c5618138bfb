package main

import (
	"fmt"
	"os"
	"strings"
	"testing"

	"backspan/model"
)

// decision are the rows of the worked decision in the README.
var decision = []string{
	"drive.efficiency", "drive.mass", "drive.depth", "drive.price", "stack.drive_depth", "stack.depth", "stack.mass_ready",
	"carry.hip_moment", "carry.equivalent_mass", "propeller.static_thrust", "flight.climb_rate", "flight.level_fuel",
	"upkeep.cost_per_hour", "upkeep.steady_cost_per_hour", "cooling.head_hot_day", "noise.level_at_150m",
}

// The worked decision in the README is what the program says of the sample.
func TestReadmeTellsTheTruth(t *testing.T) {
	text, err := os.ReadFile("../../README.md")
	if err != nil {
		t.Fatal(err)
	}
	readme := strings.Join(strings.Fields(string(text)), " ")
	s := model.Sample()
	c := model.Compare(s, model.EvaluateAll(s))
	belt, gear, open := s.Index("Belt 190"), s.Index("Gear 190"), s.Index("Gear 190 open")
	for _, key := range decision {
		for _, r := range c.Readings {
			if r.Key == key {
				text := func(i int) string { return strings.Replace(r.Cells[i].Text(), "money", s.Currency, 1) }
				expect(t, readme, fmt.Sprintf("| %s | %s | %s | %s |", r.Label, text(belt), text(gear), text(open)))
			}
		}
	}
	expect(t, readme, fmt.Sprintf("%.1f N·m from mass and %.1f N·m from depth", c.Feel[gear].FromMass, c.Feel[gear].FromDepth))
	heavy := c.Outcomes[s.Index("Belt 300")]
	moment, _ := heavy.Reading("belt.overhang_moment")
	expect(t, readme, "bends the crank with "+moment.Text())
	for _, word := range []string{"80", "300"} {
		b, _ := c.Outcomes[s.Index("Belt "+word)].Reading("flight.climb_rate")
		g, _ := c.Outcomes[s.Index("Gear "+word)].Reading("flight.climb_rate")
		expect(t, readme, fmt.Sprintf("%s against %s", b.Text(), g.Text()))
	}
}

// The picture in the README is the bench as it is.
func TestReadmeShowsTheBench(t *testing.T) {
	readme, err := os.ReadFile("../../README.md")
	if err != nil {
		t.Fatal(err)
	}
	screen, err := os.ReadFile("../../tui/testdata/bench-edited-80x24.txt")
	if err != nil {
		t.Fatal(err)
	}
	if !strings.Contains(string(readme), strings.TrimRight(string(screen), "\n")) {
		t.Error("the picture of the bench is out of date: put tui/testdata/bench-edited-80x24.txt into the README")
	}
}

func expect(t *testing.T, readme, want string) {
	t.Helper()
	if !strings.Contains(readme, strings.Join(strings.Fields(want), " ")) {
		t.Errorf("the README does not say %q", want)
	}
}

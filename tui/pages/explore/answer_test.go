package explore

import (
	"fmt"
	"strings"
	"testing"

	"backspan/tui/theme"
)

func TestStopEndsTheWorkAtOnce(t *testing.T) {
	m := page()
	m.keysTyped("tab", "tab", "end", "up", "up", "100000", "enter", "r")
	j := m.job
	if j == nil || !strings.Contains(shownBy(m), "esc stops it") {
		t.Fatal(shownBy(m))
	}
	listen := m.Next()
	if m.Next() != nil {
		t.Error("two listen")
	}
	m.keysTyped("esc")
	if m.job != nil || m.reading == false && m.answer() != nil || !strings.Contains(shownBy(m), "stopped after ") {
		t.Fatal(shownBy(m))
	}
	if told, ok := listen().(ToldMsg); ok {
		m.Take(told)
	}
	for range j.told { // closed when the work has ended
	}
	if m.answer() != nil {
		t.Error("work that was stopped is answered")
	}
}

func TestAnswersSayOfWhichMachineTheyAre(t *testing.T) {
	m := page()
	m.keysTyped("r")
	m.await(t)
	standing := func() string { return m.answer().standing(m.desk) }
	if got := standing(); got != "of Belt 190" {
		t.Error(got)
	}
	m.desk.Select(1)
	if got := standing(); got != "of Belt 190, not the one in hand" {
		t.Error(got)
	}
	if err := m.desk.Set(0, "drive.ribbed_belt.ribs", "9"); err != nil {
		t.Fatal(err)
	}
	if got := standing(); got != "of Belt 190, the machine as it was" {
		t.Error(got)
	}
	m.desk.Undo()
	m.desk.Select(0)
	if got := standing(); got != "of Belt 190" {
		t.Error(got)
	}
	if err := m.desk.Delete(0); err != nil {
		t.Fatal(err)
	}
	m.Refresh()
	if got := standing(); got != "of Belt 190, which is no more" || !strings.Contains(shownBy(m), got) {
		t.Error(got)
	}
}

// Another question while one is worked ends the first.
func TestOneQuestionAtATime(t *testing.T) {
	m := page()
	m.keysTyped("tab", "tab", "end", "up", "up", "100000", "enter", "r", "tab")
	if !strings.Contains(shownBy(m), "Best compromises, ") {
		t.Error("it is not told what is worked:\n" + shownBy(m))
	}
	m.keysTyped("r")
	m.await(t)
	if m.answers[howSure] == nil || m.answers[compromises] != nil || m.stopped[compromises] == "" {
		t.Errorf("%v", m.stopped)
	}
}

func TestEveryAnswerIsATable(t *testing.T) {
	m := page()
	for q := range questions {
		m.at = q
		m.keysTyped("r")
		m.await(t)
		rows := strings.Split(m.Text(), "\n")
		if len(rows) < 2 || !strings.Contains(rows[0], "\t") {
			t.Errorf("%s: %q", titles[q], m.Text())
		}
	}
}

// Whatever the room: no line is too wide, and no line too many.
func TestAnswersFitAnyRoom(t *testing.T) {
	m := page()
	m.keysTyped("down", "down", "enter", "drive kind", "enter", "right", "ctrl+u", "home")
	for q := range questions {
		m.at = q
		m.keysTyped("r")
		m.await(t)
	}
	for q := range questions {
		for _, reading := range []bool{false, true} {
			for _, size := range [][2]int{{60, 10}, {61, 12}, {80, 18}, {109, 20}, {110, 9}, {120, 34}, {200, 54}} {
				m.at, m.reading = q, reading
				m.Size(size[0], size[1])
				for range 3 {
					m.keysTyped("down", ")")
					if n := len(m.View()); n > size[1] {
						t.Fatalf("%s in %v: %d lines", titles[q], size, n)
					}
					for _, l := range m.View() {
						if theme.Width(l) > size[0] {
							t.Fatalf("%s in %v: %q", titles[q], size, l)
						}
					}
				}
			}
		}
	}
}

// Designs that fail are crossed out in the chart and say why in the table.
func TestSweepOverTwoParameters(t *testing.T) {
	m := page()
	m.Size(120, 36)
	m.keysTyped("down", "160..220 mm/4", "enter", "down", "enter", "ribs", "enter", "8, 10, 12", "enter", "r")
	m.await(t)
	d := m.answer().designs
	if len(d.rows) != 12 || len(d.plots) != 3 || len(d.plots[1].lines) != 3 || len(d.plots[1].lines[0].points) != 4 {
		t.Fatalf("%d designs, %+v", len(d.rows), d.plots)
	}
	for k, l := range d.plots[1].lines {
		for j, pt := range l.points {
			f := d.rows[pt.row]
			if f.At[0] != pt.x || f.At[1] != float64(8+2*k) || f.Figure(1).Value != pt.y || j > 0 && pt.x <= l.points[j-1].x || pt.bad == f.Sound() {
				t.Errorf("line %d, point %d: %+v of %+v", k, j, pt, f)
			}
		}
	}
	for _, want := range []string{"Ribs a 8 b 10 c 12", "× fails a check", "× fails"} {
		if !strings.Contains(shownBy(m), want) {
			t.Errorf("lacks %q:\n%s", want, shownBy(m))
		}
	}
}

func TestWordsHaveNoChart(t *testing.T) {
	m := page()
	m.keysTyped("down", "left", "enter", "kind of drive", "enter", "r")
	m.await(t)
	d := m.answer().designs
	if len(d.rows) != 4 || len(d.plots) != 0 || !strings.Contains(shownBy(m), "toothed belt") {
		t.Errorf("%d designs, %d charts\n%s", len(d.rows), len(d.plots), shownBy(m))
	}
}

func TestNoValueIsSaidPlainly(t *testing.T) {
	m := page()
	m.keysTyped("tab", "down", "down", "9000 N", "enter", "r")
	m.await(t)
	for _, want := range []string{"No value of Nominal pitch from 450 mm to 800 mm meets the target", "the nearest"} {
		if !strings.Contains(strings.Join(strings.Fields(shownBy(m)), " "), want) {
			t.Errorf("lacks %q:\n%s", want, shownBy(m))
		}
	}
}

func TestEvenly(t *testing.T) {
	for _, tc := range []struct {
		n    int
		want string
	}{{0, "[]"}, {1, "[0]"}, {3, "[0 1 2]"}, {5, "[0 1 2 3 4]"}, {11, "[0 2 5 7 10]"}} {
		if got := fmt.Sprint(evenly(tc.n, mostLines)); got != tc.want {
			t.Errorf("%d: %s, want %s", tc.n, got, tc.want)
		}
	}
}

// With more than two goals the compromises lie on no line, and every pair has
// a chart.
func TestThreeGoalsHaveThreeCharts(t *testing.T) {
	m := page()
	m.keysTyped("tab", "tab")
	f := m.form()
	f.fields = append(f.fields, usual(m.base(), goal, "noise.level_at_150m"))
	f.lay(m.at)
	m.keysTyped("r")
	m.await(t)
	d := m.answer().designs
	if len(d.rows) < 2 || len(d.plots) != 3 || !d.plots[0].loose {
		t.Fatalf("%d designs, %d charts", len(d.rows), len(d.plots))
	}
	m.Size(120, 34)
	for _, want := range []string{"Feels like over Standing thrust", "Noise at 150 m over Standing thrust", "Noise at 150 m over Feels like"} {
		if !strings.Contains(shownBy(m), want) {
			t.Errorf("lacks %q:\n%s", want, shownBy(m))
		}
		m.keysTyped(")")
	}
}

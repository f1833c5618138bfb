package tui

import (
	"fmt"
	"math"
	"strconv"
	"strings"
	"testing"

	"github.com/charmbracelet/x/ansi"
	"github.com/muesli/termenv"
	"pgregory.net/rapid"

	tea "github.com/charmbracelet/bubbletea"

	"backspan/model"
	"backspan/model/drive"
	"backspan/model/param"
)

func TestPictureScreens(t *testing.T) {
	for _, tc := range []struct {
		name  string
		keys  []string
		sizes [][2]int
		ascii bool
	}{
		{name: "drawing-side", keys: []string{">", "v"}, sizes: [][2]int{{80, 24}, {120, 40}}},
		{name: "drawing-side-whole", keys: []string{">", "v", "z"}, sizes: [][2]int{{80, 24}, {120, 40}}},
		{name: "drawing-behind", keys: []string{">", "v", "tab"}, sizes: [][2]int{{80, 24}, {120, 40}}},
		{name: "drawing-behind-whole", keys: []string{"v", "tab", "z"}, sizes: [][2]int{{80, 24}, {120, 40}}},
		{name: "drawing-side-ascii", keys: []string{">", "v"}, sizes: [][2]int{{80, 24}}, ascii: true},
		{name: "drawing-behind-ascii", keys: []string{">", "v", "tab", "z"}, sizes: [][2]int{{80, 24}}, ascii: true},
		{name: "curves-power", keys: []string{">", "g"}, sizes: [][2]int{{80, 24}, {120, 40}}},
		{name: "curves-efficiency", keys: []string{">", "g", "tab", "[", "["}, sizes: [][2]int{{80, 24}, {120, 40}}},
		{name: "curves-thrust", keys: []string{">", "g", "tab", "tab"}, sizes: [][2]int{{80, 24}, {120, 40}}},
		{name: "curves-ratio", keys: []string{">", "g", ")", ")", ")"}, sizes: [][2]int{{80, 24}, {120, 40}}},
		{name: "curves-speeds", keys: []string{"g", "("}, sizes: [][2]int{{80, 24}, {120, 40}}},
		{name: "curves-power-ascii", keys: []string{">", "g"}, sizes: [][2]int{{80, 24}}, ascii: true},
		{name: "curves-ratio-ascii", keys: []string{">", "g", ")", ")", ")"}, sizes: [][2]int{{80, 24}}, ascii: true},
		{name: "curves-speeds-ascii", keys: []string{"g", "("}, sizes: [][2]int{{80, 24}}, ascii: true},
	} {
		for _, size := range tc.sizes {
			name := fmt.Sprintf("%s-%dx%d", tc.name, size[0], size[1])
			t.Run(name, func(t *testing.T) {
				o := plateau()
				o.Study, o.ASCII = model.Sample(), tc.ascii
				view := press(begin(o, size[0], size[1]), tc.keys...).View()
				fits(t, view, size[0], size[1])
				if i := strings.IndexFunc(view, func(r rune) bool { return r > 0x7f }); tc.ascii && i >= 0 {
					t.Fatalf("%q is not ASCII", view[i:i+3])
				}
				golden(t, name, view)
			})
		}
	}
}

// measured reads a dimension off the screen: the cells between its ends, and the
// figure that stands with it.
func measured(t *testing.T, view, letter string) (cells int, figure float64) {
	t.Helper()
	for _, row := range strings.Split(view, "\n") {
		picture, _, _ := strings.Cut(row, "│")
		from, to := strings.Index(picture, "├"), strings.Index(picture, "┤")
		fields := strings.FieldsFunc(picture, func(r rune) bool { return strings.ContainsRune(" ├─┤", r) })
		if from < 0 || to < 0 || len(fields) != 2 || fields[0] != letter {
			continue
		}
		mm, err := strconv.ParseFloat(fields[1], 64)
		if err != nil {
			t.Fatal(err)
		}
		return len([]rune(picture[from:to])) + 1, mm
	}
	t.Fatalf("no dimension %s in\n%s", letter, view)
	return 0, 0
}

// scale is what the heading says a column measures, mm.
func scale(t *testing.T, view string) float64 {
	t.Helper()
	_, after, ok := strings.Cut(view, "one column is ")
	mm, err := strconv.ParseFloat(strings.Fields(after + " x")[0], 64)
	if !ok || err != nil {
		t.Fatalf("no scale in\n%s", view)
	}
	return mm
}

// A length counted in cells is, by the scale that the page tells, the figure
// beside it and the reading, within a cell and the rounding of what is told.
func TestDrawingIsToScale(t *testing.T) {
	readings := map[string]string{"a": "stack.depth", "b": "stack.drive_depth", "c": "stack.cg_aft"}
	for i := range model.Sample().Variants {
		for _, zoom := range []string{"v", "vz"} {
			o := plateau()
			o.Study = model.Sample()
			m := press(begin(o, 60, 16), strings.Repeat(">", i)+" "+zoom)
			for _, size := range [][2]int{{60, 16}, {80, 24}, {100, 30}, {120, 40}, {200, 60}} {
				m = send(m, tea.WindowSizeMsg{Width: size[0], Height: size[1]})
				view := m.View()
				column := scale(t, view)
				for letter, key := range readings {
					r, _ := m.desk.Outcome().Reading(key)
					if r.Value*1000 < 2.5*column {
						continue // a single cell has no ends to read
					}
					cells, figure := measured(t, view, letter)
					if got, want := r.Unit.Number(r.Value), strconv.FormatFloat(figure, 'f', -1, 64); !strings.HasPrefix(got, want) {
						t.Errorf("%v %s: %s stands for %s, which reads %s", size, zoom, letter, want, got)
					}
					if off := math.Abs(float64(cells)*column - figure); off > column+0.05*float64(cells)+0.5 {
						t.Errorf("%v %s, variant %d: %s is %d cells of %.1f mm, yet %.0f mm", size, zoom, i, letter, cells, column, figure)
					}
				}
			}
		}
	}
}

// Both machines have one scale, and the difference is measured between their
// plates.
func TestDifferenceIsMeasured(t *testing.T) {
	o := plateau()
	o.Study = model.Sample()
	m := press(begin(o, 120, 40), ">", "v")
	has(t, m, "Gear 190", "Belt 190 ref", "+92 against Belt 190")
	lower := strings.Join(strings.Split(m.View(), "\n")[22:], "\n")
	cells, figure := measured(t, lower, "a")
	if want := m.desk.ReferenceOutcome().Stack.Depth * 1000; math.Abs(figure-want) > 0.5 || math.Abs(float64(cells)*scale(t, m.View())-want) > scale(t, m.View())+2 {
		t.Errorf("the reference is %d cells and %.0f mm deep, not %.0f mm", cells, figure, want)
	}
	for _, row := range strings.Split(m.View(), "\n") {
		if before, _, ok := strings.Cut(row, " +92 against"); ok {
			cells = len([]rune(strings.TrimLeft(before, " ")))
			if off := math.Abs(float64(cells)*scale(t, m.View()) - 92); off > scale(t, m.View())+1 {
				t.Errorf("the difference of 92 mm is %d cells", cells)
			}
		}
	}
	m = press(m, "<")
	lacks(t, m, "against Belt 190", "Belt 190 ref ")
}

func TestWhatCannotBeDrawnSaysWhy(t *testing.T) {
	o := plateau()
	o.Study = model.Sample()
	o.Study.Variants[0].Drive.RibbedBelt.CentreDistance = 0.12
	m := begin(o, 80, 24)
	for _, keys := range []string{"v", "\t", "z", "g"} {
		m = press(m, keys)
		has(t, m, "Centre distance: the pulleys touch")
	}
	o.Study = small("Bare")
	m = begin(o, 80, 24)
	for _, keys := range []string{"v", "g", "tab", "tab", "tab", "tab", "tab", "tab", "right", "a", "down"} {
		m = press(m, keys)
		fits(t, m.View(), 80, 24)
	}
}

// stepped is a machine somewhere in the ranges of its parameters.
func stepped(t *rapid.T) model.Variant {
	v := model.NewVariant("any")
	v.Drive.Kind = rapid.SampledFrom([]drive.Kind{drive.RibbedBelt, drive.ToothedBelt, drive.Gear, drive.Direct}).Draw(t, "kind")
	v.Drive.PropellerAxis = rapid.SampledFrom([]drive.Side{drive.Above, drive.Below}).Draw(t, "side")
	for _, sec := range v.Sections() {
		if sec.Key == "" || sec.Hidden {
			continue
		}
		for _, p := range sec.Params {
			if p.Kind == param.KindNumber || p.Kind == param.KindWhole {
				_ = p.Step(rapid.IntRange(-60, 60).Draw(t, sec.Path(p)))
			}
		}
	}
	return v
}

// Whatever the machine and the window: no fault, and nothing outside the
// window.
func TestAnyMachineIsDrawn(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		o := plateau()
		o.ASCII = rapid.Bool().Draw(t, "ascii")
		o.Study = small("Any", "A", "B")
		o.Study.Variants[1] = stepped(t)
		w, h := rapid.IntRange(60, 220).Draw(t, "w"), rapid.IntRange(16, 70).Draw(t, "h")
		m := press(begin(o, w, h), ">")
		for _, k := range []string{"v", "tab", "z", "tab", "g", "a", "tab", "]", "left", "tab", "tab", "tab", "tab", "tab", "down"} {
			m = press(m, k)
			fits(t, m.View(), w, h)
		}
	})
}

// background runs the bench without waiting for what is worked aside.
func background(m Model, keys ...string) (Model, tea.Cmd) {
	var cmd tea.Cmd
	for _, k := range keys {
		n, c := m.Update(keyOf(k))
		m = n.(Model)
		if c != nil {
			cmd = c
		}
	}
	return m, cmd
}

// The chart is in sight at once, tells how far it is, and an edit voids what is
// still being worked.
func TestChartsAreWorkedInTheBackground(t *testing.T) {
	o := plateau()
	o.Study = model.Sample()
	m, work := background(press(begin(o, 120, 40), ">"), "g")
	has(t, m, "working, 0 of 2 machines done")
	if work == nil {
		t.Fatal("nothing is worked")
	}
	if _, second := background(m, "right"); second != nil {
		t.Error("the same is worked twice")
	}
	n, next := m.Update(work())
	m = n.(Model)
	has(t, m, "working, 1 of 2 machines done", "B ⠤⠤⠤⠤ Gear 190")
	if next == nil {
		t.Fatal("the reference is not worked")
	}
	late := next()
	// Meanwhile the reference is changed on the bench.
	m, _ = background(m, "b", "<", "down", "down", "right", ">", "g")
	n, again := m.Update(late)
	m = n.(Model)
	has(t, m, "working, 1 of 2 machines done")
	lacks(t, m, "A ⠤⠤⠤⠤ Belt 190")
	m = pump(m, again)
	has(t, m, "A ⠤⠤⠤⠤ Belt 190", "chart 1 of 7")
}

// The reading line tells what the lines show where it stands.
func TestReadingLineReadsTheMatch(t *testing.T) {
	o := plateau()
	o.Study = model.Sample()
	m := press(begin(o, 120, 40), "g")
	for _, key := range []string{"engine.speed", "engine.power"} {
		r, _ := m.desk.Outcome().Reading(key)
		has(t, m, r.Text())
	}
	before := ansi.Strip(m.View())
	m = press(m, "]")
	if ansi.Strip(m.View()) == before {
		t.Error("the reading line stands still")
	}
	if m = press(m, "["); ansi.Strip(m.View()) != before {
		t.Error("ten columns there and back is another place")
	}
}

// From a key to the text of the frame on the pages of pictures, five variants
// in 120x40.
func BenchmarkPictureKeyToFrame(b *testing.B) {
	for _, bc := range []struct {
		name   string
		before []string
		keys   []string
	}{
		{"drawing, other view", []string{"v"}, []string{"tab"}},
		{"drawing, next variant", []string{"v"}, []string{"<", ">"}},
		{"drawing, undo and redo", []string{"right", "v"}, []string{"u", "U"}},
		{"curves, reading line", []string{"g", "a"}, []string{"right", "left"}},
		{"curves, next chart", []string{"g", "a", "tab", "tab", "tab"}, []string{"(", ")"}},
		{"explorations, fields", []string{"e"}, []string{"down", "up"}},
		{"explorations, designs", []string{"e", "r"}, []string{"down", "up"}},
		{"curves, undo and redo, with the work", []string{"right", "g", "a"}, []string{"u", "U"}},
	} {
		b.Run(bc.name, func(b *testing.B) {
			o := plateau()
			o.Study = small("Plateau trials", "A", "B", "C", "D", "E")
			o.Renderer = renderer(termenv.ANSI256)
			m := press(begin(o, 120, 40), bc.before...)
			b.ReportAllocs()
			for i := 0; b.Loop(); i++ {
				m = press(m, bc.keys[i%len(bc.keys)])
				if m.View() == "" {
					b.Fatal("nothing painted")
				}
			}
		})
	}
}

package tui

import (
	"context"
	"errors"
	"strings"
	"sync"
	"testing"

	"github.com/charmbracelet/x/ansi"
	"github.com/muesli/termenv"

	"backspan/model"
	"backspan/model/explore"
	"backspan/model/param"
	"backspan/tui/desk"
	"backspan/tui/pages/bench"
)

var surveys sync.Map // of variants by name, for tests to which the machine does not matter

// lookOnce answers for any machine of a name as for the first.
func lookOnce(look looker) looker {
	return func(ctx context.Context, s *model.Study, v *model.Variant, progress func(done, total int)) (*explore.Survey, error) {
		if y, ok := surveys.Load(v.Name); ok {
			return y.(*explore.Survey), nil
		}
		y, err := look(ctx, s, v, progress)
		if err == nil {
			surveys.Store(v.Name, y)
		}
		return y, err
	}
}

func quick(m Model) Model {
	m.look = lookOnce(m.look)
	return m
}

func onSample() Options {
	o := plateau()
	o.Study = model.Sample()
	return o
}

// toCheck leads to a check of the variant in hand by its name.
func toCheck(m Model, letters string) Model { return press(m, "/", letters, "enter") }

func TestScreensOfHelp(t *testing.T) {
	for _, tc := range []struct {
		name  string
		keys  []string
		ascii bool
	}{
		{name: "why-reading", keys: []string{"/", "stan thr", "enter", "w"}},
		{name: "why-check", keys: []string{"/", "axle saf fat", "down", "enter", "w"}},
		{name: "why-mover", keys: []string{"/", "ready mass", "enter", "w", "down", "down"}},
		{name: "hang", keys: []string{"/", "crank pulley eff", "enter", "w"}},
		{name: "hang-ascii", keys: []string{"/", "diameter", "enter", "w", "down"}, ascii: true},
		{name: "why-ascii", keys: []string{"/", "axle saf fat", "down", "enter", "w", "down"}, ascii: true},
		{name: "find", keys: []string{"/", "pitch"}},
		{name: "weights", keys: []string{"W", "down", "5", ")", "m"}},
		{name: "tour", keys: []string{"?", "tab", "right"}},
		{name: "words", keys: []string{"?", "tab", "tab"}},
	} {
		for _, size := range []struct {
			name string
			w, h int
		}{{"80x24", 80, 24}, {"120x40", 120, 40}} {
			t.Run(tc.name+"-"+size.name, func(t *testing.T) {
				o := onSample()
				o.ASCII = tc.ascii
				view := press(quick(begin(o, size.w, size.h)), tc.keys...).View()
				fits(t, view, size.w, size.h)
				golden(t, tc.name+"-"+size.name, view)
			})
		}
	}
}

func TestColourChangesNoTextOfHelp(t *testing.T) {
	for _, keys := range [][]string{{"/", "axle saf fat", "down", "enter", "w"}, {"/", "stan thr", "enter", "w"}, {"/", "pitch"}, {"?", "tab"}, {"?", "tab", "tab"}, {"W"}} {
		bare := strings.ReplaceAll(press(quick(begin(onSample(), 120, 40)), keys...).View(), "▏", " ") // in colour the caret is a reversed cell
		o := onSample()
		o.Renderer = renderer(termenv.ANSI256)
		coloured := press(quick(begin(o, 120, 40)), keys...).View()
		if coloured == bare {
			t.Errorf("%v: no colour at all", keys)
		}
		if got := trimmed(ansi.Strip(coloured)); got != trimmed(bare) {
			t.Errorf("%v: the text differs\n%s\n--- without colour\n%s", keys, got, bare)
		}
	}
}

func TestWhyIsAskedOfReadingsChecksAndValues(t *testing.T) {
	m := press(quick(begin(onSample(), 80, 24)), "shift+tab", "w")
	has(t, m, "why is asked of a reading, a check or a value")
	m = press(m, "tab", "tab", "w")
	has(t, m, "Why, in Belt 190", "What moves it most", "how it is found:")
	m = press(m, "esc")
	has(t, m, "┫ Readings ┣")
	m = press(m, "c", ")", "down", "w")
	has(t, m, "Why, in Belt 190")
	has(t, press(m, ">"), "Why, in Gear 190", "What moves it most")
	has(t, press(m, "w"), "Side by side")
	m = press(quick(begin(onSample(), 60, 16)), "/", "axle saf fat", "down", "enter", "w")
	lacks(t, m, "Axle safety against fatigue thin")
	has(t, press(m, "home"), "> Axle safety against fatigue thin: ")
}

// A value tells what hangs on it, for the variant in hand, and leads there.
func TestWhatHangsOnAValue(t *testing.T) {
	m := press(quick(begin(onSample(), 120, 40)), "w")
	has(t, m, "What hangs on it, in Belt 190", "Only numbers are stepped") // the working cycle
	m = press(m, "w", "down", "down", "w")
	has(t, m, "Bore: 66 mm", "a step up", "Standing thrust", "moves 4")
	m = press(m, ">")
	has(t, m, "What hangs on it, in Gear 190", "Bore: 66 mm")
	m = press(m, "enter")
	if m.page != atBench || m.bench.Focus() < bench.Readings {
		t.Errorf("it leads to page %d, pane %d", m.page, m.bench.Focus())
	}
	m = press(quick(begin(onSample(), 120, 40)), ")", ")", ")", ")", "down", "down", "w", ">")
	has(t, m, "This machine has no such value")
	has(t, press(quick(begin(onSample(), 80, 24)), "/", "friction surf", "enter", "w"), "0 %    range ends")
}

func TestWhyLeadsToTheParameter(t *testing.T) {
	m := press(quick(begin(onSample(), 80, 24)), "/", "ready mass", "enter", "w", "down")
	before := m.View()
	m = press(m, "enter")
	p, ok := param.Find(append(m.desk.Sections(m.desk.Selected), m.desk.Sections(desk.Shared)...), m.bench.Path())
	if !ok || m.bench.Focus() != bench.Form || !strings.Contains(before, "> "+p.Label) {
		t.Errorf("it leads to pane %d, %s, from\n%s", m.bench.Focus(), m.bench.Path(), before)
	}
}

// One key tries a cure as a new variant, and one undo takes that back.
func TestACureIsTriedAsANewVariant(t *testing.T) {
	m := press(begin(onSample(), 120, 40), "/", "axle saf fat", "down", "enter", "w")
	has(t, m, "What would cure it, changed alone", "no other worse")
	before := m.desk.Study()
	m = press(m, "a")
	s := m.desk.Study()
	name := m.desk.Variant().Name
	if len(s.Variants) != len(before.Variants)+1 || !strings.HasPrefix(name, "Belt 190, ") || m.desk.Selected != 1 {
		t.Fatalf("%d variants, %s in hand", len(s.Variants), name)
	}
	if m.bench.Focus() != bench.Form {
		t.Errorf("pane %d has the focus", m.bench.Focus())
	}
	for _, c := range m.desk.Outcome().Checks {
		if c.Key == "shaft.fatigue_safety" && c.Verdict != "holds" {
			t.Errorf("tried, and yet %s %s", c.Key, c.Verdict)
		}
	}
	if m = press(m, "u"); m.desk.Study() != before {
		t.Error("one undo does not take it back")
	}
}

// The keyboard is free while the sums run, and the next edit, another variant
// or leaving the page ends them.
func TestWhyRunsInTheBackgroundAndEnds(t *testing.T) {
	for _, tc := range []struct {
		name string
		keys []string
		on   bool // another inquiry begins
	}{
		{"undo", []string{"u"}, true}, {"another variant", []string{">"}, true}, {"back", []string{"esc"}, false}, {"an edit elsewhere", []string{"b"}, false},
	} {
		m := press(begin(onSample(), 80, 24), "down", "down", "right", "tab", "tab", "tab", "tab", "tab")
		ended := make(chan error, 2)
		m.look = func(ctx context.Context, _ *model.Study, _ *model.Variant, progress func(done, total int)) (*explore.Survey, error) {
			<-ctx.Done()
			ended <- ctx.Err()
			return nil, ctx.Err()
		}
		n, _ := m.Update(keyOf("tab"))
		n, cmd := n.(Model).Update(keyOf("w"))
		m = n.(Model)
		if m.page != atWhy {
			m = press(m, "tab")
			n, cmd = m.Update(keyOf("w"))
			m = n.(Model)
		}
		if cmd == nil || m.page != atWhy {
			t.Fatalf("%s: nothing begins on page %d", tc.name, m.page)
		}
		has(t, m, "trying small steps")
		if n, _ = m.Update(keyOf("?")); n.(Model).page != atKeys {
			t.Errorf("%s: the keyboard waits", tc.name)
		}
		n, _ = n.(Model).Update(keyOf("esc"))
		select {
		case err := <-ended:
			t.Errorf("%s: looking at the keys ends it: %v", tc.name, err)
		default:
		}
		for _, k := range tc.keys {
			n, _ = n.(Model).Update(keyOf(k))
		}
		if err := <-ended; !errors.Is(err, context.Canceled) {
			t.Errorf("%s: %v", tc.name, err)
		}
		if msg := cmd(); msg != nil {
			t.Errorf("%s: an ended inquiry still tells %v", tc.name, msg)
		}
		if on := n.(Model).inquiry.cancel != nil; on != tc.on {
			t.Errorf("%s: another inquiry runs: %v", tc.name, on)
		}
		if n.(Model).inquiry.cancel != nil {
			n.(Model).inquiry.cancel()
		}
	}
}

func TestAFaultOfTheSumsIsSaid(t *testing.T) {
	m := begin(onSample(), 80, 24)
	m.look = func(context.Context, *model.Study, *model.Variant, func(done, total int)) (*explore.Survey, error) {
		panic("a nought")
	}
	has(t, press(m, "tab", "w"), "! the sums stopped: a nought")
}

// What is copied of a check tells its verdict now, a step up and a step down.
func TestCopyOfAVerdictThatTurns(t *testing.T) {
	m := press(quick(begin(onSample(), 120, 40)), "/", "seat in driven", "enter", "w")
	for range 12 {
		if text := m.hang.Text(); strings.Count(text, "\t") == 3 && strings.Count(text, "%") == 0 {
			return
		}
		m = press(m, "down")
	}
	t.Errorf("no verdict turns in\n%s", m.View())
}

// A share of a figure below zero would read the wrong way: it moves in its unit.
func TestFiguresBelowZeroMoveInTheirUnit(t *testing.T) {
	m := press(quick(begin(onSample(), 120, 120)), "/", "crank pulley eff", "enter", "w")
	for _, l := range strings.Split(m.View(), "\n") {
		if strings.Contains(l, "Twist of body against wing") {
			if !strings.Contains(l, "-4.69°") || !strings.Contains(l, "+0.0954 °") || strings.Contains(l, "%") {
				t.Error(l)
			}
			return
		}
	}
	t.Errorf("nothing of the twist in\n%s", m.View())
}

// What was found stays in sight while the machine is the same, whatever else
// was looked at meanwhile.
func TestAnswersStayWhileTheMachineDoes(t *testing.T) {
	for _, keys := range [][]string{{"<"}, {"?", "esc"}, {"/", "esc"}, {"H", "esc"}, {">", "<"}} {
		hang := press(press(quick(begin(onSample(), 80, 24)), "down", "down", "w"), keys...)
		has(t, hang, "Bore: 66 mm", "Standing thrust, installed")
		why := press(press(quick(begin(onSample(), 80, 24)), "/", "ready mass", "enter", "w"), keys...)
		has(t, why, "What moves it most")
	}
}

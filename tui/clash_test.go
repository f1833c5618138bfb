package tui

import (
	"fmt"
	"strings"
	"testing"

	"github.com/charmbracelet/x/ansi"
	"github.com/muesli/termenv"

	"backspan/model"
	"backspan/store"
)

// clashing is a shelf on which another program is at work.
type clashing struct{ *shelf }

func (s clashing) Save(path string, _ *model.Study) (string, error) {
	return "", fmt.Errorf("%s: %w", path, store.ErrChanged)
}

// clashed is a bench that found another state in its file when it saved.
func clashed(t *testing.T, w, h int, ascii bool) (Model, *model.Study) {
	return clashedIn(t, plateau(), w, h, ascii)
}

func clashedIn(t *testing.T, o Options, w, h int, ascii bool) (Model, *model.Study) {
	t.Helper()
	o.Study, o.ASCII = model.Sample(), ascii
	o.Study.Decisions = []model.Decision{{Date: "2026-11-01", Text: "belt\x1b[31m drives only"}, {Date: "2026-11-02", Text: "two blades"}}
	theirs := o.Study.Clone()
	theirs.Notes = "first line\nsecond line of theirs, which goes on for so long that no column of any page on this bench would hold it in one piece"
	theirs.Variants[0].Drive.RibbedBelt.Ribs = 14
	theirs.Variants = append(theirs.Variants[:3], theirs.Variants[4:]...)
	theirs.Variants[1], theirs.Variants[2] = theirs.Variants[2], theirs.Variants[1]
	theirs.Variants = append(theirs.Variants, model.NewVariant("夜 twelve"))
	theirs.Decisions = append(theirs.Decisions[1:], model.Decision{Date: "2026-11-03", Text: "three blades after all"})
	theirs.Comments = map[string]string{"margin_asked_percent": "# measured twice"}
	sh := o.Shelf.(*shelf)
	sh.files["plateau.toml"] = theirs
	o.Shelf = clashing{sh}
	m := press(toMargin(begin(o, w, h)), "3", "3", "enter", "s")
	return m, theirs
}

func TestEveryDifferenceOfAClash(t *testing.T) {
	for _, tc := range []struct {
		name  string
		w, h  int
		ascii bool
	}{{"differences-80x24", 80, 24, false}, {"differences-120x40", 120, 40, false}, {"differences-ascii-80x24", 80, 24, true}} {
		m, _ := clashed(t, tc.w, tc.h, tc.ascii)
		has(t, m, "was changed by another program", "look at every difference first", "read it again")
		m = press(m, "l")
		fits(t, m.View(), tc.w, tc.h)
		golden(t, tc.name, m.View())
	}
}

// All that differs can be read, to the last line, in every width.
func TestEveryDifferenceCanBeReached(t *testing.T) {
	for _, w := range []int{60, 80, 120, 200} {
		m, _ := clashed(t, w, 24, false)
		m = press(m, "l")
		seen := ""
		for range 60 {
			fits(t, m.View(), w, 24)
			seen += m.View()
			m = press(m, "down")
		}
		seen = strings.Join(strings.Fields(seen), " ")
		for _, want := range []string{"first line", "piece", "Margin", "33 %", "10 %", "14", "夜", "is not here", "is here", `belt\x1b[31m`, "blades", "2026-11-03", "measured"} {
			if !strings.Contains(seen, want) {
				t.Errorf("%d columns: %q is nowhere to be read", w, want)
			}
		}
		if strings.Contains(seen, "two blades") {
			t.Error("what is alike is listed")
		}
	}
}

// Looking answers nothing: the question, and what was chosen, are there again,
// and no key does anything else meanwhile.
func TestLookingReturnsToTheQuestion(t *testing.T) {
	for _, back := range []string{"esc", "enter", "q", "ctrl+c"} {
		m, theirs := clashed(t, 80, 24, false)
		mine := m.desk.Study()
		m = press(m, "right", "right", "enter")
		has(t, m, "on the bench", "in the file", "esc to the question")
		m = press(m, "u", "s", "N", "o", "x", "c", "/", "w", "1", "ctrl+s", "U", "?")
		has(t, m, "on the bench", "in the file", "NOT SAVED")
		m = press(m, back)
		has(t, m, "was changed by another program", "> l   look at every difference")
		if m.desk.Study() != mine || !m.desk.Unsaved() {
			t.Fatal("looking changed the study")
		}
		m = press(m, "r")
		if m.desk.Study() == mine || m.desk.Study().Notes != theirs.Notes || m.desk.Unsaved() {
			t.Error("theirs is not in hand")
		}
		m = press(m, "u")
		if m.desk.Study() != mine || !m.desk.Unsaved() {
			t.Error("mine is not one step back")
		}
	}
}

func TestClashOverCommentsAndDecisionsOnly(t *testing.T) {
	a, b := small("s", "A"), small("s", "A")
	b.Comments = map[string]string{"name": "# mine"}
	if got := theirs(a, b); got != "Both set the same values; the comments differ." {
		t.Error(got)
	}
	b.Decisions = []model.Decision{{Date: "2026-11-03", Text: strings.Repeat("long ", 30)}}
	a.Decisions = []model.Decision{{Date: "2026-11-01", Text: "one"}, {Date: "2026-11-02", Text: "two"}}
	b.Decisions = append(b.Decisions, model.Decision{Date: "2026-11-01", Text: "won"})
	const want = "Decision of 2026-11-01 is worded otherwise there; Decision of 2026-11-02 is only here; Decision of 2026-11-03 is only there."
	if got := theirs(a, b); got != want {
		t.Error(got)
	}
	b.Decisions = []model.Decision{a.Decisions[1], a.Decisions[0]}
	if got := theirs(a, b); got != "The decisions stand in another order there." {
		t.Error(got)
	}
}

// However long the text, the answers are in sight.
func TestAnswersAreNeverCutOff(t *testing.T) {
	m, _ := clashed(t, 60, 16, false)
	has(t, m, "keep both", "read it again", "look at every difference")
	fits(t, m.View(), 60, 16)
}

func TestDifferencesWithoutColour(t *testing.T) {
	bare, _ := clashed(t, 80, 24, false)
	o := plateau()
	o.Renderer = renderer(termenv.ANSI256)
	coloured, _ := clashedIn(t, o, 80, 24, false)
	bare, coloured = press(bare, "l"), press(coloured, "l")
	if coloured.View() == bare.View() || trimmed(ansi.Strip(coloured.View())) != trimmed(bare.View()) {
		t.Errorf("with colour\n%s\nwithout\n%s", ansi.Strip(coloured.View()), bare.View())
	}
}

// The list of differences hears all keys, also when a value was being typed as
// the question came: no other question is put behind it, and nothing is saved.
func TestLookingWhileSomethingIsTyped(t *testing.T) {
	m := press(toMargin(begin(plateau(), 80, 24)), "3", "3")
	theirs := m.desk.Study().Clone()
	theirs.MarginAsked = 0.3
	m = send(m, theirsMsg{desk: m.desk, path: "plateau.toml", study: theirs})
	m = press(m, "l", "ctrl+s")
	has(t, m, "1 difference")
	if m.desk.Unsaved() || m.typing() == nil {
		t.Error("what is being typed was taken over from the list of differences")
	}
	m = press(m, "ctrl+c")
	has(t, m, "was changed by another program")
	if len(m.questions) != 1 {
		t.Errorf("%d questions wait", len(m.questions))
	}
}

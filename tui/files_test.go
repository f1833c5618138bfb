package tui

import (
	"errors"
	"testing"

	tea "github.com/charmbracelet/bubbletea"

	"backspan/model"
)

func TestSave(t *testing.T) {
	o := plateau()
	sh := o.Shelf.(*shelf)
	m := press(toMargin(begin(o, 80, 24)), "3", "0", "enter")
	has(t, m, "NOT SAVED")
	sh.full = true
	m = press(m, "s")
	has(t, m, "NOT SAVED", "no space left on the disk", "another disk", "esc puts this away")
	m = press(m, "down", "up")
	has(t, m, "no space left on the disk")
	sh.full = false
	m = press(m, "ctrl+s")
	has(t, m, "saved in plateau.toml")
	lacks(t, m, "NOT SAVED", "no space left")
	if sh.files["plateau.toml"].MarginAsked != 0.3 {
		t.Errorf("the file holds %g", sh.files["plateau.toml"].MarginAsked)
	}
}

// noting is a shelf that has something to say about every save.
type noting struct{ *shelf }

func (s noting) Save(path string, st *model.Study) (string, error) {
	_, err := s.shelf.Save(path, st)
	return "the file as it was written by hand is kept in " + path + ".bak, because a save writes comments and spelling anew", err
}

func TestNoteOfASaveIsSaidWhole(t *testing.T) {
	o := plateau()
	o.Shelf = noting{o.Shelf.(*shelf)}
	m := press(toMargin(begin(o, 80, 24)), "right", "s")
	has(t, m, "saved in plateau.toml; the file", "spelling anew")
	fits(t, m.View(), 80, 24)
	lacks(t, press(m, "down"), "spelling anew")
}

func TestSaveAcceptsWhatIsBeingTyped(t *testing.T) {
	o := plateau()
	m := press(toMargin(begin(o, 80, 24)), "enter", "35", "ctrl+s")
	if f := o.Shelf.(*shelf).files["plateau.toml"]; f == nil || f.MarginAsked != 0.35 {
		t.Error("not in the file")
	}
	m = press(m, "enter", "999", "ctrl+s")
	has(t, m, "outside 0 to 100 %", "[999")
}

func TestSaveAs(t *testing.T) {
	o := plateau()
	o.Path = ""
	m := press(begin(o, 80, 24), "s")
	has(t, m, "Save under which file name?", "plateau-trials.toml")
	m = press(m, "valley", "enter")
	has(t, m, "valley.toml exists already", "[valley.toml")
	m = press(m, "ctrl+u", "enter")
	has(t, m, "needs a name")
	m = press(m, "ctrl+u", "ridge", "enter")
	has(t, m, "saved in ridge.toml")
	if _, path, unsaved := m.Study(); path != "ridge.toml" || unsaved {
		t.Errorf("the study is in %q, unsaved %v", path, unsaved)
	}
}

func TestLeave(t *testing.T) {
	quits := func(m Model, keys ...string) bool {
		for _, k := range keys[:len(keys)-1] {
			m = press(m, k)
		}
		n, cmd := m.Update(keyOf(keys[len(keys)-1]))
		for cmd != nil {
			msg := cmd()
			if _, ok := msg.(tea.QuitMsg); ok {
				return true
			}
			n, cmd = n.Update(msg)
		}
		return false
	}
	for _, tc := range []struct {
		name string
		keys []string
		full bool
		want bool
	}{
		{name: "nothing edited", keys: []string{"q"}, want: true},
		{name: "nothing edited, ctrl+c", keys: []string{"ctrl+c"}, want: true},
		{name: "asks", keys: []string{"right", "q"}},
		{name: "stay", keys: []string{"right", "q", "esc"}},
		{name: "save and leave", keys: []string{"right", "q", "s"}, want: true},
		{name: "the disk is full, so it stays", keys: []string{"right", "q", "s"}, full: true},
		{name: "leave without saving", keys: []string{"right", "q", "w"}, want: true},
		{name: "by arrow", keys: []string{"right", "q", "right", "enter"}, want: true},
		{name: "while typing", keys: []string{"enter", "5", "ctrl+c"}},
	} {
		t.Run(tc.name, func(t *testing.T) {
			o := plateau()
			o.Shelf.(*shelf).full = tc.full
			if got := quits(toMargin(begin(o, 80, 24)), tc.keys...); got != tc.want {
				t.Errorf("left: %v", got)
			}
		})
	}
}

func TestStudies(t *testing.T) {
	o := plateau()
	o.ChooseFirst = true
	m := begin(o, 80, 24)
	has(t, m, "Studies in this folder", "Valley trials", "cannot be opened", "2026-03-14 09:26")
	m = press(m, "down", "down", "enter")
	has(t, m, "line 12: unknown key ribz")
	m = press(m, "up", "enter")
	has(t, m, "opened valley.toml", "Valley trials / One")
	m = press(toMargin(m), "right", "o", "up", "enter")
	has(t, m, "has edits that are not saved", "open another without saving")
	m = press(m, "w")
	has(t, m, "not opened: plateau.toml: there is no such file", "NOT SAVED")
	o.Shelf.(*shelf).listErr = errors.New("read .: permission denied")
	has(t, press(m, "esc", "o", "r"), "permission denied")
}

package tui

import (
	"errors"
	"flag"
	"io"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"

	tea "github.com/charmbracelet/bubbletea"
	"github.com/charmbracelet/lipgloss"
	"github.com/charmbracelet/x/ansi"
	"github.com/muesli/termenv"

	"backspan/model"
	"backspan/store"
)

var update = flag.Bool("update", false, "write the golden screens anew")

// shelf is a folder in memory.
type shelf struct {
	entries []store.Entry
	files   map[string]*model.Study
	full    bool // refuses to save
	listErr error
}

func (s *shelf) List() ([]store.Entry, error) { return s.entries, s.listErr }

func (s *shelf) Open(path string) (*model.Study, error) {
	if f, ok := s.files[path]; ok {
		return f, nil
	}
	return nil, errors.New(path + ": there is no such file")
}

func (s *shelf) Read(path string) (*model.Study, error) { return s.Open(path) }

func (s *shelf) Save(path string, st *model.Study) (string, error) {
	if s.full {
		return "", errors.New(path + ": not saved: no space left on the disk; free some and save again, or save under another name on another disk")
	}
	s.files[path] = st
	return "", nil
}

func (s *shelf) Create(path string, st *model.Study) (string, error) {
	if _, ok := s.files[path]; ok {
		return "", errors.New(path + " exists already; choose another name")
	}
	return s.Save(path, st)
}

func newShelf() *shelf {
	day := time.Date(2026, 3, 14, 9, 26, 0, 0, time.UTC)
	return &shelf{
		files: map[string]*model.Study{"valley.toml": small("Valley trials", "One", "Two")},
		entries: []store.Entry{
			{Path: "plateau.toml", File: "plateau.toml", Name: "Plateau trials", Variants: 3, Modified: day},
			{Path: "valley.toml", File: "valley.toml", Name: "Valley trials", Variants: 2, Modified: day.Add(26 * time.Hour)},
			{Path: "worn.toml", File: "worn.toml", Problem: "line 12: unknown key ribz; did you mean ribs?", Modified: day},
		},
	}
}

// small is a study whose variants differ in what every machine has.
func small(name string, variants ...string) *model.Study {
	s := model.NewStudy(name)
	for i, v := range variants {
		n := model.NewVariant(v)
		for _, sec := range n.Sections() {
			for _, p := range sec.Params {
				if sec.Key != "" && !sec.Hidden && p.Shown() {
					for range i {
						_ = p.Step(1)
					}
				}
			}
		}
		s.Variants = append(s.Variants, n)
	}
	if len(variants) > 0 {
		s.Reference = variants[0]
	}
	return s
}

func renderer(p termenv.Profile) *lipgloss.Renderer {
	r := lipgloss.NewRenderer(io.Discard)
	r.SetColorProfile(p)
	return r
}

func plateau() Options {
	return Options{Study: small("Plateau trials", "A belt", "B more of it", "C most of it"), Path: "plateau.toml",
		Shelf: newShelf(), Renderer: renderer(termenv.Ascii)}
}

// begin makes a bench in a window.
func begin(o Options, w, h int) Model {
	m := New(o)
	if cmd := m.Init(); cmd != nil {
		m = pump(m, cmd)
	}
	return send(m, tea.WindowSizeMsg{Width: w, Height: h})
}

// send delivers a message and everything that follows from it.
func send(m Model, msg tea.Msg) Model {
	n, cmd := m.Update(msg)
	return pump(n.(Model), cmd)
}

func pump(m Model, cmd tea.Cmd) Model {
	if cmd == nil {
		return m
	}
	switch msg := cmd().(type) {
	case nil, tea.QuitMsg:
		return m
	case tea.BatchMsg:
		for _, c := range msg {
			m = pump(m, c)
		}
		return m
	default:
		return send(m, msg)
	}
}

var named = map[string]tea.KeyType{
	"enter": tea.KeyEnter, "esc": tea.KeyEsc, "tab": tea.KeyTab, "shift+tab": tea.KeyShiftTab, "backspace": tea.KeyBackspace,
	"up": tea.KeyUp, "down": tea.KeyDown, "left": tea.KeyLeft, "right": tea.KeyRight, "home": tea.KeyHome, "end": tea.KeyEnd,
	"pgup": tea.KeyPgUp, "pgdown": tea.KeyPgDown, "delete": tea.KeyDelete, "ctrl+s": tea.KeyCtrlS, "ctrl+c": tea.KeyCtrlC,
	"ctrl+u": tea.KeyCtrlU, "ctrl+d": tea.KeyCtrlD, "ctrl+z": tea.KeyCtrlZ, "ctrl+y": tea.KeyCtrlY,
	"shift+left": tea.KeyShiftLeft, "shift+right": tea.KeyShiftRight, "shift+up": tea.KeyShiftUp, "shift+down": tea.KeyShiftDown,
	"f1": tea.KeyF1, "space": tea.KeySpace,
}

func keyOf(name string) tea.KeyMsg {
	if t, ok := named[name]; ok {
		k := tea.KeyMsg{Type: t}
		if t == tea.KeySpace {
			k.Runes = []rune{' '}
		}
		return k
	}
	return tea.KeyMsg{Type: tea.KeyRunes, Runes: []rune(name)}
}

// press delivers keys by name; a name of several letters arrives as one read.
func press(m Model, names ...string) Model {
	for _, n := range names {
		m = send(m, keyOf(n))
	}
	return m
}

func paste(m Model, s string) Model {
	return send(m, tea.KeyMsg{Type: tea.KeyRunes, Runes: []rune(s), Paste: true})
}

func has(t *testing.T, m Model, wants ...string) {
	t.Helper()
	v := ansi.Strip(m.View())
	for _, w := range wants {
		if !strings.Contains(v, w) {
			t.Errorf("the screen lacks %q:\n%s", w, v)
		}
	}
}

func lacks(t *testing.T, m Model, unwanted ...string) {
	t.Helper()
	v := ansi.Strip(m.View())
	for _, w := range unwanted {
		if strings.Contains(v, w) {
			t.Errorf("the screen has %q:\n%s", w, v)
		}
	}
}

// fits fails when the view is larger than the window.
func fits(t interface {
	Helper()
	Fatalf(string, ...any)
}, view string, w, h int) {
	t.Helper()
	rows := strings.Split(view, "\n")
	if len(rows) > h {
		t.Fatalf("%d rows in a window of %d:\n%s", len(rows), h, view)
	}
	for i, row := range rows {
		if n := ansi.StringWidth(row); n > w {
			t.Fatalf("row %d takes %d cells in a window of %d: %q", i, n, w, row)
		}
	}
}

func golden(t *testing.T, name, got string) {
	t.Helper()
	file := filepath.Join("testdata", name+".txt")
	if *update {
		if err := os.WriteFile(file, []byte(got+"\n"), 0o644); err != nil {
			t.Fatal(err)
		}
		return
	}
	want, err := os.ReadFile(file)
	if err != nil {
		t.Fatalf("%v; write it with go test ./tui -update", err)
	}
	if string(want) != got+"\n" {
		t.Errorf("%s differs; look at it and, when it is right, run go test ./tui -update\n--- want\n%s--- got\n%s", file, want, got)
	}
}

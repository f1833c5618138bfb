// Package tui is the bench in the terminal: pages on which a study of
// paramotor powerplants is looked at, changed and compared. It computes
// nothing; it shows what the model finds and hands edits to the desk.
package tui

import (
	"io"
	"sync/atomic"
	"time"

	tea "github.com/charmbracelet/bubbletea"
	"github.com/charmbracelet/lipgloss"

	"backspan/model"
	"backspan/model/explore"
	"backspan/store"
	"backspan/tui/components/ask"
	"backspan/tui/components/headline"
	"backspan/tui/desk"
	"backspan/tui/keymap"
	"backspan/tui/pages/bench"
	"backspan/tui/pages/curves"
	"backspan/tui/pages/decisions"
	"backspan/tui/pages/differences"
	"backspan/tui/pages/drawing"
	explorepage "backspan/tui/pages/explore"
	"backspan/tui/pages/find"
	"backspan/tui/pages/hang"
	"backspan/tui/pages/history"
	"backspan/tui/pages/keys"
	"backspan/tui/pages/sidebyside"
	"backspan/tui/pages/studies"
	"backspan/tui/pages/tables"
	"backspan/tui/pages/weights"
	"backspan/tui/pages/why"
	"backspan/tui/theme"
)

// Shelf keeps studies.
type Shelf interface {
	List() ([]store.Entry, error)
	Open(path string) (*model.Study, error)
	// Read looks at a study without taking it in hand: a save is still judged
	// by what was opened.
	Read(path string) (*model.Study, error)
	// Save replaces the file. The note, if any, is for the person to read; so
	// is the error, which says that and why the study was not saved.
	Save(path string, s *model.Study) (note string, err error)
	// Create writes a new file and refuses to overwrite one.
	Create(path string, s *model.Study) (note string, err error)
}

// Options is what the bench starts with.
type Options struct {
	Study       *model.Study // nil: a new one
	Path        string       // file of Study, "" when it has none yet
	Newer       *store.Newer // Study is what could be read of a file that is left as it is
	Notice      string       // said until it is put away
	Shelf       Shelf
	Renderer    *lipgloss.Renderer // of the person's terminal
	ASCII       bool               // show nothing outside ASCII
	ChooseFirst bool               // begin with the list of studies; Study is the sample for who chooses none

	Journals Journals // nil: edits are kept nowhere until they are saved
	// Aside keeps a study in a new file beside the one at path and names it.
	Aside func(path string, s *model.Study) (kept string, err error)
	// Clipboard takes a text for the clipboard of the person's terminal. nil: Run
	// puts it there through the terminal itself, by way of tmux when Tmux is set.
	Clipboard func(text string) error
	Tmux      bool
	// Today is the date for a new decision, like 2026-11-26. nil: the clock's.
	Today func() string
	// Greet offers the tour when the bench begins on a study in no file, and
	// calls Greeted, if any, in the background.
	Greet   bool
	Greeted func()

	// Ended is called, after the terminal is restored, when the bench ends
	// though nobody chose to leave it: a lost line, a signal, a fault. It may be
	// nil.
	Ended func(Ending)
}

// Ending is how the bench ended when nobody chose to leave it.
type Ending struct {
	Path      string       // file of the study
	Study     *model.Study // with what was being typed, where it was valid
	Unsaved   bool         // it has edits that are in no study's file
	Journaled bool         // they are kept in its journal
	Fault     *Fault       // of the program, if it was one
}

// Fault is a fault of the program itself.
type Fault struct {
	What  string
	Stack string
}

// page is where the person is.
type page int

const (
	atBench page = iota
	atSideBySide
	atTables
	atDrawing
	atCurves
	atStudies
	atKeys
	atWhy
	atFind
	atWeights
	atHistory
	atDecisions
	atHang
	atDifferences
	atExplore
)

// view is a page as the root sees it.
type view interface {
	Place() keymap.Place
	// Update takes a key; what it returns is for the root.
	Update(tea.KeyMsg) tea.Msg
	Size(w, h int)
	View() []string
}

// refreshed is a page that takes over what changed on the desk.
type refreshed interface{ Refresh() }

// Model is the whole bench as Bubble Tea runs it. Copies share one state.
type Model struct{ *root }

type root struct {
	th    *theme.Theme
	keys  keymap.Map
	shelf Shelf
	desk  *desk.Desk

	journals Journals
	kept     kept
	aside    func(path string, s *model.Study) (string, error)
	fault    atomic.Pointer[Fault]

	page page
	from map[page]page // of a page that leads back: where it was asked for
	w, h int

	bench   *bench.Model
	beside  *sidebyside.Model
	tables  *tables.Model
	drawing *drawing.Model
	curves  *curves.Model
	studies *studies.Model
	help    *keys.Model
	why     *why.Model
	hang    *hang.Model
	find    *find.Model
	weights *weights.Model
	history *history.Model
	log     *decisions.Model
	explore *explorepage.Model
	effort  explorepage.Effort

	look      looker
	inquiry   inquiry
	seen      seen
	clipboard func(text string) error // nil: there is none
	mayStop   func() bool             // a shell can bring the bench back
	tmux      bool                    // one stands between
	mouse     bool                    // what it does is taken
	today     func() string
	greet     bool   // the tour is offered
	greeted   func() // called then; may be nil

	differences *differences.Model

	strip     headline.Strip
	questions []question // the first is asked, the others wait
	footing   []string   // the foot as it was last composed
	notice    said       // until the next key
	problem   string     // said until it is put away
	saving    bool
	left      bool // the person chose to leave
	choosing  bool // the list of studies is shown and none is chosen yet
}

// question is one that waits for an answer.
type question struct {
	*ask.Model
	given func() tea.Cmd
	sides func() differences.Sides // to be looked at first; nil where there are none
}

// New makes the bench.
func New(o Options) Model {
	if o.Renderer == nil {
		o.Renderer = lipgloss.NewRenderer(io.Discard)
	}
	r := &root{from: map[page]page{}, th: theme.New(o.Renderer, o.ASCII), keys: keymap.Default(), shelf: o.Shelf, journals: o.Journals, aside: o.Aside,
		today: o.Today, look: explore.Look, clipboard: o.Clipboard, tmux: o.Tmux, greeted: o.Greeted, mayStop: underShell, effort: explorepage.Usual()}
	if r.today == nil {
		r.today = func() string { return time.Now().Format(time.DateOnly) }
	}
	r.studies = studies.New(r.th, r.keys)
	r.help = keys.New(r.th, r.keys)
	r.differences = differences.New(r.th, r.keys)
	s := o.Study
	if s == nil {
		s = newStudy()
	}
	r.lay(desk.New(s, o.Path))
	r.problem = o.Notice
	if o.Newer != nil {
		r.lookOnly(o.Newer)
	}
	if o.ChooseFirst {
		r.page, r.choosing = atStudies, true
	}
	if r.greet = o.Greet && o.Path == "" && !o.ChooseFirst; r.greet {
		r.say("first time here? " + r.keys.Everywhere.Keys.Help().Key + " and then " + r.keys.Sheets.Next.Help().Key + " is a tour of five short screens")
	}
	return Model{r}
}

// newStudy is a study to begin with: one variant, everything at its default.
func newStudy() *model.Study {
	s := model.NewStudy("New study")
	s.Variants = []model.Variant{model.NewVariant("A")}
	s.Reference = "A"
	return s
}

// lay puts a study on the desk and the pages in front of it.
func (r *root) lay(d *desk.Desk) {
	r.desk, r.questions, r.choosing = d, nil, false
	r.why = why.New(r.th, r.keys, d)
	r.hang = hang.New(r.th, r.keys, d)
	r.find = find.New(r.th, r.keys, d)
	r.weights = weights.New(r.th, r.keys, d)
	r.history = history.New(r.th, r.keys, d)
	r.log = decisions.New(r.th, r.keys, d, r.today)
	r.bench = bench.New(r.th, r.keys, d)
	r.beside = sidebyside.New(r.th, r.keys, d)
	r.tables = tables.New(r.th, r.keys, d)
	r.drawing = drawing.New(r.th, r.keys, d)
	r.curves = curves.New(r.th, r.keys, d)
	if r.explore != nil {
		r.explore.Stop()
	}
	r.explore = explorepage.New(r.th, r.keys, d, r.effort)
	r.page = atBench
	r.refresh()
}

// sight is the page in sight.
func (r *root) sight() view {
	switch r.page {
	case atSideBySide:
		return r.beside
	case atTables:
		return r.tables
	case atDrawing:
		return r.drawing
	case atCurves:
		return r.curves
	case atStudies:
		return r.studies
	case atKeys:
		return r.help
	case atWhy:
		return r.why
	case atFind:
		return r.find
	case atWeights:
		return r.weights
	case atHistory:
		return r.history
	case atDecisions:
		return r.log
	case atHang:
		return r.hang
	case atDifferences:
		return r.differences
	case atExplore:
		return r.explore
	}
	return r.bench
}

// refresh takes over what changed on the desk.
func (r *root) refresh() {
	earlier, _ := r.desk.Earlier()
	r.strip = headline.New(r.th, r.desk.Outcome(), earlier)
	if p, ok := r.sight().(refreshed); ok && r.page != atBench {
		p.Refresh()
	}
}

// Study returns the study on the desk, its file, and whether it has unsaved
// edits.
func (m Model) Study() (s *model.Study, path string, unsaved bool) {
	return m.desk.Study(), m.desk.Path, m.desk.Unsaved()
}

// Init reads the folder when the bench begins with the list of studies, and
// opens the journal of the study otherwise.
func (m Model) Init() tea.Cmd {
	if m.page == atStudies {
		return m.list()
	}
	if m.greet && m.greeted != nil {
		return tea.Batch(m.beginSession(), m.shielded(func() tea.Msg { m.greeted(); return nil }))
	}
	return m.beginSession()
}

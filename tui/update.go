package tui

import (
	"github.com/charmbracelet/bubbles/key"
	tea "github.com/charmbracelet/bubbletea"

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
)

// Update takes a message of Bubble Tea.
func (m Model) Update(msg tea.Msg) (tea.Model, tea.Cmd) {
	defer m.noteFault()
	cmd := m.alsoWork(m.take(msg))
	m.tell()
	if begun := m.heed(); begun != nil {
		cmd = tea.Batch(cmd, begun)
	}
	m.arrange()
	return m, cmd
}

// alsoWork adds what the page in sight wants worked in the background, and what
// an exploration tells, wherever the person is.
func (r *root) alsoWork(cmd tea.Cmd) tea.Cmd {
	if told := r.explore.Next(); told != nil {
		cmd = tea.Batch(cmd, r.shielded(told))
	}
	if r.page != atCurves {
		return cmd
	}
	if work := r.curves.Next(); work != nil {
		return tea.Batch(cmd, r.shielded(work))
	}
	return cmd
}

func (r *root) take(msg tea.Msg) tea.Cmd {
	switch msg := msg.(type) {
	case tea.WindowSizeMsg:
		r.w, r.h = msg.Width, msg.Height
	case tea.KeyMsg:
		return r.typed(msg)
	case whyMsg:
		return r.heard(msg)
	case copiedMsg:
		r.copied(msg)
	case listedMsg:
		r.studies.Set(msg.entries, msg.err, r.desk.Path)
	case openedMsg:
		return r.opened(msg)
	case sessionMsg:
		return r.sessionBegun(msg)
	case theirsMsg:
		r.clash(msg)
	case againMsg:
		r.takeTheirs(msg)
	case asideMsg:
		r.putsAside(msg)
	case savedMsg:
		return r.saved(msg)
	case curves.DoneMsg:
		r.curves.Take(msg)
	case tea.MouseMsg:
		return r.pointedAt(msg)
	case tea.ResumeMsg:
		if r.mouse {
			return tea.EnableMouseCellMotion // the shell in between gave it back
		}
	case explorepage.ToldMsg:
		if answered, inSight := r.explore.Take(msg); answered != "" && (!inSight || r.page != atExplore) {
			r.say("\"" + answered + "\" is answered; " + r.keys.Everywhere.Explore.Help().Key + " leads there")
		}
	}
	return nil
}

// typed takes what one read of the keyboard gave. Keys that were pressed
// faster than the line carried them come as one message; each is taken by
// itself. A paste is one text.
func (r *root) typed(msg tea.KeyMsg) tea.Cmd {
	if msg.Paste || msg.Type != tea.KeyRunes || len(msg.Runes) < 2 {
		return r.press(msg)
	}
	var cmds []tea.Cmd
	for i, c := range msg.Runes {
		one := tea.KeyMsg{Type: tea.KeyRunes, Runes: []rune{c}, Alt: msg.Alt && i == 0}
		if c == ' ' {
			one.Type = tea.KeySpace
		}
		if cmd := r.press(one); cmd != nil {
			cmds = append(cmds, cmd)
		}
	}
	if len(cmds) < 2 {
		return tea.Batch(cmds...)
	}
	return tea.Sequence(cmds...)
}

func (r *root) press(msg tea.KeyMsg) tea.Cmd {
	if key.Matches(msg, r.keys.Everywhere.Suspend) {
		return r.suspend()
	}
	if !r.fits() {
		return r.pressUnseen(msg)
	}
	r.notice = said{}
	e := r.keys.Everywhere
	busy := r.typing() != nil
	switch {
	case r.asked() != nil:
		return r.answer(*r.asked(), msg)
	case r.page == atDifferences:
		return r.onPage(msg)
	case busy && msg.String() == "ctrl+c":
		return r.leave()
	case r.page == atExplore && r.explore.Busy() && msg.String() == "ctrl+c":
		return r.leave()
	case r.page == atExplore && r.explore.Busy() && msg.String() == "ctrl+s":
		return r.save()
	case busy && msg.String() == "ctrl+s":
		if !r.accepted() {
			return nil
		}
		return r.save()
	case busy, r.page == atExplore && r.explore.Busy(), r.page == atFind && msg.String() != "ctrl+c":
		return r.onPage(msg)
	case msg.Paste:
		r.say("a paste is taken only where something is typed; Enter begins")
		return nil
	case r.problem != "" && key.Matches(msg, r.keys.Back):
		r.problem = ""
		return nil
	case key.Matches(msg, e.Quit):
		return r.leave()
	}
	if cmd, done := r.turn(msg, e); done {
		return cmd
	}
	if cmd, done := r.atDesk(msg, e); done {
		return cmd
	}
	return r.onPage(msg)
}

// atRest reports whether leaving would lose nothing.
func (r *root) atRest() bool {
	return !r.desk.Unsaved() && !r.saving && r.typing() == nil && !r.explore.Busy() && len(r.questions) == 0
}

// pressUnseen takes keys while the window is too small to show what they do:
// only leaving without loss is possible.
func (r *root) pressUnseen(msg tea.KeyMsg) tea.Cmd {
	if key.Matches(msg, r.keys.Everywhere.Quit) && r.atRest() {
		r.left = true
		return tea.Quit
	}
	return nil
}

// onPage hands a key to the page.
func (r *root) onPage(msg tea.KeyMsg) tea.Cmd {
	var out tea.Msg
	r.edit(func() tea.Msg { return r.sight().Update(msg) }, &out)
	switch out := out.(type) {
	case weights.BackMsg:
		return r.goTo(atBench)
	case history.BackMsg, why.BackMsg, hang.BackMsg, find.BackMsg, differences.BackMsg, keys.BackMsg:
		return r.back()
	case history.RefusedMsg:
		r.say(out.Err.Error())
	case history.GoMsg:
		r.goToState(out.Done)
	case hang.GoMsg:
		return r.openFigure(out.Of)
	case why.GoMsg:
		return r.openAt(out.Place)
	case why.TryMsg:
		return r.tryCure(out.Cure)
	case find.SetMsg:
		return r.openAt(out.Place)
	case find.FigureMsg:
		return r.openFigure(out.Of)
	case bench.DeleteMsg:
		r.askDelete(out.Variant)
	case sidebyside.BenchMsg, tables.BackMsg, drawing.BackMsg, curves.BackMsg, explorepage.BackMsg, decisions.BackMsg, studies.BackMsg:
		return r.goTo(atBench)
	case explorepage.SayMsg:
		r.say(out.Text)
	case studies.ListMsg:
		return r.list()
	case studies.OpenMsg:
		return r.guarded("open another", func() tea.Cmd { return r.open(out.Path) })
	}
	return nil
}

// place is where the person stands.
func (r *root) place() keymap.Place {
	if q := r.asked(); q != nil {
		return q.Place()
	}
	return r.sight().Place()
}

package tui

import (
	"github.com/charmbracelet/bubbles/key"
	tea "github.com/charmbracelet/bubbletea"

	"backspan/tui/keymap"
)

// turn takes the keys that lead to another page.
func (r *root) turn(msg tea.KeyMsg, e keymap.Everywhere) (tea.Cmd, bool) {
	switch {
	case key.Matches(msg, e.Bench):
		return r.goTo(atBench), true
	case key.Matches(msg, e.SideBySide):
		return r.goTo(atSideBySide), true
	case key.Matches(msg, e.Weights):
		return r.goTo(atWeights), true
	case key.Matches(msg, e.Tables):
		return r.goTo(atTables), true
	case key.Matches(msg, e.Drawing):
		return r.goTo(atDrawing), true
	case key.Matches(msg, e.Curves):
		return r.goTo(atCurves), true
	case key.Matches(msg, e.Decisions):
		return r.goTo(atDecisions), true
	case key.Matches(msg, e.Mouse):
		return r.turnMouse(), true
	case key.Matches(msg, e.Explore):
		return r.goTo(atExplore), true
	case key.Matches(msg, e.Studies):
		return tea.Batch(r.goTo(atStudies), r.list()), true
	case key.Matches(msg, e.Keys) && r.page != atKeys:
		r.help.Of(r.place())
		r.visit(atKeys)
	case key.Matches(msg, e.NewStudy):
		return r.guarded("begin a new one", r.begin), true
	default:
		return nil, false
	}
	return nil, true
}

func (r *root) goTo(p page) (cmd tea.Cmd) {
	if r.choosing && p != atStudies {
		r.choosing = false
		cmd = r.beginSession()
		r.say("this is the built-in sample, in no file yet; o leads back to your studies")
	}
	r.page = p
	r.refresh()
	if p == atBench {
		r.bench.Refresh()
	}
	return cmd
}

// visit turns to a page that leads back to the one in sight.
func (r *root) visit(p page) { r.from[p], r.page = r.page, p }

// back leads to where the page in sight was asked for.
func (r *root) back() tea.Cmd { return r.goTo(r.from[r.page]) }

// atDesk takes the keys that concern the study, where it is in sight.
func (r *root) atDesk(msg tea.KeyMsg, e keymap.Everywhere) (tea.Cmd, bool) {
	if r.page == atStudies || r.page == atKeys {
		return nil, false
	}
	switch {
	case key.Matches(msg, e.Why) && r.page != atWhy && r.page != atHang:
		r.askWhy()
	case key.Matches(msg, e.Find):
		r.visit(atFind)
		r.find.Begin()
	case key.Matches(msg, e.History) && r.page != atHistory:
		r.history.Begin()
		r.visit(atHistory)
		r.refresh()
	case key.Matches(msg, e.Copy):
		return r.copy(), true
	case key.Matches(msg, e.Save):
		return r.save(), true
	case key.Matches(msg, e.SaveAs):
		r.saveAs("", "", nil)
	case key.Matches(msg, e.Undo):
		r.undo()
	case key.Matches(msg, e.Redo):
		r.redo()
	case key.Matches(msg, e.NextVariant):
		r.bench.Take(r.desk.Selected + 1)
		r.refresh()
	case key.Matches(msg, e.PreviousVariant):
		r.bench.Take(r.desk.Selected - 1)
		r.refresh()
	default:
		return nil, false
	}
	return nil, true
}

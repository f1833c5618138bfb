package tui

import (
	"fmt"
	"strings"

	tea "github.com/charmbracelet/bubbletea"

	"backspan/store/report"
	"backspan/tui/output"
)

// copiedMsg tells what became of a text for the clipboard.
type copiedMsg struct {
	text string
	err  error
}

// copy hands what is under the cursor to the clipboard of the person's
// terminal.
func (r *root) copy() tea.Cmd {
	text := r.underCursor()
	switch clipboard := r.clipboard; {
	case text == "":
		r.say("nothing to copy here: go to a value, a reading, a check or a row")
	case clipboard == nil:
		r.say("there is no terminal whose clipboard could take it")
	case len(text) > output.MostCopied:
		r.say(fmt.Sprintf("not copied: %d bytes are more than the %d that terminals take", len(text), output.MostCopied))
	default:
		return r.shielded(func() tea.Msg { return copiedMsg{text, clipboard(text)} })
	}
	return nil
}

func (r *root) underCursor() string {
	switch r.page {
	case atBench:
		return r.bench.Text()
	case atSideBySide:
		return r.beside.Text()
	case atTables:
		return r.tables.Text()
	case atExplore:
		return r.explore.Text()
	case atWhy:
		return r.why.Text()
	case atWeights:
		return r.weights.Text()
	}
	return ""
}

// copied says so. Terminals do not answer: whether theirs takes it a person
// sees where they paste.
func (r *root) copied(msg copiedMsg) {
	if msg.err != nil {
		r.say("not copied: " + msg.err.Error())
		return
	}
	to := "handed to the terminal's clipboard: "
	if r.tmux {
		to = "handed to tmux (set-clipboard must be on): "
	}
	first, _, more := strings.Cut(msg.text, "\n")
	if more {
		r.say(fmt.Sprintf("%s%d lines from %q", to, strings.Count(msg.text, "\n")+1, report.Printable(first)))
		return
	}
	r.say(to + strings.ReplaceAll(msg.text, "\t", "  "))
}

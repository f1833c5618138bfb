package tui

import (
	"context"
	"fmt"
	"os"
	"runtime/debug"

	tea "github.com/charmbracelet/bubbletea"
	"github.com/charmbracelet/lipgloss"

	"backspan/tui/input"
	"backspan/tui/output"
	_ "backspan/tui/quiet" // before Bubble Tea's own initialisation
)

// promptly is frames a second: a frame waits for the next tick, so that a slower
// one would be felt at every key. What did not change is not sent.
const promptly = 120

// Run shows the bench on a terminal until the person leaves it. An interrupt
// from outside ends it in good order and is no error.
func Run(ctx context.Context, o Options, in *os.File, out *os.File) error {
	if o.Renderer == nil {
		o.Renderer = lipgloss.NewRenderer(out)
	}
	thin := output.Thin(out)
	if o.Clipboard == nil {
		o.Clipboard = func(text string) error { return output.Copy(thin, text, o.Tmux) }
	}
	m := New(o)
	p := tea.NewProgram(m, tea.WithContext(ctx), tea.WithAltScreen(), tea.WithoutSignalHandler(), tea.WithFPS(promptly),
		tea.WithInput(input.Wrap(in)), tea.WithOutput(thin))
	stop := onSignal(p.Quit)
	defer stop()
	_, err := p.Run()
	if e, ended := m.end(); ended && o.Ended != nil {
		o.Ended(e)
	}
	return err
}

// end closes the journal. ended is false when the person chose to leave.
// What was still being typed belongs to the study when it is valid.
func (m Model) end() (e Ending, ended bool) {
	if m.left {
		m.closeSession(false, nil)
		return e, false
	}
	m.takeTyped()
	e = Ending{Path: m.desk.Path, Study: m.desk.Study().Clone(), Unsaved: m.desk.Unsaved(), Fault: m.fault.Load()}
	e.Journaled = m.closeSession(e.Unsaved, e.Study)
	return e, true
}

// takeTyped accepts what is being typed. After a fault the page may be in any
// state; what the desk holds is whole all the same.
func (r *root) takeTyped() {
	defer func() { _ = recover() }()
	if p := r.typing(); p != nil {
		p.Accept()
	}
}

// noteFault keeps what is known of a fault of the program, for Bubble Tea
// restores the terminal and drops it. The first one is the cause.
func (r *root) noteFault() {
	if p := recover(); p != nil {
		r.fault.CompareAndSwap(nil, &Fault{What: fmt.Sprint(p), Stack: string(debug.Stack())})
		panic(p)
	}
}

// shielded does the same for what runs in the background.
func (r *root) shielded(do tea.Cmd) tea.Cmd {
	return func() tea.Msg {
		defer r.noteFault()
		return do()
	}
}

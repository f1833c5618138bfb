package tui

import (
	"context"
	"os"

	tea "github.com/charmbracelet/bubbletea"
	"github.com/charmbracelet/lipgloss"

	"backspan/model"
	"backspan/tui/input"
	"backspan/tui/output"
	_ "backspan/tui/quiet" // before Bubble Tea's own initialisation
)

// Run shows the bench on a terminal until the person leaves it. An interrupt
// from outside ends it in good order and is no error.
func Run(ctx context.Context, o Options, in *os.File, out *os.File) error {
	if o.Renderer == nil {
		o.Renderer = lipgloss.NewRenderer(out)
	}
	if o.FPS <= 0 {
		o.FPS = 20
	}
	m := New(o)
	p := tea.NewProgram(m, tea.WithContext(ctx), tea.WithAltScreen(), tea.WithoutSignalHandler(), tea.WithFPS(o.FPS),
		tea.WithInput(input.Wrap(in)), tea.WithOutput(output.Thin(out)))
	stop := onSignal(p.Quit)
	defer stop()
	_, err := p.Run()
	if s, lost := m.abandoned(); lost && o.Rescue != nil {
		o.Rescue(m.desk.Path, s)
	}
	return err
}

// abandoned is the study as it stands when the bench ended though nobody chose
// to leave it, and whether it has edits that no file holds. What was still
// being typed belongs to it when it is valid.
func (m Model) abandoned() (s *model.Study, lost bool) {
	if m.left {
		return nil, false
	}
	m.takeTyped()
	return m.desk.Study().Clone(), m.desk.Unsaved()
}

// takeTyped accepts what is being typed. After a fault the page may be in any
// state; what the desk holds is whole all the same.
func (r *root) takeTyped() {
	defer func() { _ = recover() }()
	r.bench.Accept()
}

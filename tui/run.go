package tui

import (
	"context"
	"errors"
	"os"

	tea "github.com/charmbracelet/bubbletea"
	"github.com/charmbracelet/lipgloss"

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
	p := tea.NewProgram(m, tea.WithContext(ctx), tea.WithAltScreen(), tea.WithFPS(o.FPS),
		tea.WithInput(input.Wrap(in)), tea.WithOutput(output.Thin(out)))
	stop := onHangup(p.Quit)
	defer stop()
	_, err := p.Run()
	if o.Rescue != nil && !m.left && m.desk.Unsaved() {
		o.Rescue(m.desk.Path, m.desk.Study().Clone())
	}
	if errors.Is(err, tea.ErrInterrupted) {
		return nil
	}
	return err
}

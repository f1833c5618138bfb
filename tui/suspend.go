package tui

import tea "github.com/charmbracelet/bubbletea"

// suspend gives the terminal back to the shell until the shell brings the
// bench back. Whatever is being typed or asked stays as it is.
func (r *root) suspend() tea.Cmd {
	if !r.mayStop() {
		r.say("no shell waits behind this window to bring the bench back; q leaves")
		return nil
	}
	return tea.Suspend
}

package tui

import (
	"fmt"
	"strings"

	tea "github.com/charmbracelet/bubbletea"

	"backspan/model"
	"backspan/tui/components/ask"
	"backspan/tui/desk"
)

// theirsMsg brings a file that was changed by another program since it was
// opened here.
type theirsMsg struct {
	desk  *desk.Desk
	path  string
	study *model.Study
	err   error
}

func (r *root) readTheirs(path string) tea.Cmd {
	shelf, d := r.shelf, r.desk
	return r.shielded(func() tea.Msg {
		s, err := shelf.Read(path)
		return theirsMsg{d, path, s, err}
	})
}

// clash asks what to do when two have changed a study. Nothing is written over
// whatever the answer.
func (r *root) clash(msg theirsMsg) {
	if msg.desk != r.desk {
		return
	}
	both := ask.Answer{Letter: "b", Label: "keep both: save under a new name"}
	if msg.err != nil {
		q := ask.Choice(r.th, r.keys, r.th.Clean(msg.path+" was changed by another program and cannot be read now: "+msg.err.Error()), both)
		r.ask(q, func() tea.Cmd { r.saveAs("", "", nil); return nil })
		return
	}
	q := ask.Choice(r.th, r.keys, r.th.Clean(msg.path+" was changed by another program since it was opened here. "+theirs(r.desk.Study(), msg.study)),
		both, ask.Answer{Letter: "r", Label: "read it again; undo brings yours back"})
	r.ask(q, func() tea.Cmd {
		if q.Chosen() == 0 {
			r.saveAs("", "", nil)
			return nil
		}
		return r.readAgain(msg)
	})
}

// readAgain takes the other one's study in hand. What was here is one step
// back.
func (r *root) readAgain(msg theirsMsg) tea.Cmd {
	path, shelf, d := msg.path, r.shelf, r.desk
	return r.shielded(func() tea.Msg {
		s, err := shelf.Open(path) // from now on it is the one that a save may go over
		return againMsg{theirsMsg{d, path, s, err}}
	})
}

// againMsg brings the file to be taken in hand.
type againMsg struct{ theirsMsg }

func (r *root) takeTheirs(msg againMsg) {
	if msg.desk != r.desk {
		return
	}
	if msg.err != nil {
		r.problem = "not read again: " + msg.err.Error()
		return
	}
	r.edit(func() tea.Msg {
		r.desk.Replace(msg.study, "read "+msg.path+" again")
		r.desk.Saved(msg.path, r.desk.Study())
		r.bench.Refresh()
		return nil
	}, nil)
}

// theirs says in what another study differs from the one on the desk.
func theirs(mine, other *model.Study) string {
	const most = 3
	ds := model.Differences(mine.Sections(), other.Sections())
	var said []string
	for _, d := range ds {
		said = append(said, fmt.Sprintf("%s here %s, there %s", d.Label, d.From, d.To))
	}
	for i := range mine.Variants {
		v := &mine.Variants[i]
		j := other.Index(v.Name)
		if j < 0 {
			said = append(said, v.Name+" is not there")
			continue
		}
		for _, d := range model.Differences(v.Sections(), other.Variants[j].Sections()) {
			said = append(said, fmt.Sprintf("%s of %s here %s, there %s", d.Label, v.Name, d.From, d.To))
		}
	}
	for i := range other.Variants {
		if name := other.Variants[i].Name; mine.Index(name) < 0 {
			said = append(said, name+" is only there")
		}
	}
	switch n := len(said); {
	case n == 0:
		return "Both set the same values."
	case n > most:
		return fmt.Sprintf("%s; and %d more differences.", strings.Join(said[:most], "; "), n-most)
	default:
		return strings.Join(said, "; ") + "."
	}
}

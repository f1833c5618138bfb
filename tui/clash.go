package tui

import (
	"fmt"
	"strings"

	tea "github.com/charmbracelet/bubbletea"

	"backspan/model"
	"backspan/tui/components/ask"
	"backspan/tui/desk"
	"backspan/tui/pages/differences"
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
		both, ask.Answer{Letter: "r", Label: "read it again; undo brings yours back"}, lookFirst)
	sides := func() differences.Sides {
		return differences.Sides{From: r.desk.Study(), To: msg.study, FromName: "on the bench", ToName: "in the file"}
	}
	r.askAbout(sides, q, func() tea.Cmd {
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
	var said []string
	for _, c := range model.Contrasts(mine, other) {
		said = append(said, inWords(c)...)
	}
	switch n := len(said); {
	case n == 0 && !model.Remarked(mine, other).Nothing():
		return "Both set the same values; the comments differ."
	case n == 0:
		return "Both set the same values."
	case n > most:
		return fmt.Sprintf("%s; and %d more differences.", strings.Join(said[:most], "; "), n-most)
	default:
		return strings.Join(said, "; ") + "."
	}
}

// inWords says a contrast briefly, for a sentence.
func inWords(c model.Contrast) []string {
	const room = 40
	switch c.Only {
	case model.OnlyFrom:
		return []string{c.Title + " is not there"}
	case model.OnlyTo:
		return []string{c.Title + " is only there"}
	}
	if c.Title == model.TitleDecisions {
		return decisionsInWords(c.Differences)
	}
	of := ""
	if c.Title != "Study" {
		of = " of " + strings.TrimPrefix(c.Title, "Variant ")
	}
	said := make([]string, len(c.Differences))
	for i, d := range c.Differences {
		said[i] = fmt.Sprintf("%s%s here %s, there %s", d.Label, of, brief(d.From, room), brief(d.To, room))
	}
	return said
}

// decisionsInWords tells of entries of the log by their dates.
func decisionsInWords(ds []model.Difference) []string {
	said := make([]string, len(ds))
	for i, d := range ds {
		of := "Decision of " + d.Label
		switch {
		case d.Path == model.DecisionOrder:
			said[i] = "The decisions stand in another order there"
		case d.From == "":
			said[i] = of + " is only there"
		case d.To == "":
			said[i] = of + " is only here"
		default:
			said[i] = of + " is worded otherwise there"
		}
	}
	return said
}

// brief is a value cut to what a sentence bears.
func brief(s string, most int) string {
	first, _, more := strings.Cut(s, "\n")
	switch runes := []rune(first); {
	case more && len(runes) <= most:
		return first + "…"
	case s == "":
		return "nothing"
	case len(runes) > most:
		return string(runes[:most]) + "…"
	}
	return s
}

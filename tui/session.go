package tui

import (
	"errors"
	"fmt"
	"slices"
	"strings"
	"time"

	tea "github.com/charmbracelet/bubbletea"

	"backspan/model"
	"backspan/store"
	"backspan/tui/components/ask"
	"backspan/tui/desk"
	"backspan/tui/pages/differences"
)

// Journals opens the journal of the study at a path, "" for one without a
// file, and tells what earlier sessions left. A study that is open elsewhere
// gives a *store.Held.
type Journals interface {
	Begin(path string) (*store.Session, []*store.Left, error)
	// Alone opens a new journal for a study without a file.
	Alone() (*store.Session, error)
}

// kept is the journal of the study on the desk.
type kept struct {
	*store.Session
	path     string
	revision int           // of the desk when it was last told
	taken    []*store.Left // in hand, to be dropped when the study is saved
	trouble  string        // as it was last said
	coming   chan sessionMsg
}

// sessionMsg brings the journal of a study that was laid on a desk.
type sessionMsg struct {
	desk    *desk.Desk
	path    string
	session *store.Session
	lefts   []*store.Left
	held    *store.Held
	err     error
}

// beginSession opens a journal for the study on the desk and ends the one
// before, whose edits are saved or were given up.
func (r *root) beginSession() tea.Cmd {
	if r.journals == nil {
		return nil
	}
	before, journals, d, path := r.kept, r.journals, r.desk, r.desk.Path
	coming := make(chan sessionMsg, 1)
	r.kept = kept{coming: coming}
	return r.shielded(func() tea.Msg {
		before.end(false)
		msg := sessionMsg{desk: d, path: path}
		msg.session, msg.lefts, msg.err = journals.Begin(path)
		if errors.As(msg.err, &msg.held) {
			msg.session, msg.err = journals.Alone()
		}
		coming <- msg
		return msg
	})
}

func (r *root) sessionBegun(msg sessionMsg) tea.Cmd {
	switch {
	case msg.desk != r.desk:
		if msg.session != nil {
			_ = msg.session.End(false)
		}
		return nil
	case msg.path != r.desk.Path: // it was saved under a new name meanwhile
		r.kept.Session = msg.session
		return r.beginSession()
	}
	r.kept = kept{Session: msg.session, path: msg.path, revision: 1}
	switch {
	case msg.err != nil:
		r.problem = "edits are not kept against a crash: " + msg.err.Error() + "; save often"
	case msg.held != nil:
		r.desk.Path, r.kept.path = "", ""
		r.problem = fmt.Sprintf("%s: %s. This is a copy in no file yet: look and try, and save it under a name of its own.", msg.path, msg.held)
	case msg.session.Elsewhere != "":
		r.say(fmt.Sprintf("nothing could be written beside %s, so edits are kept in %s until they are saved; where a save is refused, %s saves elsewhere",
			msg.path, msg.session.Elsewhere, r.keys.Everywhere.SaveAs.Help().Key))
		r.notice.whole = true
	}
	if msg.session != nil && len(msg.session.PutAside) > 0 {
		r.problem = "a journal that could not be read is put aside as " + strings.Join(msg.session.PutAside, ", ")
	}
	for _, l := range msg.lefts {
		r.offer(l)
	}
	return nil
}

// offer asks what to do with work that a session left. What is not answered is
// asked again the next time.
func (r *root) offer(left *store.Left) {
	take := ask.Answer{Letter: "t", Label: "take it up"}
	put := ask.Answer{Letter: "p", Label: "put it in a file of its own"}
	drop := ask.Answer{Letter: "d", Label: "drop it"}
	later := ask.Answer{Letter: "esc", Label: "later"}
	answers := []ask.Answer{take, put, drop, lookFirst, later}
	text := left.Words()
	switch {
	case left.Stray:
		answers = []ask.Answer{put, drop, later}
	case left.Changed:
		answers = []ask.Answer{put, take, drop, lookFirst, later}
		text += " " + theirs(left.Study, r.desk.Study())
	}
	d := r.desk
	q := ask.Choice(r.th, r.keys, r.th.Clean(text), answers...)
	sides := func() differences.Sides {
		return differences.Sides{From: left.Study, To: d.Study(), FromName: "in the work left", ToName: "on the bench"}
	}
	r.askAbout(sides, q, func() tea.Cmd {
		switch answers[q.Chosen()] {
		case take:
			r.takeUp(d, left)
		case put:
			return r.putAside(left)
		case drop:
			r.askDrop(left)
		}
		return nil
	})
}

// askDrop asks once more, at once: the first question may have come up under a
// key that was meant for something else, and no undo brings the work back.
func (r *root) askDrop(left *store.Left) {
	q := ask.Choice(r.th, r.keys, r.th.Clean("Drop the work for good? Nothing brings it back. "+left.Words()),
		ask.Answer{Letter: "k", Label: "keep it and ask again the next time"}, ask.Answer{Letter: "y", Label: "yes, drop it"})
	r.questions = slices.Insert(r.questions, 0, question{Model: q, given: func() tea.Cmd {
		if q.Chosen() == 1 {
			r.dropped(left.Drop(), "it is dropped")
		}
		return nil
	}})
}

func (r *root) takeUp(d *desk.Desk, left *store.Left) {
	if d != r.desk {
		return
	}
	r.kept.taken = append(r.kept.taken, left)
	r.edit(func() tea.Msg {
		r.desk.Replace(left.Study, fmt.Sprintf("take up %d edits", len(left.Edits)))
		r.bench.Refresh()
		return nil
	}, nil)
}

// asideMsg tells where work is that nobody took up.
type asideMsg struct {
	path string
	err  error
}

func (r *root) putAside(left *store.Left) tea.Cmd {
	path, aside := r.desk.Path, r.aside
	if left.Stray {
		path = ""
	}
	return r.shielded(func() tea.Msg {
		kept, err := aside(path, left.Study)
		if err == nil {
			err = left.Drop()
		}
		return asideMsg{kept, err}
	})
}

func (r *root) putsAside(msg asideMsg) {
	r.dropped(msg.err, "it is in "+msg.path)
}

func (r *root) dropped(err error, said string) {
	if err != nil {
		r.problem = "it stays where it is and is asked for again: " + err.Error()
		return
	}
	r.say(said)
}

// tell passes on what changed on the desk since the journal was last told, and
// says when edits are not kept.
func (r *root) tell() {
	k := &r.kept
	if k.Session == nil {
		return
	}
	if k.revision != r.desk.Revision() {
		k.revision = r.desk.Revision()
		if r.desk.Unsaved() {
			k.Edited(r.desk.Last(), r.desk.Study())
		} else {
			k.Saved("", nil)
		}
	}
	trouble := ""
	if err := k.Trouble(); err != nil {
		trouble = err.Error()
	}
	if trouble != "" && trouble != k.trouble {
		r.problem = "edits are not kept against a crash: " + trouble + "; save often"
	}
	k.trouble = trouble
}

// journalSaved says that the file holds a state of the study. A study that
// has a new file gets a journal beside that one.
func (r *root) journalSaved() tea.Cmd {
	k := &r.kept
	for _, l := range k.taken {
		_ = l.Drop() // what cannot be removed is found to be saved the next time
	}
	k.taken = nil
	if k.Session == nil {
		return nil // it is on its way, and will see the new path
	}
	if k.path != r.desk.Path {
		return r.beginSession()
	}
	k.revision = r.desk.Revision()
	if r.desk.Unsaved() {
		k.Saved(r.desk.Last(), r.desk.Study())
	} else {
		k.Saved("", nil)
	}
	return nil
}

// end closes the journal, also one that is only on its way.
func (k kept) end(keep bool) (done bool) {
	if k.Session == nil && k.coming != nil {
		select {
		case msg := <-k.coming:
			k.Session = msg.session
		case <-time.After(time.Second):
		}
	}
	return k.Session != nil && k.End(keep) == nil
}

// closeSession ends the journal with the bench. It reports whether unsaved
// edits, if there are any, are kept in it.
func (r *root) closeSession(keep bool, s *model.Study) bool {
	k := r.kept
	if keep && k.Session != nil && k.revision != r.desk.Revision() {
		k.Edited("at the end", s)
	}
	keeping := keep && k.Session != nil
	return k.end(keep) && keeping
}

package tui

import (
	"errors"
	"fmt"

	tea "github.com/charmbracelet/bubbletea"

	"backspan/model"
	"backspan/store"
	"backspan/tui/components/ask"
	"backspan/tui/desk"
)

// Journals opens the journal of the study at a path, "" for one without a
// file. A study that is open elsewhere gives a *store.Held.
type Journals interface {
	Begin(path string) (*store.Session, *store.Recovery, error)
	// Alone opens a new journal for a study without a file and offers nothing.
	Alone() (*store.Session, error)
}

// kept is the journal of the study on the desk.
type kept struct {
	*store.Session
	path     string
	revision int             // of the desk when it was last told
	left     *store.Recovery // offered, and not answered yet
	troubled bool            // it was said that edits are not kept
}

// sessionMsg brings the journal of a study that was laid on a desk.
type sessionMsg struct {
	desk    *desk.Desk
	path    string
	session *store.Session
	left    *store.Recovery
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
	r.kept = kept{}
	return r.shielded(func() tea.Msg {
		if before.Session != nil {
			_ = before.End(before.left != nil)
		}
		msg := sessionMsg{desk: d, path: path}
		msg.session, msg.left, msg.err = journals.Begin(path)
		if errors.As(msg.err, &msg.held) {
			msg.session, msg.err = journals.Alone()
		}
		return msg
	})
}

func (r *root) sessionBegun(msg sessionMsg) tea.Cmd {
	if msg.desk != r.desk || msg.held == nil && msg.path != r.desk.Path {
		if msg.session != nil {
			_ = msg.session.End(msg.left != nil)
		}
		return nil
	}
	r.kept = kept{Session: msg.session, path: msg.path, revision: 1, left: msg.left}
	switch {
	case msg.err != nil:
		r.problem = "edits are not kept against a crash: " + msg.err.Error()
	case msg.held != nil:
		r.desk.Path, r.kept.path = "", ""
		r.problem = fmt.Sprintf("%s: %s. This is a copy in no file yet: look and try, and save it under a name of its own.", msg.path, msg.held)
	case msg.left != nil:
		r.offer(msg.left)
	}
	return nil
}

// offer asks what to do with edits that a session left behind.
func (r *root) offer(left *store.Recovery) {
	q := ask.Choice(r.th, r.keys, r.th.Clean(left.Words()), ask.Answer{Letter: "t", Label: "take them up"},
		ask.Answer{Letter: "p", Label: "put them in a file of their own"})
	r.ask(q, func() tea.Cmd {
		if q.Chosen() == 0 {
			r.takeUp(left)
			return nil
		}
		return r.putAside(left)
	})
}

func (r *root) takeUp(left *store.Recovery) {
	r.kept.left = nil
	r.edit(func() tea.Msg {
		r.desk.Replace(left.Study, fmt.Sprintf("take up %d edits", len(left.Edits)))
		r.bench.Refresh()
		return nil
	}, nil)
}

// asideMsg tells where edits are that nobody took up.
type asideMsg struct {
	path string
	err  error
}

func (r *root) putAside(left *store.Recovery) tea.Cmd {
	path, aside := r.desk.Path, r.aside
	return r.shielded(func() tea.Msg {
		kept, err := aside(path, left.Study)
		return asideMsg{kept, err}
	})
}

func (r *root) putsAside(msg asideMsg) {
	if msg.err != nil {
		r.problem = "the edits stay in the journal, because no file could be written: " + msg.err.Error()
		return
	}
	r.kept.left = nil
	if r.kept.Session != nil {
		r.kept.Saved()
	}
	r.say("the edits are in " + msg.path)
}

// tell passes on what changed on the desk since the journal was last told.
func (r *root) tell() {
	k := &r.kept
	if k.Session == nil || k.revision == r.desk.Revision() {
		return
	}
	k.revision = r.desk.Revision()
	if r.desk.Unsaved() {
		k.Edited(r.desk.Last(), r.desk.Study())
	} else if k.left == nil {
		k.Saved()
	}
	switch err := k.Trouble(); {
	case err == nil:
		k.troubled = false
	case !k.troubled:
		k.troubled = true
		r.problem = "edits are not kept against a crash: " + err.Error() + "; save often"
	}
}

// journalSaved says that the file holds a state of the study. A study that
// has a new file gets a journal beside that one.
func (r *root) journalSaved() tea.Cmd {
	if r.kept.Session == nil {
		return nil
	}
	if r.kept.path != r.desk.Path {
		return r.beginSession()
	}
	r.kept.Saved()
	if r.desk.Unsaved() {
		r.kept.Edited(r.desk.Last(), r.desk.Study())
	}
	return nil
}

// closeSession ends the journal with the bench. It reports whether unsaved
// edits, if there are any, are kept in it.
func (r *root) closeSession(keep bool, s *model.Study) bool {
	k := r.kept
	if k.Session == nil {
		return false
	}
	if keep {
		k.Edited("at the end", s)
	}
	return k.End(keep || k.left != nil) == nil && keep
}

package tui

import (
	"errors"
	"fmt"
	"path/filepath"

	tea "github.com/charmbracelet/bubbletea"

	"backspan/model"
	"backspan/store"
	"backspan/tui/components/ask"
	"backspan/tui/desk"
)

// listedMsg tells what is in the folder.
type listedMsg struct {
	entries []store.Entry
	err     error
}

// openedMsg brings a study. desk and asked are the desk and its revision when
// it was asked for.
type openedMsg struct {
	path  string
	study *model.Study
	err   error
	desk  *desk.Desk
	asked int
}

// savedMsg tells that a state of the study is in its file, or why not.
type savedMsg struct {
	desk    *desk.Desk
	path    string
	state   *model.Study
	created bool
	note    string
	err     error
	then    func() tea.Cmd
}

var errNoShelf = errors.New("there is no place to keep studies; nothing is saved")

func (r *root) list() tea.Cmd {
	shelf := r.shelf
	return r.shielded(func() tea.Msg {
		if shelf == nil {
			return listedMsg{err: errNoShelf}
		}
		entries, err := shelf.List()
		return listedMsg{entries, err}
	})
}

func (r *root) open(path string) tea.Cmd {
	shelf, d, asked := r.shelf, r.desk, r.desk.Revision()
	return r.shielded(func() tea.Msg {
		s, err := shelf.Open(path)
		return openedMsg{path, s, err, d, asked}
	})
}

func (r *root) opened(msg openedMsg) tea.Cmd {
	var newer *store.Newer
	switch {
	case msg.err != nil && !errors.As(msg.err, &newer):
		r.problem = "not opened: " + msg.err.Error()
	case msg.desk != r.desk, msg.asked != r.desk.Revision():
		r.problem = fmt.Sprintf("%s was not opened, because the study on the bench was edited meanwhile; open it again", msg.path)
	case newer != nil:
		r.lay(desk.New(msg.study, ""))
		r.lookOnly(newer)
		return r.beginSession()
	default:
		r.lay(desk.New(msg.study, msg.path))
		r.problem = ""
		r.say("opened " + msg.path)
		return r.beginSession()
	}
	return nil
}

// lookOnly says why a study is in no file here.
func (r *root) lookOnly(newer *store.Newer) {
	r.problem = newer.Error() + " What you save goes into a new file."
}

// begin puts a new study on the desk.
func (r *root) begin() tea.Cmd {
	r.lay(desk.New(newStudy(), ""))
	r.say("a new study, in no file yet; s saves it")
	return r.beginSession()
}

func (r *root) save() tea.Cmd { return r.saveThen(nil) }

// saveThen saves and, when that went well, does what follows.
func (r *root) saveThen(then func() tea.Cmd) tea.Cmd {
	if r.desk.Path == "" {
		r.saveAs("", "", then)
		return nil
	}
	return r.write(r.desk.Path, false, then)
}

// write saves in the background. The state that is saved cannot change, so
// work goes on meanwhile.
func (r *root) write(path string, create bool, then func() tea.Cmd) tea.Cmd {
	switch {
	case r.shelf == nil:
		r.problem = errNoShelf.Error()
		return nil
	case r.saving:
		r.say("the save before is still running; save again in a moment")
		return nil
	}
	r.saving = true
	shelf, d, state := r.shelf, r.desk, r.desk.Study()
	return r.shielded(func() tea.Msg {
		put := shelf.Save
		if create {
			put = shelf.Create
		}
		note, err := put(path, state.Clone())
		return savedMsg{d, path, state, create, note, err, then}
	})
}

func (r *root) saved(msg savedMsg) tea.Cmd {
	r.saving = false
	unsure := errors.Is(msg.err, store.ErrUnconfirmed)
	switch {
	case msg.desk != r.desk: // another study was laid on the desk meanwhile
		if msg.err != nil {
			r.problem = msg.err.Error()
		}
		return nil
	case unsure:
		msg.note, msg.err = msg.err.Error(), nil
	}
	if msg.err != nil {
		switch {
		case msg.created:
			r.saveAs(msg.path, msg.err.Error(), msg.then)
		case errors.Is(msg.err, store.ErrChanged):
			return r.readTheirs(msg.path)
		default:
			r.problem = msg.err.Error()
		}
		return nil
	}
	msg.desk.Saved(msg.path, msg.state)
	r.problem = ""
	if unsure {
		r.problem, msg.note = msg.note, ""
	}
	r.say("saved in " + msg.path)
	if msg.note != "" {
		r.notice.text += "; " + msg.note
		r.notice.whole = true
	}
	cmd := r.journalSaved()
	switch {
	case msg.then == nil:
		return cmd
	case r.desk.Unsaved():
		r.notice.text += "; edited meanwhile, so you stay here"
		return cmd
	}
	return tea.Sequence(cmd, msg.then())
}

// saveAs asks for a file name. After a refusal it asks again, with what was
// typed.
func (r *root) saveAs(typed, problem string, then func() tea.Cmd) {
	if typed == "" {
		typed = fileName(r.desk.Study().Name)
	}
	q := ask.Words(r.th, r.keys, "Save under which file name?", typed)
	q.Problem = problem
	r.ask(q, func() tea.Cmd {
		path := q.Text()
		if path == "" {
			r.saveAs("", "A file needs a name; type one.", then)
			return nil
		}
		if filepath.Ext(path) == "" {
			path += ".toml"
		}
		return r.write(path, true, then)
	})
}

package store

import (
	"errors"
	"fmt"
	"io/fs"
	"os"
	"sync"
	"time"

	"backspan/model"
	"backspan/store/journal"
	"backspan/store/report"
)

// Session keeps what is edited on the bench, from opening a study until the
// person leaves it, and holds the study against a second bench. Its methods
// but End do not wait for the disk.
type Session struct {
	name string
	file *os.File
	w    *journal.Writer

	mu      sync.Mutex
	queue   []step
	written int // steps that are in the journal
	trouble error
	ended   bool
	wake    chan struct{} // holds one
	done    chan struct{}
	dirty   chan struct{} // holds one
}

// step is a state to keep, or the news that all states are saved.
type step struct {
	edit  journal.Edit
	study *model.Study // nil: what stands in the journal is saved
}

// Recovery is what a session that was ended from outside left.
type Recovery struct {
	Study *model.Study
	Edits []journal.Edit
	Owner journal.Head
	Torn  bool // the newest was cut off and is lost
}

// Words says what was found.
func (r Recovery) Words() string {
	last := r.Edits[len(r.Edits)-1]
	s := fmt.Sprintf("Work on this study ended without being saved, on %s, at %s. %d edits are kept; the last: %s.",
		report.Printable(r.Owner.Host), last.At.Local().Format("2 Jan 2006 15:04"), len(r.Edits), report.Printable(last.Name))
	if len(r.Edits) == 1 {
		s = fmt.Sprintf("Work on this study ended without being saved, on %s, at %s. One edit is kept: %s.",
			report.Printable(r.Owner.Host), last.At.Local().Format("2 Jan 2006 15:04"), report.Printable(last.Name))
	}
	if r.Torn {
		s += " A newer one was cut off."
	}
	return s
}

// Held says that a study is open on another bench.
type Held struct{ Owner journal.Head }

func (h *Held) Error() string {
	o := h.Owner
	if o.User == "" {
		return "it is open on another bench"
	}
	return fmt.Sprintf("%s has it open on %s since %s", report.Printable(o.User), report.Printable(o.Host), o.Since.Local().Format("2 Jan 2006 15:04"))
}

// Journals is where the journals of studies are kept: beside them, or in the
// person's own folder where that cannot be written and for studies without a
// file.
type Journals struct {
	State func() (string, error) // makes and names the person's own folder
	From  string                 // folder in which the program was started
	Owner journal.Head           // user, host and process
	now   func() time.Time
}

// Begin opens the journal of the study at path, "" for one without a file. A
// study that is open elsewhere gives a *Held. Recovery is nil when nothing was
// left behind; what was left stays in the journal until it is saved or the
// session ended by the person.
func (j Journals) Begin(path string) (*Session, *Recovery, error) {
	head := j.Owner
	head.Since = j.time()
	names, err := j.places(path, &head)
	var session *Session
	var left *Recovery
	for _, name := range names {
		session, left, err = begin(name, head)
		if err == nil || !errors.Is(err, fs.ErrPermission) && !readOnly(err) {
			break
		}
	}
	if err != nil {
		return nil, nil, err
	}
	go session.run()
	return session, left, nil
}

// Alone opens a new journal for a study without a file.
func (j Journals) Alone() (*Session, error) {
	head := j.Owner
	head.Since, head.From = j.time(), absolute(j.From)
	state, err := j.State()
	if err != nil {
		return nil, err
	}
	session, _, err := begin(unsavedName(state, head), head)
	if err == nil {
		go session.run()
	}
	return session, err
}

func (j Journals) time() time.Time {
	if j.now != nil {
		return j.now()
	}
	return time.Now()
}

// Edited keeps a state, which must not be changed afterwards.
func (s *Session) Edited(name string, state *model.Study) {
	s.put(step{journal.Edit{At: time.Now(), Name: name}, state})
}

// Saved says that the file of the study holds a state. Pass the later ones
// that it does not hold again with Edited.
func (s *Session) Saved() { s.put(step{}) }

func (s *Session) put(next step) {
	s.mu.Lock()
	if !s.ended {
		s.queue = append(s.queue, next)
	}
	s.mu.Unlock()
	signal(s.wake)
}

// Trouble is why edits are not being kept, nil when they are.
func (s *Session) Trouble() error {
	s.mu.Lock()
	defer s.mu.Unlock()
	return s.trouble
}

// End returns when all is kept. Where nothing is to be kept the journal is
// removed.
func (s *Session) End(keep bool) error {
	s.mu.Lock()
	s.ended = true
	s.mu.Unlock()
	signal(s.wake)
	<-s.done
	err := s.Trouble()
	switch {
	case !keep:
		err = os.Remove(s.name)
	case !s.inPlace():
		err = errors.Join(err, fmt.Errorf("the journal %s was removed or renamed by another program", report.Printable(s.name)))
	}
	return errors.Join(err, s.file.Close())
}

// inPlace reports whether the journal is still where the next session looks.
func (s *Session) inPlace() bool {
	mine, err := s.file.Stat()
	there, lost := os.Stat(s.name)
	return err == nil && lost == nil && os.SameFile(mine, there)
}

// run keeps what is put, all that has gathered at once. It does not wait for
// the disk to confirm, so that a kill costs nothing while the disk is slow.
func (s *Session) run() {
	confirmed := make(chan struct{})
	go s.confirm(confirmed)
	for ended := false; !ended; {
		<-s.wake
		s.mu.Lock()
		steps := s.queue
		s.queue, ended = nil, s.ended
		s.mu.Unlock()
		if len(steps) > 0 {
			s.note(s.keep(steps), len(steps))
			signal(s.dirty)
		}
	}
	close(s.dirty)
	<-confirmed
	close(s.done)
}

// confirm makes what was kept outlast a power cut.
func (s *Session) confirm(done chan<- struct{}) {
	for range s.dirty {
		if err := s.w.Sync(); err != nil {
			s.note(err, 0)
		}
	}
	close(done)
}

func (s *Session) note(err error, steps int) {
	s.mu.Lock()
	if s.trouble = err; err == nil {
		s.written += steps
	}
	s.mu.Unlock()
}

// signal wakes who waits; one signal is enough for all that has gathered.
func signal(c chan<- struct{}) {
	select {
	case c <- struct{}{}:
	default:
	}
}

// keep writes what gathered: of edits that followed one another only the last
// state, with the names of all, so that it never falls behind.
func (s *Session) keep(steps []step) (err error) {
	var edits []journal.Edit
	for i, next := range steps {
		if next.study == nil {
			edits, err = nil, s.w.Clear()
			continue
		}
		edits = append(edits, next.edit)
		if i == len(steps)-1 || steps[i+1].study == nil {
			err = s.w.Add(Encode(next.study), edits...)
			edits = nil
		}
	}
	return err
}

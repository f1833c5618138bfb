package store

import (
	"errors"
	"fmt"
	"os"
	"runtime"
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
	name  string // of the journal
	study string // the study's file, "" while it has none
	file  *os.File
	w     *journal.Writer

	// PutAside are journals found here that could not be read, under the names
	// they have now.
	PutAside []string

	// Elsewhere is the folder that holds the journal because nothing could
	// be written beside the study; empty when it is beside it.
	Elsewhere string

	mu      sync.Mutex
	queue   []step
	written int   // steps that are in the journal
	unkept  error // why the last state is not in it
	unsure  error // why the disk did not confirm it
	ended   bool
	wake    chan struct{} // holds one
	done    chan struct{}
	dirty   chan struct{} // holds one
}

// step is a state to keep, or the news of a save.
type step struct {
	edit  journal.Edit
	study *model.Study // nil: the file holds all
	saved bool         // the file holds all before
}

// Edited keeps a state, which must not be changed afterwards.
func (s *Session) Edited(name string, state *model.Study) {
	s.put(step{journal.Edit{At: time.Now(), Name: name}, state, false})
}

// Saved says that the file of the study was written. state is the present one
// where the file does not hold it, else nil; name is its last edit.
func (s *Session) Saved(name string, state *model.Study) {
	s.put(step{journal.Edit{At: time.Now(), Name: name}, state, true})
}

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
	if s.unkept != nil {
		return s.unkept
	}
	return s.unsure
}

// endsWithin is how long a slow disk may keep a program from ending.
const endsWithin = time.Second

// End returns when all is kept, or when the disk takes too long. Where nothing
// is to be kept the journal is removed.
func (s *Session) End(keep bool) error {
	s.mu.Lock()
	s.ended = true
	s.mu.Unlock()
	signal(s.wake)
	select {
	case <-s.done:
	case <-time.After(endsWithin):
		if keep {
			return fmt.Errorf("the disk did not confirm the journal %s in time", report.Printable(s.name))
		}
	}
	if keep {
		return errors.Join(s.Trouble(), s.file.Close())
	}
	return s.remove()
}

// remove takes the journal away while it is still held, where the system lets
// it. One that another session has under this name by now stays.
func (s *Session) remove() error {
	if !s.inPlace() {
		return s.file.Close()
	}
	if runtime.GOOS == "windows" {
		return errors.Join(s.file.Close(), os.Remove(s.name))
	}
	return errors.Join(os.Remove(s.name), s.file.Close())
}

// inPlace reports whether the journal is still where the next session looks.
func (s *Session) inPlace() bool {
	mine, err := s.file.Stat()
	there, lost := os.Stat(s.name)
	return err == nil && lost == nil && os.SameFile(mine, there)
}

// triesAgain is how long after a failure the last state is tried once more.
const triesAgain = 2 * time.Second

// run keeps what is put, all that has gathered at once. It does not wait for
// the disk to confirm, so that a kill costs nothing while the disk is slow.
func (s *Session) run() {
	confirmed := make(chan struct{})
	go s.confirm(confirmed)
	var failed []step
	for ended := false; !ended; {
		var again <-chan time.Time
		if failed != nil {
			again = time.After(triesAgain)
		}
		select {
		case <-s.wake:
			s.letTheFrameGo()
		case <-again:
		}
		s.mu.Lock()
		steps := append(failed, s.queue...)
		s.queue, ended = nil, s.ended
		s.mu.Unlock()
		if failed = nil; len(steps) > 0 {
			if err := s.keep(steps); s.noteKept(err, len(steps)) != nil {
				failed = steps
			}
			signal(s.dirty)
		}
	}
	close(s.dirty)
	<-confirmed
	close(s.done)
}

// frameGoes is about as long as a frame takes: what is kept is written out behind
// it, and not beside it on a machine of few processors.
const frameGoes = 15 * time.Millisecond

func (s *Session) letTheFrameGo() {
	s.mu.Lock()
	ended := s.ended
	s.mu.Unlock()
	if !ended {
		time.Sleep(frameGoes)
	}
}

// confirm makes what was kept outlast a power cut.
func (s *Session) confirm(done chan<- struct{}) {
	for range s.dirty {
		err := s.w.Sync()
		if err == nil && !s.inPlace() {
			err = fmt.Errorf("the journal %s was removed or renamed by another program", report.Printable(s.name))
		}
		s.mu.Lock()
		s.unsure = err
		s.mu.Unlock()
	}
	close(done)
}

func (s *Session) noteKept(err error, steps int) error {
	s.mu.Lock()
	defer s.mu.Unlock()
	if s.unkept = err; err == nil {
		s.written += steps
	}
	return err
}

// signal wakes who waits; one signal is enough for all that has gathered.
func signal(c chan<- struct{}) {
	select {
	case c <- struct{}{}:
	default:
	}
}

// keep writes what gathered: of edits that followed one another only the last
// state, with the names of all, so that it never falls behind. A fault in
// writing a state down must not end the program.
func (s *Session) keep(steps []step) (err error) {
	defer func() {
		if p := recover(); p != nil {
			err = fmt.Errorf("a fault of the program: %v", p)
		}
	}()
	var edits []journal.Edit
	saved := false
	for i, next := range steps {
		if next.saved {
			edits, saved = nil, true
		}
		if next.study != nil {
			edits = append(edits, next.edit)
		}
		if i < len(steps)-1 && !steps[i+1].saved {
			continue
		}
		if err = s.write(saved, next.study, edits); err != nil {
			return err
		}
		edits, saved = nil, false
	}
	return nil
}

func (s *Session) write(saved bool, state *model.Study, edits []journal.Edit) error {
	var text []byte
	if len(edits) > 0 {
		text = Encode(state)
	}
	if saved {
		return s.w.Saved(fingerprint(s.study), text, edits...)
	}
	return s.w.Add(text, edits...)
}

package store

import (
	"bytes"
	"crypto/sha256"
	"errors"
	"io/fs"
	"os"
	"path/filepath"
	"strings"
	"sync"

	"backspan/model"
	"backspan/store/report"
)

// ErrChanged marks a refused save: the file is not what was last read or
// written here.
var ErrChanged = errors.New("the file changed on disk")

// Folder opens and saves the studies of one folder. It remembers what it read
// and wrote, so that a save never goes over somebody else's change. Paths are
// taken as the operating system takes them, not relative to the folder. It is
// safe for concurrent use.
type Folder struct {
	dir  string
	disk disk

	mu   sync.Mutex
	seen map[string]memory // by absolute path
}

// memory is what is known of a file.
type memory struct {
	sum  [sha256.Size]byte // of its bytes
	ours bool              // Encode wrote them; else whether a person did is not known yet
}

// byPerson reports whether a file's bytes are not what Encode would have written.
func byPerson(path string, src []byte) bool {
	s, err := Decode(path, src)
	return err != nil || !bytes.Equal(src, Encode(s))
}

// NewFolder is the folder dir, which need not exist yet.
func NewFolder(dir string) *Folder {
	return &Folder{dir: dir, disk: realDisk{}, seen: map[string]memory{}}
}

// Open reads a study. The error is Problems when the file could be read but
// holds no sound study; the file stays as it is. A file of a newer format
// gives a *Newer and what could be read of it; it cannot be saved over.
func (f *Folder) Open(path string) (*model.Study, error) {
	src, err := read(path)
	if err != nil {
		return nil, err
	}
	s, err := Glance(path, src)
	if err != nil {
		return s, err
	}
	f.remember(path, memory{sum: sha256.Sum256(src)})
	return s, nil
}

// Read looks at a study; a save is still judged by what was opened.
func (f *Folder) Read(path string) (*model.Study, error) {
	src, err := read(path)
	if err != nil {
		return nil, err
	}
	return Decode(path, src)
}

// OpenText reads a file that SaveText may write over, be it a sound study or
// not.
func (f *Folder) OpenText(path string) ([]byte, error) {
	src, err := read(path)
	if err == nil {
		f.remember(path, memory{sum: sha256.Sum256(src)})
	}
	return src, err
}

// Save writes a study over the file at path, which must hold what was last
// read or written here. What a person wrote in it by hand is kept in a backup
// beside it; the note says so. On error the file is as it was.
func (f *Folder) Save(path string, s *model.Study) (note string, err error) {
	data, err := encodeSound(path, s)
	if err != nil {
		return "", err
	}
	return f.put(path, data, s.VersionsKept, memory{sha256.Sum256(data), true}, "because a save writes comments and spelling anew")
}

// SaveText is Save for a study as a person wrote it: its bytes go into the
// file as they are. The error is Problems when they are no sound study.
func (f *Folder) SaveText(path string, src []byte) (note string, err error) {
	s, err := Decode(path, src)
	if err != nil {
		return "", err
	}
	return f.put(path, src, s.VersionsKept, memory{sum: sha256.Sum256(src)}, "as it was before this change")
}

// put writes over the file and keeps what was there.
func (f *Folder) put(path string, data []byte, versions int, becomes memory, why string) (note string, err error) {
	was, known := f.recall(path)
	if !known {
		return "", refusal(path, nil, "not saved: it was not opened here; save under a new name")
	}
	real, err := filepath.EvalSymlinks(path)
	if err != nil {
		return "", gone(path, err)
	}
	unlock, err := lock(filepath.Dir(real))
	if err != nil {
		return "", notSaved(path, err)
	}
	defer unlock()
	old, mode, err := f.unchanged(path, real, was)
	if err != nil {
		return "", err
	}
	if bytes.Equal(old, data) {
		return "", f.wrote(path, becomes, confirm(f.disk, real))
	}
	own := !was.ours && byPerson(path, old)
	if own {
		if raised(old, data) {
			why = "which is in an older format; a Backspan of that time only shows the one written now, and changes it no more"
		}
		if note, err = f.backup(real, old, mode, why); err != nil {
			return "", refusal(path, err, "not saved, because what was written by hand could not be kept beside it: %s", reason(err))
		}
	} else if err := f.keepVersion(real, old, mode, versions); err != nil {
		note = "the version before could not be kept: " + reason(err)
	}
	note = also(note, olderVersions(path, real, old, own, versions))
	note = also(note, otherNames(real))
	lost, err := replace(f.disk, real, data, mode, func() error {
		_, _, err := f.unchanged(path, real, was)
		return err
	})
	return also(note, lost), f.wrote(path, becomes, err)
}

// confirm asks the disk once more to make a file outlast a power cut.
func confirm(d disk, name string) error {
	if err := d.syncFile(name); err != nil {
		return errors.Join(ErrUnconfirmed, err)
	}
	if err := d.syncDir(filepath.Dir(name)); err != nil {
		return errors.Join(ErrUnconfirmed, err)
	}
	return nil
}

// Create writes a study to a file that does not exist yet.
func (f *Folder) Create(path string, s *model.Study) (note string, err error) {
	data, err := encodeSound(path, s)
	if err != nil {
		return "", err
	}
	if !strings.EqualFold(filepath.Ext(path), extension) {
		note = report.Printable(filepath.Base(path)) + " does not end in " + extension + ", so it will not be among the folder's studies"
	}
	return note, f.wrote(path, memory{sha256.Sum256(data), true}, create(f.disk, path, data, nil))
}

// encodeSound refuses what could not be read back.
func encodeSound(path string, s *model.Study) ([]byte, error) {
	data := Encode(s)
	back, err := Decode(path, data)
	if err != nil {
		return nil, refusal(path, err, "not saved, because it could not be opened again: %s", faultsOf(err))
	}
	if !bytes.Equal(Encode(back), data) {
		return nil, refusal(path, nil, "not saved, because it would not read back as it is")
	}
	return data, nil
}

// unchanged returns the bytes and mode of the file when they are the
// remembered ones and may be written over.
func (f *Folder) unchanged(path, real string, was memory) ([]byte, fs.FileMode, error) {
	info, err := os.Stat(real)
	if err != nil {
		return nil, 0, gone(path, err)
	}
	if info.Mode().Perm()&0o200 == 0 {
		return nil, 0, refusal(path, fs.ErrPermission, "not saved: the file is marked read-only; save under a new name, or allow writing to it")
	}
	now, err := read(real)
	if err != nil {
		return nil, 0, notSaved(path, err)
	}
	if !mayWrite(real) {
		return nil, 0, refusal(path, fs.ErrPermission, "not saved: you may not write to this file; save under a new name, or ask its owner")
	}
	if sha256.Sum256(now) != was.sum {
		return nil, 0, refusal(path, ErrChanged, "not saved: the file was changed by another program since it was opened here; save under a new name, or open it again and lose your changes")
	}
	return now, info.Mode().Perm(), nil
}

// mayWrite is false for a file that is somebody else's to change: that the
// folder lets everybody put another in its place gives no right to.
func mayWrite(name string) bool {
	f, err := os.OpenFile(name, os.O_WRONLY, 0)
	if err == nil {
		err = f.Close()
	}
	return !errors.Is(err, fs.ErrPermission)
}

// wrote notes what is on disk now and words the failure, if any.
func (f *Folder) wrote(path string, becomes memory, err error) error {
	if err == nil || errors.Is(err, ErrUnconfirmed) {
		f.remember(path, becomes)
	}
	if err == nil {
		return nil
	}
	return notSaved(path, err)
}

func (f *Folder) remember(path string, m memory) {
	f.mu.Lock()
	defer f.mu.Unlock()
	f.seen[absolute(path)] = m
}

func (f *Folder) recall(path string) (memory, bool) {
	f.mu.Lock()
	defer f.mu.Unlock()
	m, ok := f.seen[absolute(path)]
	return m, ok
}

func absolute(path string) string {
	if abs, err := filepath.Abs(path); err == nil {
		return abs
	}
	return filepath.Clean(path)
}

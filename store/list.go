package store

import (
	"os"
	"path/filepath"
	"strings"
)

const extension = ".toml"

// List returns the studies of the folder by file name: every *.toml file that
// is one, or was meant to be one and says in Problem why it cannot be opened.
func (f *Folder) List() ([]Entry, error) {
	found, err := os.ReadDir(f.dir)
	if err != nil {
		return nil, unreadable(f.dir, err)
	}
	var entries []Entry
	for _, d := range found {
		name := d.Name()
		if strings.HasPrefix(name, ".") || !strings.EqualFold(filepath.Ext(name), extension) {
			continue
		}
		path := filepath.Join(f.dir, name)
		info, err := os.Stat(path)
		if err != nil || !info.Mode().IsRegular() {
			continue // removed just now, a dangling link, or a folder
		}
		e := Entry{Path: path, File: name, Modified: info.ModTime()}
		if fill(&e) {
			entries = append(entries, e)
		}
	}
	return entries, nil
}

// fill reads what a list shows of a file; false when it is another kind of
// TOML file.
func fill(e *Entry) bool {
	src, err := read(e.Path)
	if err != nil {
		e.Problem = faultsOf(err)
		return true
	}
	s, err := Decode(e.Path, src)
	if err != nil {
		e.Problem = faultsOf(err)
		return meantAsStudy(src)
	}
	e.Name, e.Variants = s.Name, len(s.Variants)
	return true
}

// meantAsStudy is false for a readable file with nothing of a study in it.
// What cannot be read at all, such as a file of zeros after a crash, may have
// been one.
func meantAsStudy(src []byte) bool {
	text, unreadable := textOf("", src)
	return unreadable != nil || likeStudy(text, outlineOf(text))
}

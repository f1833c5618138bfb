package store

import "time"

// Entry is one study file of a folder.
type Entry struct {
	Path     string // as to be given to Open
	File     string // base name
	Name     string // the study's own name
	Variants int
	Modified time.Time
	Problem  string // why it cannot be opened; empty when it can
}

package main

import (
	"os"
	"path/filepath"

	"backspan/tui"
)

// greet lets the bench offer its tour the first time that this person sees the
// sample. A state folder that cannot be written leaves it unsaid, for it could
// not be said once only.
func (p program) greet(o *tui.Options) {
	if o.Path != "" || o.Newer != nil {
		return
	}
	state, err := p.stateFolder()
	if err != nil {
		return
	}
	mark := filepath.Join(state, "tour-offered")
	if _, err := os.Stat(mark); !os.IsNotExist(err) {
		return
	}
	o.Greet = true
	o.Greeted = func() { _ = os.WriteFile(mark, nil, 0o600) }
}

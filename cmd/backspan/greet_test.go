package main

import (
	"os"
	"path/filepath"
	"testing"

	"backspan/store"
	"backspan/tui"
)

func TestTheTourIsOfferedOnce(t *testing.T) {
	state := t.TempDir()
	p := program{env: func(name string) string { return map[string]string{"XDG_STATE_HOME": state}[name] }}
	offer := func(o tui.Options) tui.Options { p.greet(&o); return o }
	if offer(tui.Options{Path: "mine.toml"}).Greet || offer(tui.Options{Newer: &store.Newer{}}).Greet {
		t.Error("offered on a study of one's own")
	}
	o := offer(tui.Options{})
	if !o.Greet {
		t.Fatal("not offered on the sample")
	}
	o.Greeted()
	if offer(tui.Options{}).Greet {
		t.Error("offered twice")
	}
	if err := os.RemoveAll(filepath.Join(state, "backspan")); err != nil {
		t.Fatal(err)
	}
	if err := os.WriteFile(filepath.Join(state, "backspan"), nil, 0o600); err != nil {
		t.Fatal(err)
	}
	if offer(tui.Options{}).Greet {
		t.Error("offered though it cannot be remembered")
	}
}

package main

import (
	"bytes"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"backspan/model"
	"backspan/tui"
)

func TestAFaultIsReported(t *testing.T) {
	state := t.TempDir()
	var err bytes.Buffer
	p := program{out: &err, err: &err, env: func(string) string { return state }, dir: t.TempDir()}
	path := write(t, p.dir, "trials.toml", sampleText())
	p.ended(tui.Ending{Path: path, Study: model.Sample(), Unsaved: true, Journaled: true, Fault: &tui.Fault{What: "index out of range", Stack: "goroutine 1\n"}})
	names, _ := filepath.Glob(filepath.Join(state, "backspan", "fault-*.txt"))
	if len(names) != 1 || !strings.Contains(err.String(), names[0]) || !strings.Contains(err.String(), "backspan open "+path) {
		t.Fatalf("%v\n%s", names, err.String())
	}
	text, readErr := os.ReadFile(names[0])
	for _, want := range []string{"index out of range", "goroutine 1", "name = \"Belt 190\"", "file: " + path} {
		if readErr != nil || !strings.Contains(string(text), want) {
			t.Errorf("the report does not say %q, %v", want, readErr)
		}
	}
}

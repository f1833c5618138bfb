package main

import (
	"fmt"
	"os"
	"path/filepath"
	"time"

	"backspan/store"
	"backspan/store/report"
	"backspan/tui"
)

// reportFault writes what whoever mends the program needs to know, the study
// with it, and says where.
func (p program) reportFault(e tui.Ending) {
	name, err := p.writeFault(e)
	if err != nil {
		fmt.Fprintf(p.err, "backspan: a fault of the program (%s); no report could be written: %v\n", report.Printable(e.Fault.What), err)
		return
	}
	fmt.Fprintf(p.err, "backspan: a fault of the program (%s); the report is in %s. It holds your study: look at it before you pass it on.\n",
		report.Printable(e.Fault.What), report.Printable(name))
}

func (p program) writeFault(e tui.Ending) (name string, err error) {
	state, err := p.stateFolder()
	if err != nil {
		return "", err
	}
	name = filepath.Join(state, "fault-"+time.Now().UTC().Format("20060102-150405.000")+".txt")
	text := fmt.Sprintf("backspan %s\nfault: %s\nfile: %s\n\n%s\nThe study:\n\n%s", buildName(), e.Fault.What, e.Path, e.Fault.Stack, store.Encode(e.Study))
	return name, os.WriteFile(name, []byte(text), 0o600)
}

// Command backspan is the design bench for a foot-launched powerplant: engine,
// reduction drive, propeller and frame.
package main

import (
	"flag"
	"io"
	"os"
)

func main() {
	os.Exit(program{in: os.Stdin, out: os.Stdout, err: os.Stderr, env: os.Getenv, dir: "."}.run(os.Args[1:]))
}

// program is the world a command sees, so that tests can stand in for it.
type program struct {
	in  *os.File
	out io.Writer
	err io.Writer
	env func(string) string
	dir string // where studies are looked for

	declared func(*flag.FlagSet) // takes a command's flags instead of running it
}

// The exit statuses.
const (
	statusFine   = 0
	statusFails  = 1 // a check fails
	statusCannot = 2 // the study or the command line cannot be read
)

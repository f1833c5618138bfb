package main

import (
	"flag"
	"io"
)

// flagsOf lists the flags of a command, as the command itself declares them.
func (p program) flagsOf(c command) []*flag.Flag {
	var flags []*flag.Flag
	p.out, p.err = io.Discard, io.Discard
	p.declared = func(fs *flag.FlagSet) {
		fs.VisitAll(func(f *flag.Flag) { flags = append(flags, f) })
	}
	c.run(p, nil)
	return flags
}

// valued reports whether a flag is followed by a value.
func valued(f *flag.Flag) bool {
	b, ok := f.Value.(interface{ IsBoolFlag() bool })
	return !ok || !b.IsBoolFlag()
}

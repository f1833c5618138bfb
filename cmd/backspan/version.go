package main

import (
	"flag"
	"fmt"
	"runtime"
	"runtime/debug"
)

func (p program) version(args []string) int {
	if _, status, done := p.parse(flag.NewFlagSet("version", flag.ContinueOnError), args, 0); done {
		return status
	}
	fmt.Fprintf(p.out, "backspan %s, %s %s/%s\n", buildName(), runtime.Version(), runtime.GOOS, runtime.GOARCH)
	return statusFine
}

// buildName names the version as the build recorded it: a release, or the commit.
func buildName() string {
	info, ok := debug.ReadBuildInfo()
	if !ok {
		return "of unknown version"
	}
	v := info.Main.Version
	if v != "" && v != "(devel)" {
		return v
	}
	for _, s := range info.Settings {
		if s.Key == "vcs.revision" {
			return "at commit " + s.Value
		}
	}
	return "in development"
}

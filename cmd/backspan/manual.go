package main

import (
	"flag"
	"fmt"
	"strings"
)

func (p program) manual(args []string) int {
	if _, status, done := p.parse(flag.NewFlagSet("manual", flag.ContinueOnError), args, 0); done {
		return status
	}
	fmt.Fprint(p.out, p.manPage())
	return statusFine
}

// manPage is the manual in the macros that man reads.
func (p program) manPage() string {
	var b strings.Builder
	b.WriteString(`.TH BACKSPAN 1
.SH NAME
backspan \- design bench for foot\-launched powerplants
.SH SYNOPSIS
.B backspan
.br
`)
	for _, c := range commands() {
		fmt.Fprintf(&b, ".B backspan %s\n%s.br\n", roff(c.name), line(c.usage))
	}
	b.WriteString(`.SH DESCRIPTION
Alone on a terminal, backspan opens the bench on the study in this folder, or
on the list of studies when there are several, or on the built\-in sample when
there is none. Where output is not a terminal it prints the comparison.
Results go to standard output, messages to standard error.
.SH COMMANDS
`)
	for _, c := range commands() {
		fmt.Fprintf(&b, ".TP\n.B %s %s\n%s\n", roff(c.name), roff(c.usage), roff(c.does))
		for _, f := range p.flagsOf(c) {
			fmt.Fprintf(&b, ".RS\n.TP\n.B \\-\\-%s\n%s\n.RE\n", roff(f.Name), roff(f.Usage))
		}
	}
	b.WriteString(`.SH "EXIT STATUS"
.TP
0
Done; for check: every check holds or is thin.
.TP
1
For check: a check fails. For diff: something differs. For solve and search: nothing was found.
.TP
2
The study or the command line cannot be read.
.SH CAUTIONS
`)
	b.WriteString(roff(cautionText) + "\n")
	return b.String()
}

const cautionText = "Figures are for design and prove no airworthiness: propeller, belt, fuel, hot parts, noise and the load on the back can hurt. Follow local rules and licensed practice."

// line is a line of the manual; nothing makes none.
func line(s string) string {
	if s == "" {
		return ""
	}
	return roff(s) + "\n"
}

// roff makes text fit to stand in a manual: no line begins a request.
func roff(s string) string {
	s = strings.NewReplacer(`\`, `\e`, "-", `\-`).Replace(s)
	if strings.HasPrefix(s, ".") || strings.HasPrefix(s, "'") {
		s = `\&` + s
	}
	return s
}

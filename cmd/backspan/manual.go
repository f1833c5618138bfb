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
`)
	termsOf(&b, "FILES", beside)
	termsOf(&b, "ENVIRONMENT", environment)
	b.WriteString(".SH CAUTIONS\n")
	b.WriteString(roff(cautionText) + "\n")
	return b.String()
}

// term is a word of the manual and what it means.
type term struct{ word, means string }

// beside is what stands beside a study or comes and goes there.
var beside = []term{
	{"NAME.toml.1, NAME.toml.2 ...", "The states saved before, the latest first, as many as versions_kept in the study says. What is more after that was lowered stays until you delete it."},
	{"NAME.toml.bak, NAME.toml.bak2 ...", "The file as it was written by hand, or in an older format, before a save wrote over it."},
	{".NAME.toml.journal", "Edits that are not saved yet. It holds the study against a second bench and goes when the bench is left; after a crash the next bench offers what it holds."},
	{".NAME.toml.journal.left, .NAME.toml.journal.left2 ...", "Such edits, put aside by the next bench, which offers them until they are saved or dropped. What ends in .unread could not be read; nothing removes it but you."},
	{".backspan-*.tmp", "A file while it is being saved. One that a killed program left is removed when a study in the folder is next edited or saved; after a day where it cannot be known that the program ended."},
	{"NAME.rescued.toml", "Work that could be kept nowhere else when the bench was ended from outside."},
}

var environment = []term{
	{"VISUAL, EDITOR", "The editor that edit runs; vi without them."},
	{"XDG_STATE_HOME", "The folder with a folder backspan in it for journals that cannot stand beside their study, for studies in no file yet, and for the copies that edit works on. Without it the user's folder for settings."},
	{"NO_COLOR", "Set to anything, it keeps the bench from using colour."},
	{"LC_ALL, LC_CTYPE, LANG", "The first that is set says whether the terminal shows UTF-8; if not, the bench draws in ASCII."},
}

func termsOf(b *strings.Builder, title string, terms []term) {
	b.WriteString(".SH " + title + "\n")
	for _, t := range terms {
		fmt.Fprintf(b, ".TP\n.B %s\n%s\n", roff(t.word), roff(t.means))
	}
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

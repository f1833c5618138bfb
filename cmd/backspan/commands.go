package main

import (
	"errors"
	"flag"
	"fmt"
	"io"
	"slices"
	"strings"

	"backspan/store/report"
)

// command is one word after "backspan".
type command struct {
	name  string
	usage string // after the name
	does  string
	run   func(p program, args []string) int
}

func commands() []command {
	return []command{
		{"open", "[STUDY]", "open the bench on a study", program.open},
		{"compare", "[STUDY] [--variant NAME ...] [--brief] [--format FORMAT]", "print the variants side by side, with differences from the reference", program.compare},
		{"check", "[STUDY] [--variant NAME ...] [--format FORMAT]", "print every check with its margin, limit and source; exit status 1 when one fails", program.check},
		{"teeth", "[STUDY] [--variant NAME] [--ratio R] [--centre-distance L] [--tolerance P] [--format FORMAT]", "list pairs of gears for a ratio and a centre distance, best first", program.teeth},
		{"ratios", "[STUDY] [--variant NAME] [--from R] [--to R] [--steps N] [--format FORMAT]", "print thrust, climb and tip Mach number over the ratio, the best marked", program.ratios},
		{"tables", "[STUDY] [--variant NAME ...] [--format table|csv|markdown]", "print what is better read as a table: crank speeds to stay out of, forces on bearings, what each piece's depth costs, changes of parts", program.tables},
		{"sheet", "[STUDY] [--variant NAME] [--format table|markdown|html] [--out FILE] [--force]", "write the build sheet of a variant: every dimension for the workshop, and where it comes from", program.sheet},
		{"report", "[STUDY] [--variant NAME ...] [--format html|markdown] --out FILE [--force]", "write a review of the comparison as one file: drawings, curves, figures, assumptions and cautions", program.review},
		{"split", "[STUDY] [--from NAME] [--to NAME] | [--variant A --variant B] [--format FORMAT]", "print where a difference in feel comes from, mass or depth, piece by piece", program.split},
		{"pitch", "[STUDY] [--variant NAME] [--from P] [--to P] [--steps N] [--for GOAL] [--format FORMAT]", "print engine speed, thrust and climb over the propeller's pitch, the best marked", program.pitch},
		{"blade", "[STUDY] [--variant NAME] [--power P | --thrust T] [--airspeed V] [--speed N] [--lift CL] [--save-as NAME] [--format FORMAT]", "design a blade of least induced loss; print its chords and angles, or keep it as a new variant", program.blade},
		{"polar", "[STUDY] --variant NAME --csv FILE", "read a section's polar (alpha, cl, cd, Re) into a variant's propeller", program.polar},
		{"sweep", "[STUDY] [--variant NAME] --over KEY=VALUES [--over KEY=VALUES] [--reading KEY ...] [--part K/N] [--format FORMAT]", "print readings over a range of one or two parameters, and the first check that fails", program.sweep},
		{"solve", "[STUDY] [--variant NAME] --change KEY[=FROM..TO] --reading KEY --to VALUE [--part K/N] [--format FORMAT]", "find the values of a parameter that bring a reading to a target; exit status 1 when there is none", program.solve},
		{"search", "[STUDY] [--variant NAME] --free KEY[=VALUES] ... --goal KEY[=less|more] ... [--at-least KEY=VALUE] [--at-most KEY=VALUE] [--save-as-variants N] [--part K/N] [--format FORMAT]", "look for the best compromises among designs that pass every check; exit status 1 when no design does", program.search},
		{"tolerance", "[STUDY] [--variant NAME] --spread KEY=DOUBT ... [--reading KEY ...] [--samples N] [--part K/N] [--format FORMAT]", "print what doubts in dimensions and methods do to readings and checks, and what moves them most", program.tolerance},
		{"merge", "FILE ... [--format FORMAT]", "put the parts of an exploration together", program.merge},
		{"new", "FILE", "write a study with one variant, every parameter at its default and explained", program.newStudy},
		{"sample", "FILE", "write the built-in sample study", program.sample},
		{"edit", "[STUDY]", "change a study's file in your own editor ($VISUAL or $EDITOR); it is saved only when it is sound", program.edit},
		{"diff", "[STUDY] --variant A --variant B | diff FILE FILE", "print what is set differently between two variants, or between two files; exit status 1 when something is", program.diff},
		{"params", "[--format FORMAT]", "print every parameter with its unit, range, default, origin and help", program.params},
		{"completion", "bash|zsh|fish", "print the completion of this command line for a shell", program.completion},
		{"manual", "", "print the manual page, for man", program.manual},
		{"version", "", "print the version", program.version},
	}
}

func (p program) run(args []string) int {
	if len(args) == 1 && args[0] == "--version" {
		return p.version(nil)
	}
	if len(args) == 0 || strings.HasPrefix(args[0], "-") && !isHelp(args[0]) {
		return p.openOrCompare(args)
	}
	if isHelp(args[0]) || args[0] == "help" {
		if len(args) > 1 {
			return p.run([]string{args[1], "--help"})
		}
		p.help(p.out)
		return statusFine
	}
	i := slices.IndexFunc(commands(), func(c command) bool { return c.name == args[0] })
	if i < 0 {
		return p.cannot(fmt.Errorf("unknown command %q; \"backspan --help\" lists the commands. To open a study: backspan open %s", args[0], report.Printable(args[0])))
	}
	return commands()[i].run(p, args[1:])
}

func isHelp(s string) bool { return s == "-h" || s == "-help" || s == "--help" }

func (p program) help(w io.Writer) {
	fmt.Fprint(w, `backspan: a design bench for foot-launched powerplants

  backspan        the bench on the study in this folder, else on the built-in
                  sample; prints the comparison when output is not a terminal
`)
	for _, c := range commands() {
		fmt.Fprintf(w, "  backspan %s\n                  %s\n", strings.TrimSpace(c.name+" "+c.usage), c.does)
	}
	fmt.Fprint(w, `
STUDY is a TOML file; without it, the only study in this folder, else the
sample. FORMAT is table, json, csv or markdown. "backspan COMMAND --help" says
more. Figures are for design and prove no airworthiness; follow local rules
and licensed practice.
`)
}

// cannot says why not. Whatever an error quotes, its lines command no terminal.
func (p program) cannot(err error) int {
	lines := strings.Split(err.Error(), "\n")
	for i := range lines {
		lines[i] = report.Printable(lines[i])
	}
	fmt.Fprintf(p.err, "backspan: %s\n", strings.Join(lines, "\n"))
	return statusCannot
}

// words is a flag that may be given several times.
type words []string

func (w *words) String() string     { return strings.Join(*w, ", ") }
func (w *words) Set(s string) error { *w = append(*w, s); return nil }

// parse reads flags and other words in any order. done means that help was
// shown or the line was refused, with the status to leave with.
func (p program) parse(fs *flag.FlagSet, args []string, most int) (rest []string, status int, done bool) {
	if p.declared != nil {
		p.declared(fs)
		return nil, statusFine, true
	}
	fs.SetOutput(io.Discard)
	for {
		err := fs.Parse(args)
		if errors.Is(err, flag.ErrHelp) {
			p.commandHelp(fs)
			return nil, statusFine, true
		}
		if err != nil {
			return nil, p.cannot(fmt.Errorf("%s: %w; \"backspan %s --help\" says more", fs.Name(), err, fs.Name())), true
		}
		if fs.NArg() == 0 {
			break
		}
		rest, args = append(rest, fs.Arg(0)), fs.Args()[1:]
	}
	if len(rest) > most {
		return nil, p.cannot(fmt.Errorf("%s: too many words: %s", fs.Name(), strings.Join(rest[most:], " "))), true
	}
	return rest, statusFine, false
}

func (p program) commandHelp(fs *flag.FlagSet) {
	for _, c := range commands() {
		if c.name == fs.Name() {
			fmt.Fprintf(p.out, "backspan %s\n  %s\n", strings.TrimSpace(c.name+" "+c.usage), c.does)
		}
	}
	fs.VisitAll(func(f *flag.Flag) { fmt.Fprintf(p.out, "  --%-9s %s\n", f.Name, f.Usage) })
}

func first(rest []string) string {
	if len(rest) == 0 {
		return ""
	}
	return rest[0]
}

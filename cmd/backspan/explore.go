package main

import (
	"context"
	"errors"
	"flag"
	"fmt"
	"os"
	"os/signal"
	"runtime/debug"
	"strconv"
	"strings"

	"backspan/model"
	"backspan/model/explore"
	"backspan/store"
	"backspan/store/report"

	"github.com/mattn/go-isatty"
)

// asked is a question to the model as it was put: a row of records, and the
// sheet that shows them.
type asked[R any] struct {
	what  string // what is counted on the way: "designs"
	total int    // records
	steps int    // counted for each record
	run   func(ctx context.Context, span explore.Span, step func(), take func(R) error) error
	sheet func(rs []R) (s report.Sheet, status int)
}

// stepping counts a step for each record.
func stepping[R any](run func(ctx context.Context, span explore.Span, take func(R) error) error) func(context.Context, explore.Span, func(), func(R) error) error {
	return func(ctx context.Context, span explore.Span, step func(), take func(R) error) error {
		return run(ctx, span, func(r R) error { step(); return take(r) })
	}
}

// question is what a command line asks, kept in part files: its exported
// fields and the study make the same question again.
type question[R any] interface {
	put(s *model.Study, v *model.Variant) (asked[R], error)
}

// exploration is what the commands that explore have in common.
type exploration struct {
	variant, part, out *string
	study              *model.Study
	at                 *model.Variant
	path               string // of the study; empty for the sample
	format             report.Format
}

func exploring(fs *flag.FlagSet) *exploration {
	return &exploration{
		variant: fs.String("variant", "", "the machine looked at; without it the reference"),
		part:    fs.String("part", "", "K/N works only part K of N into a file; \"backspan merge\" puts the parts together"),
		out:     fs.String("out", "", "the file a part is written to; without it a name such as "+fs.Name()+"-1-of-4.part"),
	}
}

// begin reads the rest of the command line and the study.
func (e *exploration) begin(p program, fs *flag.FlagSet, args []string) (status int, done bool) {
	format := formatFlag(fs)
	rest, status, done := p.parse(fs, args, 1)
	if done {
		return status, true
	}
	if *e.out != "" && *e.part == "" {
		return p.cannot(fmt.Errorf("%s: --out names the file of a part, so it goes with --part K/N; the whole answer is printed: send it into a file with \">\"", fs.Name())), true
	}
	var err error
	if e.format, err = report.ParseFormat(*format); err == nil {
		e.study, e.path, err = findIn(store.NewFolder(p.dir), first(rest))
	}
	if err == nil {
		e.at, err = machineOf(e.study, *e.variant)
	}
	if err != nil {
		return p.cannot(err), true
	}
	return statusFine, false
}

func machineOf(s *model.Study, name string) (*model.Variant, error) {
	i, err := pick(s, name)
	if err != nil {
		return nil, err
	}
	return &s.Variants[i], nil
}

// wasteAllowed lets four times as much be thrown away between two clearings as
// is kept: designs are short-lived, and what is kept of them is little.
const wasteAllowed = 400

// answer works the question whole and shows it, or one part of it into a file.
func answer[R any](p program, e *exploration, name string, q question[R]) (rs []R, status int) {
	a, err := q.put(e.study, e.at)
	if err != nil {
		return nil, p.cannot(fmt.Errorf("%s: %w", name, err))
	}
	ctx, stop := signal.NotifyContext(context.Background(), os.Interrupt)
	defer stop()
	defer debug.SetGCPercent(debug.SetGCPercent(wasteAllowed))
	if *e.part != "" {
		return nil, p.done(writePart(ctx, p, e, name, q, a))
	}
	shown := p.progress(a.what, a.total*a.steps)
	err = a.run(ctx, explore.Span{To: a.total}, shown.step, func(r R) error { rs = append(rs, r); return nil })
	shown.end()
	if errors.Is(err, context.Canceled) {
		err = fmt.Errorf("%s: stopped after %d of %d %s", name, shown.now, shown.total, a.what)
	}
	if err != nil {
		return nil, p.cannot(err)
	}
	return rs, show(p, a, rs, e.format)
}

func (p program) done(err error) int {
	if err != nil {
		return p.cannot(err)
	}
	return statusFine
}

func show[R any](p program, a asked[R], rs []R, f report.Format) int {
	sheet, status := a.sheet(rs)
	sheet.Note += " " + explore.Caution
	if err := sheet.Write(p.out, f); err != nil {
		return p.cannot(err)
	}
	return status
}

// partOf reads "K/N".
func partOf(text string, total int) (span explore.Span, k, n int, err error) {
	a, b, _ := strings.Cut(text, "/")
	k, notK := strconv.Atoi(strings.TrimSpace(a))
	n, notN := strconv.Atoi(strings.TrimSpace(b))
	if notK != nil || notN != nil || k < 1 || k > n {
		return span, 0, 0, fmt.Errorf("--part %q: give the part and how many there are, for example 1/4", report.Printable(text))
	}
	if n > total {
		return span, 0, 0, fmt.Errorf("--part %s: there is only enough for %d parts", text, total)
	}
	return explore.Part(k, n, total), k, n, nil
}

// progress is how far a long question is, on a terminal only.
type progress struct {
	to                *os.File
	what              string
	total, now, shown int
}

func (p program) progress(what string, total int) *progress {
	f, ok := p.err.(*os.File)
	if !ok || !isatty.IsTerminal(f.Fd()) {
		f = nil
	}
	return &progress{to: f, what: what, total: total}
}

func (g *progress) step() {
	g.now++
	if percent := 100 * g.now / g.total; g.to != nil && percent != g.shown {
		g.shown = percent
		fmt.Fprintf(g.to, "\r%d of %d %s, %d %%", g.now, g.total, g.what, percent)
	}
}

func (g *progress) end() {
	if g.to != nil && g.shown > 0 {
		fmt.Fprint(g.to, "\r\x1b[K")
	}
}

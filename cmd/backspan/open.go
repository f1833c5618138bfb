package main

import (
	"context"
	"errors"
	"flag"
	"fmt"
	"os"
	"path/filepath"
	"runtime"
	"strings"

	"backspan/model"
	"backspan/store"
	"backspan/tui"

	"github.com/charmbracelet/lipgloss"
	"github.com/mattn/go-isatty"
	"github.com/muesli/termenv"
)

// openOrCompare is "backspan" alone: the bench on a terminal, the comparison
// elsewhere.
func (p program) openOrCompare(args []string) int {
	if p.terminal() == nil {
		return p.open(args)
	}
	if len(args) > 0 {
		return p.cannot(fmt.Errorf("%s: output is not a terminal; use \"backspan compare\" with options", args[0]))
	}
	return p.compare(nil)
}

func (p program) open(args []string) int {
	fs := flag.NewFlagSet("open", flag.ContinueOnError)
	ascii := fs.Bool("ascii", false, "draw with ASCII characters only")
	color := fs.String("color", "auto", "auto, never or always")
	rest, status, done := p.parse(fs, args, 1)
	if done {
		return status
	}
	if err := p.terminal(); err != nil {
		return p.cannot(err)
	}
	o, err := p.options(first(rest))
	if err != nil {
		return p.cannot(err)
	}
	out := p.out.(*os.File)
	if o.Renderer, err = p.renderer(out, *color); err != nil {
		return p.cannot(err)
	}
	o.ASCII = *ascii || !p.speaksUTF8()
	o.Tmux = p.env("TMUX") != ""
	p.greet(&o)
	o.Journals, o.Aside, o.Ended = p.journals(), p.aside, p.ended
	if err := tui.Run(context.Background(), o, p.in, out); err != nil {
		return p.cannot(err)
	}
	return statusFine
}

// options decides what the bench opens on: the named study, the only one in
// the folder, the list when there are several, the sample when there is none.
func (p program) options(path string) (tui.Options, error) {
	dir := p.dir
	if path != "" {
		dir = filepath.Dir(path)
	}
	folder := store.NewFolder(dir)
	o := tui.Options{Shelf: folder}
	if path == "" {
		entries, err := folder.List()
		if err != nil {
			return o, err
		}
		switch len(entries) {
		case 0:
			o.Study = model.Sample()
			return o, nil
		case 1:
			path = entries[0].Path
		default:
			o.ChooseFirst = true
			o.Study = model.Sample()
			return o, nil
		}
	}
	s, err := folder.Open(path)
	o.Study, o.Path = s, path
	switch {
	case errors.As(err, &o.Newer):
		o.Path, err = "", nil
	case err != nil:
		// The work on a file that is gone or broken is not lost with it.
		if left := p.journals().Salvage(path); left != nil {
			o.Study, o.Path = left.Study, ""
			o.Notice = fmt.Sprintf("%v. This is the work on it that was not saved, in no file yet: save it under a new name.", err)
			err = nil
		}
	}
	return o, err
}

// terminal says why the bench cannot run here, or nil when it can.
func (p program) terminal() error {
	out, ok := p.out.(*os.File)
	if !ok || p.in == nil || !isatty.IsTerminal(out.Fd()) || !isatty.IsTerminal(p.in.Fd()) {
		return fmt.Errorf("the bench needs a terminal; use \"backspan compare\" or \"backspan check\" here")
	}
	if term := p.env("TERM"); term == "" || term == "dumb" {
		return fmt.Errorf("the bench cannot draw on a terminal of type %q; set TERM, or use \"backspan compare\"", term)
	}
	return nil
}

func (p program) renderer(out *os.File, color string) (*lipgloss.Renderer, error) {
	r := lipgloss.NewRenderer(out)
	r.SetHasDarkBackground(true)
	switch color {
	case "auto":
	case "never":
		r.SetColorProfile(termenv.Ascii)
	case "always":
		if r.ColorProfile() == termenv.Ascii {
			r.SetColorProfile(termenv.ANSI)
		}
	default:
		return nil, fmt.Errorf("unknown --color %q; give auto, never or always", color)
	}
	return r, nil
}

// speaksUTF8 reads the locale as POSIX orders it: LC_ALL, LC_CTYPE, LANG.
// Windows has none of these and draws Unicode.
func (p program) speaksUTF8() bool {
	if runtime.GOOS == "windows" {
		return true
	}
	for _, name := range []string{"LC_ALL", "LC_CTYPE", "LANG"} {
		if v := strings.ToUpper(p.env(name)); v != "" {
			return strings.Contains(v, "UTF-8") || strings.Contains(v, "UTF8")
		}
	}
	return false
}

package main

import (
	"bufio"
	"bytes"
	"cmp"
	"context"
	"errors"
	"flag"
	"fmt"
	"os"
	"os/exec"
	"os/signal"
	"path/filepath"
	"runtime"
	"strings"
	"syscall"
	"time"

	"backspan/store"
	"backspan/store/report"

	"github.com/mattn/go-isatty"
)

// edit hands a copy of a study's file to the person's editor and takes it back
// when it is sound. Nothing that was typed is lost: a copy that is refused
// stays where it is.
func (p program) edit(args []string) int {
	rest, status, done := p.parse(flag.NewFlagSet("edit", flag.ContinueOnError), args, 1)
	if done {
		return status
	}
	path, err := p.toEdit(first(rest))
	if err == nil && path == "" {
		err = fmt.Errorf("edit: there is no study in this folder; make one first: backspan new my.toml")
	}
	if err != nil {
		return p.cannot(err)
	}
	release, err := p.holdAlone(path)
	if err != nil {
		return p.cannot(fmt.Errorf("%s: not edited: %w", report.Printable(path), err))
	}
	defer release()
	if err := p.editCopy(path); err != nil {
		return p.cannot(err)
	}
	return statusFine
}

// toEdit is the file of that name, which may be broken: this is where it is
// mended. Without a name it is the only study in the folder.
func (p program) toEdit(name string) (string, error) {
	if name != "" {
		return name, nil
	}
	_, path, err := findIn(store.NewFolder(p.dir), "")
	if path != "" {
		err = nil
	}
	return path, err
}

// editCopy lets the person edit until the copy is sound and saved, or until
// they leave it.
func (p program) editCopy(path string) error {
	folder := store.NewFolder(filepath.Dir(path))
	was, err := folder.OpenText(path)
	if err != nil {
		return errors.Join(err, p.keptFor(path))
	}
	if n := store.NewerFormat(was); n > 0 {
		return tooNew(path, n)
	}
	temp, err := p.copyToEdit(path, was)
	if err != nil {
		return err
	}
	fmt.Fprintf(p.err, "editing a copy, %s\n", report.Printable(temp))
	for {
		begun := time.Now()
		failed := p.runEditor(temp)
		now, err := os.ReadFile(temp)
		switch {
		case failed != nil && (err != nil || bytes.Equal(now, was)):
			return errors.Join(failed, p.dropCopy(temp))
		case failed != nil:
			return fmt.Errorf("%w; what was edited is in %s", failed, report.Printable(temp))
		case err != nil:
			return fmt.Errorf("%s: not saved: the editor left no copy that can be read: %w", report.Printable(path), err)
		case bytes.Equal(now, was):
			return p.unchanged(temp, time.Since(begun))
		}
		note, err := folder.SaveText(path, now)
		if err == nil {
			fmt.Fprintf(p.err, "saved in %s\n", report.Printable(path))
			if note != "" {
				fmt.Fprintln(p.err, note)
			}
			return os.RemoveAll(filepath.Dir(temp))
		}
		if errors.Is(err, store.ErrChanged) || !p.again(err) {
			return fmt.Errorf("%w\nnot saved; what was edited is in %s", err, report.Printable(temp))
		}
	}
}

// atOnce is sooner than a person can change a file and close the editor.
const atOnce = time.Second

// unchanged removes the copy, unless an editor that came back at once may have
// it open still in a window.
func (p program) unchanged(temp string, took time.Duration) error {
	if took < atOnce {
		fmt.Fprintf(p.err, "nothing was changed when the editor came back; if it is open still, what you save there goes into %s and not into the study: an editor with a window must be told to wait, often with --wait\n", report.Printable(temp))
		return nil
	}
	fmt.Fprintln(p.err, "nothing was changed")
	return p.dropCopy(temp)
}

// errEnded says that the window was closed, or the program told to end.
var errEnded = errors.New("edit was ended from outside")

// patience is how long an editor that is told to end may take.
const patience = 5 * time.Second

// runEditor runs the editor as a shell would, for it may have arguments. An
// interrupt is the editor's own business.
func (p program) runEditor(file string) error {
	editor := cmp.Or(strings.TrimSpace(p.env("VISUAL")), strings.TrimSpace(p.env("EDITOR")), "vi")
	ctx, stop := signal.NotifyContext(context.Background(), syscall.SIGHUP, syscall.SIGTERM)
	defer stop()
	cmd := exec.CommandContext(ctx, "sh", "-c", editor+` "$1"`, "--", file)
	if runtime.GOOS == "windows" {
		words := strings.Fields(editor)
		cmd = exec.CommandContext(ctx, words[0], append(words[1:], file)...)
	} else {
		cmd.Cancel = func() error { return cmd.Process.Signal(syscall.SIGTERM) }
		cmd.WaitDelay = patience
	}
	cmd.Stdin, cmd.Stdout, cmd.Stderr = p.in, p.out, p.err
	interrupts := make(chan os.Signal, 1) // caught, not ignored: the editor would be born ignoring them too
	signal.Notify(interrupts, os.Interrupt)
	defer signal.Stop(interrupts)
	err := cmd.Run()
	if ctx.Err() != nil {
		return errEnded
	}
	if err != nil {
		return fmt.Errorf("the editor %q failed: %w", report.Printable(editor), err)
	}
	return nil
}

// again shows what is wrong and asks whether to go on editing.
func (p program) again(problem error) bool {
	return p.yes(fmt.Sprintf("%v\nEdit it again?", problem), true)
}

// yes asks; an empty answer is the usual one. Without a terminal there is
// nobody to ask, and it is no.
func (p program) yes(question string, usual bool) bool {
	if p.in == nil || !isatty.IsTerminal(p.in.Fd()) {
		return false
	}
	offered := "[y/N]"
	if usual {
		offered = "[Y/n]"
	}
	fmt.Fprintf(p.err, "%s %s ", question, offered)
	answer, err := bufio.NewReader(p.in).ReadString('\n')
	switch word := strings.ToLower(strings.TrimSpace(answer)); {
	case err != nil:
		return false
	case word == "":
		return usual
	default:
		return strings.HasPrefix(word, "y")
	}
}

package main

import (
	"bufio"
	"cmp"
	"flag"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"strings"

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
	_, path, err := findIn(store.NewFolder(p.dir), first(rest))
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

// editCopy lets the person edit until the copy is sound and saved, or until
// they leave it.
func (p program) editCopy(path string) error {
	folder := store.NewFolder(filepath.Dir(path))
	if _, err := folder.Open(path); err != nil {
		return err
	}
	was, err := os.ReadFile(path)
	if err != nil {
		return err
	}
	temp, err := copyOf(path, was)
	if err != nil {
		return err
	}
	for {
		if err := p.runEditor(temp); err != nil {
			return fmt.Errorf("%w; what was edited is in %s", err, report.Printable(temp))
		}
		now, err := os.ReadFile(temp)
		if err != nil {
			return err
		}
		if string(now) == string(was) {
			fmt.Fprintln(p.err, "nothing was changed")
			return os.RemoveAll(filepath.Dir(temp))
		}
		note, err := folder.SaveText(path, now)
		if err == nil {
			fmt.Fprintf(p.err, "saved in %s\n", report.Printable(path))
			if note != "" {
				fmt.Fprintln(p.err, note)
			}
			return os.RemoveAll(filepath.Dir(temp))
		}
		if !p.again(err) {
			return fmt.Errorf("%w\nnot saved; what was edited is in %s", err, report.Printable(temp))
		}
	}
}

// copyOf is a file of the same name, so that an editor knows its kind.
func copyOf(path string, src []byte) (string, error) {
	dir, err := os.MkdirTemp("", "backspan-")
	if err != nil {
		return "", err
	}
	temp := filepath.Join(dir, filepath.Base(path))
	return temp, os.WriteFile(temp, src, 0o600)
}

// runEditor runs the editor as a shell would, for it may have arguments.
func (p program) runEditor(file string) error {
	words := strings.Fields(cmp.Or(p.env("VISUAL"), p.env("EDITOR"), "vi"))
	cmd := exec.Command(words[0], append(words[1:], file)...) //nolint:gosec // the person's own choice
	cmd.Stdin, cmd.Stdout, cmd.Stderr = p.in, p.out, p.err
	if err := cmd.Run(); err != nil {
		return fmt.Errorf("the editor %q failed: %w", report.Printable(words[0]), err)
	}
	return nil
}

// again shows what is wrong and asks whether to go on editing. Without a
// terminal there is nobody to ask.
func (p program) again(problem error) bool {
	if p.in == nil || !isatty.IsTerminal(p.in.Fd()) {
		return false
	}
	fmt.Fprintf(p.err, "%v\nEdit it again? [Y/n] ", problem)
	answer, err := bufio.NewReader(p.in).ReadString('\n')
	return err == nil && !strings.HasPrefix(strings.ToLower(strings.TrimSpace(answer)), "n")
}

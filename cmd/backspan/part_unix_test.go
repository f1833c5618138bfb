//go:build unix

package main

import (
	"bytes"
	"context"
	"errors"
	"os"
	"path/filepath"
	"strings"
	"syscall"
	"testing"

	"backspan/model/explore"
)

func TestWhereAPartGoes(t *testing.T) {
	for _, tc := range []struct {
		args []string
		says string
	}{
		{[]string{"--out", "x.part"}, "--part K/N"},
		{[]string{"--part", "1/2", "--out", "new.toml"}, ".toml is the ending of a study"},
		{[]string{"--part", "1/2", "--out", "NEW.TOML"}, ".toml is the ending of a study"},
	} {
		dir := t.TempDir()
		s := run(t, dir, append([]string{"sweep", "--over", "drive.kind"}, tc.args...)...)
		if s.status != statusCannot || s.out != "" || !strings.Contains(s.err, tc.says) {
			t.Errorf("%v: %+v", tc.args, s)
		}
		if left, err := os.ReadDir(dir); err != nil || len(left) > 0 {
			t.Errorf("%v left %v, %v", tc.args, left, err)
		}
	}
}

// A pipe is refused, not waited for.
func TestMergeRefusesAPipe(t *testing.T) {
	dir := t.TempDir()
	if err := syscall.Mkfifo(filepath.Join(dir, "a.part"), 0o600); err != nil {
		t.Fatal(err)
	}
	for _, name := range []string{"a.part", "."} {
		if s := run(t, dir, "merge", name); s.status != statusCannot || !strings.Contains(s.err, "is not an ordinary file") {
			t.Errorf("%s: %+v", name, s)
		}
	}
}

// A full disk is told of once, whether it is met while records are written or
// at the end.
func TestFullDiskIsToldOfOnce(t *testing.T) {
	for _, records := range []int{1, 10_000} {
		full, err := os.OpenFile("/dev/full", os.O_WRONLY, 0)
		if err != nil {
			t.Skip(err)
		}
		a := asked[string]{total: records, run: func(_ context.Context, _ explore.Span, _ func(), take func(string) error) error {
			for range records {
				if err := take("a record"); err != nil {
					return err
				}
			}
			return nil
		}}
		err = fill(context.Background(), full, partHead{}, a, explore.Span{To: records}, program{err: &bytes.Buffer{}}.progress("", records))
		if !errors.Is(err, syscall.ENOSPC) || strings.Count(err.Error(), "no space") != 1 {
			t.Errorf("%d records: %v", records, err)
		}
		if _, err := full.Write(nil); !errors.Is(err, os.ErrClosed) {
			t.Errorf("the file is open still: %v", err)
		}
	}
}

package store

import (
	"errors"
	"io"
	"os"
)

// read returns a file's bytes, or one sentence why it cannot be a study.
func read(path string) ([]byte, error) {
	info, err := os.Stat(path)
	switch {
	case err != nil:
		return nil, unreadable(path, err)
	case info.IsDir():
		return nil, refusal(path, nil, "is a folder; give the file of a study in it")
	case !info.Mode().IsRegular():
		return nil, refusal(path, nil, "is not an ordinary file; give the file of a study")
	case info.Size() > mostBytes:
		return nil, refusal(path, nil, tooBig)
	}
	file, err := os.Open(path)
	if err != nil {
		return nil, unreadable(path, err)
	}
	src, err := io.ReadAll(io.LimitReader(file, mostBytes+1))
	if err = errors.Join(err, file.Close()); err != nil {
		return nil, unreadable(path, err)
	}
	return src, nil
}

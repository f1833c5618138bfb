package store

import (
	"bytes"
	"errors"
	"fmt"
	"io/fs"
	"path/filepath"

	"backspan/store/report"
)

// mostBackups is how many hand-written versions of one file are kept before a
// person is asked to tidy up.
const mostBackups = 999

// backup keeps old beside the file it came from, under the first name that is
// free or holds the same bytes already.
func (f *Folder) backup(name string, old []byte, mode fs.FileMode, why string) (note string, err error) {
	for n := 1; n <= mostBackups; n++ {
		kept := name + ".bak"
		if n > 1 {
			kept += fmt.Sprint(n)
		}
		there, err := readRegular(kept, mostBytes+1)
		switch {
		case err == nil && bytes.Equal(there, old):
			return backupNote(kept, why), nil
		case err == nil || !errors.Is(err, fs.ErrNotExist):
			continue
		}
		err = create(f.disk, kept, old, &mode)
		if errors.Is(err, fs.ErrExist) {
			continue // made by somebody else just now
		}
		if err != nil {
			return "", err
		}
		return backupNote(kept, why), nil
	}
	return "", fmt.Errorf("there are %d backups of it already; move some away", mostBackups)
}

func backupNote(kept, why string) string {
	return fmt.Sprintf("the file as it was written by hand is kept in %s, %s", report.Printable(filepath.Base(kept)), why)
}

//go:build unix

package store

import (
	"fmt"
	"io/fs"
	"os"
	"syscall"
)

// sameOwner gives a file the owner and the group of the one that it is going
// to replace, as far as this person may; a group that shares a study keeps it.
func sameOwner(file, like string) {
	mine, there := ids(os.Lstat(file)), ids(os.Stat(like))
	if mine == nil || there == nil || mine.Uid == there.Uid && mine.Gid == there.Gid {
		return
	}
	if os.Chown(file, int(there.Uid), int(there.Gid)) != nil {
		_ = os.Chown(file, -1, int(there.Gid))
	}
}

func ids(info fs.FileInfo, err error) *syscall.Stat_t {
	if err != nil {
		return nil
	}
	stat, _ := info.Sys().(*syscall.Stat_t)
	return stat
}

// otherNames says that a file has more names than one: a save gives the new
// state to this name only.
func otherNames(name string) string {
	if stat := ids(os.Stat(name)); stat != nil && stat.Nlink > 1 {
		return fmt.Sprintf("the file had %d names (hard links); the others keep the state before", stat.Nlink)
	}
	return ""
}

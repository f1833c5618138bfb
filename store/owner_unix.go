//go:build unix

package store

import (
	"fmt"
	"io/fs"
	"os"
	"os/user"
	"syscall"

	"backspan/store/report"
)

// sameOwner gives a file the owner and the group of the one that it is going
// to replace, as far as this person may; a group that shares a study keeps it.
// It says what it could not give.
func sameOwner(d disk, file, like string) (lost []string) {
	mine, there := ids(os.Lstat(file)), ids(os.Stat(like))
	if mine == nil || there == nil || mine.Uid == there.Uid && mine.Gid == there.Gid {
		return nil
	}
	if d.chown(file, int(there.Uid), int(there.Gid)) == nil {
		return nil
	}
	if mine.Uid != there.Uid {
		lost = append(lost, "owner ("+userOf(there.Uid)+")")
	}
	if mine.Gid != there.Gid && d.chown(file, -1, int(there.Gid)) != nil {
		lost = append(lost, "group ("+groupOf(there.Gid)+")")
	}
	return lost
}

func groupOf(gid uint32) string {
	id := fmt.Sprint(gid)
	if g, err := user.LookupGroupId(id); err == nil {
		return report.Printable(g.Name)
	}
	return id
}

func userOf(uid uint32) string {
	id := fmt.Sprint(uid)
	if u, err := user.LookupId(id); err == nil {
		return report.Printable(u.Username)
	}
	return id
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

//go:build linux || darwin || freebsd || netbsd || openbsd || dragonfly

package store

import (
	"errors"
	"fmt"
	"io/fs"
	"os"
	"os/user"
	"syscall"
	"time"
)

// notThroughLinks opens no symbolic link.
const notThroughLinks = syscall.O_NOFOLLOW

// hold keeps other processes from holding the file until it is closed or this
// process ends; false when another one holds it. Where files cannot be held,
// such as on some network file systems, it goes on without.
func hold(f *os.File) (held bool, err error) {
	const tries, pause = 10, 20 * time.Millisecond
	for range tries {
		err = syscall.Flock(int(f.Fd()), syscall.LOCK_EX|syscall.LOCK_NB)
		if !errors.Is(err, syscall.EINTR) && !errors.Is(err, syscall.EWOULDBLOCK) {
			return true, nil
		}
		time.Sleep(pause) // a bench that ends lets go in a moment
	}
	return false, nil
}

// ownerOf names the person whose file it is.
func ownerOf(f fs.FileInfo) string {
	stat, ok := f.Sys().(*syscall.Stat_t)
	if !ok {
		return ""
	}
	id := fmt.Sprint(stat.Uid)
	if u, err := user.LookupId(id); err == nil {
		return u.Username
	}
	return "user " + id
}

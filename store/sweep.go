package store

import (
	"crypto/rand"
	"crypto/sha256"
	"encoding/hex"
	"fmt"
	"os"
	"path/filepath"
	"regexp"
	"strconv"
	"sync"
	"time"
)

// A file that is being written is ".backspan-", where the program runs, its
// number, letters by chance, ".tmp". Where and number tell later whether a
// program that could still need it is there.
const tempStart, tempEnd = ".backspan-", ".tmp"

func tempName() string {
	return fmt.Sprintf("%s%s-%d-%s%s", tempStart, whereabouts(), os.Getpid(), rand.Text(), tempEnd)
}

// somewhere is a place that is not known: a name alone does not tell two
// computers apart.
const somewhere = "somewhere"

// tempShape is that of every name given here or by a version before; another
// file of a person's may begin and end alike.
var tempShape = regexp.MustCompile(`^\.backspan-(([0-9a-z]+)-([0-9]+)-)?([0-9A-Z]+)\.tmp$`)

// whereabouts tells apart the places in which one process number means two
// processes: computers, their starts, and containers on them.
var whereabouts = sync.OnceValue(func() string {
	host, _ := os.Hostname()
	start, err := os.ReadFile("/proc/sys/kernel/random/boot_id")
	container, hidden := os.Readlink("/proc/self/ns/pid")
	return placeOf(host, string(start), container, err == nil && hidden == nil)
})

func placeOf(host, start, container string, known bool) string {
	if !known {
		return somewhere
	}
	sum := sha256.Sum256([]byte(host + "\x00" + start + "\x00" + container))
	return hex.EncodeToString(sum[:4])
}

// longestSave is far longer than any save takes.
const longestSave = 24 * time.Hour

// sweep removes from a folder the files that programs which ended during a
// save left there. What one could still be writing stays; what cannot be
// removed does no harm. now is what the clock that dates the folder's files
// shows, which may be another computer's; the zero time where it is not known.
func sweep(d disk, dir string, now time.Time) {
	entries, err := os.ReadDir(dir)
	if err != nil {
		return
	}
	for _, e := range entries {
		if !e.Type().IsRegular() || !tempShape.MatchString(e.Name()) {
			continue
		}
		info, err := e.Info()
		if err != nil {
			continue
		}
		if writerEnded(e.Name(), whereabouts()) || now.Sub(info.ModTime()) > longestSave {
			_ = d.remove(filepath.Join(dir, e.Name()))
		}
	}
}

// datedBy is the time that the clock of a file's folder gave it just now; the
// zero time where that cannot be told.
func datedBy(name string) time.Time {
	info, err := os.Lstat(name)
	if err != nil {
		return time.Time{}
	}
	return info.ModTime()
}

// writerEnded is true only when it is certain.
func writerEnded(name, here string) bool {
	parts := tempShape.FindStringSubmatch(name)
	if parts == nil || parts[2] != here || here == somewhere {
		return false
	}
	pid, err := strconv.Atoi(parts[3])
	return err == nil && pid > 0 && processEnded(pid)
}

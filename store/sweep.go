package store

import (
	"crypto/rand"
	"crypto/sha256"
	"encoding/hex"
	"fmt"
	"os"
	"path/filepath"
	"strconv"
	"strings"
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
// removed does no harm.
func sweep(d disk, dir string) {
	entries, err := os.ReadDir(dir)
	if err != nil {
		return
	}
	for _, e := range entries {
		if !e.Type().IsRegular() || !strings.HasPrefix(e.Name(), tempStart) || !strings.HasSuffix(e.Name(), tempEnd) {
			continue
		}
		info, err := e.Info()
		if err != nil {
			continue
		}
		if writerEnded(e.Name(), whereabouts()) || time.Since(info.ModTime()) > longestSave {
			_ = d.remove(filepath.Join(dir, e.Name()))
		}
	}
}

// writerEnded is true only when it is certain.
func writerEnded(name, here string) bool {
	parts := strings.Split(strings.TrimPrefix(name, tempStart), "-")
	if len(parts) != 3 || parts[0] != here || here == somewhere {
		return false
	}
	pid, err := strconv.Atoi(parts[1])
	return err == nil && pid > 0 && processEnded(pid)
}

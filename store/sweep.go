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

// whereabouts tells apart the places in which one process number means two
// processes: computers, their starts, and containers on them.
var whereabouts = sync.OnceValue(func() string {
	host, _ := os.Hostname()
	start, _ := os.ReadFile("/proc/sys/kernel/random/boot_id")
	container, _ := os.Readlink("/proc/self/ns/pid")
	sum := sha256.Sum256([]byte(host + "\x00" + string(start) + "\x00" + container))
	return hex.EncodeToString(sum[:4])
})

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
		if writerEnded(e.Name()) || time.Since(info.ModTime()) > longestSave {
			_ = d.remove(filepath.Join(dir, e.Name()))
		}
	}
}

// writerEnded is true only when it is certain.
func writerEnded(name string) bool {
	parts := strings.Split(strings.TrimPrefix(name, tempStart), "-")
	if len(parts) != 3 || parts[0] != whereabouts() {
		return false
	}
	pid, err := strconv.Atoi(parts[1])
	return err == nil && pid > 0 && processEnded(pid)
}

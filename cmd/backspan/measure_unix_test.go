//go:build unix

package main

import (
	"bytes"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"testing"
	"time"

	"github.com/creack/pty"

	"backspan/model"
	"backspan/store"
	"backspan/tui/screentest"
)

// measured is a bench in a pseudo-terminal whose every byte is timed. Unlike a
// test's screen it paints nothing, so that the painting is not measured too.
type measured struct {
	b    *testing.B
	cmd  *exec.Cmd
	tty  *os.File
	came chan arrival
}

type arrival struct {
	at    time.Time
	bytes []byte
}

const cols, rows = 120, 40

// parked is how a frame ends: the cursor goes to the last row.
var parked = []byte(fmt.Sprintf("\x1b[%d;H", rows))

// settled is how long nothing comes after the last frame of a key.
const settled = 60 * time.Millisecond

func measure(b *testing.B, bin, dir string) *measured {
	b.Helper()
	m := &measured{b: b, cmd: exec.Command(bin, "open", "five.toml"), came: make(chan arrival, 1<<12)}
	m.cmd.Dir, m.cmd.Env = dir, append(screentest.Env("xterm-256color"), "XDG_STATE_HOME="+b.TempDir())
	tty, err := pty.StartWithSize(m.cmd, &pty.Winsize{Cols: cols, Rows: rows})
	if err != nil {
		b.Fatal(err)
	}
	m.tty = tty
	go func() {
		defer close(m.came)
		for {
			buf := make([]byte, 32<<10)
			n, err := tty.Read(buf)
			if n > 0 {
				m.came <- arrival{time.Now(), buf[:n]}
			}
			if err != nil {
				return
			}
		}
	}()
	return m
}

// frame waits for the end of a frame.
func (m *measured) frame(what string) (at time.Time, n int) {
	m.b.Helper()
	patience := time.After(screentest.Patience)
	for {
		select {
		case a, ok := <-m.came:
			if !ok {
				m.b.Fatalf("%s: the bench ended", what)
			}
			n += len(a.bytes)
			if bytes.HasSuffix(a.bytes, parked) {
				return a.at, n
			}
		case <-patience:
			m.b.Fatalf("%s: no frame came", what)
		}
	}
}

// rest is how many bytes come until nothing comes any more.
func (m *measured) rest() (n int) {
	for {
		select {
		case a, ok := <-m.came:
			if !ok {
				return n
			}
			n += len(a.bytes)
		case <-time.After(settled):
			return n
		}
	}
}

// press types a key and tells how long its frame took and how many bytes came
// of it.
func (m *measured) press(key string) (took time.Duration, n int) {
	m.b.Helper()
	from := time.Now()
	if _, err := m.tty.WriteString(key); err != nil {
		m.b.Fatal(err)
	}
	at, n := m.frame(fmt.Sprintf("key %q", key))
	return at.Sub(from), n + m.rest()
}

func (m *measured) end() {
	_ = m.cmd.Process.Kill()
	_ = m.tty.Close()
	for range m.came {
	}
	_ = m.cmd.Wait()
}

// residentMB is what the program holds of the machine's memory.
func (m *measured) residentMB() float64 {
	m.b.Helper()
	out, err := exec.Command("ps", "-o", "rss=", "-p", strconv.Itoa(m.cmd.Process.Pid)).Output()
	if err != nil {
		m.b.Fatal(err)
	}
	kib, err := strconv.ParseFloat(strings.TrimSpace(string(out)), 64)
	if err != nil {
		m.b.Fatal(err)
	}
	return kib / 1024
}

// fiveVariants is a folder with a study of five machines.
func fiveVariants(b *testing.B) (dir string) {
	b.Helper()
	dir = b.TempDir()
	s := model.Sample()
	s.Variants = s.Variants[:5]
	if _, err := store.NewFolder(dir).Create(filepath.Join(dir, "five.toml"), s); err != nil {
		b.Fatal(err)
	}
	return dir
}

// everyday is a round of what is done at the bench; each key changes what is in
// sight, and the round leads back to where it began.
var everyday = []struct {
	what string
	keys []string
}{
	{"cursor", []string{"\x1b[B", "\x1b[B"}},
	{"step", []string{"\x1b[C", "]", "\x1b[C", "["}},
	{"typing", []string{"\r", "7", "0", ".", "5", "\r"}},
	{"undo", []string{"u", "u", "u", "u", "u"}},
	{"cursor", []string{"\x1b[A", "\x1b[A"}},
	{"pane", []string{"\t", "\t", "\t", "\t", "\t"}},
	{"part", []string{")", "("}},
	{"variant", []string{">", ">", "<", "<"}},
	{"page", []string{"c"}},
	{"cursor", []string{"\x1b[B", "\x1b[B", "\x1b[A", "\x1b[A"}},
	{"page", []string{"b"}},
}

// From a key pressed to the last byte of its frame, and the bytes sent, with
// five machines in a window of 120x40, as a terminal would see them.
func BenchmarkTyping(b *testing.B) {
	m := measure(b, built(b), fiveVariants(b))
	defer m.end()
	m.frame("the start")
	m.rest()
	took, sent := map[string][]float64{}, map[string][]float64{}
	const all = "any"
	for b.Loop() {
		for _, part := range everyday {
			for _, key := range part.keys {
				d, n := m.press(key)
				for _, what := range []string{all, part.what} {
					took[what] = append(took[what], float64(d)/float64(time.Millisecond))
					sent[what] = append(sent[what], float64(n))
				}
			}
		}
	}
	for what := range took {
		b.Logf("%-8s %5d keys: frame after %5.1f ms median, %5.1f ms p99; %5.0f bytes median, %5.0f most",
			what, len(took[what]), share(took[what], 0.5), share(took[what], 0.99), share(sent[what], 0.5), share(sent[what], 1))
	}
	b.ReportMetric(share(took[all], 0.5), "p50-ms/key")
	b.ReportMetric(share(took[all], 0.99), "p99-ms/key")
	b.ReportMetric(share(sent[all], 0.5), "p50-bytes/key")
	b.ReportMetric(share(sent[all], 0.99), "p99-bytes/key")
	b.ReportMetric(m.residentMB(), "MB-resident")
}

// From the start of the program to the last byte of its first frame.
func BenchmarkFirstFrame(b *testing.B) {
	bin, dir := built(b), fiveVariants(b)
	var took []float64
	for b.Loop() {
		from := time.Now()
		m := measure(b, bin, dir)
		at, _ := m.frame("the start")
		took = append(took, float64(at.Sub(from))/float64(time.Millisecond))
		m.end()
	}
	b.ReportMetric(share(took, 0.5), "p50-ms")
	b.ReportMetric(share(took, 1), "worst-ms")
}

// share is the value below which that share of them lies.
func share(of []float64, q float64) float64 {
	sorted := slices.Sorted(slices.Values(of))
	return sorted[min(int(q*float64(len(sorted))), len(sorted)-1)]
}

package output

import (
	"fmt"
	"strings"
	"sync"
	"testing"
	"time"

	tea "github.com/charmbracelet/bubbletea"
	"github.com/charmbracelet/x/vt"
	"pgregory.net/rapid"
)

// pages is a program that shows what it is told to.
type pages struct{ view string }

func (p pages) Init() tea.Cmd { return nil }
func (p pages) View() string  { return p.view }
func (p pages) Update(msg tea.Msg) (tea.Model, tea.Cmd) {
	if s, ok := msg.(string); ok {
		p.view = s
	}
	return p, nil
}

const cols, rows = 20, 6

// asRenderer writes a frame the way Bubble Tea's renderer does, given what it
// wrote before.
func asRenderer(was, now []string) string {
	var b strings.Builder
	b.WriteString(home)
	for i, l := range now {
		if i < len(was) && was[i] == l {
			if i < len(now)-1 {
				b.WriteByte('\n')
			}
			continue
		}
		if i == 0 && was == nil {
			b.WriteByte('\r')
		}
		if n := len([]rune(stripped(l))); n < cols {
			l += erase
		}
		b.WriteString(l)
		if i < len(now)-1 {
			b.WriteString("\r\n")
		}
	}
	fmt.Fprintf(&b, "\x1b[%d;H", len(now))
	return b.String()
}

func stripped(s string) string {
	for {
		i := strings.Index(s, "\x1b[")
		if i < 0 {
			return s
		}
		s = s[:i] + s[i+strings.IndexByte(s[i:], 'm')+1:]
	}
}

var piece = rapid.Custom(func(t *rapid.T) string {
	text := rapid.StringOfN(rapid.SampledFrom([]rune("ab  ·●│é漢")), 0, 6, -1).Draw(t, "text")
	ink := rapid.SampledFrom([]string{"", "\x1b[1m", "\x1b[7m", "\x1b[1;38;5;31m", "\x1b[38;5;144m", "\x1b[4m"}).Draw(t, "ink")
	if ink == "" {
		return text
	}
	return ink + text + "\x1b[0m"
})

var screen = rapid.Custom(func(t *rapid.T) []string {
	lines := make([]string, rows)
	for i := range lines {
		l := strings.Join(rapid.SliceOfN(piece, 0, 4).Draw(t, "pieces"), "")
		for len([]rune(strings.ReplaceAll(stripped(l), "漢", "xx"))) > cols {
			l = ""
		}
		lines[i] = l
	}
	return lines
})

// Whatever frames come, and whatever is written between them, the screen is
// what the frames themselves would have painted.
func TestTheScreenIsWhatTheFramesPaint(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		whole, thin := vt.NewEmulator(cols, rows), vt.NewEmulator(cols, rows)
		var term Terminal
		var was []string
		for range rapid.IntRange(1, 12).Draw(t, "frames") {
			now := screen.Draw(t, "screen")
			for i := range now {
				if was != nil && rapid.Bool().Draw(t, "kept") {
					now[i] = was[i]
				}
			}
			send(whole, &term, thin, asRenderer(was, now))
			was = now
			switch rapid.IntRange(0, 9).Draw(t, "between") {
			case 0:
				send(whole, &term, thin, "\x1b[2J")
				send(whole, &term, thin, home)
				was = nil
			case 1:
				send(whole, &term, thin, "\x1b[?25l")
			}
			if was != nil && seen(whole) != seen(thin) {
				t.Fatalf("painted\n%q\nwant\n%q", seen(thin), seen(whole))
			}
		}
	})
}

// seen is what an eye sees: the ink of letters, and of blanks only reverse and
// underline.
func seen(e *vt.Emulator) string {
	var b strings.Builder
	for y := range rows {
		for x := range cols {
			c := e.CellAt(x, y)
			if c == nil {
				continue
			}
			style := c.Style
			if c.Content == " " || c.Content == "" {
				const bold = 1
				style.Fg = nil
				style.Attrs &^= bold
			}
			fmt.Fprintf(&b, "[%s %v]", c.Content, style)
		}
		b.WriteByte('\n')
	}
	return b.String()
}

func send(whole *vt.Emulator, term *Terminal, thin *vt.Emulator, s string) {
	_, _ = whole.WriteString(s)
	_, _ = thin.Write(term.thinned([]byte(s)))
}

func TestOnlyWhatChangedIsSent(t *testing.T) {
	for _, tc := range []struct {
		name     string
		was, now string
		want     string
	}{
		{"nothing", "abc", "abc", ""},
		{"one cell", "abcdefgh", "abcXefgh", "\x1b[1;4HX"},
		{"two runs", "abcdefghijkl", "Xbcdefghijk!", "\x1b[1;1HX\x1b[10C!"},
		{"near runs are one", "abcdefgh", "XbcXefgh", "\x1b[1;1HXbcX"},
		{"shorter", "abcdef", "abc", "\x1b[1;4H\x1b[K"},
		{"longer", "abc", "abcde", "\x1b[1;4Hde"},
		{"emptied", "abc", "", "\x1b[1;1H\x1b[K"},
		{"ink alone", "abc", "a\x1b[1mb\x1b[0mc", "\x1b[1;2H\x1b[1mb\x1b[m"},
		{"coloured blanks look like blanks", "a  b", "a\x1b[38;5;31m  \x1b[0mb", ""},
		{"reversed blanks do not", "a b", "a\x1b[7m \x1b[0mb", "\x1b[1;2H\x1b[7m \x1b[m"},
		{"a wide character: the whole line", "abc漢", "abX漢", "\x1b[1;1HabX漢\x1b[K"},
	} {
		var term Terminal
		term.thinned([]byte(asRenderer(nil, []string{tc.was, "-"})))
		got := string(term.thinned([]byte(asRenderer([]string{tc.was, "-"}, []string{tc.now, "-"}))))
		if got = strings.TrimSuffix(got, "\x1b[2;H"); got != tc.want {
			t.Errorf("%s: %q, want %q", tc.name, got, tc.want)
		}
	}
}

// The form of a frame is Bubble Tea's own affair; when it changes, this tells.
func TestBubbleTeaWritesFramesOfThisForm(t *testing.T) {
	out := &record{news: make(chan string, 100)}
	p := tea.NewProgram(pages{"one\ntwo\nthree"}, tea.WithAltScreen(), tea.WithOutput(out), tea.WithInput(nil), tea.WithFPS(120), tea.WithoutSignals())
	done := make(chan error)
	go func() { _, err := p.Run(); done <- err }()
	p.Send(tea.WindowSizeMsg{Width: cols, Height: rows})
	out.wait(t, "three")
	p.Send("one\nTWO\nthree")
	out.wait(t, "TWO")
	p.Quit()
	if err := <-done; err != nil {
		t.Fatal(err)
	}
	found := false
	for _, w := range out.writes {
		if f, ok := parse(w); ok && strings.Contains(w, "TWO") {
			found = true
			if f.anew || f.lines[0] != "" || f.lines[1] != "TWO"+erase || f.lines[2] != "" {
				t.Errorf("parsed as %+v", f)
			}
		}
	}
	if !found {
		t.Errorf("no frame of known form among %q", out.writes)
	}
}

// record keeps every write by itself.
type record struct {
	mu     sync.Mutex
	writes []string
	news   chan string
}

func (r *record) Write(p []byte) (int, error) {
	r.mu.Lock()
	r.writes = append(r.writes, string(p))
	r.mu.Unlock()
	r.news <- string(p)
	return len(p), nil
}

func (r *record) wait(t *testing.T, want string) {
	t.Helper()
	for {
		select {
		case s := <-r.news:
			if strings.Contains(s, want) {
				return
			}
		case <-time.After(10 * time.Second):
			t.Fatalf("%q was never written", want)
		}
	}
}

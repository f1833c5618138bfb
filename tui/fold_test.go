package tui

import (
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"backspan/model"
)

func TestGroupsFold(t *testing.T) {
	for _, tc := range []struct {
		name  string
		w, h  int
		keys  []string
		ascii bool
	}{
		{"sidebyside-folded-80x24", 80, 24, []string{"c", "z", ")", ")", "z"}, false},
		{"sidebyside-folded-120x40", 120, 40, []string{"c", "Z", "down", "down", "z"}, false},
		{"sidebyside-folded-ascii-80x24", 80, 24, []string{"c", "Z", "down"}, true},
	} {
		o := plateau()
		o.Study, o.ASCII = model.Sample(), tc.ascii
		view := press(begin(o, tc.w, tc.h), tc.keys...).View()
		fits(t, view, tc.w, tc.h)
		golden(t, tc.name, view)
	}
}

// What a folded heading counts is what unfolding shows.
func TestAFoldedHeadingCountsItsRows(t *testing.T) {
	o := plateau()
	o.Study = model.Sample()
	m := begin(o, 120, 2000)
	m = press(m, "c")
	whole := m.View()
	heads := regexp.MustCompile(`(?m)^(?:> |  )?(\S.*): (\d+) rows?, (none differs|\d+ differs?) *$`)
	m = press(m, "Z")
	found := heads.FindAllStringSubmatch(m.View(), -1)
	if len(found) < 10 || strings.Contains(m.View(), "Mass, ready to fly") {
		t.Fatalf("%d groups folded:\n%s", len(found), m.View())
	}
	rows := 0
	for _, f := range found {
		n, _ := strconv.Atoi(f[2])
		rows += n
	}
	lines := strings.Split(whole, "\n")
	if shown := len(slices.DeleteFunc(lines, func(l string) bool { return !strings.HasPrefix(l, "  ") && !strings.HasPrefix(l, "> ") })); shown-rows < 2 || shown-rows > 2+2*len(found) {
		t.Errorf("the headings count %d rows, the page has %d with those of parts", rows, shown)
	}
	if one := press(m, "z").View(); len(strings.Split(strings.TrimSpace(one), "\n")) < 50 && !strings.Contains(one, "> Bore") {
		t.Errorf("the first group does not unfold:\n%s", one)
	}
	if again := press(m, "Z", "Z").View(); sameButCursor(again) != sameButCursor(whole) {
		t.Errorf("unfolded again the page has other rows:\n%s", again)
	}
}

// The bar of a row's largest difference has its full length, and no bar stands
// where nothing differs or no column has room.
func TestBarsOfDifferences(t *testing.T) {
	for _, tc := range []struct {
		name  string
		w, h  int
		ascii bool
	}{{"sidebyside-bars-120x40", 120, 40, false}, {"sidebyside-bars-80x24", 80, 24, false}, {"sidebyside-bars-ascii-120x40", 120, 40, true}} {
		o := plateau()
		o.Study, o.ASCII = model.Sample(), tc.ascii
		o.Study.Variants = o.Study.Variants[:map[int]int{120: 3, 80: 2}[tc.w]]
		m := press(begin(o, tc.w, tc.h), "c", ")")
		view := m.View()
		fits(t, view, tc.w, tc.h)
		golden(t, tc.name, view)
		full := "━━━━━"
		if tc.ascii {
			full = "====="
		}
		bars := 0
		for _, row := range strings.Split(view, "\n")[5:] {
			if strings.Contains(row, "worst") {
				continue // what the shapes mean
			}
			if strings.Contains(row, full) {
				bars++
			}
			if strings.Contains(row, full[:len(full)/5]) && !strings.Contains(row, full) {
				t.Errorf("%s: no bar of this row is whole: %q", tc.name, row)
			}
			if strings.Contains(row, full+full[:len(full)/5]) {
				t.Errorf("%s: a bar is too long: %q", tc.name, row)
			}
		}
		if bars < 2 {
			t.Errorf("%s: %d bars", tc.name, bars)
		}
	}
	o := plateau()
	o.Study = model.Sample()
	lacks(t, press(begin(o, 120, 40), "c", ")"), "━╸", "━ change", "━━━━━ ")
}

func sameButCursor(v string) string { return strings.ReplaceAll(trimmed(v), "> ", "  ") }

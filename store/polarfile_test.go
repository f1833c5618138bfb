package store

import (
	"math"
	"os"
	"path/filepath"
	"strings"
	"testing"
)

const goodPolar = `# an invented section; made up for this test
alpha,cl,cd,Re
-6,-0.20,0.014,200000
0,0.40,0.012,200000
6,1.00,0.016,200000
12,1.20,0.060,200000
`

func polarAt(t *testing.T, text string) ([][]float64, error) {
	t.Helper()
	path := filepath.Join(t.TempDir(), "section.csv")
	if err := os.WriteFile(path, []byte(text), 0o644); err != nil {
		t.Fatal(err)
	}
	return ReadPolar(path)
}

// The same rows, however a person or a program wrote them.
func TestPolarIsRead(t *testing.T) {
	lines := strings.Split(strings.TrimSpace(goodPolar), "\n")
	var turned []string
	for _, l := range lines[1:] {
		c := strings.Split(l, ",")
		turned = append(turned, strings.Join([]string{c[3], c[2], c[0], c[1]}, ","))
	}
	for name, text := range map[string]string{
		"as is":          goodPolar,
		"without a head": strings.Join(lines[2:], "\n"),
		"other order":    strings.Join(turned, "\n"),
		"byte order":     "\ufeff" + strings.Join(lines[1:], "\r\n"),
		"decimal commas": strings.ReplaceAll(strings.ReplaceAll(goodPolar, ",", ";"), "0.", "0,"),
		"tabs":           strings.ReplaceAll(strings.Join(lines[1:], "\n"), ",", "\t"),
		"spaces":         strings.ReplaceAll(goodPolar, ",", " , "),
		"more columns":   "x," + strings.Join(lines[1:2], "") + "\n7," + strings.Join(lines[2:], "\n7,"),
	} {
		rows, err := polarAt(t, text)
		if err != nil || len(rows) != 4 {
			t.Errorf("%s: %d rows, %v", name, len(rows), err)
			continue
		}
		if r := rows[2]; math.Abs(r[0]-6*math.Pi/180) > 1e-12 || r[1] != 1 || r[2] != 0.016 || r[3] != 2e5 {
			t.Errorf("%s: row 3 is %v", name, r)
		}
	}
}

func TestBadPolarsSayWhere(t *testing.T) {
	for _, tc := range []struct{ name, old, now, says string }{
		{"word", "6,1.00", "6,high", `section.csv: line 5, column 2: cl: "high" is not a number`},
		{"not finite", "0.060", "nan", "line 6, column 3: cd: \"nan\" is not a number"},
		{"drag", "0.012", "0", "line 4, column 3: cd is 0; 0.001 to 3 is allowed"},
		{"short line", "6,1.00,0.016,200000", "6,1.00,0.016", "line 5, column 4: there is no Re"},
		{"falls", "6,1.00", "-7,1.00", "line 5: the angle of attack must rise"},
		{"unnamed", "cd,Re", "cm,Re", "line 2: no column is named cd"},
		{"quotes", "6,1.00", `6,"1`, "line"},
		{"no zero", "-0.20", "0.1", "line 3: the rows at the Reynolds number 200000 do not pass through zero lift"},
		{"few", "12,1.20,0.060,200000\n", "", "line 3: only 3 rows"},
		{"empty", goodPolar, "# nothing\n", "holds no rows"},
	} {
		_, err := polarAt(t, strings.Replace(goodPolar, tc.old, tc.now, 1))
		if err == nil || !strings.Contains(err.Error(), tc.says) {
			t.Errorf("%s: %v, want %q", tc.name, err, tc.says)
		}
	}
	if _, err := ReadPolar(filepath.Join(t.TempDir(), "none.csv")); err == nil || !strings.Contains(err.Error(), "no such file") {
		t.Error(err)
	}
	if _, err := ReadPolar(t.TempDir()); err == nil || !strings.Contains(err.Error(), "not an ordinary file") {
		t.Error(err)
	}
}

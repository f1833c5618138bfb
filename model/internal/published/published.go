// Package published runs the published worked examples in testdata/published
// against the chapters. Only tests import it.
//
// A file holds cases; each names the function it tests, its source and how
// sure we are of the figures:
//
//	[[case]]
//	name = "open belt, B85"
//	function = "centre_distance"
//	source = "Budynas & Nisbett, Shigley's Mechanical Engineering Design 10e, problem 17-18"
//	certainty = "verified"      # seen in the source; or "memory", or "computed"
//	given = { length = 86.8, small = 5.4, large = 16.0 }
//	want = { centre_distance = "26.05" }   # text: the digits as printed
//	tolerance = { centre_distance = 0.02 } # absolute; half the last digit when left out
//	remark = "why a tolerance is wider"
package published

import (
	"fmt"
	"math"
	"os"
	"path/filepath"
	"runtime"
	"strconv"
	"strings"
	"testing"

	"github.com/BurntSushi/toml"
)

// Case is one published example.
type Case struct {
	Name      string
	Function  string
	Source    string
	Certainty string
	Given     map[string]any
	Want      map[string]string
	Tolerance map[string]float64
	Remark    string
}

// Num is a given number; it stops the test when there is none of that name.
func (c Case) Num(t testing.TB, name string) float64 {
	t.Helper()
	switch x := c.Given[name].(type) {
	case float64:
		return x
	case int64:
		return float64(x)
	}
	t.Fatalf("%s: no number %q is given", c.Name, name)
	return 0
}

// Word is a given text.
func (c Case) Word(t testing.TB, name string) string {
	t.Helper()
	s, ok := c.Given[name].(string)
	if !ok {
		t.Fatalf("%s: no text %q is given", c.Name, name)
	}
	return s
}

// List is a given list of numbers.
func (c Case) List(t testing.TB, name string) []float64 {
	t.Helper()
	list, ok := c.Given[name].([]any)
	if !ok {
		t.Fatalf("%s: no list %q is given", c.Name, name)
	}
	xs := make([]float64, len(list))
	for i, v := range list {
		switch x := v.(type) {
		case float64:
			xs[i] = x
		case int64:
			xs[i] = float64(x)
		default:
			t.Fatalf("%s: %s[%d] is not a number", c.Name, name, i)
		}
	}
	return xs
}

// Runner computes the named results of one function from a case's givens, in
// the units the case is printed in.
type Runner func(t testing.TB, c Case) map[string]float64

// Run tests every case of testdata/published/<chapter>.toml. Every case must
// have a runner and every wanted figure must be returned, so that no published
// figure is passed over.
func Run(t *testing.T, chapter string, runners map[string]Runner) {
	t.Helper()
	cases := load(t, chapter)
	figures, worst, where := 0, 0.0, ""
	for _, c := range cases {
		t.Run(c.Name, func(t *testing.T) {
			run, ok := runners[c.Function]
			if !ok {
				t.Fatalf("no runner for function %q", c.Function)
			}
			got := run(t, c)
			for name, printed := range c.Want {
				figures++
				if d := compare(t, c, name, printed, got); d > worst {
					worst, where = d, c.Name+", "+name
				}
			}
		})
	}
	t.Logf("%s: %d cases, %d figures, worst relative deviation %.2g (%s)", chapter, len(cases), figures, worst, where)
}

func load(t *testing.T, chapter string) []Case {
	t.Helper()
	_, here, _, _ := runtime.Caller(0)
	path := filepath.Join(filepath.Dir(here), "..", "..", "..", "testdata", "published", chapter+".toml")
	text, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	var file struct{ Case []Case }
	md, err := toml.Decode(string(text), &file)
	if err != nil {
		t.Fatalf("%s: %v", path, err)
	}
	for _, k := range md.Undecoded() {
		t.Errorf("%s: unknown key %s", path, k)
	}
	for _, c := range file.Case {
		if err := c.complete(); err != nil {
			t.Errorf("%s: %v", path, err)
		}
	}
	if len(file.Case) == 0 {
		t.Fatalf("%s: no cases", path)
	}
	return file.Case
}

func (c Case) complete() error {
	switch {
	case c.Name == "" || c.Function == "" || len(c.Want) == 0:
		return fmt.Errorf("case %q needs a name, a function and wanted figures", c.Name)
	case c.Source == "":
		return fmt.Errorf("case %q names no source", c.Name)
	case c.Certainty != "verified" && c.Certainty != "memory" && c.Certainty != "computed":
		return fmt.Errorf("case %q: certainty is %q, not verified, memory or computed", c.Name, c.Certainty)
	}
	return nil
}

func compare(t *testing.T, c Case, name, printed string, got map[string]float64) (deviation float64) {
	t.Helper()
	want, err := strconv.ParseFloat(printed, 64)
	if err != nil {
		t.Errorf("%s is %q, not a number", name, printed)
		return 0
	}
	x, ok := got[name]
	if !ok {
		t.Errorf("%s is printed, but not computed", name)
		return 0
	}
	tol, given := c.Tolerance[name]
	if !given {
		tol = halfLastDigit(printed)
	}
	if d := math.Abs(x - want); !(d <= tol*(1+1e-9)) {
		t.Errorf("%s = %.8g, published %s (±%.3g) [%s: %s]", name, x, printed, tol, c.Certainty, c.Source)
	}
	return math.Abs(x-want) / math.Max(math.Abs(want), 1e-12)
}

// halfLastDigit is what rounding to the printed digits allows.
func halfLastDigit(printed string) float64 {
	mantissa, exponent, _ := strings.Cut(strings.ToLower(printed), "e")
	e, _ := strconv.Atoi(exponent)
	_, fraction, _ := strings.Cut(mantissa, ".")
	return 0.5 * math.Pow10(e-len(fraction))
}

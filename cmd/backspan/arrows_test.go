package main

import (
	"os/exec"
	"strings"
	"testing"
)

// chain is the order in which the chapters may use one another: each may
// import those before it, never those after.
var chain = []string{
	"internal/table", "unit", "param", "reading", "part",
	"torsion", "coupling", "air", "engine", "bearing", "shaft", "bolt", "pulley", "belt", "toothedbelt", "gear", "gearshaft", "propeller", "match", "noise", "stack", "carry", "flight", "cooling", "drive", "upkeep", "vibration", "safety",
}

func imports(t *testing.T) map[string][]string {
	t.Helper()
	out, err := exec.Command("go", "list", "-f", `{{.ImportPath}} {{join .Imports " "}}`, "backspan/...").Output()
	if err != nil {
		t.Fatal(err)
	}
	of := map[string][]string{}
	for _, line := range strings.Split(strings.TrimSpace(string(out)), "\n") {
		words := strings.Fields(line)
		of[words[0]] = words[1:]
	}
	if len(of) < len(chain) {
		t.Fatalf("only %d packages listed", len(of))
	}
	return of
}

// The way of the data is one way: cmd, tui, store, model.
func TestLayersPointDown(t *testing.T) {
	layer := func(pkg string) int {
		for i, l := range []string{"backspan/model", "backspan/store", "backspan/tui", "backspan/cmd"} {
			if pkg == l || strings.HasPrefix(pkg, l+"/") {
				return i
			}
		}
		return -1
	}
	for pkg, deps := range imports(t) {
		for _, d := range deps {
			if layer(d) > layer(pkg) {
				t.Errorf("%s imports %s", pkg, d)
			}
		}
	}
}

// The model computes and does nothing else.
func TestModelIsPure(t *testing.T) {
	banned := []string{"os", "io/fs", "net", "net/http", "time", "log", "os/exec", "math/rand", "math/rand/v2", "github.com/"}
	for pkg, deps := range imports(t) {
		// What only tests import may read files.
		if !strings.HasPrefix(pkg, "backspan/model") || strings.HasPrefix(pkg, "backspan/model/internal/") && !strings.HasSuffix(pkg, "/table") {
			continue
		}
		for _, d := range deps {
			for _, b := range banned {
				if d == b || strings.HasSuffix(b, "/") && strings.HasPrefix(d, b) {
					t.Errorf("%s imports %s", pkg, d)
				}
			}
		}
	}
}

// explorer stands above the whole model.
const explorer = "backspan/model/explore"

func TestOnlyViewsExplore(t *testing.T) {
	for pkg, deps := range imports(t) {
		if strings.HasPrefix(pkg, "backspan/cmd/") || strings.HasPrefix(pkg, "backspan/tui") {
			continue
		}
		for _, d := range deps {
			if d == explorer {
				t.Errorf("%s imports %s", pkg, d)
			}
		}
	}
}

func TestChaptersUseEarlierOnesOnly(t *testing.T) {
	place := map[string]int{}
	for i, name := range chain {
		place["backspan/model/"+name] = i
	}
	for pkg, deps := range imports(t) {
		i, isChapter := place[pkg]
		if !isChapter {
			if pkg == explorer {
				continue
			}
			if strings.HasPrefix(pkg, "backspan/model/") && !strings.HasPrefix(pkg, "backspan/model/internal/") {
				t.Errorf("%s has no place in the chain", pkg)
			}
			continue
		}
		for _, d := range deps {
			if !strings.HasPrefix(d, "backspan/") {
				continue
			}
			if j, known := place[d]; !known || j >= i {
				t.Errorf("%s imports %s, which comes later", pkg, d)
			}
		}
	}
}

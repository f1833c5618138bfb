package toothedbelt

import (
	"reflect"
	"strings"
	"testing"

	"backspan/model/internal/anyspec"
)

func TestDeclarationsHoldTheDefault(t *testing.T) {
	s := Default()
	anyspec.HoldDefaults(t, s.Params())
	if !reflect.DeepEqual(s, Default()) {
		t.Error("setting the default changed it")
	}
}

// Scripts ask every machine with a belt for these three.
var shared = map[string]bool{
	"belt.static_tension": true, "belt.shaft_load_standing": true, "belt.shaft_load_running": true,
}

func TestReadingsOfNothing(t *testing.T) {
	seen := map[string]bool{}
	for _, r := range (Result{}).Readings(nil) {
		named := strings.HasPrefix(r.Key, "toothedbelt.") || shared[r.Key]
		if seen[r.Key] || !named || len([]rune(r.Label)) > 34 || r.Method == "" || r.Origin == "" {
			t.Errorf("poor declaration: %+v", r)
		}
		seen[r.Key] = true
	}
	for key := range shared {
		if !seen[key] {
			t.Errorf("%s is not declared", key)
		}
	}
	if len((Result{}).Checks(nil, 0.1)) == 0 {
		t.Error("no checks")
	}
}

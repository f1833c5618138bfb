package anyspec

import (
	"math"
	"reflect"
	"testing"
)

func TestStrayNumbersAreFound(t *testing.T) {
	type inner struct{ values [2]float64 }
	type outer struct {
		name  string
		parts []inner
	}
	for _, tc := range []struct {
		name  string
		value any
		want  string
	}{
		{"a number", math.NaN(), "x"},
		{"deep down", outer{"a", []inner{{}, {[2]float64{0, math.Inf(-1)}}}}, "x.parts[1].values[1]"},
		{"all finite", outer{"a", []inner{{}, {[2]float64{1, 2}}}}, ""},
		{"no number", "text", ""},
	} {
		where, _, found := stray("x", reflect.ValueOf(tc.value))
		if found != (tc.want != "") || found && where != tc.want {
			t.Errorf("%s: found %t at %q, want %q", tc.name, found, where, tc.want)
		}
	}
}

package anyspec

import (
	"fmt"
	"math"
	"reflect"

	"pgregory.net/rapid"
)

// Finite fails the test unless every number in the values is a finite one, in
// structs and lists however deep. name says whose they are.
func Finite(t *rapid.T, name string, values ...any) {
	for _, v := range values {
		if where, x, ok := stray(name, reflect.ValueOf(v)); ok {
			t.Errorf("%s is %v", where, x)
		}
	}
}

// stray finds a number that is not finite.
func stray(name string, v reflect.Value) (where string, x float64, found bool) {
	switch v.Kind() {
	case reflect.Float64:
		x = v.Float()
		return name, x, math.IsNaN(x) || math.IsInf(x, 0)
	case reflect.Struct:
		for i := 0; i < v.NumField() && !found; i++ {
			where, x, found = stray(name+"."+v.Type().Field(i).Name, v.Field(i))
		}
	case reflect.Slice, reflect.Array:
		for i := 0; i < v.Len() && !found; i++ {
			where, x, found = stray(fmt.Sprintf("%s[%d]", name, i), v.Index(i))
		}
	}
	return where, x, found
}

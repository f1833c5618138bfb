package model

import (
	"reflect"
	"testing"
)

// Whatever machine an outcome was of, writing over it leaves nothing of it.
func TestReevaluateIsEvaluate(t *testing.T) {
	s := Sample()
	direct := NewVariant("Direct")
	direct.Drive.Kind = "direct"
	s.Variants = append(s.Variants, direct)
	var spent Outcome
	for range 2 {
		for i := range s.Variants {
			spent = Reevaluate(s, &s.Variants[i], spent)
			if !reflect.DeepEqual(spent, Evaluate(s, &s.Variants[i])) {
				t.Errorf("%s differs", s.Variants[i].Name)
			}
		}
	}
}

func BenchmarkReevaluate(b *testing.B) {
	s := Sample()
	var spent Outcome
	b.ReportAllocs()
	for b.Loop() {
		spent = Reevaluate(s, &s.Variants[0], spent)
	}
}

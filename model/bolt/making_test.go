package bolt

import "testing"

func TestSequenceGoesAcross(t *testing.T) {
	for n, want := range map[int]string{3: "1-3-2", 4: "1-3-2-4", 5: "1-4-2-5-3", 6: "1-4-2-5-3-6", 8: "1-5-2-6-3-7-4-8"} {
		if got := sequence(n); got != want {
			t.Errorf("%d bolts: %s, want %s", n, got, want)
		}
	}
}

func TestPassesEndAtTheTorque(t *testing.T) {
	s := Default()
	s.WrenchError = 0.05
	list := s.Making(10)
	last := list[len(list)-1]
	if last.Least != 9.5 || last.Most != 10.5 || len(list) != 4 {
		t.Errorf("%+v", list)
	}
}

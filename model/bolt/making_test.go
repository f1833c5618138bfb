package bolt

import (
	"strings"
	"testing"
)

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
	if last.Least != 10 || last.Most != 10 || !strings.Contains(last.Method, "off by 5 %") || len(list) != 5 {
		t.Errorf("%+v", list)
	}
}

// By hand from VDI 2230, from memory: M8 has 1.25 mm of pitch, 7.188 mm of pitch
// diameter and its head rubs at 11 mm, so that the torque per preload is
// 0.16·1.25 + (0.58·7.188 + 5.5) µ = 0.974 mm at 0.08 and 1.554 mm at 0.14: a dry
// bolt keeps 37 % less.
func TestSheetSaysWhetherThreadsAreOiled(t *testing.T) {
	s := Default()
	if a := s.Making(11.5)[0]; a.Key != "bolt.state" || a.Text != "oiled" || !strings.Contains(a.Method, "0.08 in the thread and 0.08 under the head") || !strings.Contains(a.Method, "37 % less") {
		t.Errorf("%+v", a)
	}
	s.ThreadFriction, s.HeadFriction = 0.16, 0.16
	if a := s.Making(11.5)[0]; a.Text != "clean and dry" || !strings.Contains(a.Method, "oil raises the preload") {
		t.Errorf("%+v", a)
	}
}

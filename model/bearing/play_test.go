package bearing

import (
	"strings"
	"testing"

	"backspan/model/internal/table"
	"backspan/model/internal/tabletest"
	"backspan/model/param"
	"backspan/model/part"
)

func TestRingTable(t *testing.T) {
	tabletest.Whole(t, "rings", table.Must(ringsFile), 9)
	if _, ok := ringBelow("outer", 0.2); ok {
		t.Error("a size outside the table")
	}
}

func saidOf(t *testing.T, list []part.Allowed, key string) part.Allowed {
	t.Helper()
	for _, a := range list {
		if a.Key == key {
			return a
		}
	}
	t.Fatalf("no %s", key)
	return part.Allowed{}
}

// By hand: a 6005 of 25 x 47 mm, bore N7 of -8 to -33 µm, ring 0 to -11 µm. Over
// 60 K aluminium opens 11.5e-6 x 60 x 47 mm = 32.4 µm more than the ring grows,
// steel nothing. H7 opens from 0 to 36 µm.
func TestRingsLoosenInAWarmHub(t *testing.T) {
	warm := func(expansion float64) Housing {
		return Housing{Name: "hub", Temperature: param.Known(DrawnTemperature + 60), As: "the belt", Expansion: expansion}
	}
	for _, tc := range []struct {
		name       string
		seats      Seats
		shaftTurns bool
		h          Housing
		cold, hot  string
		warns      string
	}{
		{"turning ring in aluminium", TurningBore, false, warm(AluminiumExpansion), "from 33 µm press to 3 µm play", "from 1 µm press to 35 µm play", "may lose its press"},
		{"tight ring in aluminium", Seats{"h6", "P7"}, false, warm(AluminiumExpansion), "press 6 to 42 µm", "from 10 µm press to 26 µm play", "may lose its press"},
		{"tight ring in steel", Seats{"h6", "P7"}, false, warm(SteelExpansion), "press 6 to 42 µm", "press 6 to 42 µm", ""},
		{"loose turning ring", Seats{"h6", "J7"}, false, warm(AluminiumExpansion), "from 11 µm press to 25 µm play", "play 21 to 57 µm", "has lost its press"},
		{"standing ring in aluminium", TurningShaft, true, warm(AluminiumExpansion), "play 0 to 36 µm", "play 32 to 68 µm", "thousandth of its diameter"},
		{"standing ring in steel", TurningShaft, true, warm(SteelExpansion), "play 0 to 36 µm", "play 0 to 36 µm", ""},
	} {
		list := tc.seats.Making("6005", tc.shaftTurns, tc.h)
		cold, hot := saidOf(t, list, "bearing.bore_play"), saidOf(t, list, "bearing.bore_play_running")
		if cold.Text != tc.cold || hot.Text != tc.hot {
			t.Errorf("%s: cold %q, running %q", tc.name, cold.Text, hot.Text)
		}
		if warned := strings.Contains(hot.Method, "warning"); warned != (tc.warns != "") || !strings.Contains(hot.Method, tc.warns) || !strings.Contains(hot.Method, "80.0 °C") {
			t.Errorf("%s: %q", tc.name, hot.Method)
		}
	}
}

func TestRingsOnTheShaftAndInAColdHouse(t *testing.T) {
	list := TurningShaft.Making("6205", true, Housing{Name: "case"})
	if a := saidOf(t, list, "bearing.shaft_play"); a.Text != "press 2 to 21 µm" || strings.Contains(a.Method, "warning") {
		t.Errorf("%+v", a)
	}
	if a := saidOf(t, list, "bearing.bore_play_running"); a.Why == "" {
		t.Errorf("%+v", a)
	}
	if a := saidOf(t, TurningBore.Making("6205", true, Housing{}), "bearing.shaft_play"); !strings.Contains(a.Method, "may lose its press") {
		t.Errorf("h6 under a turning load: %+v", a)
	}
}

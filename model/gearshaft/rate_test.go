package gearshaft

import (
	"testing"

	"backspan/model/gear"
	"backspan/model/part"
	"backspan/model/shaft"
)

const rpm = 3.141592653589793 / 30

// duty is full throttle standing of an engine of about 15 kW.
func duty() part.Duty {
	return part.Duty{Power: 15000, CrankSpeed: 8000 * rpm, AirTemperature: 298.15, AirDensity: 1.18, Inflow: 10}
}

func shafting(t testing.TB, s gear.Spec) gear.Shafting {
	t.Helper()
	g, err := gear.New(s, duty())
	if err != nil {
		t.Fatal(err)
	}
	return g.Examine(duty(), part.Train{}).Shafting()
}

// propeller is one of 1.1 kg in a turn of about 1 rad/s.
func propeller() shaft.Loads {
	return shaft.Loads{PropellerWeight: 1.1 * 9.80665, PropellerOverhang: 0.015, Thrust: 700, GyroCouple: 30, GyroPeak: 60, Speed: 8000 * rpm * 19 / 56}
}

func TestDefaultHolds(t *testing.T) {
	r := Rate(Default(), shafting(t, gear.Default()), part.Clockwise, propeller())
	for _, x := range r.Readings() {
		t.Log(x.Key, x.Text())
	}
	for _, c := range r.Checks(0.1) {
		t.Log(c.Key, c.Verdict, c.Text(), c.MarginText())
	}
	for _, x := range r.Rows() {
		t.Logf("%+v", x)
	}
}

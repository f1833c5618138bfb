package pulley

import (
	"math"
	"testing"

	"backspan/model/part"
	"backspan/model/unit"
)

// The figures are from a separate script of the same equations: a ten-rib
// 65/175 mm stage at 8500 rpm in air of 303 K and 1.165 kg/m³ flowing at 12 m/s.
func TestHeatOfATenRibStage(t *testing.T) {
	s := New(DefaultBuild(), Layout{
		Run:       OpenBelt{Crank: 0.069, Driven: 0.179, CentreDistance: 0.165},
		FaceWidth: 0.03704, BeltWidth: 0.0356,
	})
	at := part.Duty{CrankSpeed: unit.RPM.SI(8500), AirTemperature: 303, AirDensity: 1.165, Inflow: 12}
	near(t, "cooling", s.cooling(at), 8.219836, 1e-5)
	near(t, "temperature", s.Temperature(at, 450), 303+450/8.219836, 1e-4)
	near(t, "temperature without a loss", s.Temperature(at, 0), 303, 0)
	at.CrankSpeed, at.Inflow = 0, 0
	near(t, "temperature in still air", s.Temperature(at, 450), 303, 0)
}

func near(t *testing.T, what string, got, want, tolerance float64) {
	t.Helper()
	if !(math.Abs(got-want) <= tolerance) {
		t.Errorf("%s is %.9g, want %.9g", what, got, want)
	}
}

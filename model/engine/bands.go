package engine

// typicalPressure is the band in which brake mean effective pressure at peak
// power usually lies, Pa: piston-port to tuned two-strokes, small overhead
// valve to high-output four-strokes. Source: Heywood, Internal Combustion
// Engine Fundamentals; Blair, Design and Simulation of Two-Stroke Engines;
// from memory.
func (c Cycle) typicalPressure() (low, high float64) {
	if c == FourStroke {
		return 8e5, 11.5e5
	}
	return 5e5, 10e5
}

// typicalFuel is the band of the best specific fuel consumption at full
// throttle, g/kWh, of carburetted engines. Same sources.
func (c Cycle) typicalFuel() (low, high float64) {
	if c == FourStroke {
		return 280, 350
	}
	return 400, 550
}

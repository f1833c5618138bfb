package engine

// willansSlope is the fuel per indicated work, kg/J, that gives the specific
// fuel consumption at peak power in the reference air.
func (e Engine) willansSlope() float64 {
	speed := e.curve.peakSpeed()
	power := speed * e.curve.torque(speed)
	return e.spec.SpecificFuel * power / (power + e.friction(speed))
}

// friction is the power that friction and gas exchange take, W.
func (e Engine) friction(crankSpeed float64) float64 {
	return e.workRate(e.spec.FrictionPressure, crankSpeed)
}

// FuelFlow is the fuel burnt at a brake power, W, at full or part throttle,
// kg/s: the Willans line, fuel in proportion to brake and friction power.
// Richer mixture at part throttle, or of fixed jets at altitude, is not in it.
func (e Engine) FuelFlow(power, crankSpeed float64) float64 {
	return e.fuelPerWork * (power + e.friction(crankSpeed))
}

// FuelHeat is the heat in that fuel, W.
func (e Engine) FuelHeat(power, crankSpeed float64) float64 {
	return e.FuelFlow(power, crankSpeed) * e.spec.HeatingValue
}

// Heat is what the cooling air must take from cylinder and head at a brake
// power, W.
func (e Engine) Heat(power float64) float64 { return e.spec.CylinderHeatShare * power }

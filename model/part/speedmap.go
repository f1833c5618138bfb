package part

// SpeedMap is where along an engine's speeds something is set swinging. Speeds
// of the crank, rad/s.
type SpeedMap struct {
	From, To float64 // the speeds looked at
	Working  float64 // the speed of the examined duty
	Bands    []SpeedBand
}

// SpeedBand is a range of speeds to stay out of.
type SpeedBand struct {
	Cause    string
	From, To float64
}

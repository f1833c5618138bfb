// Package part holds the few plain types in which the chapters of the model
// speak to one another: a piece of the machine, power passing through a drive,
// and what a drive costs to keep.
package part

// Piece is one body of the machine. Pieces with a Depth stand one behind the
// other along the thrust axis; a piece without depth hangs beside the stack.
type Piece struct {
	Key   string  // "drive.driven_pulley"
	Label string  // "Driven pulley"
	Depth float64 // extent along the thrust axis, m; 0 when beside the stack
	Mass  float64 // kg
	CGAft float64 // own centre of gravity behind the piece's front face, m
	CGUp  float64 // own centre of gravity above the crank axis, m

	// Inertia about the piece's own centre of gravity, kg·m².
	PitchInertia float64 // about the lateral axis
	YawInertia   float64 // about the vertical axis
}

// Depth is the sum of the pieces' depths, m.
func Depth(ps []Piece) float64 {
	d := 0.0
	for _, p := range ps {
		d += p.Depth
	}
	return d
}

// Mass is the sum of the pieces' masses, kg.
func Mass(ps []Piece) float64 {
	m := 0.0
	for _, p := range ps {
		m += p.Mass
	}
	return m
}

// Cylinder returns the piece's inertia about its own centre for a uniform
// solid of revolution about the thrust axis, kg·m²: mass kg, radius m, length
// along the axis m. Source: mechanics, m(3r²+l²)/12.
func Cylinder(mass, radius, length float64) float64 {
	return mass * (3*radius*radius + length*length) / 12
}

// Transmission is power passing through a drive at one operating point.
type Transmission struct {
	PowerIn  float64 // at the crank, W
	SpeedIn  float64 // of the crank, rad/s
	PowerOut float64 // at the propeller, W
	SpeedOut float64 // of the propeller, rad/s, after slip
}

// Loss is the power that stays in the drive as heat, W.
func (t Transmission) Loss() float64 { return t.PowerIn - t.PowerOut }

// Efficiency is the share of the power that arrives, 0 when none goes in.
func (t Transmission) Efficiency() float64 {
	if t.PowerIn <= 0 {
		return 0
	}
	return t.PowerOut / t.PowerIn
}

// Duty is the operating point at which a drive is examined.
type Duty struct {
	Power          float64 // at the crank, W
	CrankSpeed     float64 // rad/s
	AirTemperature float64 // K
	AirDensity     float64 // kg/m³
	Inflow         float64 // air speed over the drive, m/s
}

// Upkeep is what a drive costs to buy and to keep, in the study's money.
type Upkeep struct {
	Price          float64 // to buy
	ChangeInterval float64 // between changes of the wearing part, s
	ChangeCost     float64 // of one change, parts and labour
	WearingParts   int     // kinds of part that are changed on schedule
}

// CostPerTime is the cost of scheduled changes, money/s.
func (u Upkeep) CostPerTime() float64 {
	if u.ChangeInterval <= 0 {
		return 0
	}
	return u.ChangeCost / u.ChangeInterval
}

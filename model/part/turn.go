package part

// Turn is a direction of rotation, seen from behind the machine looking
// forward, as one looks at the propeller.
type Turn string

// The directions.
const (
	Clockwise     Turn = "clockwise"
	Anticlockwise Turn = "anticlockwise"
)

// Sign is +1 for clockwise and −1 for anticlockwise, seen from behind: the
// sense of a moment about the axis that points forward.
func (t Turn) Sign() float64 {
	if t == Anticlockwise {
		return -1
	}
	return 1
}

package flight

import "backspan/model/part"

// side is the pilot's left or right.
type side string

const (
	left  side = "left"
	right side = "right"
)

func (s side) other() side {
	if s == left {
		return right
	}
	return left
}

// sign is +1 to the right.
func (s side) sign() float64 {
	if s == right {
		return 1
	}
	return -1
}

// rolls is the side to which torque rolls the craft: the hand the propeller
// pushes the air round with, seen from behind, pushes the craft the other way.
func rolls(propeller part.Turn) side {
	if propeller == part.Anticlockwise {
		return right
	}
	return left
}

// after is a direction of turn behind a drive: the same for +1, reversed for −1.
func after(crank part.Turn, drive int) part.Turn {
	if crank.Sign()*float64(drive) < 0 {
		return part.Anticlockwise
	}
	return part.Clockwise
}

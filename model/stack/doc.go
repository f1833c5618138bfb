// Package stack puts the machine together behind the pilot's back: every piece
// along the thrust axis with its depth, and what hangs beside it, to one
// depth, one mass and one centre of gravity.
//
// One frame of reference serves the stack, the pilot who carries it and the
// pilot who hangs under the wing with it:
//
//	x  aft from the back plane, where the pilot's back meets the pad; ahead of it is negative
//	z  up from the hip-joint axis of the standing pilot, about the seat plate when seated
//
// From the back plane aft stand pad, frame, rubber mount, engine, a fan if
// there is one, the drive, and the propeller on the drive's plate. Tank,
// exhaust, guard, harness and other loads hang beside them.
package stack

// Package flight hangs pilot and machine under the wing: the take-off run,
// level flight and its range of speeds, climb and ceiling, fuel and range, the
// angle of hang with power off and on, and what the propeller's torque and spin
// do to the craft, and to which side.
//
// The frame of reference is the stack's: x aft from the back plane, z up from
// the hip-joint axis, about the seat plate of the seated pilot. Angles of the
// hanging body are nose-up positive, leaning back. Flight is steady and
// straight unless a turn rate is named.
//
// A torque and a gyroscopic couple are free vectors: where the propeller sits
// along its axis does not change them. Its depth acts through the weight's
// moment about the hang points, which grows in step with it, through the inertia
// about them, which grows with its square and makes the answer to a couple
// slower, and through the arms of forces across the thrust line. Thrust itself
// pulls along its line: only the line's height counts.
package flight

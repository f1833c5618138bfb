// Package shaft is the propeller's axle on its two bearings: the forces on the
// bearings with the propeller overhung, their lives, and the fatigue of the
// axle (Shigley's Mechanical Engineering Design, chapters 6 and 7).
//
// The way through the chapter:
//
//	Spec       what a builder sets: bearings, their places, the axle's steel
//	Loads      what a drive and a propeller put on them
//	Support    bearing loads and lives, bending moments, safeties
//
// Positions are measured along the axle ahead of the propeller plate, towards
// the engine. Forces lie in the plane across the axle: Along the line from the
// propeller's axis to the crank's, Across it.
//
// Two builds are told apart. An axle that turns carries wheel and propeller
// and runs in bearings held by the case: every force that keeps its direction
// bends it to and fro once a turn, and it carries the torque from wheel to
// plate. An axle that stands still is held at its engine end and carries the
// bearings inside a driven wheel that turns together with the propeller: belt
// and weight bend it steadily and only what changes tires it, it carries no
// torque, and the outer rings turn against the load, so they need the tight fit.
package shaft

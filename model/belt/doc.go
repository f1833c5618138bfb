// Package belt is the ribbed belt stage between crank and propeller: an open
// multi-rib belt (profiles PJ, PK, PL and PM) on two grooved pulleys at a
// locked centre distance, the bearings inside the driven pulley.
//
// The way through the chapter:
//
//	Spec                what a builder sets
//	New                 geometry on the pitch diameters, the standing tension
//	                    for the design power, the losses calibrated there
//	Belt.Transmit       power and speed through the stage, slip and loss included
//	Belt.Examine        one point: tensions, shaft loads, slip reserves, heat;
//	                    the engine's torque pulsation at it and from idle to the
//	                    highest speed; speeds to avoid; rating, life, setting
//	Belt.Pieces         the stage as bodies with depth, mass and inertia
//
// Uneven torque is allowed for once, by a service factor or by the pulsation
// computed, as the load factor says; the two are never multiplied.
//
// The belt is set once, at standstill, and its centre is then locked. The loop
// keeps its length, so the two spans' tensions keep their sum while running.
package belt

// Package pulley is what every belt stage is built of, whatever the belt: two
// pulleys at a locked centre distance, the open belt around them, the carrier
// and the bearings inside the driven pulley.
//
// The way through the chapter:
//
//	Build, Upkeep     what a builder sets, the same for every belt
//	OpenBelt          geometry on the pitch line
//	Tensions          of the two spans, and what they put on the shafts
//	Build.Stage       the stage laid out: bodies, inertias, overhang
//	Stage.Pieces      the stage as bodies with depth, mass and inertia
//	Stage.Temperature the belt's, from what it loses and sheds
//
// How a belt grips, what it may carry and what it loses are for the chapters of
// the belts themselves.
package pulley

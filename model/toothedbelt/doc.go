// Package toothedbelt is the toothed belt stage between crank and propeller:
// an open belt with 8 mm curvilinear teeth (ISO 13050, section H8M) or with
// trapezoidal teeth (ISO 5296, sections MXL to XXH) on two toothed pulleys at a
// locked centre distance, the bearings inside the driven pulley.
//
// The way through the chapter:
//
//	Spec                what a builder sets
//	New                 whole teeth, the centre distance they leave, the
//	                    standing tension for the design power, the losses
//	Belt.Transmit       power and speed through the stage, without slip
//	Belt.Examine        tensions through a turn of the crank, shaft loads,
//	                    power rating, heat at one point
//	Belt.Pieces         the stage as bodies with depth, mass and inertia
//
// The geometry of the open belt, the tensions and the shaft loads are those of
// package pulley.
package toothedbelt

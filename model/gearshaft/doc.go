// Package gearshaft is the two shafts of an enclosed reduction and their four
// bearings: forces, bearing lives, fatigue and bending of the shafts, and the
// seats that carry the torque (Shigley's Mechanical Engineering Design,
// chapters 6, 7 and 11; ISO 281; ISO 76).
//
// The way through the chapter:
//
//	Spec        what a builder sets besides the gear itself
//	Rate        loads of mesh and propeller on both shafts, and what they bear
//	Result      plain data, with readings and checks
//
// Places are measured ahead of the propeller plate, towards the engine. Forces
// lie in the plane across the shafts: Along the line from the propeller's axis
// to the crank's, Across it so that Along, Across and forward are right-handed.
//
// Left out are the weights of gears, shafts and coupling, which are a hundredth
// of the mesh forces, the coupling's side forces, and the give of bearings and
// case.
//
// The pinion is of one piece with its shaft. Both shafts are solid. What turns
// with a shaft bends it steadily, what keeps its direction in space bends it to
// and fro once a turn, and the swing of the torque swings the mesh force as
// well; it is counted at its peak. A peak of the torque below the working point
// counts as if it were held without end, because idling is.
package gearshaft

// Package gear is the chapter on an enclosed one-stage reduction between crank
// and propeller: a pair of external spur or helical gears in a splash-lubricated
// case, with the coupling before it and the propeller flange behind it.
//
// A Spec goes into New, which solves the teeth (ISO 21771) and the temperature
// of the oil at the rated duty, and gives a Gear. The Gear transmits power,
// stands in the stack as pieces, and is examined at a duty. Lengths are in
// metres, angles in radians, temperatures in kelvin; the propeller's axis
// stands above the crank's by the centre distance and turns the other way.
//
// What the engine's pulses make of the torque in the teeth follows from crank,
// pinion and propeller as inertias on the springs of coupling and mesh; once the
// teeth part it says that they do, not how hard they hammer.
//
// The teeth are rated against pitting and breakage by ISO 6336, in the form of
// its edition of 2006 with the corrigendum of 2008 or of that of 2019, and once
// more by AGMA 2001. The tables of the standards lie under data, each with its
// clause and how sure it is; most are from memory and await comparison with a
// printed copy, so the endurance limits can be replaced by the builder's own. A
// spectrum of loads is not counted: the duty examined is held for the whole
// life asked, and so, for the roots, is the greatest torque on the way up to it.
// Scuffing, micropitting, the life of the bearings and the shafts
// are not rated here, nor the roots of helical teeth by AGMA, whose geometry
// factor is only at hand as charts.
//
// SearchTeeth lists the pairs of gears that give a ratio, at a centre distance
// or free of one.
package gear

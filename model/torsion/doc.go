// Package torsion is a shaft train that twists: two or three inertias in a row,
// joined by damped springs, free at both ends and driven at the first.
//
// It gives the natural frequencies of such a train, the torque that a harmonic
// of the engine sends through each spring, and the torque over a cycle that
// several harmonics make together.
//
// The springs are linear: what happens once teeth part or a clutch slips is not
// in it. Sources: Den Hartog, Mechanical Vibrations, chapter 5; Thomson, Theory
// of Vibration with Applications, section on Holzer's method; both from memory.
package torsion

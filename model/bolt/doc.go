// Package bolt is the propeller plate that every kind of drive ends in: bolts
// through the propeller's hub press it on the plate, and friction alone carries
// the torque (VDI 2230, the joint loaded across its bolts).
//
// The way through the chapter:
//
//	Spec     what a builder sets: bolts, how they are tightened, hub and plate
//	Load     what drive and propeller put on the joint
//	Clamp    preload, slip torque, crush pressure, and what is left if it slips
//
// Tightening scatters. The greatest preload stresses the bolt and crushes the
// hub; the least, less what settles and dries away, must hold the torque. A
// wooden hub is crushed long before the bolts have their full preload, so its
// tightening torque is set by the wood.
package bolt

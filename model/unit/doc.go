// Package unit converts between the units people type and SI, the only units
// the model computes in.
//
// A Unit knows its dimension, so that "4.2 kgf" is accepted where a force is
// asked for and refused, with a reason, where a length is. A quantity itself
// stays a plain float64 in SI: the chapters of the model read like the
// handbook, and the unit lives in the declaration of the parameter or the
// reading.
package unit

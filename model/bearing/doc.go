// Package bearing rates deep-groove ball bearings: boundary dimensions and
// typical ratings by designation, the equivalent loads, the basic and the
// modified rating life (ISO 281:2007) and the static safety (ISO 76).
//
// The way through the chapter:
//
//	Size.DeepGroove            dimensions and ratings of a designation
//	DeepGroove.EquivalentLoad  one radial load that wears as much
//	MeanLoad                   one load for a duty of several
//	DeepGroove.Rate            life and what it depends on
//	Survival                   the chance to outlive a multiple of it
//
// Lengths in m, forces in N, speeds in rad/s, lives in revolutions.
package bearing

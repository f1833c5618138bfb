// Package cooling is what carries the cylinder's heat away, seen as weight,
// depth and power: free air, a fan on the crank, or liquid with a radiator.
//
// This version counts what cooling costs. It does not compute temperatures,
// and says so where a temperature would stand.
package cooling

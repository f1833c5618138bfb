// Package cooling is what carries the cylinder's heat away: free air with or
// without baffles, a fan on the crank, or liquid with a radiator. It counts
// the mass, the depth and the power that each costs, and finds the temperature
// of the cylinder head as a band, because every sum of this kind scatters.
//
// The head stands between two conductances, that of the gas to the metal and
// that of the metal to the air:
//
//	(head − air) / (gas − head) = K = gas side / air side
//
// which is the form in which NACA correlated its cylinders. One measured head
// temperature sets K for a machine; the sum then only carries it to another
// power, another air speed or another day.
//
// No published heat balance of a crankcase-scavenged two-stroke was at hand:
// the share of heat, the temperature of the gas and the scatter are therefore
// parameters, marked as estimates or as recalled from memory.
package cooling

// Package safety is what a turning propeller and hot parts can do to people:
// gaps between blades, guard and hand, the energy in the propeller, and
// surfaces that burn. Every finding is a caution with its source. None says
// that a machine is safe or meets a standard: follow local rules.
package safety

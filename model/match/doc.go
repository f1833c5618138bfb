// Package match finds where an engine and a propeller settle with a drive
// between them: at full throttle, where the power that arrives equals the
// power that the propeller absorbs, and in level flight, where the propeller
// gives the thrust asked; at more airspeeds and in other air for the curves of
// take-off and ceiling.
package match

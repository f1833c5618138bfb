// Package model carries one powerplant through to the end: engine, drive,
// propeller and frame, to what the pilot lifts, feels and hears.
//
// A Study is plain data. Evaluate is a pure function from a study and one of
// its variants to an Outcome, plain data again. Terminal, printer and report
// are ways to look at an Outcome; none of them computes.
package model

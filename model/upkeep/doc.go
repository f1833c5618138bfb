// Package upkeep is what a machine costs to run and to keep: fuel and oil over
// a profile of use, and the parts that are changed on schedule. Changes are
// whole events on a line of running hours, never shares of one; what a machine
// costs by the hour is what its owner pays until the horizon, over the hours.
//
// The intervals are common practice among users and have no published source.
// Where life data are given, the interval with the least expected cost follows
// from age replacement: change at a set age, or at a failure if that comes
// first.
package upkeep

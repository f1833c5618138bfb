// Package reading is the declaration of what the model found: figures, and
// figures held against limits.
//
// A Reading carries its key, label, value in SI, unit, which way is better,
// how it was found and where the method stands. A Check adds a limit and a
// verdict in words. A figure that does not exist says why instead; not a
// number and infinity never travel.
package reading

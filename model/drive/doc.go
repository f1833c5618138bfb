// Package drive is what stands between the crank and the propeller: the
// choice among ribbed belt, gear and direct, and what every kind of drive
// owes the rest of the chain.
package drive

// Package coupling is what joins the crank to a reduction: a stiff joint, an
// elastic coupling, or a centrifugal clutch that lets the engine idle without
// the propeller.
//
// The shoes of a centrifugal clutch press on its drum by what their weight in
// the turn exceeds their springs, so its torque grows with the square of speed
// above that at which it takes hold. Source: Budynas & Nisbett, Shigley's
// Mechanical Engineering Design, chapter 16, from memory.
package coupling

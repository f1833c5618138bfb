// Package carry is the pilot who stands and runs with the machine on the back:
// the moment at the hip, the lean that balances it, the pull in the shoulder
// straps, and the mass it feels like; then what it asks of the low back, of the
// walk to the field and of picking it up, and with a full and an empty tank.
//
// The frame of reference is the stack's: x aft from the back plane, z up from
// the hip-joint axis of the standing pilot. The model is static, in the side
// view. At the balanced lean the net moment at the hip is zero, so the hip
// moment is always quoted upright, as in the run under the wing, and the lean
// at balance; each says nothing without the other. What the legs and the heart
// pay follows the true mass, which stands beside every equivalent one.
//
// Depth is felt as mass is: Thicknesses says what every piece of the stack costs
// by its depth, SplitPieces what of a difference between two machines is mass
// and what is depth, piece by piece.
package carry

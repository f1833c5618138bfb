// Package vibration is how a machine shakes in its rubber mounts: the inertia
// forces of a single cylinder, the six ways in which engine, drive and
// propeller swing as one stiff body, what of the shaking reaches the frame,
// how far the body sags under weight, thrust and torque, and what is left of
// the propeller's clearance.
//
// The body is stiff, the frame stands still, rubber is linear and its damping
// is the same share in every mode. The couple with which the spinning
// propeller resists pitch and yaw is left out; it parts those two modes. How
// crank and propeller twist against one another is not a matter of the mounts.
//
// Frame of reference: x aft, y to the right, z up; turns follow the right hand.
package vibration

// Package propeller analyses a given propeller by blade-element momentum
// theory: what thrust it gives and what power it absorbs at a speed of
// rotation and an airspeed, standing still included.
//
// A Spec describes the blade; New cuts it into cells and precomputes what does
// not depend on the flow; At works one operating point. Per cell one residual
// in the inflow angle is solved, bracketed so that standing still is no
// special case. Section data come from a generic polar with stall, so the
// result at a given pitch carries a band that Report states.
//
// Sources: Ning, A simple solution method for the blade element momentum
// equations with guaranteed convergence, Wind Energy 17 (2014), for the
// bracketed residual, here in propeller form; Prandtl's tip factor; Viterna &
// Corrigan 1981 after stall; Snel et al. 1993 for stall delay by rotation.
package propeller

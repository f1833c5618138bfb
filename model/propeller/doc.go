// Package propeller analyses a given propeller by blade-element momentum
// theory: what thrust it gives and what power it absorbs at a speed of
// rotation and an airspeed, standing still included.
//
// A Spec describes the blade; New cuts it into cells and precomputes what does
// not depend on the flow; At works one operating point and Loading tells what
// each cell then carries. Per cell one residual in the inflow angle is solved,
// bracketed so that standing still is no special case. Section data come from
// a generic polar or from measured rows. Design lays out a blade of least
// induced loss. What a thrust is worth comes from measured propellers, in one
// table that a test holds to what the model gives.
//
// Sources: Ning, A simple solution method for the blade element momentum
// equations with guaranteed convergence, Wind Energy 17 (2014), for the
// bracketed residual, here in propeller form; Prandtl's tip factor; Viterna &
// Corrigan 1981 and Tangler & Kocurek 2004 after stall; Snel et al. 1993 and
// Lindenburg 2003 for stall delay by rotation; Adkins & Liebeck 1994 for the
// design.
//
// Left out: the contraction of the wake and its passage close under the next
// blade, air that meets the disc at an angle, and flow between the blades'
// roots and the body before them beyond Thrust lost to body and cage.
package propeller

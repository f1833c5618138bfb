// Package elevation draws a machine to scale as plain shapes in metres: the
// side elevation, aft to the right, and the view from behind. It knows neither
// screen nor paper; who shows a drawing chooses scale, glyphs and colours.
//
// What a drawing shows comes from a model.Outcome alone. Sizes that no
// parameter gives are drawn dashed.
package elevation

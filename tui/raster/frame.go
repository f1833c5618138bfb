package raster

import "math"

// Frame lays a plane measured in metres, or in anything else, onto a canvas:
// the same scale both ways.
type Frame struct {
	Left, Top float64 // of the canvas's corner
	Column    float64 // what a column measures; a row measures twice that
}

// Fit is the largest scale at which width x height fits w x h cells.
func Fit(width, height float64, w, h int) float64 {
	if w <= 0 || h <= 0 {
		return 0
	}
	return math.Max(width/float64(w), height/float64(2*h))
}

// At is the place of x and y in cells.
func (f Frame) At(x, y float64) [2]float64 { return [2]float64{f.X(x), (f.Top - y) / (2 * f.Column)} }

// X is the place of x in columns.
func (f Frame) X(x float64) float64 { return (x - f.Left) / f.Column }

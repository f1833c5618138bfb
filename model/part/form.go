package part

// Disc is a circle about an axis parallel to the thrust axis.
type Disc struct {
	Up     float64 // of its centre above the crank axis, m
	Radius float64 // m
}

// Form is the outline of a body for drawings: what two discs and their common
// tangents enclose, seen along the thrust axis. For a body of revolution the
// two are one.
type Form struct {
	Key       string
	Label     string
	Piece     string // key of the piece from whose front face Behind counts
	Behind    float64
	Depth     float64 // along the thrust axis, m
	Low, High Disc
}

// Round is the form of a body of revolution.
func Round(key, label, piece string, depth float64, d Disc) Form {
	return Form{Key: key, Label: label, Piece: piece, Depth: depth, Low: d, High: d}
}

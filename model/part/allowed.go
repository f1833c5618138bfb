package part

import "backspan/model/unit"

// Allowed is a dimension or a limit that a workshop makes or measures by, and
// that no comparison needs. Build it with Between, AtMost or Said.
type Allowed struct {
	Key    string
	Label  string
	Least  float64 // SI
	Most   float64 // SI, not below Least; the same where no tolerance is known
	Unit   unit.Unit
	Digits int    // after the point
	Text   string // where it is no figure
	Method string // how it was found, in words
	Origin string // standard, book, "geometry" or "from memory: …"
	Param  string // path of the parameter that gives it; its origin counts
	Why    string // why there is none
	Limit  bool   // Most is all that counts
}

// Between is what lies between two limits, SI, shown with as many digits after
// the point.
func Between(key, label string, least, most float64, u unit.Unit, digits int) Allowed {
	return Allowed{Key: key, Label: label, Least: least, Most: most, Unit: u, Digits: digits}
}

// AtMost is what must not pass a limit, SI.
func AtMost(key, label string, most float64, u unit.Unit, digits int) Allowed {
	return Allowed{Key: key, Label: label, Least: most, Most: most, Unit: u, Digits: digits, Limit: true}
}

// Said is what is told in words.
func Said(key, label, text string) Allowed { return Allowed{Key: key, Label: label, Text: text} }

// Unknown is what has no figure, with the reason.
func Unknown(key, label string, u unit.Unit, why string) Allowed {
	return Allowed{Key: key, Label: label, Unit: u, Why: why}
}

// How says in words how it was found.
func (a Allowed) How(s string) Allowed { a.Method = s; return a }

// Source names the standard or book.
func (a Allowed) Source(s string) Allowed { a.Origin = s; return a }

// Given names the parameter, by its path, whose origin is that of the limit.
func (a Allowed) Given(path string) Allowed { a.Param = path; return a }

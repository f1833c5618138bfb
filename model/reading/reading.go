package reading

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"backspan/model/unit"
)

// Better says which way a reading improves.
type Better string

// The ways a reading improves.
const (
	Neither Better = "neither"
	Higher  Better = "higher"
	Lower   Better = "lower"
)

// Reading is one computed figure. Build it with New or Missing.
type Reading struct {
	Key    string // "stack.depth": part and noun, a stable contract
	Label  string
	Value  float64 // SI, meaningful only when Why is empty
	Unit   unit.Unit
	Better Better
	Method string // how it was found, in words
	Origin string // standard, book or "geometry"
	Why    string // why there is no value
	Absent bool   // there is no value because the part does not exist here
	Sense  bool   // the value is +1 or −1 for a direction: a change of it is no amount
}

// New declares a reading. A value that is not finite becomes a missing one,
// so that no screen or file ever shows NaN or Inf.
func New(key, label string, si float64, u unit.Unit) Reading {
	r := Reading{Key: key, Label: label, Value: si, Unit: u, Better: Neither}
	if math.IsNaN(si) || math.IsInf(si, 0) {
		r.Value, r.Why = 0, "the sum has no finite answer for these parameters"
	}
	return r
}

// Missing declares a reading that has no value, with the reason.
func Missing(key, label string, u unit.Unit, why string) Reading {
	return Reading{Key: key, Label: label, Unit: u, Better: Neither, Why: why}
}

// Higher marks that more is better.
func (r Reading) Higher() Reading { r.Better = Higher; return r }

// Lower marks that less is better.
func (r Reading) Lower() Reading { r.Better = Lower; return r }

// Sided marks a value that stands for a direction.
func (r Reading) Sided() Reading { r.Sense = true; return r }

// How says in words how the figure was found.
func (r Reading) How(s string) Reading { r.Method = s; return r }

// Source names the standard or book, "geometry", "from memory: …", or
// "common practice, no source".
func (r Reading) Source(s string) Reading { r.Origin = s; return r }

// Known reports whether the reading has a value.
func (r Reading) Known() bool { return r.Why == "" }

// Text is the value with its unit, or "not rated", or "none" where the part
// does not exist.
func (r Reading) Text() string {
	switch {
	case r.Absent:
		return "none"
	case !r.Known():
		return "not rated"
	}
	return r.Unit.Text(r.Value)
}

// Improves reports whether going from r to s is better (+1), worse (−1) or
// neither (0).
func (r Reading) Improves(s Reading) int {
	if !r.Known() || !s.Known() || r.Value == s.Value || r.Better == Neither {
		return 0
	}
	if (s.Value > r.Value) == (r.Better == Higher) {
		return 1
	}
	return -1
}

// Change is the signed difference from r to s as shown, "+0.3", or "turned" for
// a direction; empty when either has no value or nothing changed that shows.
func (r Reading) Change(s Reading) string {
	if !r.Known() || !s.Known() {
		return ""
	}
	if s.Sense && r.Value != s.Value {
		return "turned"
	}
	text := s.Unit.Delta(s.Value-r.Value, s.Value)
	if strings.Trim(text, "+-0.") == "" {
		return ""
	}
	return text
}

// Find returns the reading with that key.
func Find(rs []Reading, key string) (Reading, bool) {
	for _, r := range rs {
		if r.Key == key {
			return r, true
		}
	}
	return Reading{}, false
}

func (r Reading) String() string { return fmt.Sprintf("%s %s", r.Label, r.Text()) }

// Blank turns readings into missing ones for one reason, so that a part that
// could not be computed still declares every key it owes.
func Blank(rs []Reading, why string) []Reading {
	for i := range rs {
		rs[i].Value, rs[i].Why = 0, why
	}
	return rs
}

// BlankBut is Blank for all readings but those with these keys, which do not
// rest on what is missing.
func BlankBut(rs []Reading, why string, known ...string) []Reading {
	for i := range rs {
		if !slices.Contains(known, rs[i].Key) {
			Blank(rs[i:i+1], why)
		}
	}
	return rs
}

// Without turns readings into those of a part that this machine does not have.
func Without(rs []Reading, why string) []Reading {
	for i := range rs {
		rs[i].Value, rs[i].Why, rs[i].Absent = 0, why, true
	}
	return rs
}

package readings

import (
	"strings"

	"backspan/model/reading"
)

func index(rs []reading.Reading) map[string]reading.Reading {
	byKey := make(map[string]reading.Reading, len(rs))
	for _, r := range rs {
		byKey[r.Key] = r
	}
	return byKey
}

// Part is the part that a key belongs to, as a heading: "stack.depth" belongs
// to "Stack".
func Part(key string) string {
	part, _, _ := strings.Cut(key, ".")
	if part == "" {
		return "Other"
	}
	return strings.ToUpper(part[:1]) + strings.ReplaceAll(part[1:], "_", " ")
}

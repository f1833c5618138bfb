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

type group struct {
	name     string
	readings []reading.Reading
}

// groups gathers readings by part, parts in the order of their first reading.
func groups(rs []reading.Reading) []group {
	var gs []group
	at := map[string]int{}
	for _, r := range rs {
		part := Part(r.Key)
		i, ok := at[part]
		if !ok {
			i = len(gs)
			at[part] = i
			gs = append(gs, group{name: part})
		}
		gs[i].readings = append(gs[i].readings, r)
	}
	return gs
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

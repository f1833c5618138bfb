package explore

import (
	"cmp"
	"slices"
	"strings"
)

// meant names up to three of the keys that are nearest to what was typed;
// empty when none is near.
func meant(typed string, keys []string) string {
	const most = 3
	type near struct {
		key   string
		score float64
	}
	var found []near
	for _, key := range keys {
		if s := likeness(strings.ToLower(typed), key); s > 0.5 {
			found = append(found, near{key, s})
		}
	}
	slices.SortStableFunc(found, func(a, b near) int { return cmp.Compare(b.score, a.score) })
	if len(found) == 0 {
		return ""
	}
	var words []string
	for _, n := range found[:min(most, len(found))] {
		words = append(words, n.key)
	}
	return "; did you mean " + strings.Join(words, " or ") + "?"
}

// likeness is 1 for equal keys and 0 for keys without a pair of letters in
// common: Dice's coefficient of the pairs. What stands within the other, as a
// key without its table does, is like it.
func likeness(a, b string) float64 {
	pairs := func(s string) map[string]int {
		m := map[string]int{}
		for i := range len(s) - 1 {
			m[s[i:i+2]]++
		}
		return m
	}
	if len(a) > 3 && strings.Contains(b, a) {
		return 0.9 + 0.1*float64(len(a))/float64(len(b))
	}
	if len(a) < 2 || len(b) < 2 {
		return 0
	}
	shared, pa := 0, pairs(a)
	for p, n := range pairs(b) {
		shared += min(n, pa[p])
	}
	return 2 * float64(shared) / float64(len(a)+len(b)-2)
}

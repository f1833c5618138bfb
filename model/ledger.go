package model

import "strings"

// ledger gathers rows by key, part by part in the order in which the parts are
// first met: what only some variants have still stands with its kind.
type ledger[R any] struct {
	byKey  map[string]*R
	parts  []string
	ofPart map[string][]*R
}

// row is the row of that key, made anew when there is none.
func (l *ledger[R]) row(key string, fresh func() *R) *R {
	if r, ok := l.byKey[key]; ok {
		return r
	}
	if l.byKey == nil {
		l.byKey, l.ofPart = map[string]*R{}, map[string][]*R{}
	}
	r, part := fresh(), partOf(key)
	if l.ofPart[part] == nil {
		l.parts = append(l.parts, part)
	}
	l.byKey[key] = r
	l.ofPart[part] = append(l.ofPart[part], r)
	return r
}

// rows are all of them.
func (l *ledger[R]) rows() []R {
	all := make([]R, 0, len(l.byKey))
	for _, part := range l.parts {
		for _, r := range l.ofPart[part] {
			all = append(all, *r)
		}
	}
	return all
}

// partOf is what stands before the last dot of a key.
func partOf(key string) string { return key[:max(strings.LastIndexByte(key, '.'), 0)] }

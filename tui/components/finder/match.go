package finder

import (
	"strings"
	"unicode"
)

// The worth of the ways in which a word may be found, best first.
const (
	atStart   = 100 // the label begins with it
	wordStart = 80  // a word of the label does
	initials  = 60  // its letters begin words of the label: "np" for "Nominal pitch"
	within    = 40  // it stands somewhere in the label
	elsewhere = 25  // it stands in the key or the part
	scattered = 10  // its letters stand in the label in this order
)

// worth says how well an item answers a query, 0 for not at all. Every word of
// the query must be found.
func worth(query, label, elsewhereIn string) int {
	sum := 0
	label, elsewhereIn = strings.ToLower(label), strings.ToLower(elsewhereIn)
	words := strings.Fields(strings.ToLower(query))
	for i, w := range words {
		n := wordWorth(w, label, elsewhereIn)
		if n == 0 {
			return 0
		}
		if n == atStart && i > 0 {
			n = wordStart
		}
		sum += n
	}
	if sum > 0 && strings.HasPrefix(label, strings.ToLower(strings.TrimSpace(query))) {
		sum += atStart
	}
	return sum
}

func wordWorth(w, label, elsewhereIn string) int {
	starts := startsOf(label)
	switch {
	case strings.HasPrefix(label, w):
		return atStart
	case strings.Contains(" "+strings.Join(starts, " "), " "+w):
		return wordStart
	case len(w) > 1 && beginWords(w, starts):
		return initials
	case strings.Contains(label, w):
		return within
	case strings.Contains(elsewhereIn, w):
		return elsewhere
	case len(w) > 2 && scatteredIn(w, label):
		return scattered
	}
	return 0
}

// startsOf splits a label into its words.
func startsOf(s string) []string {
	return strings.FieldsFunc(s, func(r rune) bool { return !unicode.IsLetter(r) && !unicode.IsDigit(r) })
}

// beginWords reports whether w is made of beginnings of words, in their order:
// "nopi" of "nominal pitch".
func beginWords(w string, words []string) bool {
	if w == "" {
		return true
	}
	for i, word := range words {
		for n := commonPrefix(w, word); n > 0; n-- {
			if beginWords(w[n:], words[i+1:]) {
				return true
			}
		}
	}
	return false
}

func commonPrefix(a, b string) int {
	n := 0
	for n < len(a) && n < len(b) && a[n] == b[n] {
		n++
	}
	return n
}

func scatteredIn(w, label string) bool {
	rest := []rune(w)
	for _, r := range label {
		if len(rest) > 0 && r == rest[0] {
			rest = rest[1:]
		}
	}
	return len(rest) == 0
}

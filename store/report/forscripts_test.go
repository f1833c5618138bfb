package report

import (
	"encoding/csv"
	"encoding/json"
	"strings"
	"testing"
)

// Hostile text comes back from JSON as it was and commands no terminal.
func TestJSONAndCSVCommandNoTerminal(t *testing.T) {
	const hostile = "a\x1b[31m\x07 \x7f\u009b2J\u202ex\u2028\U000e0001 é 夜 😀\nsecond"
	for _, write := range []func(b *strings.Builder) error{
		func(b *strings.Builder) error { return encodeJSON(b, map[string]string{"name": hostile}) },
		func(b *strings.Builder) error { return writeAll(csv.NewWriter(b), [][]string{{hostile, "b"}}) },
	} {
		var b strings.Builder
		if err := write(&b); err != nil {
			t.Fatal(err)
		}
		if strings.ContainsFunc(b.String(), func(r rune) bool { return r != '\n' && unprintable(r) }) {
			t.Errorf("raw: %q", b.String())
		}
		if !strings.Contains(b.String(), "é 夜 😀") {
			t.Errorf("letters are lost: %q", b.String())
		}
		var back map[string]string
		if strings.HasPrefix(b.String(), "{") && (json.Unmarshal([]byte(b.String()), &back) != nil || back["name"] != hostile) {
			t.Errorf("came back as %q", back["name"])
		}
	}
}

// Package tabletest holds embedded tables to what every one of them owes.
package tabletest

import (
	"slices"
	"testing"

	"backspan/model/internal/table"
)

// Whole fails the test unless the table names its standard, certainty and
// units, has that many rows, and every row its clause.
func Whole(t *testing.T, name string, x table.Table, rows int) {
	t.Helper()
	if x.Standard == "" || x.Units == "" || !slices.Contains([]string{"verified", "memory", "computed"}, x.Certainty) {
		t.Errorf("%s: standard %q, certainty %q, units %q", name, x.Standard, x.Certainty, x.Units)
	}
	if len(x.Rows) != rows {
		t.Errorf("%s: %d rows, want %d", name, len(x.Rows), rows)
	}
	for i, r := range x.Rows {
		if r.Word("clause") == "" {
			t.Errorf("%s: row %d names no clause", name, i+1)
		}
	}
}

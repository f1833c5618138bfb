package report

import (
	_ "embed" // the selection
	"encoding/csv"
	"strings"
	"sync"
)

//go:embed data/build_sheet.csv
var buildKeysFile string

// The kinds of a line on the build sheet.
const (
	setKind   = "set"   // a parameter
	foundKind = "found" // a reading
	heldKind  = "held"  // a check
	madeKind  = "made"  // a limit or a word for the workshop
	toldKind  = "told"  // a word that stands for every machine
	openKind  = "open"  // what no parameter gives
)

type buildKey struct{ block, kind, key, more string }

// buildKeys is the one place that says what is on a build sheet, and in which
// order.
var buildKeys = sync.OnceValue(func() []buildKey {
	in := csv.NewReader(strings.NewReader(buildKeysFile))
	in.Comment = '#'
	rows, err := in.ReadAll()
	if err != nil {
		panic("the table of the build sheet: " + err.Error())
	}
	keys := make([]buildKey, 0, len(rows))
	for _, r := range rows[1:] {
		keys = append(keys, buildKey{r[0], r[1], r[2], r[3]})
	}
	return keys
})

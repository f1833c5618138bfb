package bearing

import (
	"testing"

	"backspan/model/internal/table"
	"backspan/model/internal/tabletest"
	"backspan/model/param"
)

func TestTablesCarryTheirClauses(t *testing.T) {
	for _, tc := range []struct {
		name, text string
		rows       int
	}{{"sizes", sizesFile, 21}, {"thrust", thrustFile, 9}, {"reliability", reliabilityFile, 6}} {
		tabletest.Whole(t, tc.name, table.Must(tc.text), tc.rows)
	}
	if got := table.Must(sizesFile).Origin(); got != RatingOrigin {
		t.Errorf("the table of sizes says %q, the readings %q", got, RatingOrigin)
	}
}

func TestRatingsOfADataSheetStandInForTheTable(t *testing.T) {
	b := listed(t, "6204")
	own := b.WithRatings(param.Known(13500), param.Slot{})
	if own.Rating != 13500 || own.StaticRating != b.StaticRating || own.Bore != b.Bore {
		t.Errorf("%+v", own)
	}
	if own = b.WithRatings(param.Slot{}, param.Known(6550)); own.Rating != b.Rating || own.StaticRating != 6550 {
		t.Errorf("%+v", own)
	}
}

func TestLookingUpAllocatesNothing(t *testing.T) {
	if n := testing.AllocsPerRun(100, func() {
		b, _ := Size("6308").DeepGroove()
		b.EquivalentLoad(1000, 900, 14)
		Reliability99.Factor()
	}); n != 0 {
		t.Errorf("%g allocations", n)
	}
}

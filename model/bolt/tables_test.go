package bolt

import (
	"testing"

	"backspan/model/internal/table"
	"backspan/model/internal/tabletest"
)

func TestTablesCarryTheirClauses(t *testing.T) {
	tabletest.Whole(t, "threads", table.Must(threadsFile), 5)
	tabletest.Whole(t, "classes", table.Must(classesFile), 3)
}

func TestFromMemoryShowsAtTheParameter(t *testing.T) {
	s := Default()
	for _, p := range s.Params() {
		if p.Key == "class" && p.Origin != "from memory: ISO 898-1" {
			t.Errorf("%s is from %q", p.Label, p.Origin)
		}
	}
	if (Size("M7").thread() != M8.thread()) || Class("4.6").yield() != Class8.yield() {
		t.Error("an unlisted word is not the usual one")
	}
}

func TestLookingUpAllocatesNothing(t *testing.T) {
	if n := testing.AllocsPerRun(100, func() { M12.thread(); Class12.yield() }); n != 0 {
		t.Errorf("%g allocations", n)
	}
}

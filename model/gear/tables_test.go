package gear

import (
	"strings"
	"testing"

	"backspan/model/internal/table"
	"backspan/model/internal/tabletest"
)

func TestTablesCarryTheirClauses(t *testing.T) {
	for _, tc := range []struct {
		name, text string
		rows       int
	}{
		{"materials", materialsFile, 26}, {"slip layers", slipLayersFile, 9}, {"simple dynamic factor", simpleDynamicFile, 8},
		{"dynamic constants", dynamicConstantsFile, 6}, {"application", applicationFile, 4}, {"alignment", alignmentFile, 4},
		{"Lewis form", lewisFile, 25}, {"modules", modulesFile, 8},
	} {
		tabletest.Whole(t, tc.name, table.Must(tc.text), tc.rows)
	}
}

// Every default that a table from memory stands behind says so on the form.
func TestFromMemoryShowsAtTheParameter(t *testing.T) {
	s := Default()
	seen := 0
	for _, p := range s.Params() {
		switch p.Key {
		case "pinion_material", "wheel_material", "application_factor", "agma_alignment":
			seen++
			if !strings.HasPrefix(p.Origin, "from memory: ") {
				t.Errorf("%s is from %q", p.Label, p.Origin)
			}
		}
	}
	if seen != 4 {
		t.Errorf("%d parameters seen", seen)
	}
	if factor, _ := usualApplication(); factor != s.ApplicationFactor {
		t.Errorf("the default application factor is %g, the table's %g", s.ApplicationFactor, factor)
	}
}

func TestLookingUpAllocatesNothing(t *testing.T) {
	m := toothMaterial{class: HardenedAlloy, hardness: 280}
	if n := testing.AllocsPerRun(100, func() {
		newToothMaterial(CaseHardened, MQ, Core30, 700)
		m.slipLayer()
		newDynamicConstants(2.3)
		lewisY(33)
	}); n != 0 {
		t.Errorf("%g allocations", n)
	}
}

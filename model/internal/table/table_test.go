package table

import (
	"strings"
	"testing"
)

const small = "# standard: a standard, table 1\n# certainty: memory\n# units: mm\nname,value,clause\n" +
	"one,1.5,clause 3\n\"two, with a comma\",,clause 4\n"

func TestParse(t *testing.T) {
	x, err := Parse(small)
	if err != nil {
		t.Fatal(err)
	}
	if x.Origin() != "from memory: a standard, table 1" || x.Units != "mm" || len(x.Rows) != 2 {
		t.Errorf("%+v", x)
	}
	one, two := x.Rows[0], x.Rows[1]
	if one.Num("value") != 1.5 || one.Word("clause") != "clause 3" || two.Word("name") != "two, with a comma" || two.Num("value") != 0 || one.Word("none") != "" {
		t.Errorf("%+v", x.Rows)
	}
	x, err = Parse(strings.Replace(small, "memory", "verified", 1))
	if err != nil || x.Origin() != "a standard, table 1" {
		t.Errorf("%q, %v", x.Origin(), err)
	}
}

func TestWhatIsNoTableIsRefused(t *testing.T) {
	for _, text := range []string{"", "# standard: x\nname,clause\n", "name,clause\none\n"} {
		if _, err := Parse(text); err == nil {
			t.Errorf("%q is taken", text)
		}
	}
}

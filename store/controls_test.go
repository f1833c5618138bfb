package store

import (
	"strings"
	"testing"
)

// A line with control characters is one problem, wherever they stand, and
// hides no other.
func TestControlCharactersAreOneProblemALine(t *testing.T) {
	for _, tc := range []struct{ src, want string }{
		{"format = 1\nname = \"a\x01b\"\n", "x:2: name: holds the control character 0x01 (column 10); delete it"},
		{"format = 1\nname = \"a\x01b\x1b[31mc\x7f\"\n", "x:2: name: holds 3 control characters, the first 0x01 (column 10); delete them"},
		{"format = 1\n\x01\x02\n\x03[[variant]]\nname = \"B\"\n[variant.\x05engine]\n",
			"x:2: holds 2 control characters, the first 0x01 (column 1); delete them\n" +
				"x:3: holds the control character 0x03 (column 1); delete it\n" +
				"x:5: variant.engine: holds the control character 0x05 (column 10); delete it"},
		{"format = 1 # say\x1b\n", "x:1: format: holds the control character 0x1b (column 17); delete it"},
		{"format = 1\nnotes = \"\"\"é\n\x02\n\"\"\"\n", "x:3: notes: holds the control character 0x02 (column 1); delete it"},
		{"format = 1\nname = \"a\x02\"\nmargin_asked_percent = 10,5\nnamee = 1\n",
			"x:2: name: holds the control character 0x02 (column 10); delete it\n" +
				"x:3: margin_asked_percent: 10,5 is not a number; write it with a decimal point: 10.5 (column 26)\n" +
				"x:4: namee: there is no such key; did you mean name?"},
		{"format = 1\rname = \"A\"\n", "x:1: format: a line end that is only half one, CR without LF (column 11); save the file with line ends of one kind"},
	} {
		_, err := Decode("x", []byte(tc.src+"[[variant]]\nname = \"A\"\n"))
		if err == nil || strings.Join(ofLines(err.Error()), "\n") != tc.want {
			t.Errorf("%q gave\n%v\nwant\n%s", tc.src, err, tc.want)
		}
	}
}

// ofLines are the problems that have a line.
func ofLines(text string) []string {
	var lines []string
	for _, l := range strings.Split(text, "\n") {
		if rest := strings.TrimPrefix(l, "x:"); rest[0] >= '0' && rest[0] <= '9' {
			lines = append(lines, l)
		}
	}
	return lines
}

// What is nested without end costs no time to refuse.
func TestDeepNestingIsRefusedAtOnce(t *testing.T) {
	const deep = 200_000
	for _, line := range []string{
		"[" + strings.Repeat("a.", deep) + "a]", "[[" + strings.Repeat("a.", deep) + "a]]", strings.Repeat("a.", deep) + "a = 1",
		"a = " + strings.Repeat("[", deep), "a = " + strings.Repeat("{a=", deep),
	} {
		_, err := Decode("x", []byte("format = 1\n"+line+"\n"))
		if err == nil || err.Error() != "x:2: is nested deeper than any study; give a study's own file" {
			t.Errorf("%.10s…: %.200v", line, err)
		}
	}
}

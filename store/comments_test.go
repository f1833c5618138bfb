package store

import (
	"bytes"
	"os"
	"slices"
	"strings"
	"testing"

	"backspan/model"
	"backspan/model/param"
)

const commented = `# top of the file
format = 1   # first of all

# about the name,
#
# in two paragraphs

# the second
name = "Trials" # beside it
site = { altitude_m = 500 } # inline
# before the table
[pilot] # the one who flies
mass_kg = 82 # weighed on Tuesday

# the first machine
[[variant]]
name = "A"
[variant.engine]
power_curve_rpm_kw = [ # on the brake
  [3000, 3.6], # warm
  [4000, 5.6],
  [5000, 8.3],
]
[variant.drive.gear] # not in use
module_mm = 2 # default, and hidden
[[variant]]
name = "B" # the other
# the end
`

// Every comment is still there after a save, before the same value, and saving
// again changes nothing.
func TestCommentsSurviveASave(t *testing.T) {
	s, err := Decode("a.toml", []byte(commented))
	if err != nil {
		t.Fatal(err)
	}
	out := Encode(s)
	for _, pair := range [][2]string{
		{"# top of the file\n# first of all\nformat", "the top"},
		{"# about the name,\n#\n# in two paragraphs\n\n# the second\n# beside it\nname = \"Trials\"", "a value"},
		{"# inline\n[site]", "an inline table"},
		{"# before the table\n# the one who flies\n[pilot]", "a table"},
		{"# weighed on Tuesday\nmass_kg", "behind a value"},
		{"# the first machine\n[[variant]]\nname = \"A\"", "a variant"},
		{"# on the brake\n# warm\npower_curve", "inside a list"},
		{"# not in use\n[variant.drive.gear]\n# default, and hidden\nmodule_mm", "what does not apply"},
		{"# the other\nname = \"B\"", "the second variant"},
		{"\n# the end\n", "the end"},
	} {
		if !strings.Contains(string(out), pair[0]) {
			t.Errorf("%s: no %q", pair[1], pair[0])
		}
	}
	back, err := Decode("a.toml", out)
	if err != nil {
		t.Fatal(err)
	}
	if again := Encode(back); !bytes.Equal(again, out) {
		t.Errorf("wrote\n%s\nthen\n%s", out, again)
	}
}

// What a save writes by itself is not taken for a person's.
func TestOwnRemarksAreNoComments(t *testing.T) {
	s, err := Decode("a.toml", Encode(model.Sample()))
	if err != nil {
		t.Fatal(err)
	}
	for _, c := range append([]map[string]string{s.Comments}, s.Variants[0].Comments) {
		if len(c) > 0 {
			t.Errorf("%v", c)
		}
	}
}

// Comments of variants that are gone, or moved, go where they can be found.
func TestCommentsFollowTheirVariant(t *testing.T) {
	s, err := Decode("a.toml", []byte(commented))
	if err != nil {
		t.Fatal(err)
	}
	s.Variants[0], s.Variants[1] = s.Variants[1], s.Variants[0]
	if err := s.Rename(1, "Z"); err != nil {
		t.Fatal(err)
	}
	out := string(Encode(s))
	if !strings.Contains(out, "# the first machine\n[[variant]]\nname = \"Z\"") || strings.Index(out, "# the other") > strings.Index(out, "# the first machine") {
		t.Errorf("%s", out)
	}
}

// A file that a person wrote, but only comments into, needs no backup.
func TestCommentsNeedNoBackup(t *testing.T) {
	f := NewFolder(t.TempDir())
	path := f.dir + "/a.toml"
	text := strings.Replace(string(Encode(sound())), "format = 1", "# mine\nformat = 1", 1)
	put(t, path, text)
	s, err := f.Open(path)
	if err != nil {
		t.Fatal(err)
	}
	s.Name = "New"
	note, err := f.Save(path, s)
	if err != nil || note != "" {
		t.Errorf("%q, %v", note, err)
	}
	if _, err := os.Stat(path + ".bak"); err == nil {
		t.Error("a backup all the same")
	}
	if !strings.Contains(string(get(t, path)), "# mine\n") {
		t.Error("the comment is lost")
	}
}

// A person's own words behind a label are kept; what a version before wrote
// there is not, though range, choices and help were others.
func TestOwnWordsBehindALabel(t *testing.T) {
	for _, tc := range []struct {
		key, comment string
		kept         bool
	}{
		{"mass_kg", "Pilot mass: weighed on 3 May", true},
		{"mass_kg", "Pilot mass: 3 kg more in winter", true},
		{"mass_kg", "Pilot mass; with boots", true},
		{"mass_kg", "Pilot mass", false},
		{"mass_kg", "Pilot mass: 30 to 150.5 kg; other help; default: another", false},
		{"segments", "Body segments after: what the club uses", true},
		{"segments", "Body segments after: Winter or another; help", false},
		{"currency", "Currency; agreed with the club", true},
		{"currency", "Currency; of all prices", false},
	} {
		lines := strings.SplitAfter(string(Encode(sound())), "\n")
		at := slices.IndexFunc(lines, func(l string) bool { return strings.HasPrefix(l, tc.key+" = ") })
		value, _, _ := strings.Cut(lines[at], "#")
		lines[at] = value + "# " + tc.comment + "\n"
		s, err := Decode("a.toml", []byte(strings.Join(lines, "")))
		if err != nil {
			t.Fatal(err)
		}
		if kept := strings.Contains(string(Encode(s)), "# "+tc.comment+"\n"); kept != tc.kept {
			t.Errorf("%s # %s: kept %v", tc.key, tc.comment, kept)
		}
	}
}

// What a person adds to a save's own remark is kept; the remark is not, nor
// what stood at the top of a file of a version before.
func TestWhatIsAddedToARemarkIsKept(t *testing.T) {
	text := string(Encode(sound()))
	line := text[strings.Index(text, "margin_asked"):]
	line = line[:strings.IndexByte(line, '\n')]
	text = strings.Replace(text, line, line+" -- agreed on 3 May", 1)
	text = strings.Replace(text, "[site]", "# Margin asked for by the club\n[site]", 1)
	text = strings.Replace(text, headings[1], headings[2], 1)
	s, err := Decode("a.toml", []byte(text))
	if err != nil {
		t.Fatal(err)
	}
	out := string(Encode(s))
	if !strings.Contains(out, "# -- agreed on 3 May\nmargin_asked") || !strings.Contains(out, "# Margin asked for by the club\n[site]") {
		t.Errorf("%s", out)
	}
	if strings.Contains(out, headings[2]) || strings.Count(out, headings[0]) != 1 {
		t.Errorf("the heading of a version before is kept: %.300s", out)
	}
	behind := strings.Replace(string(Encode(sound())), line, line+"\n"+headings[0], 1)
	if s, err = Decode("a.toml", []byte(behind)); err != nil {
		t.Fatal(err)
	}
	if back, err := Decode("a.toml", Encode(s)); err != nil || !bytes.Equal(Encode(back), Encode(s)) {
		t.Errorf("a heading in another place is not kept, %v", err)
	}
}

func TestEveryRemarkIsKnownAgain(t *testing.T) {
	fresh := model.NewVariant("")
	for _, sections := range [][]param.Section{model.NewStudy("").Sections(), fresh.Sections()} {
		for key, p := range registerOf(sections).params {
			if after, found := strings.CutPrefix(remark(p), p.Label); found && !remarkedBefore(p, after) {
				t.Errorf("%s: %q is taken for a person's words", key, after)
			}
		}
	}
}

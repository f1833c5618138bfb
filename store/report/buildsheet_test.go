package report

import (
	"bytes"
	"flag"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"backspan/model"
	"backspan/model/drive"
	"backspan/model/param"
	"backspan/model/reading"
)

var update = flag.Bool("update", false, "write golden files anew")

func golden(t *testing.T, name, got string) {
	t.Helper()
	path := filepath.Join("testdata", name)
	if *update {
		if err := os.WriteFile(path, []byte(got), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	want, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	if got != string(want) {
		t.Errorf("%s differs; look at it and run with -update:\n%s", path, got)
	}
}

func buildSheet(t *testing.T, s *model.Study, v *model.Variant, f Format) string {
	t.Helper()
	o := model.Evaluate(s, v)
	var b bytes.Buffer
	if err := BuildSheet(&b, s, v, &o, Printing{"2026-01-02", "mine.toml, saved 2026-01-01 12:00"}, f); err != nil {
		t.Fatal(err)
	}
	return b.String()
}

func sampleVariant(t *testing.T, name string) (*model.Study, *model.Variant) {
	t.Helper()
	s := model.Sample()
	i := s.Index(name)
	if i < 0 {
		t.Fatalf("the sample has no %s", name)
	}
	return s, &s.Variants[i]
}

func TestBuildSheetsOfTheSample(t *testing.T) {
	for file, name := range map[string]string{"build_belt": "Belt 190", "build_gear": "Gear 190", "build_toothed": "Toothed 190"} {
		s, v := sampleVariant(t, name)
		golden(t, file+".md", buildSheet(t, s, v, Markdown))
	}
	s, v := sampleVariant(t, "Belt 190")
	golden(t, "build_belt.html", buildSheet(t, s, v, HTML))
}

// settings are the variant with one choice or switch set otherwise after the
// other, for some keys apply to few machines. What only experts ask for is left
// unasked for.
func settings(v model.Variant) []model.Variant {
	all := []model.Variant{v}
	for i, sec := range v.Sections() {
		for j, p := range sec.Params {
			words := p.Options
			if p.Kind == param.KindToggle && p.Key != "details" {
				words = []string{"yes", "no"}
			}
			for _, word := range words {
				w := v
				if q := w.Sections()[i].Params[j]; sec.Key != "" && q.Set(word) == nil {
					all = append(all, w)
				}
			}
		}
	}
	return all
}

// A key that was mistyped, or that no machine has, would be left out unseen.
func TestEveryKeyOfTheBuildSheetExists(t *testing.T) {
	known := map[string]bool{}
	for _, kind := range []drive.Kind{drive.RibbedBelt, drive.ToothedBelt, drive.Gear, drive.Direct} {
		s := model.NewStudy("all")
		v := model.NewVariant("A")
		v.Drive.Kind = kind
		o := model.Evaluate(s, &v)
		for _, w := range settings(v) {
			sections := w.Sections()
			for _, k := range buildKeys() {
				if _, applies := inUse(sections, k.key); applies {
					known[setKind+" "+k.key] = true
				}
			}
		}
		for _, r := range o.Readings {
			known[foundKind+" "+r.Key] = true
		}
		for _, k := range o.Checks {
			known[heldKind+" "+k.Key] = true
		}
		for _, a := range model.Making(&v, &o) {
			known[madeKind+" "+a.Key] = true
		}
	}
	seen := map[buildKey]bool{}
	for _, k := range buildKeys() {
		if k.kind != openKind && k.kind != toldKind && !known[k.kind+" "+k.key] {
			t.Errorf("no machine has %s %s", k.kind, k.key)
		}
		if seen[k] {
			t.Errorf("%v stands twice", k)
		}
		seen[k] = true
	}
	if len(seen) < 200 {
		t.Errorf("%d keys", len(seen))
	}
}

// ISO 53 and ISO 21771: a 2 mm module at 15° of helix with 19 teeth, shift 0.3
// and dedendum 1.25 has a root circle of 2·19/cos 15° − 2·2·(1.25 − 0.3), less
// what thinning the teeth for backlash goes deeper: 0.0755 to 0.1055 mm / sin 20°.
func TestGearDataInFull(t *testing.T) {
	s, v := sampleVariant(t, "Gear 190")
	text := buildSheet(t, s, v, Markdown)
	at := 0
	for _, want := range []string{"| Module | 2 | mm |", "| Pinion teeth | 19 |", "| Wheel teeth | 54 |", "| Pressure angle | 20 |", "| Helix angle | 15 |", "| Hand of the pinion's helix |",
		"| Pinion profile shift | 0.3000 |", "| Centre distance | 76.3", "| Centre distance, limits | 76.333 to 76.363 | mm |", "| Pinion tip diameter | 44.4", "| Pinion root diameter, limits | 35.23 to 35.32 | mm |", "| Pinion, base tangent over teeth | 3 |", "| Pinion base tangent length | 15.653 to 15.683 | mm |", "| Face width | 20 |", "| Accuracy class | 6 |",
		"| Pinion single pitch deviation, at most | 8.3 | µm |", "| Normal backlash | 0.14 |", "| Limits of the tip diameters | not given |", "| Internal clearance of the bearings | not given |",
		"| propeller shaft, propeller side: seat on the shaft, 30 k5 | 30.002 to 30.011 | mm |"} {
		i := strings.Index(text[at:], want)
		if i < 0 {
			t.Errorf("lacks %q, or it stands out of order", want)
			continue
		}
		at += i
	}
	if strings.Contains(text, "## Ribbed belt") {
		t.Error("a gear has a belt")
	}
}

func TestBuildSheetTellsWhatWasSet(t *testing.T) {
	s, v := sampleVariant(t, "Belt 190")
	p, ok := param.Find(v.Sections(), "drive.ribbed_belt.web_thickness")
	if !ok || p.Set("4.5") != nil {
		t.Fatal("cannot set the web")
	}
	text := buildSheet(t, s, v, Table)
	for _, line := range []string{"Driven pulley web cut out 30 % default, estimate", "Pulley web thickness 4.5 mm as set", "axle, propeller side 25 x 47 x 12 mm single-row deep-groove ball bearing 6005"} {
		if !strings.Contains(strings.Join(strings.Fields(text), " "), line) {
			t.Errorf("lacks %q", line)
		}
	}
}

func TestBuildSheetOfAMachineThatFails(t *testing.T) {
	s, v := sampleVariant(t, "Belt 190")
	if p, ok := param.Find(v.Sections(), "drive.ribbed_belt.centre_distance"); !ok || p.Set("60 mm") != nil {
		t.Fatal("cannot set the centre distance")
	}
	for _, f := range []Format{Table, Markdown, HTML} {
		text := buildSheet(t, s, v, f)
		if !strings.Contains(text, "Not to be built as it stands") || !strings.Contains(text, "not rated") {
			t.Errorf("%s does not warn:\n%.400s", f, text)
		}
	}
}

func TestEveryUnratedCheckIsACaution(t *testing.T) {
	s, v := sampleVariant(t, "Gear 190")
	o := model.Evaluate(s, v)
	g := buildCautions(&o)
	for _, k := range o.Checks {
		if k.Verdict == reading.NotRated && !slices.ContainsFunc(g.rows, func(r []string) bool { return r[0] == k.Label && r[1] == k.Why }) {
			t.Errorf("lacks %s", k.Label)
		}
	}
	if len(g.rows) == 0 || !strings.Contains(g.note, "airworthiness") {
		t.Errorf("%+v", g)
	}
}

// A limit that the design is held against must not read as one to work to.
func TestChecksOnTheSheetAreTold(t *testing.T) {
	s, v := sampleVariant(t, "Belt 190")
	text := buildSheet(t, s, v, Markdown)
	if !strings.Contains(text, "| Check: Belt changed within its life, at most | 500 | h |") || !strings.Contains(text, "| Retighten a wooden hub |") {
		t.Error("a check reads as a limit to work to, or an instruction as a check")
	}
}

func TestLimitHasTheOriginOfItsParameter(t *testing.T) {
	s, v := sampleVariant(t, "Belt 190")
	for _, want := range []string{"plate bolts tight; default, common practice, no source", "plate bolts tight; as set"} {
		if text := buildSheet(t, s, v, Markdown); !strings.Contains(text, want) {
			t.Errorf("lacks %q", want)
		}
		v.Propeller.TrackingLimit = 0.003
	}
}

// How to start a machine whose propeller turns at idle is no check that fails,
// and must stand on the sheet all the same.
func TestBuildSheetTellsWhatIsPastAGuideValue(t *testing.T) {
	s, v := sampleVariant(t, "Belt 190")
	for _, f := range []Format{Table, Markdown, HTML} {
		if text := buildSheet(t, s, v, f); !strings.Contains(text, "Past a guide value") || !strings.Contains(text, "Start it held fast") {
			t.Errorf("%s does not tell", f)
		}
	}
}

// A propeller is ordered by its hand: an external gear reverses it.
func TestBuildSheetTellsWhichWayThePropellerTurns(t *testing.T) {
	for name, want := range map[string]string{"Belt 190": "clockwise", "Gear 190": "anticlockwise"} {
		s, v := sampleVariant(t, name)
		if text := buildSheet(t, s, v, Markdown); !strings.Contains(text, "| Propeller turns, seen from behind | "+want+" |") {
			t.Errorf("%s: not %s", name, want)
		}
	}
}

// What a form shows only to those who ask is built by all the same.
func TestWhatAFormPutsAsideIsPrinted(t *testing.T) {
	s, v := sampleVariant(t, "Belt 190")
	text := buildSheet(t, s, v, Markdown)
	for _, want := range []string{"Setting of a new belt", "Setting of a run-in belt", "Belt length tolerance, whole band", "Misalignment limit"} {
		if !strings.Contains(text, "| "+want+" |") {
			t.Errorf("the sheet lacks %q", want)
		}
	}
	r := NewReviewed(s)
	assumed := map[string]bool{}
	for _, a := range r.assumed() {
		assumed[a.path] = true
	}
	aside := 0
	for _, sec := range v.Sections() {
		for _, p := range sec.Params {
			if path := sec.Path(p); p.Aside && !p.Hidden && doubtful(p.Origin) {
				if aside++; !assumed[path] {
					t.Errorf("the assumptions lack %s", path)
				}
			}
		}
	}
	if aside < 12 {
		t.Errorf("%d parameters are put aside", aside)
	}
}

// A torque on the sheet is read as one to set: the one that uses up the bolts
// crushes a wooden hub, and a range reads as permission.
func TestOnlyTorquesToSetStandOnTheSheet(t *testing.T) {
	s, v := sampleVariant(t, "Belt 190")
	text := buildSheet(t, s, v, Markdown)
	for _, line := range strings.Split(text, "\n") {
		if cells := strings.Split(line, "|"); strings.Contains(line, "pass, ") && strings.Contains(cells[2], " to ") {
			t.Errorf("a range: %s", line)
		}
	}
	if strings.Contains(text, "90 % of yield") || !strings.Contains(text, "| First pass, all bolts | 5.8 | N·m |") || !strings.Contains(text, "| Threads and under the heads | oiled |") {
		t.Error("a torque that is not to be set, or no word on oil")
	}
}

func TestIntervalOfTheWearingPartTellsItsOrigin(t *testing.T) {
	for name, want := range map[string]string{"Belt 190": "Belt change interval", "Toothed 190": "Belt change interval", "Gear 190": "Oil and seal interval"} {
		s, v := sampleVariant(t, name)
		text := buildSheet(t, s, v, Markdown)
		line := text[max(0, strings.Index(text, "| "+want+" |")):]
		if line, _, _ = strings.Cut(line, "\n"); !strings.HasSuffix(line, "| default, common practice, no source |") && !strings.HasSuffix(line, "| as set |") {
			t.Errorf("%s: %.80q", name, line)
		}
		if strings.Contains(text, "Wearing part changed every") {
			t.Errorf("%s: the interval stands twice", name)
		}
	}
}

// What a shop asks for and no parameter gives stands as open, not left out.
func TestSheetTellsWhatAShopAsks(t *testing.T) {
	for name, wants := range map[string][]string{
		"Belt 190": {"| All dimensions | at 20 °C |", "| Fit or key of the crank pulley | not given |", "| Before it is set | cold, ignition off |", "| Tension of a new belt | check after 20 h |",
			"| Length of the bolts | not given |", "| Locking of the bolts | not given |", "aft of mount face in mm, to the right in mm, above crank axis in mm"},
		"Toothed 190": {"| Before the tension is set | cold, ignition off |", "| Limits of tension and frequency | not given |"},
		"Gear 190": {"| Pinion measure over two balls |", "| Wheel start of active profile, diameter |", "| Pinion lead of the helix |", "| Pinion root to the mate's tip |",
			"| Spline or keyway between shafts and gears | not given |", "HV, Vickers", "| Propeller shaft, propeller-side bearing, behind middle of gears |"},
	} {
		s, v := sampleVariant(t, name)
		text := buildSheet(t, s, v, Markdown)
		for _, want := range wants {
			if !strings.Contains(text, want) {
				t.Errorf("%s lacks %q", name, want)
			}
		}
		if name != "Gear 190" && strings.Contains(text, "keyway") || name != "Belt 190" && strings.Contains(text, "Tension of a new belt") {
			t.Errorf("%s has another machine's lines", name)
		}
	}
}

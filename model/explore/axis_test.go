package explore

import (
	"math"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"backspan/model"
)

func base(t testing.TB, name string) Base {
	t.Helper()
	s := model.Sample()
	return NewBase(s, &s.Variants[s.Index(name)])
}

const crank = "drive.ribbed_belt.crank_pulley_effective_diameter"

func TestAxisReadsWhatPeopleType(t *testing.T) {
	b := base(t, "Belt 190")
	for _, tc := range []struct {
		text string
		want []string
	}{
		{crank + "=55 mm..80 mm/6", []string{"55 mm", "60 mm", "65 mm", "70 mm", "75 mm", "80 mm"}},
		{crank + " = 5.5 .. 8 cm / 3", []string{"55 mm", "67.5 mm", "80 mm"}},
		{crank + "=80..55/2", []string{"80 mm", "55 mm"}},
		{crank + "=62, 2 1/2 in, 70", []string{"62 mm", "63.5 mm", "70 mm"}},
		{crank + "=62,5; 70 mm", []string{"62.5 mm", "70 mm"}},
		{crank + "_mm=62", []string{"62 mm"}},
		{"drive.ribbed_belt.ribs=6..9", []string{"6", "7", "8", "9"}},
		{"drive.ribbed_belt.ribs=6..9/3", []string{"6", "8", "9"}},
		{"drive.ribbed_belt.ribs=6..9/11", []string{"6", "7", "8", "9"}},
		{"drive.kind=gear, direct", []string{"gear", "direct"}},
		{"listener.ground=none, free field; energy doubled, +3 dB", []string{"none, free field", "energy doubled, +3 dB"}},
		{"pilot.segments=de Leva, women, Winter", []string{"de Leva, women", "Winter"}},
		{"site.temperature_offset=-5..5/3", []string{"-5 K", "0 K", "5 K"}},
		{"margin_asked=10, 20", []string{"10 %", "20 %"}},
	} {
		a, err := b.Axis(tc.text)
		if err != nil {
			t.Errorf("%s: %v", tc.text, err)
			continue
		}
		var got []string
		for _, x := range a.Levels {
			got = append(got, a.Text(x))
		}
		if strings.Join(got, "|") != strings.Join(tc.want, "|") {
			t.Errorf("%s gives %q", tc.text, got)
		}
	}
}

func TestAxisRefusesInWords(t *testing.T) {
	b := base(t, "Belt 190")
	for _, tc := range []struct{ text, says string }{
		{"drive.ribs=6..9", "did you mean drive.ribbed_belt.ribs"},
		{"crank_pulley=55..60", crank},
		{"zzz=1", `no parameter "zzz"`},
		{crank + "=55 kg..80 mm", "a mass"},
		{crank + "=5..80/3", "5 mm is outside 20 mm to 200 mm"},
		{crank + "=55..80/1", "2 to 10000"},
		{crank + "=55, , 60", "Crank pulley"},
		{"drive.ribbed_belt.ribs=6.5", "not a whole number"},
		{"drive.kind=chain", "ribbed belt, toothed belt"},
		{"name=a", "cannot be varied"},
		{"engine.power_curve=a", "cannot be varied"},
		{crank + "=nan..80", "not a number"},
	} {
		if _, err := b.Axis(tc.text); err == nil || !strings.Contains(err.Error(), tc.says) {
			t.Errorf("%s: %v", tc.text, err)
		}
	}
	if _, err := b.Reading("stack.dept"); err == nil || !strings.Contains(err.Error(), "did you mean stack.depth or") {
		t.Error(err)
	}
}

func TestRangeIsTheUsualOneUnlessGiven(t *testing.T) {
	b := base(t, "Belt 190")
	if _, lo, hi, err := b.Range(crank); err != nil || !(lo >= 0.02 && hi <= 0.2 && lo < hi) {
		t.Errorf("%g to %g, %v", lo, hi, err)
	}
	if _, lo, hi, err := b.Range(crank + "=80..55"); err != nil || math.Abs(lo-0.055) > 1e-15 || hi != 0.08 {
		t.Errorf("%g to %g, %v", lo, hi, err)
	}
	for _, text := range []string{crank + "=60", crank + "=60..60", crank + "=55..60/3", "drive.kind"} {
		if _, _, _, err := b.Range(text); err == nil {
			t.Errorf("%s is taken", text)
		}
	}
}

// Whatever is typed is refused or gives values that may be set.
func TestNothingTypedIsTakenWrongly(t *testing.T) {
	b := base(t, "Belt 190")
	word := rapid.StringMatching(`[-+0-9., /;e]{0,6}(mm|in|%| kg|°C|gear)?`)
	rapid.Check(t, func(t *rapid.T) {
		key := rapid.SampledFrom([]string{crank, "drive.ribbed_belt.ribs", "drive.kind", "site.temperature_offset", "propeller.static_thrust", "propeller.mass"}).Draw(t, "key")
		text := key + "=" + rapid.SampledFrom([]string{"", "±", "sd "}).Draw(t, "mark") + word.Draw(t, "a") + rapid.SampledFrom([]string{"", "..", "..."}).Draw(t, "to") + word.Draw(t, "b")
		if a, err := b.Axis(text); err == nil {
			m := newMachine(b.study, b.variant).bind([]Dial{a.Dial})
			for _, x := range a.Levels {
				if err := m.set([]float64{x}); err != nil {
					t.Fatalf("%s: %v", text, err)
				}
			}
		}
		if s, err := b.Spread(text); err == nil && !(s.Half > 0 && !math.IsInf(s.Half, 0) && !math.IsNaN(s.Middle)) {
			t.Fatalf("%s: %+v", text, s)
		}
	})
}

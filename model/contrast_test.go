package model

import (
	"reflect"
	"testing"
)

func TestContrastsTellEveryDifference(t *testing.T) {
	sample := func() *Study {
		s := Sample()
		s.Variants = s.Variants[:2]
		s.Decisions = []Decision{{"2026-11-01", "belt"}, {"2026-11-02", "gear"}, {"2026-11-02", "gear"}}
		return s
	}
	for _, tc := range []struct {
		name   string
		change func(s *Study)
		title  string
		only   Side
		want   []Difference // Section, Unit and Idle aside
	}{
		{"a shared value", func(s *Study) { s.MarginAsked = 0.25 }, "Study", OnBoth, []Difference{{Path: "margin_asked", Label: "Margin asked", From: "10 %", To: "25 %"}}},
		{"notes", func(s *Study) { s.Notes = "x\ny" }, "Study", OnBoth, []Difference{{Path: "notes", Label: "Notes", From: Sample().Notes, To: "x\ny"}}},
		{"a value of a variant", func(s *Study) { s.Variants[0].Drive.RibbedBelt.Ribs++ }, "Variant Belt 190", OnBoth, []Difference{{Path: "drive.ribbed_belt.ribs", Label: "Ribs", From: "12", To: "13"}}},
		{"a variant gone", func(s *Study) { s.Variants = s.Variants[1:]; s.Reference = "Belt 190" }, "Variant Belt 190", OnlyFrom, nil},
		{"a variant more", func(s *Study) { s.Variants = append(s.Variants, NewVariant("new")) }, "Variant new", OnlyTo, nil},
		{"another order", func(s *Study) { s.Variants[0], s.Variants[1] = s.Variants[1], s.Variants[0] }, "Study", OnBoth,
			[]Difference{{Path: "variant_order", Label: "Order of the variants", From: "Belt 190, Gear 190", To: "Gear 190, Belt 190"}}},
		{"a decision more", func(s *Study) { s.Decisions = append(s.Decisions, Decision{"2026-11-03", "prop"}) }, "Decisions", OnBoth, []Difference{{Path: "decision", Label: "2026-11-03", To: "prop"}}},
		{"one of two alike gone", func(s *Study) { s.Decisions = s.Decisions[:2] }, "Decisions", OnBoth, []Difference{{Path: "decision", Label: "2026-11-02", From: "gear"}}},
		{"all decisions gone", func(s *Study) { s.Decisions = nil }, "Decisions", OnBoth, []Difference{
			{Path: "decision", Label: "2026-11-01", From: "belt"}, {Path: "decision", Label: "2026-11-02", From: "gear"}, {Path: "decision", Label: "2026-11-02", From: "gear"}}},
		{"one reworded", func(s *Study) { s.Decisions[0].Text = "chain" }, "Decisions", OnBoth, []Difference{{Path: "decision", Label: "2026-11-01", From: "belt", To: "chain"}}},
		{"decisions in another order", func(s *Study) { s.Decisions[0], s.Decisions[1] = s.Decisions[1], s.Decisions[0] }, "Decisions", OnBoth,
			[]Difference{{Path: "decision_order", Label: "Entry 1", From: "2026-11-01 belt", To: "2026-11-02 gear"}}},
		{"nothing", func(*Study) {}, "", OnBoth, nil},
	} {
		t.Run(tc.name, func(t *testing.T) {
			to := sample()
			tc.change(to)
			for _, c := range Contrasts(sample(), to) {
				var got []Difference
				for _, d := range c.Differences {
					got = append(got, Difference{Path: d.Path, Label: d.Label, From: d.From, To: d.To})
				}
				switch {
				case c.Title == tc.title && (c.Only != tc.only || !reflect.DeepEqual(got, tc.want)):
					t.Errorf("side %d, %+v", c.Only, got)
				case c.Title != tc.title && !c.Nothing():
					t.Errorf("%s differs too: %+v", c.Title, c)
				}
			}
		})
	}
}

func TestRemarksSayWhereTheyStand(t *testing.T) {
	from, to := Sample(), Sample()
	to.Comments = map[string]string{"": "# a", CommentAtEnd: "# b", "currency": "# c"}
	to.Variants[0].Comments = map[string]string{"": "# d"}
	var labels []string
	for _, d := range Remarked(from, to).Differences {
		labels = append(labels, d.Label)
	}
	if want := []string{"above it", "at the end of the file", "currency", to.Variants[0].Name + ": above it"}; !reflect.DeepEqual(labels, want) {
		t.Errorf("%q", labels)
	}
}

package cooling

import (
	"math"
	"testing"
	"unicode/utf8"

	"pgregory.net/rapid"

	"backspan/model/internal/anyspec"
	"backspan/model/part"
	"backspan/model/reading"
)

func draw(t *rapid.T) Spec {
	s := Default()
	anyspec.Set(t, s.Params(), nil)
	return s
}

func TestCost(t *testing.T) {
	for _, tc := range []struct {
		kind                 Kind
		taken, mass, depth   float64
		pieces               int
		shownForTheKind      int
		stackDepthOfThePiece float64
	}{
		{FreeAir, 0, 0, 0, 0, 0, 0},
		{Fan, 200, 1.1, 0.045, 1, 3, 0.045},
		{Liquid, 0, 2.2, 0, 1, 3, 0},
	} {
		t.Run(string(tc.kind), func(t *testing.T) {
			s := Default()
			s.Kind = tc.kind
			if got, want := Cost(s, 10e3), (Result{tc.taken, tc.mass, tc.depth}); got != want {
				t.Errorf("Cost = %+v, want %+v", got, want)
			}
			ps := s.AppendPieces(nil)
			if len(ps) != tc.pieces || part.Mass(ps) != tc.mass || part.Depth(ps) != tc.stackDepthOfThePiece {
				t.Errorf("pieces are %+v", ps)
			}
			shown := 0
			for _, p := range s.Params() {
				if !p.Hidden {
					shown++
				}
			}
			if shown != 2+tc.shownForTheKind {
				t.Errorf("%d parameters shown, want %d", shown, 2+tc.shownForTheKind)
			}
		})
	}
}

func TestTemperatureIsMissingWithAReason(t *testing.T) {
	for _, r := range [...]Result{{}, Cost(Default(), 12e3)} {
		got, ok := reading.Find(r.Readings(), "cooling.head_temperature")
		if !ok || got.Known() || got.Why == "" {
			t.Errorf("head temperature is %+v", got)
		}
		if c := r.Checks(); c[0].Verdict != reading.NotRated || c[0].Why == "" {
			t.Errorf("check is %+v", c)
		}
	}
}

func TestDefaultsAreInsideTheirRanges(t *testing.T) {
	s := Default()
	for _, p := range s.Params() {
		if err := p.Set(p.Editable()); err != nil {
			t.Error(err)
		}
		if utf8.RuneCountInString(p.Label) > 34 || p.Guidance == "" {
			t.Errorf("%s: label %q, help %q", p.Key, p.Label, p.Guidance)
		}
	}
}

func TestEveryCoolingIsFiniteAndPiecesAgreeWithCost(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s, power := draw(t), rapid.Float64Range(0, 60e3).Draw(t, "power")
		r, ps := Cost(s, power), s.AppendPieces(nil)
		if part.Mass(ps) != r.Mass || part.Depth(ps) != r.Depth {
			t.Fatalf("pieces %+v against %+v", ps, r)
		}
		if r.PowerTaken < 0 || r.PowerTaken > power || math.IsNaN(r.PowerTaken) {
			t.Fatalf("takes %g W of %g W", r.PowerTaken, power)
		}
	})
}

func BenchmarkCost(b *testing.B) {
	s := Default()
	s.Kind = Fan
	pieces := make([]part.Piece, 0, 4)
	b.ReportAllocs()
	for b.Loop() {
		pieces = s.AppendPieces(pieces[:0])
		_ = Cost(s, 12e3)
	}
}

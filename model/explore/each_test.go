package explore

import (
	"context"
	"errors"
	"runtime"
	"slices"
	"sync/atomic"
	"testing"
	"time"
)

// on runs a test's body with that many processors.
func on(processors int, body func()) {
	defer runtime.GOMAXPROCS(runtime.GOMAXPROCS(processors))
	body()
}

func TestEachKeepsTheOrderOnAnyNumberOfProcessors(t *testing.T) {
	for _, processors := range []int{1, 2, 7} {
		on(processors, func() {
			got, err := gather(t.Context(), Span{3, 200}, func() func(int) int {
				return func(i int) int {
					if i%5 == 0 {
						time.Sleep(time.Millisecond)
					}
					return i * i
				}
			})
			if err != nil || len(got) != 197 {
				t.Fatal(len(got), err)
			}
			for k, r := range got {
				if r != (k+3)*(k+3) {
					t.Fatalf("record %d is %d", k+3, r)
				}
			}
		})
	}
}

// Records that nobody has taken yet are bounded, so memory is.
func TestEachDoesNotRunAhead(t *testing.T) {
	on(2, func() {
		var found atomic.Int64
		err := each(t.Context(), Span{0, 2000}, func() func(int) int { return func(i int) int { found.Add(1); return i } },
			func(i, _ int) error {
				if lead := found.Load() - int64(i); lead > 2*ahead+2+2 {
					t.Fatalf("%d records wait", lead)
				}
				return nil
			})
		if err != nil {
			t.Fatal(err)
		}
	})
}

func TestEachEndsAtOnce(t *testing.T) {
	ctx, cancel := context.WithCancel(t.Context())
	var found atomic.Int64
	err := each(ctx, Span{0, 1_000_000}, func() func(int) int { return func(i int) int { found.Add(1); return i } },
		func(i, _ int) error {
			if i == 10 {
				cancel()
			}
			return nil
		})
	if !errors.Is(err, context.Canceled) || found.Load() > 200 {
		t.Errorf("%v after %d records", err, found.Load())
	}
	refusal := errors.New("full")
	if err := each(t.Context(), Span{0, 100}, func() func(int) int { return func(i int) int { return i } }, func(int, int) error { return refusal }); !errors.Is(err, refusal) {
		t.Error(err)
	}
}

func TestPartsCoverEverythingOnce(t *testing.T) {
	for _, total := range []int{1, 7, 100, 101} {
		for n := 1; n <= min(total, 9); n++ {
			var all []int
			for k := 1; k <= n; k++ {
				s := Part(k, n, total)
				if s.To-s.From < total/n || s.To-s.From > total/n+1 {
					t.Errorf("part %d of %d of %d is %v", k, n, total, s)
				}
				for i := s.From; i < s.To; i++ {
					all = append(all, i)
				}
			}
			if len(all) != total || !slices.IsSorted(all) || all[0] != 0 || all[total-1] != total-1 {
				t.Errorf("%d parts of %d: %v", n, total, all)
			}
		}
	}
}

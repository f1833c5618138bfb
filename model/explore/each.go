package explore

import (
	"context"
	"runtime"
	"sync"
)

// ahead is how many finished records may wait for an earlier one, per processor:
// it bounds the memory.
const ahead = 16

// Span is a row of records, From up to but without To.
type Span struct{ From, To int }

// Part is part k of n of total records, k from 1: equal shares in order, the
// odd ones spread.
func Part(k, n, total int) Span { return Span{(k - 1) * total / n, k * total / n} }

// each finds the records of a span on all processors and hands them to take in
// their order, from the calling goroutine. worker makes what one processor
// keeps to itself. It ends early when ctx does or take refuses.
func each[R any](ctx context.Context, s Span, worker func() func(i int) R, take func(i int, r R) error) error {
	ctx, cancel := context.WithCancel(ctx)
	var wait sync.WaitGroup
	defer wait.Wait()
	defer cancel()

	processors := min(runtime.GOMAXPROCS(0), max(s.To-s.From, 1))
	work, order := make(chan task[R]), make(chan task[R], ahead*processors)
	wait.Go(func() { hand(ctx, s, work, order) })
	for range processors {
		wait.Go(func() {
			find := worker()
			for t := range work {
				t.found <- find(t.i)
			}
		})
	}
	for i := s.From; i < s.To; i++ {
		r, err := next(ctx, order)
		if err == nil {
			err = take(i, r)
		}
		if err != nil {
			return err
		}
	}
	return ctx.Err()
}

type task[R any] struct {
	i     int
	found chan R // holds one
}

func hand[R any](ctx context.Context, s Span, work, order chan<- task[R]) {
	defer close(work)
	for i := s.From; i < s.To; i++ {
		t := task[R]{i, make(chan R, 1)}
		select {
		case order <- t:
		case <-ctx.Done():
			return
		}
		select {
		case work <- t:
		case <-ctx.Done():
			return
		}
	}
}

func next[R any](ctx context.Context, order <-chan task[R]) (r R, err error) {
	if err := ctx.Err(); err != nil {
		return r, err
	}
	select {
	case t := <-order:
		select {
		case r = <-t.found:
			return r, nil
		case <-ctx.Done():
		}
	case <-ctx.Done():
	}
	return r, ctx.Err()
}

// gather is each into a slice.
func gather[R any](ctx context.Context, s Span, worker func() func(i int) R) ([]R, error) {
	rs := make([]R, 0, s.To-s.From)
	err := each(ctx, s, worker, func(_ int, r R) error { rs = append(rs, r); return nil })
	return rs, err
}

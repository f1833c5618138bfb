// Package figure writes figures for the panes: values, and how they changed.
package figure

import (
	"fmt"
	"strconv"
	"strings"

	"backspan/model/reading"
	"backspan/model/unit"
)

// Money puts the study's currency in place of the word that stands for it.
func Money(s string, u unit.Unit, currency string) string {
	if u.Dimension != unit.Money && u.Dimension != unit.MoneyPerTime {
		return s
	}
	return InCurrency(s, currency)
}

// InCurrency is Money for a text that is known to be an amount.
func InCurrency(s, currency string) string {
	if currency == "" {
		return s
	}
	return strings.ReplaceAll(s, unit.Currency.Symbol, currency)
}

// Text is a reading's value with its unit, or "not rated".
func Text(r reading.Reading, currency string) string { return Money(r.Text(), r.Unit, currency) }

// Limit is a check's value and the limit, with the side on which it must stay:
// "108 N, at most 90.0 N". Short leaves the value's unit out.
func Limit(c reading.Check, short bool, currency string) string {
	if !short {
		return Money(c.Text(), c.Unit, currency)
	}
	return Money(c.Unit.Number(c.Value)+", "+string(c.Side)+" "+c.Unit.Text(c.Limit), c.Unit, currency)
}

// Change is what became of a reading.
type Change struct {
	Text string // "+0.3", "new", "gone"; empty when nothing changed that shows
	Sign int    // better (+1), worse (−1), neither (0)
}

// Between is the change from one reading to another of the same key.
func Between(from, to reading.Reading) Change {
	switch {
	case from.Key != to.Key || !from.Known() && !to.Known():
		return Change{}
	case !from.Known():
		return Change{Text: "new"}
	case !to.Known():
		return Change{Text: "gone"}
	}
	text := from.Change(to)
	if text == "" {
		return Change{}
	}
	return Change{text, from.Improves(to)}
}

// Rounded shortens a change that is wider than w by rounding decimals away; a
// number is never cut.
func Rounded(text string, w int) string {
	x, err := strconv.ParseFloat(text, 64)
	if len(text) <= w || err != nil {
		return text
	}
	decimals := len(text) - 1 - strings.IndexByte(text+".", '.')
	for d := decimals - 1; d >= 0; d-- {
		if s := fmt.Sprintf("%+.*f", d, x); len(s) <= w && strings.Trim(s, "+-0.") != "" {
			return s
		}
	}
	return fmt.Sprintf("%+.0e", x)
}

// Moved counts the readings that changed, and of them the better and worse.
func Moved(from, to []reading.Reading) (moved, better, worse int) {
	was := make(map[string]reading.Reading, len(from))
	for _, r := range from {
		was[r.Key] = r
	}
	for _, r := range to {
		c := Between(was[r.Key], r)
		if c.Text == "" {
			continue
		}
		moved++
		switch {
		case c.Sign > 0:
			better++
		case c.Sign < 0:
			worse++
		}
	}
	return moved, better, worse
}

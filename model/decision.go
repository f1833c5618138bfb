package model

import (
	"fmt"
	"strings"

	"backspan/model/param"
)

// Decision is an entry of a study's log: what was settled, and when.
type Decision struct {
	Date string // "2026-11-26"
	Text string
}

// Section declares what an entry is made of.
func (d *Decision) Section() param.Section {
	return param.Section{Key: "decision", Label: "Decisions, as many as there are", Params: []param.Param{
		param.Text(&d.Date, "date", "Date").Help("year, month and day, like 2026-11-26"),
		param.Text(&d.Text, "text", "Text").Help("what was settled, and why"),
	}}
}

// Check says what is wrong with an entry and what to do; nil when nothing is.
func (d Decision) Check() error {
	switch {
	case !isDate(d.Date):
		return fmt.Errorf("the date of a decision is year, month and day; write it like 2026-11-26")
	case strings.TrimSpace(d.Text) == "":
		return fmt.Errorf("a decision says what was settled; write a text")
	}
	return nil
}

// isDate reports whether s names a day of the calendar.
func isDate(s string) bool {
	const form = "0000-00-00"
	if len(s) != len(form) {
		return false
	}
	for i := range len(s) {
		if digit := s[i] >= '0' && s[i] <= '9'; digit != (form[i] == '0') || !digit && s[i] != '-' {
			return false
		}
	}
	number := func(s string) (n int) {
		for _, c := range s {
			n = 10*n + int(c-'0')
		}
		return n
	}
	month, day := number(s[5:7]), number(s[8:])
	return month >= 1 && month <= 12 && day >= 1 && day <= daysOf(number(s[:4]), month)
}

// daysOf is how many days a month has.
func daysOf(year, month int) int {
	switch month {
	case 2:
		if year%4 == 0 && (year%100 != 0 || year%400 == 0) {
			return 29
		}
		return 28
	case 4, 6, 9, 11:
		return 30
	}
	return 31
}

package headline

import (
	"fmt"

	"backspan/model/reading"
	"backspan/tui/components/figure"
	"backspan/tui/theme"
)

// judgement is the line on the checks, in its parts: what comes first, what
// that was before the last edit, and how many there are of each verdict.
type judgement struct {
	ink         theme.Ink
	lead, short string // before the label; short where there is little room
	label       string
	margin      string // after the label
	was         clause // empty when the same check comes first as before
	tally       string
	brief       string // the tally without what holds
}

// clause is " (was VERDICT: LABEL)".
type clause struct{ lead, label, end string }

func judge(t *theme.Theme, now, earlier []reading.Check) judgement {
	first, ok := figure.Foremost(now)
	if !ok {
		return judgement{lead: "no checks", short: "no checks"}
	}
	fail, thin := reading.Count(now, reading.Fails), reading.Count(now, reading.Thin)
	hold, unrated := reading.Count(now, reading.Holds), reading.Count(now, reading.NotRated)
	j := judgement{
		tally: fmt.Sprintf("%d fail, %d thin, %d hold, %d not rated", fail, thin, hold, unrated),
		brief: fmt.Sprintf("%d fail, %d thin, %d not rated", fail, thin, unrated),
		label: t.Clean(first.Label),
	}
	shape, ink := t.Verdict(first.Verdict)
	j.ink = ink
	switch first.Verdict {
	case reading.Holds:
		const sound = " nothing fails or is thin"
		j.lead, j.brief = shape+sound, fmt.Sprintf("%d not rated", unrated)
		if m := first.MarginText(); m != "" {
			j.lead, j.margin = j.lead+"; closest: ", " "+m
		} else {
			j.label = ""
		}
		j.short = j.lead
	case reading.NotRated:
		j.lead, j.short, j.label = shape+" no check can be rated", shape+" none rated", ""
	default:
		j.lead, j.short = shape+" worst check "+string(first.Verdict)+": ", shape+" "+string(first.Verdict)+": "
	}
	if was, ok := figure.Foremost(earlier); ok && (was.Verdict != first.Verdict || was.Key != first.Key && first.Verdict != reading.Holds) {
		j.was = clause{" (was " + string(was.Verdict), "", ")"}
		if was.Key != first.Key {
			j.was.lead, j.was.label = j.was.lead+": ", t.Clean(was.Label)
		}
	}
	return j
}

// leastLabel is how short a label may be cut so that the rest finds room.
const leastLabel = 14

// line is the judgement in w cells: everything where it fits, and else labels
// cut in the middle, then the count of what holds left out, then what was.
func (j judgement) line(t *theme.Theme, w int) string {
	for _, try := range []struct {
		lead, tally string
		was         clause
		cut         bool
	}{
		{j.lead, j.tally, j.was, false}, {j.short, j.tally, j.was, false}, {j.short, j.tally, j.was, true},
		{j.short, j.brief, j.was, true}, {j.short, j.brief, clause{}, true}, {j.short, "", j.was, true}, {j.short, "", clause{}, true},
	} {
		tail := ""
		if try.tally != "" {
			tail = "  " + try.tally
		}
		label, was := j.label, try.was
		room := w - theme.Width(try.lead+j.margin+tail) - theme.Width(was.lead+was.end)
		if theme.Width(label+was.label) > room {
			if !try.cut || room < least(label)+least(was.label) {
				continue
			}
			was.label = t.Short(was.label, max(room/2, room-theme.Width(label)))
			label = t.Short(label, room-theme.Width(was.label))
		}
		head := try.lead + label + j.margin
		before := was.lead + was.label + was.end
		return j.ink.Paint(head) + before + t.Quiet.Paint(t.Right(tail, w-theme.Width(head+before)))
	}
	return j.ink.Paint(t.Cut(j.short+j.label, w))
}

func least(label string) int { return min(theme.Width(label), leastLabel) }

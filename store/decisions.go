package store

import (
	"time"

	"backspan/model"
)

const decisionKey, dateKey, textKey = "decision", "date", "text"

// mostDecisions bounds the memory that a file can ask for.
const mostDecisions = 5000

// decisions reads every [[decision]].
func (r *reader) decisions(s *model.Study) {
	tables, ok := tablesOf(r.values[decisionKey])
	if !ok {
		r.badAt(path{decisionKey}, "decisions are tables; write [[decision]] with two brackets on either side")
		return
	}
	if len(tables) > mostDecisions {
		r.badAt(path{decisionKey, element(mostDecisions)}, "the file holds %d decisions; a study holds at most %d", len(tables), mostDecisions)
		return
	}
	for i, t := range tables {
		s.Decisions = append(s.Decisions, r.decision(path{decisionKey, element(i)}, t))
	}
}

func (r *reader) decision(at path, t map[string]any) (d model.Decision) {
	sound := true
	for _, key := range r.keys(t, at) {
		to := map[string]*string{dateKey: &d.Date, textKey: &d.Text}[key]
		if to == nil {
			r.badAt(at.with(key), "there is no such key; a decision has date and text")
			continue
		}
		text, ok := inText(t[key])
		*to = text
		if !ok {
			r.badAt(at.with(key), "must be text in quotes")
			sound = false
		}
	}
	if err := d.Check(); err != nil && sound {
		r.badAt(at, "%s", err)
	}
	return d
}

// inText takes a text, or a date that was written without quotes.
func inText(v any) (string, bool) {
	switch v := v.(type) {
	case string:
		return v, true
	case time.Time:
		return v.Format(time.DateOnly), true
	}
	return "", false
}

// besideDecision is the place of comments on a decision. It goes with what was
// decided, so that it stays right when the log is changed.
func besideDecision(d model.Decision) string { return decisionKey + " " + d.Date + " " + d.Text }

func (w *writer) decisions(log []model.Decision, own comments) {
	for _, d := range log {
		w.WriteString("\n")
		if place := besideDecision(d); !own.written[place] {
			w.WriteString(own.at(place))
		}
		w.WriteString("[[" + decisionKey + "]]\n")
		w.line(dateKey, quote(d.Date), "")
		w.line(textKey, quote(d.Text), "")
	}
}

package tui

import (
	"fmt"

	tea "github.com/charmbracelet/bubbletea"

	"backspan/tui/components/ask"
	"backspan/tui/pages/differences"
)

func (r *root) askDelete(i int) {
	name := r.desk.Study().Variants[i].Name
	q := ask.Choice(r.th, r.keys, fmt.Sprintf("Delete the variant %s? It can be undone.", name),
		ask.Answer{Letter: "k", Label: "keep it"}, ask.Answer{Letter: "d", Label: "delete it"})
	r.ask(q, func() tea.Cmd {
		if q.Chosen() == 1 {
			r.edit(func() tea.Msg {
				if err := r.desk.Delete(i); err != nil {
					r.problem = err.Error()
				}
				r.bench.Refresh()
				return nil
			}, nil)
		}
		return nil
	})
}

// ask puts a question, after those that wait for an answer already.
func (r *root) ask(q *ask.Model, given func() tea.Cmd) {
	r.questions = append(r.questions, question{Model: q, given: given})
}

// lookFirst is the answer that shows what differs; the question stays.
var lookFirst = ask.Answer{Letter: "l", Label: "look at every difference first"}

// askAbout is ask for a question that has lookFirst among its answers.
func (r *root) askAbout(sides func() differences.Sides, q *ask.Model, given func() tea.Cmd) {
	r.questions = append(r.questions, question{q, given, sides})
}

// asked is the question that waits for an answer, nil when none does or while
// what it is about is looked at.
func (r *root) asked() *question {
	if len(r.questions) == 0 || r.page == atDifferences {
		return nil
	}
	return &r.questions[0]
}

func (r *root) answer(q question, msg tea.KeyMsg) tea.Cmd {
	reply := ask.Dropped
	if msg.String() != "ctrl+c" {
		reply = q.Update(msg)
	}
	switch reply {
	case ask.Given:
		if len(q.Answers) > 0 && q.Answers[q.Chosen()] == lookFirst {
			r.differences.Of(q.sides())
			r.visit(atDifferences)
			return nil
		}
		r.questions = r.questions[1:]
		return q.given()
	case ask.Dropped:
		r.questions = r.questions[1:]
	}
	return nil
}

// leave ends the bench, after a question when edits would be lost.
func (r *root) leave() tea.Cmd {
	return r.guarded("leave", func() tea.Cmd {
		r.left = true
		return tea.Quit
	})
}

// guarded does what would drop unsaved edits only after asking.
func (r *root) guarded(what string, then func() tea.Cmd) tea.Cmd {
	typing := r.typing() != nil || r.explore.Busy()
	if r.saving {
		r.say("the save is still running; once more in a moment")
		return nil
	}
	if !r.desk.Unsaved() && !typing {
		if r.explore.Working() {
			return r.whileWorking(what, then)
		}
		return then()
	}
	text := fmt.Sprintf("%s has edits that are not saved.", r.desk.Study().Name)
	if typing {
		text = "Something is still being typed. " + text
		if !r.desk.Unsaved() {
			text = "Something is still being typed; it is not part of the study yet."
		}
	}
	q := ask.Choice(r.th, r.keys, text, ask.Answer{Letter: "s", Label: "save, then " + what},
		ask.Answer{Letter: "w", Label: what + " without saving"}, ask.Answer{Letter: "esc", Label: "stay"})
	r.ask(q, func() tea.Cmd {
		switch q.Chosen() {
		case 0:
			if typing && !r.accepted() {
				return nil
			}
			if !r.desk.Unsaved() {
				return then()
			}
			return r.saveThen(then)
		case 1:
			return then()
		}
		return nil
	})
	return nil
}

// accepted takes over what is being typed; false when it was refused.
func (r *root) accepted() bool {
	p := r.typing()
	if p == nil {
		return true
	}
	r.edit(func() tea.Msg { p.Accept(); return nil }, nil)
	return !p.Busy()
}

// whileWorking does what would end a question that is still being worked only
// after asking.
func (r *root) whileWorking(what string, then func() tea.Cmd) tea.Cmd {
	q := ask.Choice(r.th, r.keys, "An exploration is still being worked; its answer would be lost.",
		ask.Answer{Letter: "w", Label: what + " all the same"}, ask.Answer{Letter: "esc", Label: "stay"})
	r.ask(q, func() tea.Cmd {
		if q.Chosen() == 0 {
			return then()
		}
		return nil
	})
	return nil
}

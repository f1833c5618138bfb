package explore

import (
	"strconv"

	"backspan/model/explore"
)

// suggest fills the forms that nobody has touched with what is usual for the
// machine in hand: for another variant, when the subjects are others than before,
// or while the question was never asked.
func (m *Model) suggest() {
	for q := range questions {
		f := &m.forms[q]
		if f.edited || f.state != resting {
			continue
		}
		fields := m.usualFields(q)
		if f.asked && f.of == m.desk.Variant().Name && sameSubjects(f.fields, fields) {
			continue
		}
		f.asked = false
		f.set(q, fields)
	}
}

func sameSubjects(a, b []field) bool {
	if len(a) != len(b) {
		return false
	}
	for i := range a {
		if a[i].key != b[i].key || a[i].role != b[i].role {
			return false
		}
	}
	return true
}

// aim is by how much the usual target is more than what is there: 2 %.
const aim = 1.02

func (m *Model) usualFields(q question) []field {
	b := m.base()
	switch q {
	case overRange:
		return append([]field{usual(b, over, b.UsualPath())}, shown(b)...)
	case whatFor:
		to := usual(b, target, "propeller.static_thrust")
		if r, err := b.Reading(to.key); err == nil && r.Known() {
			to.text = r.Unit.Text(aim * r.Value)
		}
		return []field{usual(b, change, "propeller.pitch"), to}
	case compromises:
		return searchFields(b, m.effort)
	default:
		return sureFields(b, m.effort)
	}
}

func shown(b explore.Base) (fs []field) {
	for _, key := range explore.UsualReadings() {
		fs = append(fs, usual(b, show, key))
	}
	return fs
}

func searchFields(b explore.Base, e Effort) (fs []field) {
	for _, path := range b.UsualFree() {
		fs = append(fs, usual(b, free, path))
	}
	for _, key := range explore.UsualGoals() {
		fs = append(fs, usual(b, goal, key))
	}
	return append(fs, counted(population, e.Population), counted(generations, e.Generations), counted(runs, e.Runs), counted(seed, int(e.Seed)))
}

func sureFields(b explore.Base, e Effort) (fs []field) {
	for _, u := range b.UsualSpreads() {
		fs = append(fs, field{role: doubt, key: u.Key, text: u.Spread, origin: u.Origin})
	}
	return append(append(fs, shown(b)...), counted(samples, e.Samples), counted(seed, int(e.Seed)))
}

func counted(r role, n int) field { return field{role: r, text: strconv.Itoa(n)} }

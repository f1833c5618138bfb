package explore

// Point takes a cell of the page that was pointed at; again is true when its row
// is the one under the cursor already.
func (m *Model) Point(x, y int) (again bool) {
	f, a, was := m.form(), m.answer(), m.reading
	switch f.state {
	case choosing:
		return f.finder.Point(y - 1)
	case typing:
		return false
	case resting:
	}
	if m.w >= beside {
		m.reading = x > fieldsWide && a != nil
	}
	if m.reading && a != nil {
		again = a.roll.Point(y - a.top)
	} else {
		again = f.roll.Point(y - f.top)
	}
	m.draw()
	return again && m.reading == was
}

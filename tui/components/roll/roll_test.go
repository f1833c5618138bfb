package roll

import (
	"testing"

	"pgregory.net/rapid"
)

func TestTheCursorStaysInTheWindow(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		var m Model
		rows := rapid.IntRange(0, 60).Draw(t, "rows")
		skip := rapid.SampledFrom([]func(int) bool{nil, func(i int) bool { return i%7 == 0 }, func(int) bool { return true }}).Draw(t, "skip")
		m.Set(rows, skip)
		for range rapid.IntRange(0, 30).Draw(t, "steps") {
			switch rapid.IntRange(0, 4).Draw(t, "what") {
			case 0:
				m.Height(rapid.IntRange(-2, 20).Draw(t, "height"))
			case 1:
				m.To(rapid.IntRange(-5, 70).Draw(t, "to"))
			case 2:
				m.Set(rapid.IntRange(0, 60).Draw(t, "rows"), skip)
			case 3:
				m.Leap(rapid.SampledFrom([]int{-1, 1}).Draw(t, "leap"), func(i int) bool { return i%7 == 0 })
			default:
				m.Move(rapid.IntRange(-9, 9).Draw(t, "by"))
			}
			from, to := m.Window()
			if m.rows > 0 && m.height > 0 && (m.Cursor < from || m.Cursor >= to) {
				t.Fatalf("cursor %d, window %d to %d of %d", m.Cursor, from, to, m.rows)
			}
			if from < 0 || to > m.rows || from > to {
				t.Fatalf("window %d to %d of %d", from, to, m.rows)
			}
		}
	})
}

package tui

import (
	"testing"

	"github.com/muesli/termenv"

	"backspan/model"
)

// From a key to the text of the frame, five variants in 120x40.
func BenchmarkKeyToFrame(b *testing.B) {
	for _, bc := range []struct {
		name   string
		before []string
		keys   []string
	}{
		{"move", nil, []string{"down", "up"}},
		{"edit", []string{"down", "down"}, []string{"right", "left"}},
		{"next variant", nil, []string{"<", ">"}},
		{"side by side", []string{"c"}, []string{"down", "up"}},
	} {
		b.Run(bc.name, func(b *testing.B) {
			o := plateau()
			o.Study = model.Sample()
			o.Study.Variants = o.Study.Variants[:5]
			o.Renderer = renderer(termenv.ANSI256)
			m := press(begin(o, 120, 40), bc.before...)
			b.ReportAllocs()
			for i := 0; b.Loop(); i++ {
				m = press(m, bc.keys[i%len(bc.keys)])
				if m.View() == "" {
					b.Fatal("nothing painted")
				}
			}
		})
	}
}

package report

import (
	"fmt"
	"strconv"
	"strings"
)

// svg is a drawing in a page, in a plane of its own with Y down.
type svg struct{ strings.Builder }

// newSVG begins a drawing whose parts' names begin with id; title and told say
// what it shows to those who cannot see it.
func newSVG(id, title, told string, x, y, width, height float64) *svg {
	v := &svg{}
	fmt.Fprintf(v, "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"%s %s %s %s\" role=\"img\" aria-labelledby=\"%s-t %s-d\" font-family=\"sans-serif\"><title id=\"%s-t\">%s</title><desc id=\"%s-d\">%s</desc>\n",
		coordinate(x), coordinate(y), coordinate(width), coordinate(height), id, id, id, escaped(title), id, escaped(told))
	return v
}

func (v *svg) end() string { v.WriteString("</svg>\n"); return v.String() }

// coordinate is a size that was chosen, as short as it can be said.
func coordinate(x float64) string {
	return strconv.FormatFloat(x, 'f', -1, 32)
}

// pen is how a line looks.
type pen struct {
	colour string
	width  float64
	dashes string
}

func (v *svg) line(p pen, points ...[2]float64) {
	if len(points) == 0 {
		return
	}
	v.WriteString(`<polyline fill="none" stroke="` + p.colour + `" stroke-width="` + coordinate(p.width) + `"`)
	if p.dashes != "" {
		v.WriteString(` stroke-dasharray="` + p.dashes + `"`)
	}
	v.WriteString(` points="`)
	for i, q := range points {
		if i > 0 {
			v.WriteByte(' ')
		}
		v.WriteString(rounded(q[0]) + "," + rounded(q[1]))
	}
	v.WriteString("\"/>\n")
}

// rounded keeps a hundredth of a unit: finer than paper shows.
func rounded(x float64) string { return strconv.FormatFloat(x, 'f', 2, 64) }

// anchor is which end of a word stands at its place.
type anchor string

const (
	atStart  anchor = "start"
	atMiddle anchor = "middle"
	atEnd    anchor = "end"
)

func (v *svg) word(x, y, size float64, a anchor, s string) {
	fmt.Fprintf(v, "<text x=\"%s\" y=\"%s\" font-size=\"%s\" text-anchor=\"%s\">%s</text>\n", rounded(x), rounded(y), coordinate(size), a, escaped(s))
}

func (v *svg) dot(x, y, r float64, fill string) {
	fmt.Fprintf(v, "<circle cx=\"%s\" cy=\"%s\" r=\"%s\" fill=\"%s\" stroke=\"#000\" stroke-width=\"2\"/>\n", rounded(x), rounded(y), coordinate(r), fill)
}

func (v *svg) box(x, y, width, height float64, fill string) {
	fmt.Fprintf(v, "<rect x=\"%s\" y=\"%s\" width=\"%s\" height=\"%s\" fill=\"%s\" stroke=\"#111\"/>\n", rounded(x), rounded(y), rounded(width), rounded(height), fill)
}

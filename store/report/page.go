package report

import (
	_ "embed" // the style
	"fmt"
	"html"
	"io"
	"strings"

	"backspan/model/reading"
)

// HTML is a format of documents for paper, not of every command.
const HTML Format = "html"

// pageStyle prints well on A4. Nothing is fetched from elsewhere: the page
// opens without a network.
//
//go:embed data/page.css
var pageStyle string

// page is a document of one file that is being written.
type page struct {
	strings.Builder
	headings []string // of the first rank, for the list of contents
	marks    int      // places that were given a name so far
}

func (p *page) end(w io.Writer, title string) error {
	t := escaped(title)
	head := "<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n" +
		"<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n<title>" + t + "</title>\n<style>\n" + pageStyle + "</style>\n</head>\n<body>\n<h1>" + t + "</h1>\n"
	head += "<nav aria-label=\"Contents\"><p>" + strings.Join(p.headings, " · ") + "</p></nav>\n"
	_, err := io.WriteString(w, head+p.String()+"</body>\n</html>\n")
	return err
}

// escaped is text from anywhere made fit for markup.
func escaped(s string) string { return html.EscapeString(Printable(s)) }

func (p *page) text(tag, s string) { p.WriteString("<" + tag + ">" + escaped(s) + "</" + tag + ">\n") }

func (p *page) note(s string) { p.WriteString("<p class=\"note\">" + escaped(s) + "</p>\n") }

// mark is a new name for a place on the page.
func (p *page) mark() string {
	p.marks++
	return fmt.Sprintf("p%d", p.marks)
}

// heading writes one and returns the name of its place.
func (p *page) heading(tag, s string) string {
	at := p.mark()
	fmt.Fprintf(p, "<%s id=\"%s\">%s</%s>\n", tag, at, escaped(s), tag)
	if tag == "h2" {
		p.headings = append(p.headings, "<a href=\"#"+at+"\">"+escaped(s)+"</a>")
	}
	return at
}

func (p *page) grid(g grid) {
	tag := "h2"
	if g.under {
		tag = "h3"
	}
	at := p.heading(tag, g.title)
	if len(g.points) > 0 {
		p.WriteString("<ul" + g.listLook() + ">\n")
		for _, s := range g.points {
			p.text("li", s)
		}
		p.WriteString("</ul>\n")
	}
	for _, part := range g.parted() {
		p.table(part, at)
	}
	if g.note != "" {
		p.note(g.note)
	}
}

// wholeRows are as many as stay on one page of paper together.
const wholeRows = 9

// table writes the rows under the heading at that place. A table that is too
// wide for a small screen moves sideways in its frame, by keys too.
func (p *page) table(g grid, at string) {
	if len(g.rows) == 0 {
		return
	}
	frame, look := "wide", ""
	switch {
	case g.beside && len(g.head) == 2:
		frame += " thrice"
	case g.narrow():
		frame += " twice"
	}
	if len(g.rows) <= wholeRows {
		frame += " whole"
	}
	switch {
	case g.figures:
		look = " class=\"" + strings.Join(strings.Fields("figures "+g.second+" "+g.size()), " ") + "\""
	case g.sheet:
		look = " class=\"lines\""
	case g.named:
		look = " class=\"named\""
	}
	fmt.Fprintf(p, "<div class=\"%s\" role=\"group\" aria-labelledby=\"%s\" tabindex=\"0\">\n<table%s aria-labelledby=\"%s\">\n<thead>", frame, at, look, at)
	p.row(g.head, "th scope=\"col\"", "th")
	p.WriteString("</thead>\n<tbody>\n")
	for _, r := range g.rows {
		if len(r) == 1 && len(g.head) > 1 {
			fmt.Fprintf(p, "<tr class=\"part\"><th colspan=\"%d\" scope=\"colgroup\">%s</th></tr>\n", len(g.head), escaped(r[0]))
			continue
		}
		p.row(r, "td", "td")
	}
	p.WriteString("</tbody>\n</table>\n</div>\n")
}

// listLook parts a long list.
func (g *grid) listLook() string {
	if g.beside {
		return " class=\"twice\""
	}
	return ""
}

// row writes cells; the first cell of a row of values names the row.
func (p *page) row(cells []string, open, shut string) {
	p.WriteString("<tr>")
	for i, c := range cells {
		switch text := escaped(c); {
		case open == "td" && i == 0 && c != "":
			p.WriteString("<th scope=\"row\">" + text + "</th>")
		case strings.HasPrefix(c, string(reading.Fails)):
			p.WriteString("<" + open + "><strong>" + text + "</strong></" + shut + ">")
		default:
			p.WriteString("<" + open + ">" + text + "</" + shut + ">")
		}
	}
	p.WriteString("</tr>\n")
}

// warn puts a caution where nobody overlooks it.
func (p *page) warn(s string) { p.WriteString("<p class=\"caution\">" + escaped(s) + "</p>\n") }

// writePage writes tables as one HTML file, under a caution.
func writePage(w io.Writer, title, caution string, grids []grid) error {
	p := &page{}
	p.warn(caution)
	for _, g := range grids {
		p.grid(g)
	}
	return p.end(w, title)
}

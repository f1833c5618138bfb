package report

import (
	"html"
	"io"
	"strings"
)

// HTML is a format of documents for paper, not of every command.
const HTML Format = "html"

// pageStyle prints well on A4. Nothing is fetched from elsewhere: the page
// opens without a network.
const pageStyle = `body{font:10pt/1.35 sans-serif;color:#111;background:#fff;max-width:190mm;margin:8mm auto;padding:0 4mm}
h1{font-size:16pt;margin:0 0 3mm}h2{font-size:12pt;margin:7mm 0 2mm;border-bottom:1px solid #444;break-after:avoid}
h3{font-size:10pt;margin:4mm 0 1mm;break-after:avoid}
table{border-collapse:collapse;width:100%;font-size:8.5pt}thead{display:table-header-group}tr{break-inside:avoid}
th,td{text-align:left;vertical-align:top;padding:1mm 1.5mm;border-bottom:1px solid #ccc;overflow-wrap:break-word}
th{background:#eee}figure{margin:3mm 0;break-inside:avoid}figcaption,.note{font-size:8.5pt;color:#333}
svg{width:100%;height:auto;max-height:110mm}.machines{display:flex;flex-wrap:wrap;gap:4mm}.machines svg{max-height:160mm}.machines figure{flex:1 1 80mm;max-width:95mm;margin:0}
@page{size:A4;margin:14mm 12mm}
@media print{body{margin:0;padding:0;max-width:none;font-size:9pt}th{background:none}}
`

// page is a document of one file that is being written.
type page struct{ strings.Builder }

// widest is how many columns an upright page can hold.
const widest = 6

const landscape = "@page{size:A4 landscape}body{max-width:277mm}\n"

func newPage(title string, columns int) *page {
	p := &page{}
	t, style := escaped(title), pageStyle
	if columns > widest {
		style += landscape
	}
	p.WriteString("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\"/>\n" +
		"<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\"/>\n<title>" + t + "</title>\n<style>\n" + style + "</style>\n</head>\n<body>\n<h1>" + t + "</h1>\n")
	return p
}

func (p *page) end(w io.Writer) error {
	p.WriteString("</body>\n</html>\n")
	_, err := io.WriteString(w, p.String())
	return err
}

// escaped is text from anywhere made fit for markup.
func escaped(s string) string { return html.EscapeString(Printable(s)) }

func (p *page) text(tag, s string) { p.WriteString("<" + tag + ">" + escaped(s) + "</" + tag + ">\n") }

func (p *page) note(s string) { p.WriteString("<p class=\"note\">" + escaped(s) + "</p>\n") }

func (p *page) grid(g grid) {
	p.text("h2", g.title)
	if len(g.rows) > 0 {
		p.WriteString("<table>\n<thead>")
		p.row("th", g.head)
		p.WriteString("</thead>\n<tbody>\n")
		for _, r := range g.rows {
			p.row("td", r)
		}
		p.WriteString("</tbody>\n</table>\n")
	}
	if g.note != "" {
		p.note(g.note)
	}
}

func (p *page) row(tag string, cells []string) {
	p.WriteString("<tr>")
	for _, c := range cells {
		p.WriteString("<" + tag + ">" + escaped(c) + "</" + tag + ">")
	}
	p.WriteString("</tr>\n")
}

// writePage writes tables as one HTML file.
func writePage(w io.Writer, title string, grids []grid) error {
	p := newPage(title, 4)
	for _, g := range grids {
		p.grid(g)
	}
	return p.end(w)
}

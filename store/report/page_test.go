package report

import (
	"encoding/xml"
	"errors"
	"io"
	"regexp"
	"slices"
	"strings"
	"testing"
)

// outside is what would make a page reach for something else than itself.
var outside = regexp.MustCompile(`(?i)https?://|//[a-z]|url\(|@import|<script|<link|<iframe|<img|javascript:| on[a-z]+=`)

// soundPage reads a page as strict markup and sees that nothing in it points
// outside; it returns what a reader would see.
func soundPage(t *testing.T, text string) string {
	t.Helper()
	if m := outside.FindString(strings.ReplaceAll(text, `xmlns="http://www.w3.org/2000/svg"`, "")); m != "" {
		t.Errorf("the page reaches outside: %q", m)
	}
	if !strings.HasPrefix(text, "<!DOCTYPE html>") || !strings.Contains(text, "@media print") {
		t.Error("no page, or none for print")
	}
	dec, seen := xml.NewDecoder(strings.NewReader(asXML(text))), strings.Builder{}
	var tags []string
	var named access
	for {
		tok, err := dec.Token()
		if errors.Is(err, io.EOF) {
			break
		}
		if err != nil {
			t.Fatalf("not well formed: %v", err)
		}
		switch x := tok.(type) {
		case xml.StartElement:
			tags = append(tags, x.Name.Local)
			named.look(x)
			for _, a := range x.Attr {
				if slices.Contains([]string{"href", "src", "srcset", "data", "action"}, a.Name.Local) && !strings.HasPrefix(a.Value, "#") {
					t.Errorf("%s has %s", x.Name.Local, a.Name.Local)
				}
			}
		case xml.CharData:
			seen.Write(x)
		}
	}
	for _, want := range []string{"html", "head", "title", "body", "h1", "table"} {
		if !slices.Contains(tags, want) {
			t.Errorf("no %s", want)
		}
	}
	named.judge(t)
	return seen.String()
}

// void are the elements that HTML never closes; strict markup asks for it.
var void = regexp.MustCompile(`<(meta|br|hr|col|img|input|link)\b([^>]*)>`)

func asXML(text string) string { return void.ReplaceAllString(text, "<$1$2/>") }

// access is what somebody needs who cannot see the page: a language, names that
// are found, and a name for every drawing, table and place to scroll.
type access struct {
	ids    map[string]bool
	wanted []string
	faults []string
}

func (c *access) look(x xml.StartElement) {
	if c.ids == nil {
		c.ids = map[string]bool{}
	}
	attr := map[string]string{}
	for _, a := range x.Attr {
		attr[a.Name.Local] = a.Value
	}
	if id, ok := attr["id"]; ok {
		if id == "" || c.ids[id] {
			c.faults = append(c.faults, "the name "+id+" stands twice")
		}
		c.ids[id] = true
	}
	c.wanted = append(c.wanted, strings.Fields(attr["aria-labelledby"])...)
	if at, ok := strings.CutPrefix(attr["href"], "#"); ok {
		c.wanted = append(c.wanted, at)
	}
	switch n := x.Name.Local; {
	case n == "html" && attr["lang"] == "":
		c.faults = append(c.faults, "no language")
	case n == "svg" && attr["role"] != "img", n == "img" && attr["alt"] == "", n == "a" && attr["href"] == "":
		c.faults = append(c.faults, n+" says nothing")
	case (n == "svg" || n == "table" || n == "nav" || attr["tabindex"] != "") && attr["aria-labelledby"]+attr["aria-label"] == "":
		c.faults = append(c.faults, n+" has no name")
	case n == "th" && attr["scope"] == "":
		c.faults = append(c.faults, "a heading of a table does not say of what")
	}
}

func (c *access) judge(t *testing.T) {
	t.Helper()
	for _, f := range c.faults {
		t.Error(f)
	}
	for _, w := range c.wanted {
		if !c.ids[w] {
			t.Errorf("no place is called %s", w)
		}
	}
}

// What the test of pages must not let through.
func TestSoundPageFindsFaults(t *testing.T) {
	for _, faulty := range []string{`<html>`, `<p id="a"/><p id="a"/>`, `<svg role="img"/>`, `<svg aria-labelledby="a"/>`, `<a href="#b"/>`, `<table/>`, `<th>x</th>`, `<img/>`, `<nav/>`,
		`<svg role="img" aria-labelledby="nowhere"/>`} {
		var c access
		dec := xml.NewDecoder(strings.NewReader(faulty))
		for tok, err := dec.Token(); err == nil; tok, err = dec.Token() {
			if x, ok := tok.(xml.StartElement); ok {
				c.look(x)
			}
		}
		lost := slices.ContainsFunc(c.wanted, func(w string) bool { return !c.ids[w] })
		if len(c.faults) == 0 && !lost {
			t.Errorf("nothing is wrong with %s", faulty)
		}
	}
}

const nasty = "a<b>&\"'</td><script>alert(1)</script>\x1b[31m\x00"

func TestNamesCannotCommandThePage(t *testing.T) {
	s, v := sampleVariant(t, "Belt 190")
	s.Name, v.Name, v.Notes, s.Currency = nasty, nasty, nasty, "<€>"
	text := buildSheet(t, s, v, HTML)
	seen := soundPage(t, text)
	if !strings.Contains(seen, `a<b>&"'</td><script>alert(1)</script>\x1b[31m\x00`) {
		t.Error("the name is not told as it is")
	}
	if strings.Contains(text, "<b>") || strings.ContainsAny(text, "\x1b\x00") {
		t.Error("a name's marks got through")
	}
}

func TestPagesOfTheSampleAreSound(t *testing.T) {
	for _, name := range []string{"Belt 190", "Gear 190"} {
		s, v := sampleVariant(t, name)
		if seen := soundPage(t, buildSheet(t, s, v, HTML)); !strings.Contains(seen, "Tightening torque") || !strings.Contains(seen, "airworthiness") {
			t.Errorf("%s: something is missing", name)
		}
	}
}

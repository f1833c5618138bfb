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
	dec, seen := xml.NewDecoder(strings.NewReader(text)), strings.Builder{}
	var tags []string
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
			for _, a := range x.Attr {
				if slices.Contains([]string{"href", "src", "srcset", "data", "action"}, a.Name.Local) {
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
	return seen.String()
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

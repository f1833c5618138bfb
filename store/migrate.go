package store

// formatStep brings the text of a file from one format to the next. It works on the
// text, so that comments stay, and leaves every line in its place, so that
// what is found wrong later has the right line.
type formatStep func(text string) string

// formatSteps begin with the one from format 1 to format 2. There is none yet:
// format 1 is the first.
var formatSteps []formatStep

// newest is the format written here, and the newest one read.
func newest() int64 { return 1 + int64(len(formatSteps)) }

// forward parses a file and gives the text it parsed: one of an older format
// is brought to the newest first.
func forward(file, text string) (parsed, string) {
	p := parse(file, text)
	n, ok := p.values[formatKey].(int64)
	if !ok || n < 1 || n >= newest() {
		return p, text
	}
	for _, next := range formatSteps[n-1:] {
		text = next(text)
	}
	p = parse(file, text)
	if p.values != nil {
		p.values[formatKey] = newest()
	}
	return p, text
}

// raised reports whether data is in a newer format than old, both readable.
func raised(old, data []byte) bool {
	was, now := formatOf(old), formatOf(data)
	return was > 0 && was < now
}

// formatOf is 0 where a file does not say its format.
func formatOf(src []byte) int64 {
	text, unreadable := textOf("", src)
	if unreadable != nil {
		return 0
	}
	n, _ := parse("", text).values[formatKey].(int64)
	return n
}

// Package keymap holds every key of the bench as data. What a key does and
// what the footer and the page of keys say about it come from one binding.
package keymap

import "github.com/charmbracelet/bubbles/key"

func bind(desc, shown string, keys ...string) key.Binding {
	return key.NewBinding(key.WithKeys(keys...), key.WithHelp(shown, desc))
}

// Everywhere works on every page, but not inside an edit.
type Everywhere struct {
	Bench, SideBySide, Tables, Studies, Keys key.Binding
	Drawing, Curves                          key.Binding
	NextVariant, PreviousVariant             key.Binding
	Undo, Redo, Save, SaveAs, NewStudy, Quit key.Binding
	Why, Find, Copy, Weights                 key.Binding
	History                                  key.Binding
	Suspend                                  key.Binding // also inside an edit
}

// Walk moves a cursor through rows.
type Walk struct {
	Up, Down, HalfUp, HalfDown, Top, Bottom key.Binding
}

// Panes moves the focus on the bench.
type Panes struct {
	Next, Previous, NextPart, PreviousPart, Moved key.Binding
}

// Variants works on the list of variants.
type Variants struct {
	Into, Duplicate, Add, Rename, Delete, MoveUp, MoveDown, Reference key.Binding
}

// Parts works on the list of parts.
type Parts struct{ Into, Back key.Binding }

// Form works on the values of a part.
type Form struct {
	Edit, More, Less, MuchMore, MuchLess, Back key.Binding
}

// Editor works while a value or a name is typed.
type Editor struct {
	Accept, Leave, Clear, Start, End key.Binding
}

// Picker works while one of several words is chosen.
type Picker struct{ Up, Down, Accept, Leave key.Binding }

// SideBySide works on the comparison.
type SideBySide struct {
	Left, Right, Differences, Fold, FoldAll, Open, Back key.Binding
}

// Tables works on a variant's tables.
type Tables struct {
	Left, Right, Next, Previous, Back key.Binding
}

// Drawing works on the drawing of a machine.
type Drawing struct{ View, Zoom, Back key.Binding }

// Curves works on the charts.
type Curves struct {
	Left, Right, FarLeft, FarRight, Next, Previous, All, Back key.Binding
}

// Studies works on the list of studies.
type Studies struct{ Open, Again, Back key.Binding }

// Why works on the page that says what moves a figure.
type Why struct{ Go, Try, Back key.Binding }

// History works on the list of edits.
type History struct{ Go, Back key.Binding }

// Weights works on the page that ranks the variants.
type Weights struct{ More, Less, Figure, Counted, Back key.Binding }

// Find works while something is looked for by a few letters.
type Find struct{ Up, Down, Go, Leave key.Binding }

// Differences works on the list of what two states of a study differ in.
type Differences struct{ Back key.Binding }

// Sheets works on the sheets of help.
type Sheets struct{ Next, Previous, Forth, Before key.Binding }

// Question works while an answer is asked for.
type Question struct{ Next, Previous, Answer, Leave key.Binding }

// Map is every key.
type Map struct {
	Everywhere Everywhere
	Walk       Walk
	Panes      Panes
	Variants   Variants
	Parts      Parts
	Form       Form
	Editor     Editor
	Picker     Picker
	SideBySide SideBySide
	Tables     Tables
	Drawing    Drawing
	Curves     Curves
	Studies    Studies
	Question   Question
	Why        Why
	Find       Find
	Weights    Weights
	History    History
	Sheets     Sheets
	Back       key.Binding

	Differences Differences
}

// Default is the keys as delivered. Every letter has a sense in English; no
// command needs a function key, a mouse or Esc alone; and nothing that can
// begin a number is a command, because on a row of numbers it begins to type.
func Default() Map {
	return Map{
		Everywhere: Everywhere{
			Bench:           bind("bench", "b", "b", "f2"),
			SideBySide:      bind("compare", "c", "c", "f3"),
			Tables:          bind("tables", "t", "t", "f5"),
			Drawing:         bind("drawing", "v", "v", "f6"),
			Curves:          bind("curves", "g", "g", "f7"),
			Studies:         bind("studies", "o", "o", "f4"),
			Keys:            bind("keys", "?", "?", "f1"),
			NextVariant:     bind("next variant", ">", ">"),
			PreviousVariant: bind("variant before", "<", "<"),
			Undo:            bind("undo", "u", "u"),
			Redo:            bind("redo", "U", "U", "ctrl+y"),
			Save:            bind("save", "s", "s", "ctrl+s"),
			SaveAs:          bind("save as", "S", "S"),
			NewStudy:        bind("new study", "N", "N"),
			Quit:            bind("leave", "q", "q", "ctrl+c"),
			History:         bind("history", "H", "H"),
			Suspend:         bind("to the shell and, with fg, back", "ctrl+z", "ctrl+z"),
			Why:             bind("why", "w", "w"),
			Find:            bind("find", "/", "/", "ctrl+f"),
			Copy:            bind("copy", "y", "y"),
			Weights:         bind("weights", "W", "W"),
		},
		Walk: Walk{
			Up: bind("up", "up", "up", "k"), Down: bind("down", "down", "down", "j"),
			HalfUp: bind("half a page up", "pgup", "pgup", "ctrl+u"), HalfDown: bind("half a page down", "pgdn", "pgdown", "ctrl+d"),
			Top: bind("first row", "home", "home"), Bottom: bind("last row", "end", "end", "G"),
		},
		Panes: Panes{
			Next: bind("pane", "tab", "tab"), Previous: bind("pane before", "shift+tab", "shift+tab"),
			NextPart: bind("next part", ")", ")", "ctrl+n"), PreviousPart: bind("part before", "(", "(", "ctrl+p"),
			Moved: bind("only what moved", "m", "m"),
		},
		Variants: Variants{
			Into: bind("parts", "enter", "enter"), Duplicate: bind("duplicate", "d", "d"), Add: bind("add", "a", "a"),
			Rename: bind("rename", "n", "n"), Delete: bind("delete", "x", "x", "delete"),
			MoveUp: bind("move up", "K", "K", "shift+up"), MoveDown: bind("move down", "J", "J", "shift+down"),
			Reference: bind("make reference", "r", "r"),
		},
		Parts: Parts{Into: bind("values", "enter", "enter"), Back: bind("back", "esc", "esc")},
		Form: Form{
			Edit: bind("set", "enter", "enter"),
			More: bind("more", "right", "right"), Less: bind("less", "left", "left"),
			MuchMore: bind("ten steps more", "]", "]", "shift+right"),
			MuchLess: bind("ten steps less", "[", "[", "shift+left"),
			Back:     bind("back", "esc", "esc"),
		},
		Editor: Editor{
			Accept: bind("accept", "enter", "enter"), Leave: bind("leave as it was", "esc", "esc"),
			Clear: bind("clear", "ctrl+u", "ctrl+u"), Start: bind("to the start", "home", "home"), End: bind("to the end", "end", "end"),
		},
		Picker: Picker{
			Up: bind("up", "up", "up", "k", "left"), Down: bind("down", "down", "down", "j", "right"),
			Accept: bind("take it", "enter", "enter"), Leave: bind("leave as it was", "esc", "esc"),
		},
		SideBySide: SideBySide{
			Left: bind("variant left", "left", "left", "h"), Right: bind("variant right", "right", "right", "l"),
			Differences: bind("only what differs", "d", "d"), Fold: bind("fold the group, or unfold", "z", "z"),
			FoldAll: bind("fold all groups, or unfold", "Z", "Z"), Open: bind("work on it", "enter", "enter"), Back: bind("back", "esc", "esc"),
		},
		Tables: Tables{
			Left: bind("to the left", "left", "left", "h"), Right: bind("to the right", "right", "right", "l"),
			Next: bind("next table", "tab", "tab", ")"), Previous: bind("table before", "shift+tab", "shift+tab", "("),
			Back: bind("back", "esc", "esc"),
		},
		Drawing: Drawing{
			View: bind("side or behind", "tab", "tab", "shift+tab"), Zoom: bind("near or whole", "z", "z"), Back: bind("back", "esc", "esc"),
		},
		Curves: Curves{
			Left: bind("reading line left", "left", "left", "h"), Right: bind("reading line right", "right", "right", "l"),
			FarLeft: bind("ten columns left", "[", "[", "shift+left"), FarRight: bind("ten columns right", "]", "]", "shift+right"),
			Next: bind("next chart", "tab", "tab", ")"), Previous: bind("chart before", "shift+tab", "shift+tab", "("),
			All: bind("all variants or two", "a", "a"), Back: bind("back", "esc", "esc"),
		},
		Studies: Studies{Open: bind("open", "enter", "enter"), Again: bind("read again", "r", "r"), Back: bind("back", "esc", "esc")},
		Question: Question{
			Next: bind("next answer", "right", "right", "tab", "down"), Previous: bind("answer before", "left", "left", "shift+tab", "up"),
			Answer: bind("answer", "enter", "enter"), Leave: bind("stay", "esc", "esc"),
		},
		Why: Why{Go: bind("go there", "enter", "enter"), Try: bind("try it as a new variant", "a", "a"), Back: bind("back", "esc", "esc")},
		Find: Find{
			Up: bind("row up", "up", "up", "shift+tab"), Down: bind("row down", "down", "down", "tab"),
			Go: bind("go there", "enter", "enter"), Leave: bind("back", "esc", "esc"),
		},
		History: History{Go: bind("go to that state", "enter", "enter"), Back: bind("back", "esc", "esc")},
		Weights: Weights{
			More: bind("more weight", "right", "right"), Less: bind("less weight", "left", "left"),
			Figure:  bind("weight", "0 to 9", "0", "1", "2", "3", "4", "5", "6", "7", "8", "9"),
			Counted: bind("what counts, or all", "m", "m"), Back: bind("back", "esc", "esc"),
		},
		Differences: Differences{Back: bind("to the question", "esc", "esc", "enter", "q", "ctrl+c")},
		Sheets: Sheets{
			Next: bind("next sheet", "tab", "tab", ")"), Previous: bind("sheet before", "shift+tab", "shift+tab", "("),
			Forth: bind("next screen", "right", "right", "enter"), Before: bind("screen before", "left", "left"),
		},
		Back: bind("back", "esc", "esc"),
	}
}

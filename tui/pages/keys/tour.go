package keys

import "github.com/charmbracelet/bubbles/key"

// screen is one of the tour.
type screen struct {
	title string
	says  []string
}

// tour is five short screens; the names of the keys come from the map.
func (m *Model) tour() []screen {
	k := func(b key.Binding) string { return b.Help().Key }
	e, p, v, f := m.keys.Everywhere, m.keys.Panes, m.keys.Variants, m.keys.Form
	return []screen{
		{"what lies on the bench", []string{
			"A study holds variants: complete machines, from the engine to the frame. One of them is in hand; its name stands on the first line.",
			"Under it is what a builder decides by: how deep the machine is, what it weighs, what it feels like on the back, how it pushes and climbs, and the check that is worst.",
			k(p.Next) + " walks through the panes: variants, parts, the values of a part, readings, checks. A narrow window shows the one you are in.",
		}},
		{"change a number and see what it does", []string{
			k(p.NextPart) + " and " + k(p.PreviousPart) + " lead to the next part and the one before. " + k(f.Less) + " and " + k(f.More) + " change the value under the cursor by a fine step.",
			"Or just type: the first figure begins it, Enter takes it. Units are understood: 2 7/8 in becomes millimetres.",
			"Every edit shows at once. Readings that it moved stand on top, with the change and whether that is better or worse. " + k(e.Undo) + " takes it back, any number of times.",
		}},
		{"ask why", []string{
			k(e.Why) + " on a reading or a check tells how it was found, from which source, and which numbers move it most: a small step of each, up and down, is tried while you read. On a value it tells what hangs on it.",
			"For a check that fails or is thin it looks for single numbers that would cure it. " + k(m.keys.Why.Try) + " tries one as a new variant.",
			k(e.Explore) + " asks more: what comes of a range of values, what would it take, the best compromises, how sure. " + k(e.Find) + " finds a value, a reading or a check by a few letters. " + k(e.Copy) + " copies what is under the cursor.",
		}},
		{"set two machines side by side", []string{
			k(v.Duplicate) + " on the list of variants makes a copy to change. " + k(e.PreviousVariant) + " and " + k(e.NextVariant) + " take another variant in hand, anywhere.",
			k(e.SideBySide) + " lays them side by side: what is set differently, what comes of it, and why one feels heavier. " + k(v.Reference) + " makes a variant the reference that the others are compared with.",
			k(e.Weights) + " ranks all by what counts for you. " + k(e.Tables) + " shows what is better read as a table.",
		}},
		{"keep it", []string{
			k(e.Save) + " saves, " + k(e.SaveAs) + " under another name; " + k(e.Studies) + " lists the studies of the folder. A study is a text file that you may edit by hand. " +
				k(e.Decisions) + " is its log of what you settled, when and why.",
			"What you have not saved is kept all the same when the line drops or the power fails; it is offered when you come back.",
			"The sample's machines are invented. The figures help to design and prove nothing: before you build or fly, read the cautions on the sheet of keys.",
		}},
	}
}

// Package quiet keeps Bubble Tea from questioning the terminal before the
// program has begun.
//
// Bubble Tea v1 asks the terminal for its background colour while its package
// is initialised and waits up to five seconds for an answer that a slow or
// simple terminal never gives. The question is not asked when the answer is
// known already. Go initialises packages that are ready in the order of their
// import paths, and this path sorts before Bubble Tea's, so importing quiet is
// enough. The bench's colours are readable on light and on dark, so the answer
// given here decides nothing.
package quiet

import "github.com/charmbracelet/lipgloss"

func init() { lipgloss.SetHasDarkBackground(true) }

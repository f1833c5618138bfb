// Package input reads the keyboard for tea.WithInput. A slow link may deliver
// the bytes of one key in several pieces; read piecewise, an arrow key would
// turn into Esc and text. Wrap keeps such sequences whole.
package input

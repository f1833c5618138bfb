// Package output sends frames to the terminal for tea.WithOutput. Bubble Tea
// writes a line anew, whole, when one cell of it changed; on a slow link that
// is felt at every key. Thin remembers what each line shows and sends only the
// cells that differ.
//
// What is not a frame of known form passes through as it is, and then nothing
// is taken as known of the screen until each line has been written again.
package output

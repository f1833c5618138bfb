// Package store keeps studies in files that people can read, compare and
// change by hand.
//
// Encode writes a study from its declarations: every parameter in declared
// order with its unit in the key, and label, range and origin beside it. Equal
// studies give equal bytes. Decode reads strictly and reports every problem at
// once, each with its line.
//
// A Folder adds the disk: saves are atomic, never go over a file that changed
// in the meantime, and keep what a person wrote by hand.
package store

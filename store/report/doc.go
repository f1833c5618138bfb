// Package report writes what the model found: comparisons and checks as a
// table for people, as Markdown, as CSV and as JSON for other programs.
package report

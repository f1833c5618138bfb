//go:build !unix

package store

func sameOwner(string, string) {}

func otherNames(string) string { return "" }

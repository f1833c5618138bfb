//go:build !unix

package store

func sameOwner(disk, string, string) []string { return nil }

func otherNames(string) string { return "" }

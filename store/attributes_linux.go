package store

import (
	"errors"
	"strings"

	"golang.org/x/sys/unix"
)

// accessList is where Linux keeps who may do what with a file beyond owner,
// group and others.
const accessList = "system.posix_acl_access"

// sameAttributes gives a file the access list and the notes of other programs
// that the one has which it is going to replace, and says what it could not
// give. An access list that the folder gave to it goes.
func sameAttributes(file, like string) (lost []string) {
	want, err := attributes(like)
	if err != nil {
		return nil // a new file, or nothing of the kind here
	}
	if _, ok := want[accessList]; !ok {
		_ = unix.Removexattr(file, accessList)
	}
	var list, others bool
	for name, value := range want {
		if unix.Setxattr(file, name, value, 0) == nil {
			continue
		}
		if name == accessList {
			list = true
		} else {
			others = true
		}
	}
	if list {
		lost = append(lost, "access list")
	}
	if others {
		lost = append(lost, "extended attributes")
	}
	return lost
}

// attributes are those of a file that are a person's to give.
func attributes(file string) (map[string][]byte, error) {
	names, err := sized(func(to []byte) (int, error) { return unix.Listxattr(file, to) })
	if err != nil {
		return nil, err
	}
	found := map[string][]byte{}
	for name := range strings.SplitSeq(string(names), "\x00") {
		if name != accessList && !strings.HasPrefix(name, "user.") {
			continue
		}
		value, err := sized(func(to []byte) (int, error) { return unix.Getxattr(file, name, to) })
		if err == nil {
			found[name] = value
		}
	}
	return found, nil
}

// sized reads what has a size that another program may change meanwhile.
func sized(read func(to []byte) (int, error)) ([]byte, error) {
	for {
		n, err := read(nil)
		if err != nil || n == 0 {
			return nil, err
		}
		b := make([]byte, n)
		n, err = read(b)
		if !errors.Is(err, unix.ERANGE) {
			return b[:max(n, 0)], err
		}
	}
}

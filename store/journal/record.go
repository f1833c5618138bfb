package journal

import (
	"bytes"
	"encoding/binary"
	"errors"
	"hash/crc32"
)

const magic = "backspan journal 1\n"

// mostRecord is far above any study.
const mostRecord = 64 << 20

const frame = 8 // length and checksum before each record

var castagnoli = crc32.MakeTable(crc32.Castagnoli)

// The kinds of record.
const (
	headRecord  = 'h'
	wholeRecord = 'w'
	deltaRecord = 'd'
	savedRecord = 's'
)

// appendRecord adds a record to a buffer.
func appendRecord(to []byte, kind byte, body ...[]byte) []byte {
	record := append([]byte{kind}, bytes.Join(body, nil)...)
	to = binary.LittleEndian.AppendUint32(to, uint32(len(record))) //nolint:gosec // far below 4 GiB
	to = binary.LittleEndian.AppendUint32(to, crc32.Checksum(record, castagnoli))
	return append(to, record...)
}

// nextRecord takes the first record off src; ok is false where none stands
// whole.
func nextRecord(src []byte) (kind byte, body, rest []byte, ok bool) {
	if len(src) < frame {
		return 0, nil, src, false
	}
	length, sum := binary.LittleEndian.Uint32(src), binary.LittleEndian.Uint32(src[4:])
	if length == 0 || length > mostRecord || uint64(length) > uint64(len(src)-frame) {
		return 0, nil, src, false
	}
	record := src[frame : frame+int(length)]
	if crc32.Checksum(record, castagnoli) != sum {
		return 0, nil, src, false
	}
	return record[0], record[1:], src[frame+int(length):], true
}

// A delta is how many bytes at the front and at the end stay, and what stands
// between them now.
func delta(was, is []byte) []byte {
	front, most := 0, min(len(was), len(is))
	for front < most && was[front] == is[front] {
		front++
	}
	back := 0
	for back < most-front && was[len(was)-1-back] == is[len(is)-1-back] {
		back++
	}
	d := binary.AppendUvarint(nil, uint64(front))
	d = binary.AppendUvarint(d, uint64(back))
	return append(d, is[front:len(is)-back]...)
}

var errDelta = errors.New("a change does not fit what stands before it")

func applied(was, d []byte) ([]byte, error) {
	front, n := binary.Uvarint(d)
	if n <= 0 {
		return nil, errDelta
	}
	d = d[n:]
	back, n := binary.Uvarint(d)
	if n <= 0 || front > uint64(len(was)) || back > uint64(len(was))-front {
		return nil, errDelta
	}
	is := append([]byte{}, was[:front]...)
	is = append(is, d[n:]...)
	return append(is, was[uint64(len(was))-back:]...), nil
}

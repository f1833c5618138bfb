// Package journal keeps the states that a study went through since it was last
// saved, so that none is lost when the program is ended from outside.
//
// A journal is a file of records. Each record has its length and a checksum,
// so that one which was cut off by a crash is recognised and what stands
// before it is used. A state is kept as the text a save would have written:
// the first in full, each later one as what changed from the one before.
package journal

package carry

import (
	"slices"
	"strings"

	"backspan/model/stack"
)

// lump is one piece of a machine, or a whole drive, as the split compares it.
type lump struct {
	key, label     string
	mass, x, depth float64
	ahead          int
}

// push is how far the lump sets q aft by its depth, m; nothing when it is not
// there or does not stand ahead of q.
func (o *lump) push(q *lump) float64 {
	if o == nil || q == nil || o.ahead >= q.ahead {
		return 0
	}
	return o.depth
}

const driveKey = "drive"

func ofDrive(it *stack.Item) bool { return strings.HasPrefix(it.Key, driveKey+".") }

// lumps are the pieces of a machine to be compared with another's. The drive
// is one lump unless the other's drive has the very same pieces.
func lumps(items, other []stack.Item) []lump {
	whole := !slices.Equal(driveKeys(items), driveKeys(other))
	bs := make([]lump, 0, len(items))
	var drive *lump
	for i := range items {
		it := &items[i]
		b := lump{it.Key, it.Label, it.Mass, it.X, it.Depth, it.Ahead}
		switch {
		case !whole || !ofDrive(it):
			bs = append(bs, b)
		case drive == nil:
			b.key, b.label = driveKey, "Drive, all pieces"
			bs = append(bs, b)
			drive = &bs[len(bs)-1]
		default:
			drive.join(b)
		}
	}
	return bs
}

// join adds another piece: masses and depths sum, the centre is the common one.
func (o *lump) join(b lump) {
	if all := o.mass + b.mass; all > 0 {
		o.x = (o.mass*o.x + b.mass*b.x) / all
	}
	o.mass += b.mass
	o.depth += b.depth
}

func driveKeys(items []stack.Item) []string {
	keys := make([]string, 0, len(items))
	for i := range items {
		if ofDrive(&items[i]) {
			keys = append(keys, items[i].Key)
		}
	}
	return keys
}

// twin is the same piece in two machines; nil where one lacks it.
type twin struct{ a, b *lump }

func (t *twin) both() bool { return t.a != nil && t.b != nil }

// weight is the mean weight of the piece, N.
func (t *twin) weight() float64 { return gravity * (t.a.mass + t.b.mass) / 2 }

func (t *twin) either() *lump {
	if t.b != nil {
		return t.b
	}
	return t.a
}

func (t *twin) key() string   { return t.either().key }
func (t *twin) label() string { return t.either().label }

// pair puts the pieces of one key side by side, in a's order; what only b has
// stands behind what precedes it there.
func pair(a, b []lump) []twin {
	twins := make([]twin, len(a), len(a)+len(b))
	for i := range a {
		twins[i].a = &a[i]
	}
	at := -1
	for i := range b {
		same := slices.IndexFunc(twins, func(t twin) bool { return t.b == nil && t.a != nil && t.a.key == b[i].key })
		if same < 0 {
			same = at + 1
			twins = slices.Insert(twins, same, twin{})
		}
		twins[same].b = &b[i]
		at = same
	}
	return twins
}

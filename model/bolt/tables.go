package bolt

import (
	_ "embed" // the tables
	"sync"

	"backspan/model/internal/table"
)

// The tables as files, each row with its clause.
var (
	//go:embed data/threads.csv
	threadsFile string
	//go:embed data/classes.csv
	classesFile string
)

// threadTable is the threads by size; usual is M8.
type threadTable struct {
	sizes   []Size
	threads []Thread
	usual   Thread
}

var threads = sync.OnceValue(func() *threadTable {
	x := &threadTable{}
	for _, r := range table.Must(threadsFile).Rows {
		t := Thread{r.Num("nominal") / 1000, r.Num("pitch") / 1000, r.Num("head") / 1000, r.Num("hole") / 1000, r.Num("corners") / 1000}
		x.sizes, x.threads = append(x.sizes, Size(r.Word("size"))), append(x.threads, t)
		if Size(r.Word("size")) == M8 {
			x.usual = t
		}
	}
	return x
})

// classRow is a property class and its proof stress, Pa.
type classRow struct {
	class Class
	proof float64
}

var classes = sync.OnceValue(func() []classRow {
	var rows []classRow
	for _, r := range table.Must(classesFile).Rows {
		rows = append(rows, classRow{Class(r.Word("class")), r.Num("proof") * 1e6})
	}
	return rows
})

// classOrigin is how far the classes' stresses may be trusted.
var classOrigin = sync.OnceValue(func() string { return table.Must(classesFile).Origin() })

package store

import (
	"encoding/csv"
	"errors"
	"fmt"
	"io"
	"math"
	"os"
	"strconv"
	"strings"

	"backspan/model/propeller"
	"backspan/model/unit"
)

// mostPolarBytes is more than any section's polar takes.
const mostPolarBytes = 4 << 20

// polarColumns are the columns of a polar file by the names they may have.
var polarColumns = [...]struct {
	name  string
	words []string
}{
	{"alpha", []string{"alpha", "aoa", "angle", "angle of attack"}},
	{"cl", []string{"cl", "lift", "c_l"}},
	{"cd", []string{"cd", "drag", "c_d"}},
	{"Re", []string{"re", "reynolds", "reynolds number"}},
}

// ReadPolar reads a section's polar from a CSV file: columns alpha (degrees),
// cl, cd and Re, in that order or named in a first line. Commas, semicolons or
// tabs part them; with semicolons or tabs a comma may stand for the decimal
// point. Lines that begin with # are passed over. Rows come in SI, as the
// parameter Section polar holds them. An error names file, line and column.
func ReadPolar(path string) ([][]float64, error) {
	src, err := readPolarFile(path)
	if err != nil {
		return nil, err
	}
	f := polarFile{path: path, order: [4]int{0, 1, 2, 3}}
	if err := f.read(string(src)); err != nil {
		return nil, err
	}
	if len(f.rows) == 0 {
		return nil, refusal(path, nil, "holds no rows; give lines of alpha, cl, cd and Re")
	}
	var bad *propeller.RowError
	if err := propeller.PolarFits(f.rows); errors.As(err, &bad) {
		return nil, f.wrong(f.lines[bad.Row-1], 0, "%s", bad.Text)
	}
	return f.rows, nil
}

func readPolarFile(path string) ([]byte, error) {
	info, err := os.Stat(path)
	switch {
	case err != nil:
		return nil, unreadable(path, err)
	case !info.Mode().IsRegular():
		return nil, refusal(path, nil, "is not an ordinary file; give a CSV file of a section's polar")
	case info.Size() > mostPolarBytes:
		return nil, refusal(path, nil, "is too large for a section's polar")
	}
	src, err := os.ReadFile(path)
	if err != nil {
		return nil, unreadable(path, err)
	}
	return src, nil
}

// polarFile is a polar while it is read.
type polarFile struct {
	path  string
	order [4]int // field of each column
	comma bool   // decimal commas are allowed
	rows  [][]float64
	lines []int // of each row
}

func (f *polarFile) wrong(line, column int, format string, args ...any) error {
	place := fmt.Sprintf("line %d", line)
	if column > 0 {
		place += fmt.Sprintf(", column %d", column)
	}
	return refusal(f.path, nil, "%s: %s", place, fmt.Sprintf(format, args...))
}

func (f *polarFile) read(src string) error {
	r := csv.NewReader(strings.NewReader(strings.TrimPrefix(src, "\ufeff")))
	r.Comma, r.Comment, r.FieldsPerRecord, r.TrimLeadingSpace = ',', '#', -1, true
	if c := parting(src); c != ',' {
		r.Comma, f.comma, r.TrimLeadingSpace = c, true, c != '\t'
	}
	for first := true; ; first = false {
		fields, err := r.Read()
		if errors.Is(err, io.EOF) {
			return nil
		}
		var broken *csv.ParseError
		if errors.As(err, &broken) {
			return f.wrong(broken.Line, broken.Column, "%v", broken.Err)
		}
		if err != nil {
			return unreadable(f.path, err)
		}
		line, _ := r.FieldPos(0)
		if first && !f.isNumber(fields[0]) {
			err = f.head(fields, line)
		} else {
			err = f.row(fields, line)
		}
		if err != nil {
			return err
		}
	}
}

// parting is what parts the columns: whichever stands in the first line that
// is no remark.
func parting(src string) rune {
	for line := range strings.Lines(src) {
		if strings.HasPrefix(line, "#") || strings.TrimSpace(line) == "" {
			continue
		}
		for _, c := range ";\t" {
			if strings.ContainsRune(line, c) {
				return c
			}
		}
		break
	}
	return ','
}

// head finds the columns by their names.
func (f *polarFile) head(fields []string, line int) error {
	for i, c := range polarColumns {
		f.order[i] = -1
		for j, name := range fields {
			for _, w := range c.words {
				if strings.EqualFold(strings.TrimSpace(name), w) {
					f.order[i] = j
				}
			}
		}
		if f.order[i] < 0 {
			return f.wrong(line, 0, "no column is named %s; name the columns alpha, cl, cd and Re, or leave the names out", c.name)
		}
	}
	return nil
}

func (f *polarFile) row(fields []string, line int) error {
	row := make([]float64, len(f.order))
	limits := propeller.PolarColumns()
	for i, j := range f.order {
		if j >= len(fields) {
			return f.wrong(line, j+1, "there is no %s; each line holds alpha, cl, cd and Re", polarColumns[i].name)
		}
		x, err := f.number(fields[j])
		if err != nil {
			return f.wrong(line, j+1, "%s: %q is not a number", polarColumns[i].name, fields[j])
		}
		if c := limits[i]; !(x >= c.Min && x <= c.Max) {
			return f.wrong(line, j+1, "%s is %g; %g to %g is allowed", polarColumns[i].name, x, c.Min, c.Max)
		}
		row[i] = x
	}
	row[0] = unit.Degree.SI(row[0])
	f.rows, f.lines = append(f.rows, row), append(f.lines, line)
	return nil
}

func (f *polarFile) isNumber(s string) bool { _, err := f.number(s); return err == nil }

func (f *polarFile) number(s string) (float64, error) {
	s = strings.TrimSpace(s)
	if f.comma && strings.Count(s, ",") == 1 && !strings.Contains(s, ".") {
		s = strings.Replace(s, ",", ".", 1)
	}
	x, err := strconv.ParseFloat(s, 64)
	if err == nil && (math.IsNaN(x) || math.IsInf(x, 0)) {
		err = strconv.ErrRange
	}
	return x, err
}

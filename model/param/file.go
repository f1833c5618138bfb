package param

import (
	"fmt"
	"math"
)

// Literal is a number as a study file spells it, exact to the last bit.
type Literal string

// FileValue is the value for a study file: Literal, int64, string, bool or
// [][]Literal, numbers in the units the key names. It is nil when there is
// nothing to write: an open quantity left empty, a table without rows.
func (p Param) FileValue() any {
	switch v := p.bind.get().(type) {
	case float64:
		return Literal(p.Unit.Exact(v))
	case int:
		return int64(v)
	case Slot:
		if v.Known {
			return Literal(p.Unit.Exact(v.Value))
		}
		return nil
	case [][]float64:
		return p.fileRows(v)
	default:
		return v
	}
}

func (p Param) fileRows(rows [][]float64) any {
	if len(rows) == 0 {
		return nil
	}
	out := make([][]Literal, len(rows))
	for i, row := range rows {
		for j, si := range row {
			out[i] = append(out[i], Literal(p.Columns[j].Unit.Exact(si)))
		}
	}
	return out
}

// SetFile takes a value as a TOML decoder delivers it: float64, int64, string,
// bool or []any. A wrong type or a value out of range is refused.
func (p Param) SetFile(v any) error {
	switch p.Kind {
	case KindNumber:
		x, err := fileNumber(v)
		if err != nil {
			return p.refuse("", "%v; give a number, %s", err, p.Range())
		}
		return p.SetNumber(p.Unit.SI(x))
	case KindWhole:
		n, ok := v.(int64)
		if !ok {
			return p.refuse("", "%s; give a whole number, %s", found(v), p.Range())
		}
		return p.setCount(int(n))
	case KindToggle:
		b, ok := v.(bool)
		if !ok {
			return p.refuse("", "%s; give true or false", found(v))
		}
		p.bind.set(b)
		return nil
	case KindTable:
		rows, err := p.rowsFromFile(v)
		if err != nil {
			return p.refuse("", "%v", err)
		}
		return p.setRows(rows)
	}
	s, ok := v.(string)
	if !ok {
		return p.refuse("", "%s; give text in quotes, %s", found(v), p.Range())
	}
	if p.Kind == KindChoice {
		return p.setChoice(s)
	}
	p.bind.set(s)
	return nil
}

func (p Param) rowsFromFile(v any) ([][]float64, error) {
	list, ok := v.([]any)
	if !ok {
		return nil, fmt.Errorf("%s; give a list of rows such as [[1.0, 2.0], [3.0, 4.0]]", found(v))
	}
	rows := make([][]float64, 0, len(list))
	for i, item := range list {
		cells, ok := item.([]any)
		if !ok || len(cells) != len(p.Columns) {
			return nil, fmt.Errorf("row %d must hold %d numbers (%s)", i+1, len(p.Columns), p.columnsHelp())
		}
		row := make([]float64, len(cells))
		for j, cell := range cells {
			x, err := fileNumber(cell)
			if err != nil {
				return nil, fmt.Errorf("row %d, %s: %w", i+1, p.Columns[j].Label, err)
			}
			row[j] = p.Columns[j].Unit.SI(x)
		}
		rows = append(rows, row)
	}
	return rows, nil
}

func fileNumber(v any) (float64, error) {
	switch x := v.(type) {
	case float64:
		if math.IsNaN(x) || math.IsInf(x, 0) {
			return 0, fmt.Errorf("%v is not a finite number", x)
		}
		return x, nil
	case int64:
		return float64(x), nil
	}
	return 0, fmt.Errorf("%s", found(v))
}

func found(v any) string {
	switch x := v.(type) {
	case string:
		return fmt.Sprintf("found the text %q", x)
	case bool:
		return fmt.Sprintf("found %v", x)
	case float64, int64:
		return fmt.Sprintf("found the number %v", x)
	case []any:
		return "found a list"
	case map[string]any:
		return "found a table"
	}
	return fmt.Sprintf("found %T", v)
}

package param

// Section is a group of parameters: one table of the file, one page of the form.
type Section struct {
	Key    string // dotted path of the table: "drive.ribbed_belt"
	Label  string
	Help   string
	Params []Param
	Hidden bool // does not apply to the present choices; kept in the file all the same
}

// Path is the key by which a parameter is known outside its section.
func (s Section) Path(p Param) string {
	if s.Key == "" {
		return p.Key
	}
	return s.Key + "." + p.Key
}

// holds compares without spelling the path of every parameter passed over.
func (s Section) holds(p Param, path string) bool {
	if s.Key == "" {
		return p.Key == path
	}
	n := len(s.Key)
	return len(path) == n+1+len(p.Key) && path[:n] == s.Key && path[n] == '.' && path[n+1:] == p.Key
}

// Find returns the parameter with that path.
func Find(sections []Section, path string) (Param, bool) {
	for _, s := range sections {
		for _, p := range s.Params {
			if s.holds(p, path) {
				return p, true
			}
		}
	}
	return Param{}, false
}

package store

import (
	"errors"
	"strings"
	"testing"
)

func TestNewerFormatIsShownAndLeftAlone(t *testing.T) {
	f := NewFolder(t.TempDir())
	path := f.dir + "/a.toml"
	text := strings.Replace(string(Encode(sound())), "format = 1", "format = 2\nmoon_phase = 3", 1)
	put(t, path, text)
	s, err := f.Open(path)
	var newer *Newer
	if !errors.As(err, &newer) || s == nil || len(newer.LeftOut) != 1 {
		t.Fatalf("%v, %v", s, err)
	}
	if w := newer.Error(); !strings.Contains(w, "format 2") || !strings.Contains(w, "without moon_phase in line 4") {
		t.Error(w)
	}
	if s.Name != sound().Name || len(s.Variants) != len(sound().Variants) {
		t.Errorf("read %q with %d variants", s.Name, len(s.Variants))
	}
	if _, err := f.Save(path, s); err == nil || string(get(t, path)) != text {
		t.Errorf("it was saved over, %v", err)
	}
	put(t, path, "format = 2\n")
	if s, err := f.Open(path); s != nil || errors.As(err, &newer) || err == nil {
		t.Errorf("nothing to be seen, yet %v, %v", s, err)
	}
}

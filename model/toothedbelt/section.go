package toothedbelt

// Section is a tooth form and pitch.
type Section string

// The sections: 8 mm curvilinear after ISO 13050, then trapezoidal after ISO
// 5296 from the finest pitch to the coarsest.
const (
	H8M Section = "H8M"
	MXL Section = "MXL"
	XL  Section = "XL"
	L   Section = "L"
	H   Section = "H"
	XH  Section = "XH"
	XXH Section = "XXH"
)

// section is what a tooth form fixes, in SI.
type section struct {
	pitch            float64 // m
	lineDifferential float64 // a, outside to pitch radius of a pulley, m
	massPerWidth     float64 // of the belt, kg/m per m of width
	baseWidth        float64 // b_s0, to which the allowable tension belongs, m; 0 when none is known
	allowable        float64 // T_a at the base width, N; 0 when none is known
}

const (
	differentialOrigin = "H8M from a table after ISO 13050; the others from memory: ISO 5294"
	massOrigin         = "H8M an estimate: section area times 1250 kg/m³; the others from memory: GB/T 11362 (ISO 5295:1987)"
	allowableOrigin    = "from memory: GB/T 11362 (ISO 5295:1987)"
)

// section returns the table row of the tooth form, the zero row for an unknown
// one. Pitches of the trapezoidal sections are whole fractions of an inch.
func (n Section) section() section {
	switch n {
	case H8M:
		return section{pitch: 8e-3, lineDifferential: 0.686e-3, massPerWidth: 5.5}
	case MXL:
		return section{2.032e-3, 0.254e-3, 0.007 / 6.4e-3, 6.4e-3, 27}
	case XL:
		return section{5.080e-3, 0.254e-3, 0.022 / 9.5e-3, 9.5e-3, 50.17}
	case L:
		return section{9.525e-3, 0.381e-3, 0.095 / 25.4e-3, 25.4e-3, 244.46}
	case H:
		return section{12.700e-3, 0.686e-3, 0.448 / 76.2e-3, 76.2e-3, 2100.85}
	case XH:
		return section{22.225e-3, 1.397e-3, 1.484 / 101.6e-3, 101.6e-3, 4048.9}
	case XXH:
		return section{31.750e-3, 1.524e-3, 2.473 / 127e-3, 127e-3, 6398.03}
	}
	return section{}
}

// Trapezoidal reports whether ISO 5295 covers the section.
func (n Section) Trapezoidal() bool { return n != H8M }

// section is the tooth form's table row with what the spec sets itself.
func (s *Spec) section() section {
	row := s.Section.section()
	if s.LineDifferential.Known {
		row.lineDifferential = s.LineDifferential.Value
	}
	if s.MassPerMillimetre.Known {
		row.massPerWidth = s.MassPerMillimetre.Value / millimetre
	}
	if s.BaseWidth.Known {
		row.baseWidth = s.BaseWidth.Value
	}
	if s.AllowableTension.Known {
		row.allowable = s.AllowableTension.Value
	}
	return row
}

const millimetre = 1e-3

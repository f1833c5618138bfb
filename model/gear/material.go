package gear

import (
	"math"

	"backspan/model/param"
)

// MaterialClass is a class of steel and treatment as ISO 6336-5 parts them.
type MaterialClass string

// The classes offered.
const (
	Normalized      MaterialClass = "normalized steel"
	HardenedCarbon  MaterialClass = "through-hardened carbon"
	HardenedAlloy   MaterialClass = "through-hardened alloy"
	CaseHardened    MaterialClass = "case-hardened"
	Induction       MaterialClass = "induction-hardened"
	Nitrided        MaterialClass = "nitriding steel, nitrided"
	NitridedAlloy   MaterialClass = "alloy steel, nitrided"
	Nitrocarburized MaterialClass = "alloy steel, nitrocarburized"
)

// MaterialQuality is the quality grade of material and treatment.
type MaterialQuality string

// The grades, from the least demanding.
const (
	ML MaterialQuality = "ML"
	MQ MaterialQuality = "MQ"
	ME MaterialQuality = "ME"
)

// CoreStrength parts the bending limits of case-hardened steel of grade MQ.
type CoreStrength string

// The cores.
const (
	Core25 CoreStrength = "25 HRC core"
	Core28 CoreStrength = "28 HRC at 12 mm, Jominy"
	Core30 CoreStrength = "30 HRC core"
)

// treatment groups the classes that share life, notch and running-in rules.
type treatment int

const (
	soft     treatment = iota // normalized or through-hardened
	hardened                  // case or induction
	nitrided
	nitrocarburized
)

// treatmentNames are the words of the tables, in the order of the treatments.
var treatmentNames = [4]string{"soft", "hardened", "nitrided", "nitrocarburized"}

// strengthLine is a limit over hardness, slope·hardness + base, N/mm², not
// above top where there is one.
type strengthLine struct{ slope, base, top float64 }

func (l strengthLine) at(hardness float64) float64 {
	v := l.slope*hardness + l.base
	if l.top > 0 {
		return math.Min(v, l.top)
	}
	return v
}

// materialClass is one class; the lines and least hardnesses are those of ML,
// MQ and ME. Hardness in HV, of normalized steel in HBW.
type materialClass struct {
	treatment        treatment
	contact, bending [3]strengthLine
	cores            map[CoreStrength]strengthLine // bending of grade MQ, where the core parts it
	least            [3]float64                    // hardness
	most             float64
}

func (c MaterialClass) treatment() treatment {
	switch c {
	case CaseHardened, Induction:
		return hardened
	case Nitrided, NitridedAlloy:
		return nitrided
	case Nitrocarburized:
		return nitrocarburized
	}
	return soft
}

// grade is 0 for ML, 1 for MQ and 2 for ME.
func (q MaterialQuality) grade() int {
	switch q {
	case MQ:
		return 1
	case ME:
		return 2
	}
	return 0
}

// toothMaterial is the material of one gear, stresses in N/mm².
type toothMaterial struct {
	class     MaterialClass
	grade     int // 0 ML, 1 MQ, 2 ME
	treatment treatment
	hardness  float64
	contact   float64 // endurance limit of the flank
	bending   float64 // of the root
}

// newToothMaterial looks the limits up; ok is false outside the hardness the
// table holds for. Source: ISO 6336-5 table 1, from memory.
func newToothMaterial(class MaterialClass, quality MaterialQuality, core CoreStrength, hardness float64) (m toothMaterial, ok bool) {
	c, found := materials().classes[class]
	if !found {
		return toothMaterial{class: class}, false
	}
	grade := quality.grade()
	bending := c.bending[grade]
	if line, parted := c.cores[core]; parted && grade == 1 {
		bending = line
	}
	m = toothMaterial{class: class, grade: grade, treatment: c.treatment, hardness: hardness,
		contact: c.contact[grade].at(hardness), bending: bending.at(hardness)}
	return m, hardness >= c.least[grade] && hardness <= c.most
}

// own puts limits from the builder's own source, Pa, in place of the table's,
// and reports whether none of the table's is left.
func (m *toothMaterial) own(contact, bending param.Slot) bool {
	if contact.Known {
		m.contact = contact.Value / megapascal
	}
	if bending.Known {
		m.bending = bending.Value / megapascal
	}
	return contact.Known && bending.Known
}

// brinellPerVickers turns Vickers into Brinell hardness, good to 450 HV. Source:
// from memory: ISO 18265, annex A.
const brinellPerVickers = 0.95

// brinell is the hardness in HBW.
func (m toothMaterial) brinell() float64 {
	if m.class == Normalized {
		return m.hardness
	}
	return brinellPerVickers * m.hardness
}

// proofStress is a rough 0.2 % proof stress of a soft steel, N/mm²: estimate,
// seven tenths of a tensile strength of 3.2 times the hardness.
func (m toothMaterial) proofStress() float64 { return 0.7 * 3.2 * m.hardness }

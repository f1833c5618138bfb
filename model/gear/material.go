package gear

import "math"

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
	materialOrigin                = "from memory: ISO 6336-5, table 1"
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

// materialClass is one class; the three lines and least hardnesses are those
// of ML, MQ and ME.
type materialClass struct {
	treatment        treatment
	contact, bending [3]strengthLine
	least            [3]float64 // hardness
	most             float64
}

// materialClasses holds the endurance limits. All of it from memory: ISO 6336-5
// table 1; hardness in HV, of normalized steel in HBW.
var materialClasses = map[MaterialClass]materialClass{
	Normalized: {soft,
		[3]strengthLine{{1.000, 190, 0}, {1.000, 190, 0}, {1.520, 250, 0}},
		[3]strengthLine{{0.455, 69, 0}, {0.455, 69, 0}, {0.386, 147, 0}},
		[3]float64{110, 110, 110}, 210},
	HardenedCarbon: {soft,
		[3]strengthLine{{0.963, 283, 0}, {0.925, 360, 0}, {0.838, 432, 0}},
		[3]strengthLine{{0.250, 108, 0}, {0.240, 163, 0}, {0.283, 202, 0}},
		[3]float64{115, 135, 135}, 210},
	HardenedAlloy: {soft,
		[3]strengthLine{{1.313, 188, 0}, {1.313, 373, 0}, {2.213, 260, 0}},
		[3]strengthLine{{0.423, 104, 0}, {0.425, 187, 0}, {0.358, 231, 0}},
		[3]float64{200, 200, 200}, 360},
	CaseHardened: {hardened,
		[3]strengthLine{{0, 1300, 0}, {0, 1500, 0}, {0, 1650, 0}},
		[3]strengthLine{{0, 312, 0}, {0, 425, 0}, {0, 525, 0}},
		[3]float64{600, 660, 660}, 800},
	Induction: {hardened,
		[3]strengthLine{{0.740, 602, 0}, {0.541, 882, 0}, {0.505, 1013, 0}},
		[3]strengthLine{{0.305, 76, 0}, {0.138, 290, 369}, {0.271, 237, 0}},
		[3]float64{485, 500, 500}, 615},
	Nitrided: {nitrided,
		[3]strengthLine{{0, 1125, 0}, {0, 1250, 0}, {0, 1450, 0}},
		[3]strengthLine{{0, 270, 0}, {0, 420, 0}, {0, 468, 0}},
		[3]float64{650, 650, 650}, 900},
	NitridedAlloy: {nitrided,
		[3]strengthLine{{0, 788, 0}, {0, 998, 0}, {0, 1217, 0}},
		[3]strengthLine{{0, 258, 0}, {0, 363, 0}, {0, 432, 0}},
		[3]float64{450, 450, 450}, 650},
	Nitrocarburized: {nitrocarburized,
		[3]strengthLine{{0, 650, 0}, {1.167, 425, 950}, {1.167, 425, 950}},
		[3]strengthLine{{0, 224, 0}, {0.653, 94, 388}, {0.653, 94, 388}},
		[3]float64{300, 300, 300}, 650},
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
	grade := 0
	switch quality {
	case MQ:
		grade = 1
	case ME:
		grade = 2
	}
	c, found := materialClasses[class]
	m = toothMaterial{class: class, grade: grade, treatment: c.treatment, hardness: hardness,
		contact: c.contact[grade].at(hardness), bending: c.bending[grade].at(hardness)}
	if class == CaseHardened && quality == MQ {
		m.bending = core.bendingLimit()
	}
	return m, found && hardness >= c.least[grade] && hardness <= c.most
}

func (c CoreStrength) bendingLimit() float64 {
	switch c {
	case Core28:
		return 461
	case Core30:
		return 500
	}
	return 425
}

// proofStress is a rough 0.2 % proof stress of a soft steel, N/mm²: estimate,
// seven tenths of a tensile strength of 3.2 times the hardness.
func (m toothMaterial) proofStress() float64 { return 0.7 * 3.2 * m.hardness }

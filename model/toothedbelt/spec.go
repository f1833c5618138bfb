package toothedbelt

import (
	"slices"

	"backspan/model/param"
	"backspan/model/pulley"
)

// LaidOutBy says which of the two lengths a builder gives.
type LaidOutBy string

// What a stage is laid out by.
const (
	ByBeltTeeth      LaidOutBy = "belt teeth"
	ByCentreDistance LaidOutBy = "centre distance"
)

// Spec is what a builder sets of a toothed belt stage. SI throughout.
type Spec struct {
	Section        Section
	CrankTeeth     int
	DrivenTeeth    int
	BeltWidth      float64 // m
	LaidOutBy      LaidOutBy
	BeltTeeth      int     // used when laid out by belt teeth
	CentreDistance float64 // wanted, m; used when laid out by centre distance

	ServiceFactor   float64    // on the power, for standing tension and rating
	StandingTension param.Slot // per strand as set, N; empty takes the required one
	RatedEfficiency float64    // at rated power and speed
	LoadLossShare   float64    // share of the rated loss that grows with the power
	TemperatureMax  float64    // the compound bears, K
	SpeedMax        param.Slot // of the belt, m/s

	LineDifferential       param.Slot // outside to pitch radius, m; empty takes the section's
	MassPerMillimetre      param.Slot // kg/m of a belt 1 mm wide; empty takes the section's
	StiffnessPerMillimetre param.Slot // EA of a belt 1 mm wide, N
	LossFactor             float64    // of the belt as a spring
	AllowableTension       param.Slot // T_a at the base width, N; trapezoidal only
	BaseWidth              param.Slot // m; trapezoidal only

	PowerTable   []PowerPoint // curvilinear only; by crank teeth, then by speed
	TableWidth   float64      // belt width the table is for, m
	LengthFactor float64      // of the table, for the belt's length
	TableSource  string

	pulley.Build          // outside diameters are those over the teeth
	FaceAllowance float64 // pulley face beyond the belt's width, m
	pulley.Upkeep
}

// PowerPoint is one row of a power table for curvilinear teeth.
type PowerPoint struct {
	Teeth int     // of the crank pulley
	Speed float64 // of the crank, rad/s
	Power float64 // W, at the table's belt width
}

// Default is a 28 to 80 stage of 8 mm pitch, 30 mm wide, for a single
// two-stroke of about 15 kW at 8500 rpm.
func Default() Spec {
	return Spec{
		Section: H8M, CrankTeeth: 28, DrivenTeeth: 80, BeltWidth: 0.030,
		LaidOutBy: ByBeltTeeth, BeltTeeth: 100, CentreDistance: 0.172,
		ServiceFactor: 1.8, RatedEfficiency: 0.98, LoadLossShare: 0.5, TemperatureMax: 273.15 + 100,
		LossFactor: 0.12, TableWidth: 0.020, LengthFactor: 1,
		Build: defaultBuild(), FaceAllowance: 0.002,
		Upkeep: pulley.Upkeep{Price: 460, BeltPrice: 45, ChangeLabour: 25, ChangeInterval: 100 * 3600},
	}
}

// defaultBuild has flanges that only guide the belt, and a rim with room for
// the teeth.
func defaultBuild() pulley.Build {
	b := pulley.DefaultBuild()
	b.SideWall, b.RimThickness = 0.002, 0.006
	return b
}

// Clone is a copy that shares nothing with s.
func (s Spec) Clone() Spec {
	s.PowerTable = slices.Clone(s.PowerTable)
	return s
}

// rows and setRows carry the power table through its parameter, in SI.
func (s *Spec) rows() [][]float64 {
	rows := make([][]float64, len(s.PowerTable))
	for i, p := range s.PowerTable {
		rows[i] = []float64{float64(p.Teeth), p.Speed, p.Power}
	}
	return rows
}

func (s *Spec) setRows(rows [][]float64) {
	s.PowerTable = make([]PowerPoint, len(rows))
	for i, r := range rows {
		s.PowerTable[i] = PowerPoint{Teeth: int(r[0]), Speed: r[1], Power: r[2]}
	}
}

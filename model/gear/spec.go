package gear

import (
	"backspan/model/bearing"
	"backspan/model/coupling"
	"backspan/model/param"
	"backspan/model/unit"
)

// FlangeMaterial is what the propeller flange is made of.
type FlangeMaterial string

// The materials offered.
const (
	Aluminium FlangeMaterial = "aluminium"
	Steel     FlangeMaterial = "steel"
)

// FlangeLabel names FlangeDiameter on a form.
const FlangeLabel = "Propeller flange diameter"

// Spec is what a user sets. Lengths in m, angles in rad.
type Spec struct {
	// The teeth.
	Module         float64 // normal
	PinionTeeth    int
	WheelTeeth     int
	FaceWidth      float64
	HelixAngle     float64
	PressureAngle  float64 // normal
	PinionShift    float64 // modules
	WheelShift     float64 // modules; follows when the centre distance is given
	CentreDistance param.Slot
	Rack           Profile
	Backlash       param.Slot // normal, at 20 °C
	Roughness      float64    // arithmetic mean of the flanks

	// What the workshop may miss; no figure but the build sheet's rests on it.
	CentreTolerance float64 // of the centre distance, either way
	SpanTolerance   float64 // of the base tangent length of each gear, below its greatest

	// The strength of the teeth.
	PinionMaterial    MaterialClass
	PinionHardness    float64 // HV, of normalized steel HBW
	WheelMaterial     MaterialClass
	WheelHardness     float64
	MaterialQuality   MaterialQuality
	CaseCore          CoreStrength
	PinionContact     param.Slot // endurance limits of the builder's own source, Pa; the table's when empty
	PinionBending     param.Slot
	WheelContact      param.Slot
	WheelBending      param.Slot
	CaseDepth         param.Slot // as drawn
	Edition           Edition
	UnrelievedFlanks  float64   // fZCa of the edition of 2019
	Alignment         Enclosure // of the second rating
	AccuracyClass     int       // ISO 1328
	LoadFactor        LoadFactorSource
	ApplicationFactor float64
	MeshDamping       float64 // of the critical
	Life              float64 // s
	Crowned           bool
	TipRelief         float64
	RootRoughness     float64 // Rz
	PinionPlace       Place
	PinionSpan        param.Slot
	PinionOffset      float64
	PittingAsked      float64
	BendingAsked      float64

	// The oil.
	Lubricant           Lubricant
	ViscosityAt40       float64 // kinematic, m²/s
	ViscosityAt100      float64
	OilDensity          float64
	OilVolume           float64 // m³
	DippingGear         Dipping
	DipDepth            float64
	OilTemperatureLimit float64 // K
	OilBaseLife         float64 // s, at the base temperature
	OilBaseTemperature  float64 // K
	OilTilt             float64 // greatest, fore and aft

	// The parts along the shafts.
	Coupling              coupling.Spec
	Held                  Held
	PinionHand            Hand
	PinionBearings        bearing.Size
	WheelEngineBearing    bearing.Size
	WheelPropellerBearing bearing.Size
	BearingOilFactor      float64
	PinionSeal            bool
	SealMaterial          SealMaterial
	SealWidth             float64
	CaseWall              float64
	BossWall              float64
	SideGap               float64
	TipGap                float64
	CoverDepth            float64
	WebFactor             float64 // mass of the wheel over that of a solid disc
	FlangeDiameter        float64
	FlangeThickness       float64
	FlangeMaterial        FlangeMaterial

	// The way of the heat.
	FinFactor             float64
	StillCooling          float64 // W/m²K
	StreamCooling         float64 // W/m²K at 10 m/s
	EngineCaseTemperature float64 // K
	MountConductance      float64 // W/K

	// Money.
	Price          float64
	ChangeInterval float64 // s
	ChangeCost     float64
}

// Default is a helical unit for an engine of about 190 cm³ with a centrifugal
// coupling on the crank.
func Default() Spec {
	return Spec{
		Module: 2e-3, PinionTeeth: 19, WheelTeeth: 56, FaceWidth: 20e-3,
		HelixAngle: unit.Degree.SI(15), PressureAngle: unit.Degree.SI(20),
		PinionShift: 0.3, WheelShift: 0.1, Rack: ProfileA,
		Backlash: param.Known(unit.Millimetre.SI(0.14)), Roughness: 0.5e-6,
		CentreTolerance: 15e-6, SpanTolerance: 30e-6,

		PinionMaterial: CaseHardened, PinionHardness: 700, WheelMaterial: CaseHardened, WheelHardness: 700,
		MaterialQuality: MQ, CaseCore: Core25, AccuracyClass: 6,
		LoadFactor: FromChoice, ApplicationFactor: 1.75, Life: 300 * 3600,
		Crowned: true, RootRoughness: 16e-6, PinionPlace: Between,
		PittingAsked: 1.1, BendingAsked: 1.5,
		Edition: Edition2006, UnrelievedFlanks: 1.2, Alignment: CommercialUnit,

		Lubricant: PAO, ViscosityAt40: 100e-6, ViscosityAt100: 14e-6, OilDensity: 850,
		OilVolume: 15e-6, DippingGear: DipPinion, DipDepth: 6e-3,
		OilTemperatureLimit: 120 + celsiusZero,
		OilBaseLife:         2500 * 3600, OilBaseTemperature: 90 + celsiusZero, OilTilt: unit.Degree.SI(40),

		MeshDamping: 0.07, Coupling: coupling.Default(),
		PinionHand: RightHand, PinionBearings: "6204", WheelEngineBearing: "6205", WheelPropellerBearing: "6206",
		BearingOilFactor: 2, PinionSeal: true, SealMaterial: FKM, SealWidth: 7e-3,
		CaseWall: 4e-3, BossWall: 7e-3, SideGap: 3e-3, TipGap: 8e-3, CoverDepth: 5e-3,
		WebFactor: 0.6, FlangeDiameter: 110e-3, FlangeThickness: 10e-3, FlangeMaterial: Aluminium,

		FinFactor: 1.5, StillCooling: 15, StreamCooling: 40,
		EngineCaseTemperature: 100 + celsiusZero, MountConductance: 2,

		Price: 600, ChangeInterval: 50 * 3600, ChangeCost: 20,
	}
}

func (s *Spec) oil() Oil {
	return Oil{ViscosityAt40: s.ViscosityAt40, ViscosityAt100: s.ViscosityAt100}
}

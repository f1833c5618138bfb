package unit

import "math"

// Dimension is the kind of quantity a unit measures. Torque and energy share
// base units but are told apart, because mixing them is always a mistake here.
type Dimension string

// The dimensions that the model uses.
const (
	Dimensionless         Dimension = "a plain number"
	Length                Dimension = "a length"
	Area                  Dimension = "an area"
	Volume                Dimension = "a volume"
	Mass                  Dimension = "a mass"
	Time                  Dimension = "a time"
	Speed                 Dimension = "a speed"
	Angle                 Dimension = "an angle"
	AngularSpeed          Dimension = "a speed of rotation"
	Frequency             Dimension = "a frequency"
	Force                 Dimension = "a force"
	Torque                Dimension = "a torque"
	Power                 Dimension = "a power"
	Energy                Dimension = "an energy"
	Pressure              Dimension = "a pressure"
	Temperature           Dimension = "a temperature"
	TemperatureDifference Dimension = "a temperature difference"
	Density               Dimension = "a density"
	Inertia               Dimension = "a moment of inertia"
	MassPerLength         Dimension = "a mass per length"
	Stiffness             Dimension = "a stiffness"
	SpecificFuel          Dimension = "a specific fuel consumption"
	VolumeFlow            Dimension = "a volume flow"
	HeatCoefficient       Dimension = "a heat transfer coefficient"
	Conductance           Dimension = "a thermal conductance"
	AngularMomentum       Dimension = "an angular momentum"
	AngularAcceleration   Dimension = "an angular acceleration"
	EnergyPerMass         Dimension = "a specific energy"
	Viscosity             Dimension = "a kinematic viscosity"
	DynamicViscosity      Dimension = "a dynamic viscosity"
	SoundLevel            Dimension = "a sound level"
	PlainLevel            Dimension = "a level without weighting"
	Money                 Dimension = "an amount of money"
	MoneyPerTime          Dimension = "a cost per time"
	MassPerDepth          Dimension = "a mass per depth"
	BendingStiffness      Dimension = "a bending stiffness"
	TwistStiffness        Dimension = "a stiffness against twist"
	Conductivity          Dimension = "a thermal conductivity"
	MassPerArea           Dimension = "a mass per area"
)

// Unit is one unit of one dimension. The SI value of x units is
// (x + Shift)·Times/Over; keeping Over apart makes 62 mm exactly 62/1000.
type Unit struct {
	Dimension Dimension
	Symbol    string  // as shown, "mm"
	Key       string  // as it ends a file key, "mm"; empty for a plain number
	Times     float64 // multiplies
	Over      float64 // divides
	Shift     float64 // added before scaling: 273.15 for °C
	Figures   int     // significant figures a reading shows at least
}

// SI converts x in this unit to SI.
func (u Unit) SI(x float64) float64 { return (x + u.Shift) * u.Times / u.Over }

// From converts an SI value to this unit.
func (u Unit) From(si float64) float64 { return si*u.Over/u.Times - u.Shift }

// Difference converts the SI difference of two quantities to this unit. It
// leaves out the shift that separates °C from K.
func (u Unit) Difference(si float64) float64 { return si * u.Over / u.Times }

func (u Unit) String() string { return u.Symbol }

func unitOf(d Dimension, symbol, key string, times, over float64) Unit {
	return Unit{Dimension: d, Symbol: symbol, Key: key, Times: times, Over: over, Figures: 3}
}

// StandardGravity is the acceleration that weights are reckoned with, m/s²,
// exact by definition.
const StandardGravity = 9.80665

const (
	pound = 0.45359237 // kg, exact by definition
	inch  = 0.0254     // m, exact by definition
)

// The units of the model. Factors are exact by definition (SI brochure, NIST
// SP 811 appendix B) or follow from π and the standard gravity 9.80665 m/s².
var (
	One     = Unit{Dimension: Dimensionless, Times: 1, Over: 1, Figures: 4}
	Count   = Unit{Dimension: Dimensionless, Times: 1, Over: 1, Figures: 1}
	Percent = unitOf(Dimensionless, "%", "percent", 1, 100)

	Metre      = unitOf(Length, "m", "m", 1, 1)
	Centimetre = unitOf(Length, "cm", "cm", 1, 100)
	Millimetre = unitOf(Length, "mm", "mm", 1, 1000)
	Micrometre = unitOf(Length, "µm", "um", 1, 1e6)
	Kilometre  = unitOf(Length, "km", "km", 1000, 1)
	Inch       = unitOf(Length, "in", "in", inch, 1)
	Foot       = unitOf(Length, "ft", "ft", 12*inch, 1)

	SquareMetre      = unitOf(Area, "m²", "m2", 1, 1)
	SquareCentimetre = unitOf(Area, "cm²", "cm2", 1, 1e4)
	SquareMillimetre = unitOf(Area, "mm²", "mm2", 1, 1e6)

	CubicMetre      = unitOf(Volume, "m³", "m3", 1, 1)
	Litre           = unitOf(Volume, "L", "l", 1, 1000)
	CubicCentimetre = unitOf(Volume, "cm³", "cm3", 1, 1e6)

	Kilogram  = unitOf(Mass, "kg", "kg", 1, 1)
	Gram      = unitOf(Mass, "g", "g", 1, 1000)
	PoundMass = unitOf(Mass, "lb", "lb", pound, 1)

	Second = unitOf(Time, "s", "s", 1, 1)
	Minute = unitOf(Time, "min", "min", 60, 1)
	Hour   = unitOf(Time, "h", "h", 3600, 1)

	MetrePerSecond = unitOf(Speed, "m/s", "m_s", 1, 1)

	// MillimetrePerMinute is how a bearing's limit of diameter times speed is
	// written: mm times rpm.
	MillimetrePerMinute = Unit{Dimension: Speed, Symbol: "mm/min", Key: "mm_min", Times: 1, Over: 60000, Figures: 3}
	KilometrePerHour    = unitOf(Speed, "km/h", "km_h", 1, 3.6)
	Knot                = unitOf(Speed, "kn", "kn", 1852, 3600)
	FootPerSecond       = unitOf(Speed, "ft/s", "ft_s", 12*inch, 1)

	Radian      = unitOf(Angle, "rad", "rad", 1, 1)
	Milliradian = unitOf(Angle, "mrad", "mrad", 1, 1000)
	Degree      = unitOf(Angle, "°", "deg", math.Pi, 180)

	RadianPerSecond = unitOf(AngularSpeed, "rad/s", "rad_s", 1, 1)
	RPM             = unitOf(AngularSpeed, "rpm", "rpm", math.Pi, 30)

	Hertz = unitOf(Frequency, "Hz", "hz", 1, 1)

	Newton        = unitOf(Force, "N", "n", 1, 1)
	Kilonewton    = unitOf(Force, "kN", "kn", 1000, 1)
	KilogramForce = unitOf(Force, "kgf", "kgf", StandardGravity, 1)
	PoundForce    = unitOf(Force, "lbf", "lbf", pound*StandardGravity, 1)

	NewtonMetre        = unitOf(Torque, "N·m", "nm", 1, 1)
	KilogramForceMetre = unitOf(Torque, "kgf·m", "kgfm", StandardGravity, 1)
	PoundForceFoot     = unitOf(Torque, "lbf·ft", "lbfft", pound*StandardGravity*12*inch, 1)

	Watt             = unitOf(Power, "W", "w", 1, 1)
	Kilowatt         = unitOf(Power, "kW", "kw", 1000, 1)
	Horsepower       = unitOf(Power, "hp", "hp", 550*pound*StandardGravity*12*inch, 1)
	MetricHorsepower = unitOf(Power, "PS", "ps", 75*StandardGravity, 1)

	Joule     = unitOf(Energy, "J", "j", 1, 1)
	Kilojoule = unitOf(Energy, "kJ", "kj", 1000, 1)

	Pascal      = unitOf(Pressure, "Pa", "pa", 1, 1)
	Hectopascal = unitOf(Pressure, "hPa", "hpa", 100, 1)
	Kilopascal  = unitOf(Pressure, "kPa", "kpa", 1000, 1)
	Megapascal  = unitOf(Pressure, "MPa", "mpa", 1e6, 1)
	Gigapascal  = unitOf(Pressure, "GPa", "gpa", 1e9, 1)
	Bar         = unitOf(Pressure, "bar", "bar", 1e5, 1)
	PSI         = unitOf(Pressure, "psi", "psi", pound*StandardGravity, inch*inch)

	Kelvin     = unitOf(Temperature, "K", "k", 1, 1)
	Celsius    = Unit{Dimension: Temperature, Symbol: "°C", Key: "c", Times: 1, Over: 1, Shift: 273.15, Figures: 3}
	Fahrenheit = Unit{Dimension: Temperature, Symbol: "°F", Key: "f", Times: 5, Over: 9, Shift: 459.67, Figures: 3}

	KelvinDifference     = unitOf(TemperatureDifference, "K", "k", 1, 1)
	CelsiusDifference    = unitOf(TemperatureDifference, "°C", "c", 1, 1)
	FahrenheitDifference = unitOf(TemperatureDifference, "°F", "f", 5, 9)

	KilogramPerCubicMetre = unitOf(Density, "kg/m³", "kg_m3", 1, 1)
	KilogramPerLitre      = unitOf(Density, "kg/L", "kg_l", 1000, 1)
	SlugPerCubicFoot      = unitOf(Density, "slug/ft³", "slug_ft3", pound*StandardGravity/(12*inch), 12*inch*12*inch*12*inch)

	KilogramSquareMetre = unitOf(Inertia, "kg·m²", "kg_m2", 1, 1)

	KilogramPerMetre = unitOf(MassPerLength, "kg/m", "kg_m", 1, 1)
	GramPerMetre     = unitOf(MassPerLength, "g/m", "g_m", 1, 1000)

	NewtonPerMetre      = unitOf(Stiffness, "N/m", "n_m", 1, 1)
	NewtonPerMillimetre = unitOf(Stiffness, "N/mm", "n_mm", 1000, 1)
	KilonewtonPerMetre  = unitOf(Stiffness, "kN/m", "kn_m", 1000, 1)

	NewtonSquareMetre = unitOf(BendingStiffness, "N·m²", "n_m2", 1, 1)

	NewtonMetrePerRadian = unitOf(TwistStiffness, "N·m/rad", "nm_rad", 1, 1)

	GramPerKilowattHour  = unitOf(SpecificFuel, "g/kWh", "g_kwh", 1, 3.6e9)
	PoundPerHorsepowerHr = unitOf(SpecificFuel, "lb/hp·h", "lb_hph", pound, 550*pound*StandardGravity*12*inch*3600)

	LitrePerHour = unitOf(VolumeFlow, "L/h", "l_h", 1, 3.6e6)

	WattPerSquareMetreKelvin = unitOf(HeatCoefficient, "W/m²K", "w_m2k", 1, 1)

	WattPerKelvin = unitOf(Conductance, "W/K", "w_k", 1, 1)

	WattPerMetreKelvin     = unitOf(Conductivity, "W/mK", "w_mk", 1, 1)
	KilogramPerSquareMetre = unitOf(MassPerArea, "kg/m²", "kg_m2", 1, 1)

	NewtonMetreSecond      = unitOf(AngularMomentum, "N·m·s", "nms", 1, 1)
	RadianPerSecondSquared = unitOf(AngularAcceleration, "rad/s²", "rad_s2", 1, 1)

	JoulePerKilogram     = unitOf(EnergyPerMass, "J/kg", "j_kg", 1, 1)
	MegajoulePerKilogram = unitOf(EnergyPerMass, "MJ/kg", "mj_kg", 1e6, 1)

	SquareMillimetrePerSecond = unitOf(Viscosity, "mm²/s", "mm2_s", 1, 1e6)
	PascalSecond              = unitOf(DynamicViscosity, "Pa·s", "pa_s", 1, 1)

	Decibel      = unitOf(SoundLevel, "dB(A)", "dba", 1, 1)
	PlainDecibel = unitOf(PlainLevel, "dB", "db", 1, 1)

	// Currency is whatever money the study is kept in.
	Currency        = unitOf(Money, "money", "money", 1, 1)
	CurrencyPerHour = unitOf(MoneyPerTime, "money/h", "money_h", 1, 3600)

	KilogramPerCentimetre = unitOf(MassPerDepth, "kg/cm", "kg_cm", 100, 1)
)

// all is every unit a person may type; symbols are unique within a dimension.
var all = []Unit{
	One, Percent,
	Metre, Centimetre, Millimetre, Micrometre, Kilometre, Inch, Foot,
	SquareMetre, SquareCentimetre, SquareMillimetre,
	CubicMetre, Litre, CubicCentimetre,
	Kilogram, Gram, PoundMass,
	Second, Minute, Hour,
	MetrePerSecond, KilometrePerHour, Knot, FootPerSecond, MillimetrePerMinute,
	Radian, Milliradian, Degree,
	RadianPerSecond, RPM,
	Hertz,
	Newton, Kilonewton, KilogramForce, PoundForce,
	NewtonMetre, KilogramForceMetre, PoundForceFoot,
	Watt, Kilowatt, Horsepower, MetricHorsepower,
	Joule, Kilojoule,
	Pascal, Hectopascal, Kilopascal, Megapascal, Gigapascal, Bar, PSI,
	Kelvin, Celsius, Fahrenheit,
	KelvinDifference, CelsiusDifference, FahrenheitDifference,
	KilogramPerCubicMetre, KilogramPerLitre, SlugPerCubicFoot,
	KilogramSquareMetre,
	KilogramPerMetre, GramPerMetre,
	NewtonPerMetre, NewtonPerMillimetre, KilonewtonPerMetre,
	NewtonSquareMetre,
	NewtonMetrePerRadian,
	GramPerKilowattHour, PoundPerHorsepowerHr,
	LitrePerHour,
	WattPerSquareMetreKelvin, WattPerKelvin, WattPerMetreKelvin,
	KilogramPerSquareMetre,
	NewtonMetreSecond, RadianPerSecondSquared,
	JoulePerKilogram, MegajoulePerKilogram,
	SquareMillimetrePerSecond, PascalSecond,
	Decibel, PlainDecibel, Currency, CurrencyPerHour, KilogramPerCentimetre,
}

// spellings lists other ways in which people type a symbol.
var spellings = map[string][]string{
	"µm": {"um", "μm"}, "in": {"\"", "inch", "inches"}, "ft": {"'", "feet"},
	"m²": {"m2"}, "cm²": {"cm2"}, "mm²": {"mm2"},
	"m³": {"m3"}, "L": {"l", "litre", "liter"}, "cm³": {"cm3", "cc", "ml", "mL"},
	"m/s": {"mps"}, "km/h": {"kmh", "kph"}, "kn": {"kt", "kts"}, "°": {"deg"},
	"rpm": {"r/min"},
	"kgf": {"kp"}, "N·m": {"Nm", "N*m", "N.m"}, "kgf·m": {"kgfm", "kgf*m"}, "lbf·ft": {"lbfft", "lb-ft", "ft-lb", "lbf*ft"},
	"PS": {"ps", "cv", "ch", "metric hp"}, "hp": {"HP", "bhp"}, "hPa": {"mbar"},
	"°C": {"C", "degC", "celsius"}, "°F": {"F", "degF"},
	"kg/m³": {"kg/m3"}, "kg/L": {"kg/l"}, "slug/ft³": {"slug/ft3"},
	"kg·m²": {"kgm2", "kg*m2", "kg m2"}, "N·m²": {"Nm2", "N*m2"},
	"lb/hp·h": {"lb/hph", "lb/hp/h"}, "L/h": {"l/h"},
	"W/m²K": {"W/m2K"}, "N·m·s": {"Nms"}, "rad/s²": {"rad/s2"}, "mm²/s": {"mm2/s", "cSt"}, "Pa·s": {"Pas"}, "dB(A)": {"dBA", "dB"},
}

// Of lists the units in which a quantity of dimension d may be typed.
func Of(d Dimension) []Unit {
	var us []Unit
	for _, u := range all {
		if u.Dimension == d {
			us = append(us, u)
		}
	}
	return us
}

package gear

import (
	"backspan/model/param"
	"backspan/model/unit"
)

// LoadFactorSource is where the application factor comes from.
type LoadFactorSource string

// The sources.
const (
	FromChoice    LoadFactorSource = "application factor"
	FromPulsation LoadFactorSource = "pulsation"
)

// Place is where the pinion sits against its bearings.
type Place string

// The places.
const (
	Between  Place = "between bearings"
	Overhung Place = "overhung"
)

func (s *Spec) strengthParams() []param.Param {
	const hardnessHelp = "Vickers, of normalized steel Brinell; each material is listed for a range only."
	classes := []MaterialClass{CaseHardened, Induction, Nitrided, NitridedAlloy, Nitrocarburized, HardenedAlloy, HardenedCarbon, Normalized}
	_, applicationOrigin := usualApplication()
	caseMQ := s.MaterialQuality == MQ && (s.PinionMaterial == CaseHardened || s.WheelMaterial == CaseHardened)
	return append([]param.Param{
		param.Choice(&s.PinionMaterial, "pinion_material", "Pinion material", classes...).From(materials().origin).
			Help("Sets what flank and root endure."),
		param.Number(&s.PinionHardness, "pinion_hardness", "Pinion hardness", unit.One).Within(100, 900).Typical(650, 750).
			Help(hardnessHelp),
		param.Choice(&s.WheelMaterial, "wheel_material", "Wheel material", classes...).From(materials().origin).
			Help("Sets what flank and root endure."),
		param.Number(&s.WheelHardness, "wheel_hardness", "Wheel hardness", unit.One).Within(100, 900).Typical(650, 750).
			Help(hardnessHelp),
		param.Choice(&s.MaterialQuality, "material_quality", "Material quality", ML, MQ, ME).From("from memory: ISO 6336-5").
			Help("ML asks little of steel and heat treatment, MQ is good practice, ME needs proof of all of it."),
		param.Choice(&s.CaseCore, "case_core", "Core of case-hardened teeth", Core25, Core28, Core30).When(caseMQ).
			From("from memory: ISO 6336-5").Help("Strength below the hard case; the softest counts when nothing is known."),
		ownLimit(&s.PinionContact, "pinion_contact_limit", "Pinion contact limit, own").Within(200, 2500).Typical(1200, 1650),
		ownLimit(&s.PinionBending, "pinion_bending_limit", "Pinion bending limit, own").Within(50, 1000).Typical(300, 525),
		ownLimit(&s.WheelContact, "wheel_contact_limit", "Wheel contact limit, own").Within(200, 2500).Typical(1200, 1650),
		ownLimit(&s.WheelBending, "wheel_bending_limit", "Wheel bending limit, own").Within(50, 1000).Typical(300, 525),
		param.Open(&s.CaseDepth, "case_depth", "Case depth as drawn", unit.Millimetre).Within(0.05, 3).Typical(0.2, 0.6).
			When(s.PinionMaterial.treatment() != soft || s.WheelMaterial.treatment() != soft).
			Help("Hardening depth at the roots as the drawing asks, to 550 HV or as the treatment is measured."),
		param.Whole(&s.AccuracyClass, "accuracy_class", "Accuracy class").Within(4, 9).Typical(5, 7).
			Help("Flank tolerance class of ISO 1328; lower is finer, 5 to 6 is ground, 7 to 8 hobbed."),
		param.Choice(&s.LoadFactor, "load_factor", "Load factor from", FromChoice, FromPulsation).
			Help("A figure of experience, or the engine's own pulsation carried through the train."),
		param.Number(&s.ApplicationFactor, "application_factor", "Application factor", unit.One).Within(1, 4).Typical(1.5, 2).
			When(s.LoadFactor == FromChoice).From(applicationOrigin).
			Help("Shock above the mean torque; holds only with a compliant coupling before the pinion."),
		param.Number(&s.MeshDamping, "mesh_damping", "Mesh damping", unit.Percent).Within(0.5, 50).Typical(3, 17).
			From("from memory: 3 to 17 %").Help("Of the critical damping of pinion against wheel on the teeth; matters near their own frequency only."),
	}, append(s.mountingParams(), s.editionParams()...)...)
}

// ownLimit declares an endurance limit that stands in for the table's.
func ownLimit(to *param.Slot, key, label string) param.Param {
	return param.Open(to, key, label, unit.Megapascal).
		Help("Endurance limit from a source of your own, nominal, as ISO 6336-5 means it; empty takes the table's, which is from memory.")
}

func (s *Spec) editionParams() []param.Param {
	return []param.Param{
		param.Choice(&s.Edition, "rating_edition", "Edition of the rating", Edition2006, Edition2019).From("from memory: ISO 6336, 2006 and 2019").
			Help("2019 puts more stress on helical teeth without relief and counts the helix otherwise in the root."),
		param.Number(&s.UnrelievedFlanks, "unrelieved_flanks", "Factor of unrelieved flanks", unit.One).Within(1, 1.2).Typical(1.07, 1.2).
			When(s.Edition == Edition2019 && s.HelixAngle > 0).From("from memory: ISO 6336-2, 2019, 1.2 without relief, 1 with the best").
			Help("On the square of the contact stress; lower it where tip and end relief suit the load."),
		param.Choice(&s.Alignment, "agma_alignment", "Alignment, AGMA form", OpenGearing, CommercialUnit, PrecisionUnit, ExtraPrecisionUnit).
			From(alignmentOrigin()).Help("How truly the case holds the shafts, for the second rating."),
	}
}

func (s *Spec) mountingParams() []param.Param {
	return []param.Param{
		param.Number(&s.Life, "life", "Life asked of the teeth", unit.Hour).Within(10, 20000).Typical(200, 1000).
			Help("Hours at the rated duty that flanks and roots must stand."),
		param.Toggle(&s.Crowned, "crowned", "Crowned teeth").
			Help("Flanks a few micrometres lower at the ends of the face, which halves the misalignment that counts."),
		param.Number(&s.TipRelief, "tip_relief", "Tip relief", unit.Micrometre).Within(0, 60).Typical(0, 25).
			Help("Taken off the flanks at the tips; enough of it quietens the mesh at the load it was made for. The rating counts it for Accuracy class 4 and 5."),
		param.Number(&s.RootRoughness, "root_roughness", "Root roughness, Rz", unit.Micrometre).Within(0.5, 40).Typical(6, 20).
			From("estimate").Help("Mean peak to valley height in the fillets of both gears."),
		param.Choice(&s.PinionPlace, "pinion_place", "Pinion sits", Between, Overhung).
			Help("Overhung on a shaft end the pinion tilts more under load."),
		param.Open(&s.PinionSpan, "pinion_span", "Pinion bearing span", unit.Millimetre).Within(10, 200).Typical(35, 60).
			Help("Between the middles of the pinion's bearings; empty takes that of the case, which a longer one makes deeper."),
		param.Number(&s.PinionOffset, "pinion_offset", "Pinion offset", unit.Millimetre).Within(0, 60).Typical(0, 10).
			Help("From the middle of the span to that of the face; of an overhung pinion, from the nearer bearing. The case grows to hold both bearings."),
		param.Number(&s.PittingAsked, "pitting_safety_asked", "Pitting safety asked", unit.One).Within(1, 2).Typical(1.1, 1.2).
			Help("Least safety against pitting, by stress."),
		param.Number(&s.BendingAsked, "bending_safety_asked", "Breakage safety asked", unit.One).Within(1, 3).Typical(1.4, 1.6).
			Help("Least safety against breakage of a tooth, which would cost all thrust."),
	}
}

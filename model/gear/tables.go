package gear

import (
	_ "embed" // the tables
	"sync"

	"backspan/model/internal/table"
)

// The tables of the standards as files, each row with its clause.
var (
	//go:embed data/materials.csv
	materialsFile string
	//go:embed data/slip_layers.csv
	slipLayersFile string
	//go:embed data/simple_dynamic.csv
	simpleDynamicFile string
	//go:embed data/dynamic_constants.csv
	dynamicConstantsFile string
	//go:embed data/application.csv
	applicationFile string
	//go:embed data/alignment.csv
	alignmentFile string
	//go:embed data/lewis.csv
	lewisFile string
	//go:embed data/modules.csv
	modulesFile string
)

// materialTable is the endurance limits by class and grade.
type materialTable struct {
	classes map[MaterialClass]*materialClass
	origin  string
}

var materials = sync.OnceValue(func() *materialTable {
	t := table.Must(materialsFile)
	m := &materialTable{classes: map[MaterialClass]*materialClass{}, origin: t.Origin()}
	for _, r := range t.Rows {
		class := MaterialClass(r.Word("class"))
		c := m.classes[class]
		if c == nil {
			c = &materialClass{treatment: class.treatment(), cores: map[CoreStrength]strengthLine{}}
			m.classes[class] = c
		}
		grade := MaterialQuality(r.Word("quality")).grade()
		bending := strengthLine{r.Num("bending_slope"), r.Num("bending_base"), r.Num("bending_top")}
		if core := CoreStrength(r.Word("core")); core != "" {
			c.cores[core] = bending
		}
		// Of several cores the first, the softest, stands for none named.
		if c.least[grade] == 0 {
			c.contact[grade] = strengthLine{r.Num("contact_slope"), r.Num("contact_base"), r.Num("contact_top")}
			c.bending[grade] = bending
			c.least[grade], c.most = r.Num("least"), r.Num("most")
		}
	}
	return m
})

// slipTable is the slip layers: of soft steels over the proof stress, of the
// other treatments one each. N/mm² and mm.
type slipTable struct {
	soft  [][2]float64
	fixed [4]float64
}

var slipLayers = sync.OnceValue(func() *slipTable {
	s := &slipTable{}
	for _, r := range table.Must(slipLayersFile).Rows {
		name := r.Word("treatment")
		if name == treatmentNames[soft] {
			s.soft = append(s.soft, [2]float64{r.Num("proof_stress"), r.Num("thickness")})
			continue
		}
		for i, n := range treatmentNames {
			if n == name {
				s.fixed[i] = r.Num("thickness")
			}
		}
	}
	return s
})

// simpleTable is K1 of method C over the accuracy classes from 3.
type simpleTable struct{ spur, helical [8]float64 }

var simpleFactors = sync.OnceValue(func() *simpleTable {
	s := &simpleTable{}
	for i, r := range table.Must(simpleDynamicFile).Rows {
		s.spur[i], s.helical[i] = r.Num("spur"), r.Num("helical")
	}
	return s
})

// dynamicForm is one of Cv1 to Cv6 over the total contact ratio.
type dynamicForm struct{ upToTwo, top, slope, less float64 }

func (d *dynamicForm) at(total float64) float64 {
	switch {
	case total <= 2:
		return d.upToTwo
	case d.less == 0:
		return d.top
	}
	return (d.top + d.slope*total) / (total - d.less)
}

var dynamicForms = sync.OnceValue(func() *[6]dynamicForm {
	d := &[6]dynamicForm{}
	for i, r := range table.Must(dynamicConstantsFile).Rows {
		d[i] = dynamicForm{r.Num("up_to_two"), r.Num("top"), r.Num("slope"), r.Num("less")}
	}
	return d
})

// usualApplication is the application factor of an engine of one cylinder that
// drives something with light shocks, as a propeller, and where it is from.
var usualApplication = sync.OnceValues(func() (factor float64, origin string) {
	t := table.Must(applicationFile)
	for _, r := range t.Rows {
		if r.Word("driving") == "engine of one cylinder" {
			factor = r.Num("light")
		}
	}
	return factor, t.Origin() + ", one cylinder and light shocks"
})

// alignment is the mesh alignment factor over the face in inch.
type alignment struct{ constant, perInch, perSquare float64 }

// Enclosure is how well the mesh is aligned, in the words of AGMA 2001.
type Enclosure string

// The enclosures.
const (
	OpenGearing        Enclosure = "open gearing"
	CommercialUnit     Enclosure = "commercial enclosed"
	PrecisionUnit      Enclosure = "precision enclosed"
	ExtraPrecisionUnit Enclosure = "extra-precision enclosed"
)

var alignments = sync.OnceValue(func() map[Enclosure]alignment {
	m := map[Enclosure]alignment{}
	for _, r := range table.Must(alignmentFile).Rows {
		m[Enclosure(r.Word("enclosure"))] = alignment{r.Num("constant"), r.Num("per_inch"), r.Num("per_square")}
	}
	return m
})

var alignmentOrigin = sync.OnceValue(func() string { return table.Must(alignmentFile).Origin() })

var lewisForm = sync.OnceValue(func() [][2]float64 {
	var y [][2]float64
	for _, r := range table.Must(lewisFile).Rows {
		y = append(y, [2]float64{r.Num("teeth"), r.Num("form")})
	}
	return y
})

// standardModules are those of the first series, m.
var standardModules = sync.OnceValue(func() []float64 {
	var m []float64
	for _, r := range table.Must(modulesFile).Rows {
		m = append(m, r.Num("module")/1000)
	}
	return m
})

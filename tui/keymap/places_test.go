package keymap

// everyPlace adds to the places those where something is asked or looked for.
func everyPlace() []Place {
	m := Default()
	return append(places(), m.AtTables(), m.AtWhy(), m.AtFind(), m.AtWeights(), m.AtHistory(), m.AtDecisions(), m.AtHang(), m.AtDifferences(), m.AtQuestionForm(), m.AtAnswer(true), m.AtAnswer(false), m.AtChooser(), m.AtUnanswered())
}

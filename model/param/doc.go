// Package param is the declaration of what a user may set.
//
// A part of the model lists its parameters once, each bound to the value
// itself; the form, the file, the range check, the help, the difference
// between variants and every exploration walk over that list:
//
//	func (s *Spec) Params() []param.Param {
//		return []param.Param{
//			param.Number(&s.CentreDistance, "centre_distance", "Centre distance", unit.Millimetre).
//				Within(60, 400).Typical(150, 200).Help("between the pulley axes"),
//			param.Whole(&s.Ribs, "ribs", "Ribs").Within(2, 20),
//			param.Choice(&s.Profile, "profile", "Profile", PJ, PK, PL, PM),
//		}
//	}
//
// A Param is a view: setting it changes the bound value, or refuses with a
// sentence and leaves the value as it was.
package param

// Package explore asks the model many times: the ratio chart, sweeps of one or
// two parameters, the value of a parameter that brings a reading to a target,
// the search for the best compromises, and what the spread of dimensions and
// of the model's own figures does to readings and checks.
//
// Every question is a row of records, each found from its number alone, so
// that the answer is the same on any number of processors, and a part of the
// records found elsewhere fits in unchanged. No state is shared: a study goes
// in, plain data comes out, the study stays as it was.
package explore

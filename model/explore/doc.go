// Package explore asks the model many times over: what if this parameter were
// another. It is as pure as the model: a study goes in, plain data comes out.
package explore

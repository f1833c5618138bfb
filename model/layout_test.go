package model

import (
	"math"
	"testing"

	"backspan/model/drive"
)

func bodyOf(t *testing.T, l Layout, key string) Body {
	t.Helper()
	for _, b := range l.Bodies {
		if b.Key == key {
			return b
		}
	}
	t.Fatalf("no body %s", key)
	return Body{}
}

// The bodies stand where the stack's pieces stand, and gears and pulleys are as
// large as the readings say.
func TestLayoutAgreesWithTheStack(t *testing.T) {
	s := Sample()
	for i := range s.Variants {
		for _, side := range []drive.Side{drive.Above, drive.Below} {
			v := s.Variants[i].Clone()
			v.Drive.PropellerAxis = side
			o := Evaluate(s, &v)
			l := o.Layout
			same := func(what string, got, want float64) {
				if math.Abs(got-want) > 1e-12 {
					t.Errorf("%s, %s: %s %g, want %g", v.Name, side, what, got, want)
				}
			}
			for _, it := range o.Stack.Items {
				for _, b := range l.Bodies {
					if b.Key == it.Key && it.Key != "drive.belt" {
						same(it.Key+" front", b.Front, it.Front)
					}
					if b.Key == it.Key && it.Depth > 0 && it.Key != "engine" {
						same(it.Key+" depth", b.Depth, it.Depth)
					}
				}
			}
			flange := bodyOf(t, l, "drive.flange")
			same("plate", flange.Front+flange.Depth, o.Stack.Depth)
			same("plate's axis", flange.High.Up, l.ThrustUp)
			same("mount", bodyOf(t, l, "engine").Front, l.Mount)
			turn := map[drive.Side]float64{drive.Above: 1, drive.Below: -1}[side]
			if v.Drive.Kind == drive.Gear {
				pinion, wheel, gearCase := bodyOf(t, l, "drive.pinion"), bodyOf(t, l, "drive.wheel"), bodyOf(t, l, "drive.case")
				tip, _ := o.Reading("gear.wheel_tip_diameter")
				same("wheel", 2*wheel.High.Radius, tip.Value)
				centre, _ := o.Reading("gear.centre_distance")
				same("centre distance", wheel.High.Up-pinion.High.Up, turn*centre.Value)
				cover := bodyOf(t, l, "drive.seal_cover")
				same("case ends at the cover", gearCase.Front+gearCase.Depth, cover.Front)
				same("cover ends at the flange", cover.Front+cover.Depth, flange.Front)
				continue
			}
			crank, driven, belt := bodyOf(t, l, "drive.crank_pulley"), bodyOf(t, l, "drive.driven_pulley"), bodyOf(t, l, "drive.belt")
			same("pulleys' front", crank.Front, driven.Front)
			same("middle of the belt", belt.Front+belt.Depth/2, crank.Front+crank.Depth/2)
			if !(belt.High.Radius/belt.Low.Radius > 2 && driven.High.Up*turn > crank.High.Up*turn) {
				t.Errorf("%s: %+v", v.Name, belt)
			}
		}
	}
}

// What no parameter gives is marked as assumed.
func TestAssumedSizesSaySo(t *testing.T) {
	s := Sample()
	assumed := map[string]bool{"stack.pad": true, "stack.frame": true, "stack.mount": true, "cooling.fan": true}
	for i := range s.Variants {
		for _, b := range Evaluate(s, &s.Variants[i]).Layout.Bodies {
			if b.Assumed != assumed[b.Key] {
				t.Errorf("%s: %s assumed %v", s.Variants[i].Name, b.Key, b.Assumed)
			}
		}
	}
}

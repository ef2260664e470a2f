package wind

import "heronlake.example/ask/calc/unit"

// PersonInLine is what each further person in line with the wind adds, against
// the first, in whose lee the others partly stand. From memory.
const PersonInLine = 0.7

// PeopleArea is the drag area of people in line with the wind: the first whole,
// each further one at PersonInLine. Nobody offers nothing.
//
// The drag area of one person: Hoerner, Fluid-Dynamic Drag, gives about 9 ft2
// standing and 6 ft2 sitting (from memory). A worked example of public physics
// teaching takes 1.3 on 0.75 m2 upright, 0.98 m2.
func PeopleArea(count float64, each unit.Area) unit.Area {
	if count <= 0 {
		return 0
	}
	if count < 1 {
		return each * unit.Area(count)
	}
	return each * unit.Area(1+PersonInLine*(count-1))
}

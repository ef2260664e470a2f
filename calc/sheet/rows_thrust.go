package sheet

// thrustRows are filled in below.
var thrustRows []Row

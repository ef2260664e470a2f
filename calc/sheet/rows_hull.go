package sheet

// hullRows are filled in below.
var hullRows []Row

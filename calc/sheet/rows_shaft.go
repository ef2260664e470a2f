package sheet

// shaftRows are filled in below.
var shaftRows []Row

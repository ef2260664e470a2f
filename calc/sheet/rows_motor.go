package sheet

// motorRows are filled in below.
var motorRows []Row

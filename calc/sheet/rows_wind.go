package sheet

// windRows are filled in below.
var windRows []Row

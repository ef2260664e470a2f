package sheet

// wireRows are filled in below.
var wireRows []Row

package sheet

// loadRows are filled in below.
var loadRows []Row

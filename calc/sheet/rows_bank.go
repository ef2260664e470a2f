package sheet

// bankRows are filled in below.
var bankRows []Row

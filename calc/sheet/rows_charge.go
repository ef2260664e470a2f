package sheet

// chargeRows are filled in below.
var chargeRows []Row

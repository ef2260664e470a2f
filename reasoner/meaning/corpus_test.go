package meaning

type phrasing struct{ text string }

var phrasings []phrasing
var nothings []string

package meaning

// Sayings are runs of plain words that rules look for and that are no entry of
// the word table: "how long will", "measured wrong". All that the rules name are
// found in one walk over the line.

// saying is one run of words.
type saying struct {
	rest []string // the words after the first
	id   int
}

var (
	sayingID = map[string]int{}
	sayings  = map[string][]saying{} // by first word
)

// sayingLimit is how many words of a line are looked at: what is asked stands
// within it, and it bounds the work.
const sayingLimit = 400

// learn enters a saying.
func learn(text string) {
	if _, known := sayingID[text]; known {
		return
	}
	ws := plain(text, nil)
	if len(ws) == 0 {
		return
	}
	id := len(sayingID)
	sayingID[text] = id
	sayings[ws[0]] = append(sayings[ws[0]], saying{ws[1:], id})
}

// plain cuts a lower-case text into words: letters and digits stay together, an
// apostrophe vanishes.
func plain(text string, out []string) []string {
	for i := 0; i < len(text) && len(out) < sayingLimit; {
		if !letter(text[i]) {
			i++
			continue
		}
		j := i
		for j < len(text) && letter(text[j]) {
			j++
		}
		w := text[i:j]
		if j+1 < len(text) && text[j] == '\'' && letter(text[j+1]) {
			k := j + 1
			for k < len(text) && letter(text[k]) {
				k++
			}
			w += text[j+1 : k]
			j = k
		}
		out = append(out, w)
		i = j
	}
	return out
}

// hear finds all sayings of the line.
func (l *line) hear() {
	l.heard = make([]bool, len(sayingID))
	text := l.r.Text
	if len(text) > 4000 {
		text = text[:4000]
	}
	var store [64]string
	ws := plain(lowerASCII(text), store[:0])
	for i, w := range ws {
		for _, s := range sayings[w] {
			if len(s.rest) > len(ws)-i-1 {
				continue
			}
			same := true
			for k, r := range s.rest {
				if ws[i+1+k] != r {
					same = false
					break
				}
			}
			if same {
				l.heard[s.id] = true
			}
		}
	}
}

// saysText tells whether the line says these words.
func (l *line) saysText(t string) bool {
	if l.heard == nil {
		l.hear()
	}
	id, ok := sayingID[t]
	return ok && l.heard[id]
}

func init() {
	for _, row := range topicRows {
		for _, t := range row.texts {
			learn(t)
		}
	}
	for _, t := range outsideWords {
		learn(t)
	}
	for _, t := range conditionSayings {
		learn(t)
	}
}

// conditionSayings are the sayings that conditions in code look for.
var conditionSayings = []string{
	"would a",
	"would an",
	"can a",
	"make sense",
	"more sense",
	"in that",
	"included",
	"includes",
	"capacity",
	"how big",
	"explain",
	"how far",
	"closer",
	"more like",
	"all year",
	"matter",
	"why",
	"how long",
	"can i use",
	"difference",
	"do i need",
	"does",
	"first",
	"first boat",
	"for the",
	"gonna",
	"how do you figure",
	"how many batter",
	"how much does it weigh",
	"how so",
	"in thrust",
	"is a",
	"mine",
	"my",
	"my boat",
	"my own",
	"ok for",
	"on the",
	"overkill",
	"plate",
	"range",
	"what batter",
	"whats",
	"whats wrong",
	"where does that come from",
	"will a",
}

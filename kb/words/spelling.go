package words

import (
	"strings"
	"sync"
)

// A misspelt word is corrected only when it is close to a word of the trade
// that is itself no ordinary English word, is no ordinary English word either,
// and is close to one such word alone. One slip is allowed from five letters,
// two from eight; the first letter must be right.

// targets names the words that a slip may be corrected to: words of the trade
// that are not ordinary words; a slip of "shaft" must not turn "shift" into it,
// so ordinary words near them are in common.
var targets = []string{
	"aluminum", "aluminium", "fiberglass", "fibreglass", "polyethylene", "lithium", "flooded",
	"pontoon", "tritoon", "canoe", "kayak", "inflatable", "sailboat", "battery", "batteries", "charger",
	"motor", "trolling", "outboard", "shaft", "thrust", "throttle", "breaker", "circuit", "gauge", "voltage",
	"transom", "gunwale", "tiller", "pedal", "remote", "brushless", "brushed", "variable", "autopilot",
	"saltwater", "freshwater", "brackish", "current", "whitecaps", "ventilation", "cavitation", "propeller",
	"insulation", "parallel", "series", "horsepower", "capacity", "freeboard", "waterline", "loaded", "rigged",
	"anchor", "position", "imaging", "sonar", "transducer", "bracket", "reservoir", "jigging", "casting",
	"spinnerbaits", "corrosion", "electric", "steering", "mount", "inches", "weighs", "thousand", "hundred",
	"aboard", "budget", "dollars", "knots", "windy", "gusts",
}

// Correct returns the word of the trade that a misspelt one was meant for.
func Correct(w string) (string, bool) {
	if len(w) < 5 || len(w) > 16 {
		return "", false
	}
	for i := 0; i < len(w); i++ {
		if w[i] < 'a' || w[i] > 'z' {
			return "", false
		}
	}
	allowed := 1
	if len(w) >= 8 {
		allowed = 2
	}
	best, found, twice := allowed+1, "", false
	for _, t := range targets {
		if t[0] != w[0] {
			continue
		}
		d := Slips(w, t, allowed)
		switch {
		case d == 0:
			return "", false
		case d < best:
			best, found, twice = d, t, false
		case d == best && d <= allowed:
			twice = true
		}
	}
	if found == "" || twice && best > 1 || Common(w) {
		return "", false
	}
	return found, true
}

// longestWord bounds the words that are compared, in bytes.
const longestWord = 64

// Slips counts what sets two words apart: letters put in, left out, changed, or
// two neighbours swapped (the Damerau-Levenshtein distance in its restricted
// form, optimal string alignment). It gives limit+1 when there are more, or when
// a word is longer than any of the trade.
func Slips(a, b string, limit int) int {
	if len(a)-len(b) > limit || len(b)-len(a) > limit || len(a) >= longestWord || len(b) >= longestWord {
		return limit + 1
	}
	var rows [3][longestWord]int
	before, last, row := &rows[0], &rows[1], &rows[2]
	for j := 0; j <= len(b); j++ {
		last[j] = j
	}
	for i := 1; i <= len(a); i++ {
		row[0] = i
		least := i
		for j := 1; j <= len(b); j++ {
			cost := 1
			if a[i-1] == b[j-1] {
				cost = 0
			}
			d := min(last[j]+1, row[j-1]+1, last[j-1]+cost)
			if i > 1 && j > 1 && a[i-1] == b[j-2] && a[i-2] == b[j-1] {
				d = min(d, before[j-2]+1)
			}
			row[j] = d
			least = min(least, d)
		}
		if least > limit {
			return limit + 1
		}
		before, last, row = last, row, before
	}
	return min(last[len(b)], limit+1)
}

// Common tells whether a word is an ordinary English word that is never
// corrected.
func Common(w string) bool { return common()[w] || common()[singular(w)] }

// common is made when a word comes close to one of the trade.
var common = sync.OnceValue(func() map[string]bool { return setOf(commonText) })

const commonText = `
able about above accept access across action actual adult after again against agree ahead allow almost alone along
already also although always among amount anchovy angle animal another answer anybody anyone anything anyway apart
apple april around arrive aside asked asking august average avoid award aware
backed badly balance barely based basic basket batch bathe batter beach become before began begin behind being believe
below bench better between beyond black blade blame blank blind block blood bloom board boost booth bored borrow both
bother bottle bottom bought bound brace brake branch brand bread break breakfast brick bridge brief bright bring broad
broken brother brought brown brush bucket build built bunch burned business butter button buying
cable candle cannon canon cannot canyon captain carbon career careful carried carry casing castle catch caught cause
caution center certain chain chair chance change changed changer changes channel chapter charge charged charges charter
cheap check cheese chest chief child choice choose chose circle claim class clean clear click climb clock close cloth
cloud coast coffee color comes coming common compare complete concern consider control cooler corner correct cost
costing costs could count counter country couple course cover covering cracked crazy cream create crossed crowd crushed
currently curtain custom customer cutting
daily dance danger dealer dear death decide decided deeply degree depend desert design detail different dinner direct
discuss distance doctor doing dollar double doubt downs dozen dragged drain drawn dream dress dried drink drive driven
driver driving dropped during dusty
eager early earth easily eastern easy eating edge effect effort eight either elect election electrical elegant eleven
else empty enemy energy engine enjoy enough enter entire equal error escape evening event every everybody everyone
everything exact example except excited expect expensive explain extra
faced factor faint fair fairly faith false family famous fancy farmer faster father fault favor feeling fellow fence
fever field fifteen fifth fifty fight figure filler filled final finally finding fine finger finish first fishing flash
flat flesh flight float flood floor flour flower follow food force foreign forest forget former forth forty forward
found fourth frame freak french fresh friend front frost fruit fuller fully funny further future
gallon garage garden general gentle gift given glass going golden good grain grand grass great green ground group grown
guard guess guest guide gutsy
habit half hammer handle happen happy hardly harsh haven head health heard heart heavy height hello helped hence herself
hidden highly himself holder hollow holiday honest hopes horse hotel hours house however human hungry hurry
ideal image imagine inched include income indeed indoor inner inside instead intend island issue itself
jacket joint judge juice jumping justice
keeper killer kitchen knife knock known knows
labor ladder lander large laser later latter laugh layer leader learn least leather leave legal letter level light likely
limit liquid listen little lived loader loading loads local lodged logged longer looking loose lover lower lucky lunch
magic major maker manner marine market master matter maybe mayor medal meant measure media medical medium member mental
merely metal middle might miles minute mirror mixed model modern moment money month moral morning mostly mother motion
motive motto mound mountain mouse mouth moved movie music myself
named narrow nation nature nearly neither never newer night ninety nobody noise normal north noted nothing notice number
object obtain obvious ocean offer office often older opened option orange order other ought outboards outer outside
oven owned owner
paint paper parade paralyze parent partly party passed past patch pause peace pedals people perhaps period person petal
phone photo phrase piece pilot pitch place plain plane plant plastic plate played player please plenty point pointed
police poor popular portion possible pound power prefer press pretty price pride print prior private prize problem
process produce profit promise proper protect proud prove public pulled pumped purple purpose pushed
quarter question quick quiet quite
radio raise ranch range rapid rather reach reached react reader ready really reason receive recent record reduce refer
region regular relate remain remember remind remove removed repair repeat replace reply report request require rescue
respect result return review reward right risen river road rocket rolling rotor rough round route royal rugged rural
sadly safety sailing salad sample sand saved scale scene scheme school science score scout screen search season second
secret section secure seeing seldom senior sense serious serve served serial seven seventy several shade shake shall
shape share sharp shelf shell shift shifted shine shirt shock shoes shoot shop shore short should shoulder shout shown
sight sign silent silver similar simple simply since single sister sixteen sixty skill skirt sleep slice slide slight
slip slow small smart smell smile smoke smooth snake social solar solid solve somebody someone something sometimes sonic
soon sorry sound source south space spare speak special speech spell spend spent spinner split spoke sport spread spring
square stack staff stage stair stand standard start state station stayed steady steal steel steep steer step stick still
stock stone stood stop store storm story straight strange stream street stress strike string strip strong struck
studio study stuff stupid style subject sudden suffer sugar suggest summer supper supply support sure surface surgery
surprise survey sweet switch system
table taken taking talked taller target taste taught teach telling temple tender tenth terms thank their them themselves
then theory there these thick thief thing think third thirty those though thought thread threat three threw through throw
thumb thunder thus ticket tight tiled tiles till tilt timer tired title today together tomorrow tonight topic total touch
tough toward towed tower trace track trade trailer train training transit translate trap travel treat tree trial tribe
trick tried trip tripping trolley troops trouble truck truly trunk trust trusted truth trying tunnel turned twelve twenty
twice typed
ugly ultra unable uncle under unhappy union unique unit unless until upper upset urban used useful usual usually
valley value valued variety various vehicle verify version very view visit voice vote voyage
wagon waist waiting walked wall wanted warm warned wash waste watch water wave weak wealth wear weather week weekend
weekly weight weird welcome western whale what wheat wheel where whether which while white whole whose wicked wider wild
window winds windows winner winter wise wish within without woman wonder wooden world worry worse worth would wound
write writer wrong
yacht yellow young yourself youth zone
amounts mounted mounting mountains motors electronics electrics loaf loadeds positions positioned casted cast castings
gasp gusty windier brackets brackets knot knobs knock boards abroad board sailed sailor sailors rigid
ridged rigger riggers budgets budge brushes brush brushing kayaking kayaker kayakers canoes canoeing motoring motored charging anchored rigging riggings
weighed weighing propelled hundreds thousands remotely positional positive opposition inch steered steers currents
gusting gauging insulated insulate throttled throttling capacities trawling crawling strolling rolling sonic paralleled
trust trusts thrusts trolled trolley trolleys causing crusts shirts shafts electrics elective election directing
sonars serious serves variables variably circuits circus
`

func setOf(text string) map[string]bool {
	words := strings.Fields(text)
	out := make(map[string]bool, len(words))
	for _, w := range words {
		out[w] = true
	}
	return out
}

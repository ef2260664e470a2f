package index

import (
	"strings"
	"sync"
)

// elsewhere lists words of other matters: food, the house, pets, health, money,
// school, screens, sport, travel. One of them in a question speaks against its
// being about the trade; it keeps no passage from being found that has more for
// it. Words that are heard on the water as well are left out.
const elsewhere = `
	recipe cook cooking bake baking bread cake cookie cookies pie pizza pasta rice soup sauce steak chicken pork beef bacon cheese milk coffee tea wine whiskey sugar flour potato potatoes tomato tomatoes onion apple banana chocolate candy dessert dinner breakfast restaurant bakery grocery groceries diet calories calorie vitamin vitamins
	kitchen bathroom bedroom toilet sink faucet shower bathtub fridge freezer stove microwave dishwasher laundry dryer carpet curtain ceiling furniture sofa couch mattress pillow wallpaper chimney lawn mower gardening roses ants roaches mice termites plumber
	cat cats kitten puppy cow sheep pig hamster parrot veterinarian vaccine vaccines vaccination
	doctor dentist tooth teeth medicine aspirin pill pills flu fever headache cough allergy pregnant surgery hospital cancer disease symptom symptoms therapy
	mortgage tax taxes stock stocks invest investing dividend pension salary wage wages job jobs resume interview landlord tenant divorce lawyer lawsuit passport visa euro dollar bitcoin currency population
	school college university homework essay teacher student exam math algebra geometry history grammar spell spelling translate spanish french german latin poem poems poetry novel book books author writer
	computer laptop printer password email website wifi software python javascript telephone iphone tablet keyboard subscription browser
	movie movies film actor actress song songs music guitar piano violin drum concert album band joke jokes game games chess poker cards lottery football baseball basketball soccer hockey tennis olympics bowl team coach
	fillet leader knot knots fluoro fluorocarbon crankbait bait baits worms minnows nightcrawlers
	president election vote votes congress senator minister king queen war revolution empire religion god ghost ghosts heaven universe planet planets moon galaxy earth dinosaur dinosaurs evolution
	airport airline flight flights hotel hotels train trains subway taxi bus bicycle bike motorcycle highway mountain desert london paris chicago denver tokyo china japan france germany
	wedding birthday christmas halloween tuxedo necktie dress shirt shoe shoes sweater jeans haircut makeup perfume jewelry scarf knit knitting sewing
	babies toddler diaper girlfriend boyfriend marriage marry
	painting painted painter ceiling bricklayer bowl everest capital headlight
	haiku horoscope tomorrow news newspaper magazine television episode channel`

var elsewhereWords = sync.OnceValue(func() map[string]bool {
	m := map[string]bool{}
	for w := range strings.FieldsSeq(elsewhere) {
		m[w] = true
	}
	return m
})

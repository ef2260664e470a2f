package index

import (
	"slices"
	"strings"
	"sync"
)

// everyday lists words that ask for the same thing at a counter without being
// words of the trade (those are in package words). A word of a line finds the
// others of it, at a lower weight; one that stands in several lines finds all.
const everyday = `
	stolen steal steals stole theft thief
	kid kids child children son daughter
	swim swimmer swimming swam bather
	fast quick speed
	slow creep crawl
	near close distance far
	law legal illegal rule regulation federal required require allowed
	licence license register registration numbers permit
	cheap cheapest inexpensive low budget save money cost price afford
	expensive dear pricey costly
	worth pay
	buy purchase get order
	used old secondhand
	broken broke dead quit quits failed fail fails died dies die
	fix repair mend repaired
	ruin destroy damage harm hurt kill wreck spoil
	check test inspect measure
	measure gauge reading read
	connect hook join wire attach hooked connected
	bolt screw screws bolts fasten attach
	big large huge bigger larger stronger
	small little tiny smaller
	strong powerful enough
	quiet silent noise noisy loud
	scare spook
	clean wash rinse flush hose
	store storage winter stow
	cold freezing frozen freeze freezes frost winter ice
	hot warm heat overheat burning
	wet water
	safe dangerous danger safety risk hazard
	mistake wrong
	backward backwards reverse reversed
	replace change swap changing new
	switch change convert
	last lasts long hours
	empty flat drained drain dead
	full charged
	juice charge current power amps
	weigh weight heavy weighs pounds
	height high tall
	deep depth
	shallow skinny thin
	stay hold holding stays
	sure accurate exact certain confidence
	number numbers figure figures
	sticker label plate tag
	maker factory manufacturer builder
	spin spins turn turns
	shake shakes vibrate vibrates wobble
	drip leak leaking leaks
	lines static interference noise
	screen display graph
	pair two both dual double
	person people guy man
	front bow forward nose
	back stern rear aft
	install installed installing fit fitting mount
	carry bring take
	home back return
	fall fell overboard
	night dark
	difference compare versus better`

// alike maps a stem to the stems that ask for the same.
var alike = sync.OnceValue(func() map[string][]string {
	m := map[string][]string{}
	for line := range strings.Lines(everyday) {
		var group []string
		for _, w := range strings.Fields(line) {
			if s := stemOf(w); !slices.Contains(group, s) {
				group = append(group, s)
			}
		}
		for _, s := range group {
			for _, other := range group {
				if other != s && !slices.Contains(m[s], other) {
					m[s] = append(m[s], other)
				}
			}
		}
	}
	return m
})

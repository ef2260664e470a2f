package index

import (
	"iter"
	"strings"
	"sync"
)

// meant says what people mean who lack the trade's word for a part, come from
// where another English is spoken, or put a trouble into a figure of speech: the
// notes' words, then what is said for them, words or phrases. A question alone is
// read by it, and what it gives weighs less than what was said outright.
const meant = `
shaft: pole; stick; stem; stalk; pipe; long tube; long bit; stick part; pole part; metal pole; downtube; down tube; rod that goes down; leg that goes in the water
lower unit: pod; bullet; bulb; underwater part; underwater bit; part under water; bit under water; part in the water; bottom bit; bottom part; motor part at the bottom; fat part at the bottom
prop: spinny thing; spinny bit; spinner; fan; fan thing; whirly thing; twirly thing; screw thing; spinning part; spinning bit; blades; thing that spins; bit that spins; the spinning
head: box on top; top box; top part; top bit; upper part
bow front: pointy end; sharp end; pointed end; snout; pointy bit; up forward; prow; up at the sharp end; front bit
transom stern back: blunt end; flat end; square end; rear end; backside; arse end; tail end; the bum; aft end; stern end
tiller handle: stick handle; broom handle; steering stick; hand stick; steering arm; the arm you steer with
pedal foot: stomp; stomping; stamp; stamping; foot thing; foot switch; foot button; treadle; foot board; floor pedal
remote: zapper; clicker; key ring thing; gadget in my hand; little box with buttons; buttons round my neck
battery: accumulator; power brick; juice box; brick; power pack; cell pack; big square thing; powerpack
charger charge: trickle charger; charging box; juice it; top it up; top up; topping up; plug into the wall; mains; wall plug; wall socket
wire cable: flex; cord; fat lead; power lead; electric cord; wiring loom; strands
wire gauge: fat wire; thick wire; thin wire; thickness; skinny wire; how fat; how thick; square mil; mm2; square millimetres; cross section; diameter
breaker fuse: cut out; cutout; trip switch; trip; safety switch; reset button; circuit thing; thermal thing; isolator; rcd; fuse thing; fuse thingy; fuse box
trips breaker: pops out; keeps popping; throws the switch; keeps cutting; cuts out after; kicks off
plug: socket; receptacle; connection up front; hookup; coupling; power point
terminals lug crimp: eyelet; ring thing; ring terminal; ring on the end; tag; end piece; cable end; shoe; wire ends
post: nipple; knob on the battery; stud; pole of the battery
screen sonar fish finder: tv; monitor; sounder; echo sounder; fish radar; fish tv; plotter; display; depth sounder; fish thing
position hold gps: gubbins that holds; satellite; satellites; sat nav; satnav; pins you; pin you; nails you; glue; glues; parks itself; parks you; robot anchor; virtual anchor; invisible anchor; stays where it is; sit in one place; keep us here; keep me here; keeps me here; keep still; holds still; stay still; sits still; hover; hovering
heading hold straight: bow pointed; point at; aim at; aimed at; beeline; dead straight; goes crooked; wanders off line; steers for me; cruise control; self steering
contour: depth line; metre line; fathom line; edge of the shelf
anode zinc: gray lump; lump of metal; metal lump; soft metal; metal blob; slug of metal
corrosion: fuzz on; white stuff; green stuff; crusty; crust; eaten; eating; being eaten; nibbled; holes; dissolving; chewed
stray current electrolysis: electricity in the water; leaking electricity; current in the water; zapped; tingle
salt water: sea; seaside; brine; the coast; at the coast; sea fishing; in the sea; saltie; bay water; beach holiday
brackish: bit salty; half salty; river mouth; where the river meets the sea; creek with a tide; tidal pond; backwater by the sea
loaded weight: all in; all up; everything in her; everything in it; total load; displaces; displacement; tips the scales; what she weighs; what it weighs; how heavy she is
dry weight hull: bare boat; empty boat; bare shell; just the shell; no papers; lost the papers
scale: weighbridge; weigh bridge; weigh station; scales at the; truck stop scale
capacity plate: badge; little plate; sticker on the boat; max load; legal load; too many of us; too many in; overweight; over weight; overloaded; how many can i carry; legally carry; too much in the boat; allowed aboard; leave somebody behind; room for one more
trim: ploughs; plows; digs in; nose down; nose dive; dips; sits funny; lopsided; tips forward; down by the head; sits crooked; leans; list to one side
thrust: oomph; grunt; shove; poke; how strong; muscle; strength; kick; how powerful; beefy; punch; newton; newtons; kilos of push
thrust rule thumb: rule to go by; how do you work it out; sum for it; who is right; whos right; per tonne; per ton; who do i believe; everyone says something different; formula
light boats: feather weight; lightweight boat; tiny boat; wee boat; little boat; itty bitty; weighs nothing; weighs next to nothing
tip roll capsize: flip; flips; flip over; tip over; go over; roll over; tippy; keel over; turn turtle; capsizes; dunk us; dump us in
wind: breeze; gale; blowy; blowing; blows; puff; draught; when it blows; gusty; gets pushed about; shoved about; pushed off; blown about; blown off; weather; howling; blustery
current river: stream; flow; drag of the river; upriver; up river; downriver; upstream; downstream; swift water; fast water; running river; flood
weir dam: spillway; lock gate; dam wall; tail race; sluice; waterfall
waves chop: bumpy; lumpy; choppy; rough; swell; rollers; whitecaps; white caps; white horses; bouncing; bobbing; bobs; bounces; up and down; wake; wash from; galloping; bucking; bucks
too rough head in: turn round; turning round; turn back; turning back; turn around; call it a day; go home; run for shore; get off the water; getting off the water; too lumpy; getting hairy; hairy; sketchy; dicey
ventilation sucks air: slurp; slurping; slurps; glug; glugs; gulp; gargle; gargles; gargling; burp; burps; burping; cough; wheeze; whee; wheee; screams; screaming; shrieks; howls; whines; revs up; spins out; blows bubbles; frothing; froths; foam; loses grip; loses its grip; bites air; air bubbles
cavitation: pitted; pits in the blades; pockmarked; pitting
shaft short: comes up; pops up; pops out; out of the water; jumps out; leaves the water; too high; not deep enough; dont reach; doesnt reach; hanging out
measure bow height: tape measure; how high the bow; how high is the front; height of the front; high off the water; off the water; how far down; from the deck; up from the water
trailer: barn; on the drive; driveway; in the garage; on dry land; on land; in the yard; not in the water
transom mount clamp: clamps on; clip on; screw on; comes off; take off again; on and off; hang on the back; hangs on the back; clip it on; g clamp; borrowed boat; rented boat; hired boat; hire boat; rental
bow mount: pulls from the front; pull from the front; tow from the front; push from; pulled or pushed; pull or push
folding arm pivot: folds; fold up; hinge; elbow; gate; swings up; flip up; lifts up; tilts up
mount deck: space up front; little deck; no room; tight up front; lid; hatch; in the way
stow deploy mount stuck: jammed; jams; stuck; seized; wont come up; wont go down; wont lift; cant get it up; stuck down; stuck up; bind; binds; binding; hung up
latch lock collar: slips down; slides; wont stay down; wont stay up; wont lock; lets go; pops loose; kicks up; jumps up; kick back
bracket kayak: hang it; paddle boat; paddle craft; paddling boat; sit inside; sit on; plastic boat; rotomould
through bolts backing plate: screws into; plywood; ply; underneath; rip out; ripped out; tear out; pull out; big washers; wood screws; coach screws; self tappers; anchor it to the deck; fix it to
before drill: drilling; first hole; holes in my boat; holes in a brand; measure twice; scared to drill
towing strap trailer: flapping; behind the van; behind the truck; on the motorway; motorway; on the road; bounces behind; flops; flopping; rattles on the road; hauling it; drag it behind
theft stolen: nick; nicked; pinch; pinched; pinching; half inched; swiped; walked off; robbed; thieving; thieves; lifted it; ripped off the boat; tea leaf; run off with; wander off
knee foot pedal: ankle; hip; leg; bad leg; gammy; gouty; arthritic; arthritis; cant stand; cannot stand; sore foot; wheelchair; one leg
cable steer: strings; string; steel rope; bowden; mechanical; pull wires; connected by a wire
reverse backward: go back; goes back; back up; backing; backs up; astern; other way; wrong way; in reverse; backwards
tiller reach lean: sore back; bad back; backache; reach behind; twisted round; lean back; stretching back; elbow ache
lost remote: in the drink; in the lake; overboard; at the bottom of the lake; went for a swim; fell in; drowned; swallowed; lost it; wont pair; wont connect
five speed: clicks; click; notches; notch; detents; steps; clunks; gears; settings; five clicks; numbered positions
variable speed: smooth; smoothly; like a dimmer; dimmer; slider; twist; any speed; infinitely; rheostat
lowest speed slow: crawl; snail; dead slow; slowest; too quick; too fast even; tick over; creep; dawdle; walking pace; inching
brushes brushless: carbon; carbons; coals; sparks inside; permanent magnet; magnets; without brushes
worth money: dosh; brass; quid; pounds sterling; the extra; splash out; shell out; fork out; cough up; worth it; bother; stump up; overkill; waste on me; daft
cheap budget: skint; broke; tight; tight fisted; scrooge; penny; pennies; poor; pensioner; shoestring; bargain; cheap as chips; cheapo; hard up; on a dime; budget
save money: skimp; cut corners; cheap out; go cheap; come back to bite; penny wise; false economy; scrimp
quiet noise: scatter; scatters; bolt; clear off; clears off; swim away; disappear; skittish; spook; spooks; hear me coming; racket; din; loud; hum; humming; stealth; stealthy; silent
noise screen interference: snow; rain on the screen; fuzzy; fuzz; garbage; junk; stripes; zigzag; zig zag; clutter; hash; lines; static; ghost; flicker; flickers; flickering; goes mad; picture goes; crackle
battery flat: conks out; conked out; gives up; gave up; packed in; packs in; packed up; runs out; ran out; goes flat; empties; empty; drains; dies; died; kaput; knackered; pooped; out of puff; out of juice; runs down; peters out; fades; fizzles; craps out; bonks
stranded getting home: oars out; get out the oars; paddle home; paddled home; rowed home; row home; row back; paddle back; paddling back; miles from; miles out; middle of the lake; towed in; tow me; towed me; stuck out; wont get home; walk home; adrift
run time hours: how many hours; hours out of; how long do i get; how long have i; how long before; time on the water; what time do i get; how long on the water
day fishing average: sunup; sundown; sun up; sun down; dawn; dusk; all day; whole day; day out; from morning; average joe; normal person; typical; ordinary day; normal day; gets through; get through; chews through; goes through; gobbles; guzzles; drinks; eats
half empty depth discharge: sucked dry; run it flat; run flat; dead flat; half way; halfway; down to nothing; drain it; to the bottom; to zero; last drop; stop at; rock bottom
label rating battery: sticker says; printed; on the box; claims; claimed; advertised; had me; conned; fibbing; fibs; lying; lies; swizz; short changed; swindled; on the tin
reserve minutes: mins at; minutes printed; minutes on the label
peukert: drains quicker when; worse when pulled hard
years battery lasts: seasons; summers; before i buy another; life of; lifetime; how many winters; grow old; wears out; how many seasons; years out of; seasons out of; replace every
kills battery ruin: murder; murders; murdering; wreck; wrecks; kill; kills; killing; keep killing; buggered; trashed; ruined; bad habits; neglect; slaughter; eat batteries; go through batteries
battery tray hold down strap: sliding; slides across; slid; loose in; rolling about; skates; skating; fell over; tipped; bounces about; flew; bungee; ratchet
fuel tank near: jerrycan; jerry can; petrol can; gas can; petrol tank; next to the petrol; by the fuel; beside the tank; gasoline
cold: frost; frosty; freezing; icy; nippy; arctic; winter; brass monkeys; minus; subzero; sub zero; january; february; perishing; parky; baltic
freeze burst battery: burst; split; cracked; frozen solid; block of ice; swelled; popped
part throttle half dial: half dial; half way round; turned down; turned it down; turned to; halfway round; at half; twice as long; half speed; easy on the; feather it; feathering
mean throttle full bursts: floor it; floored; flooring it; foot down; pedal to the metal; wide open; flat out; full chat; full belt; full tilt; full whack; full beans; balls out; full bore; hammer; hammering; gun it; gunning; let rip; nail it; give it some
gauge monitor left: petrol gauge; fuel gauge; how much is left; whats left; guessing; guess how much; tell how full; percentage; how full; bar graph
slower farther range: easy does it; gently; take it easy; go gentle; slowly does it; how far; get farther; goes further; go further; further on; stretch; eke
way home reserve: get back; make it back; get home; turn for home; hold back; keep something; point of no return
used motor secondhand: second hand; selling his; old one; off the internet; classified; online ad; garage sale; boot sale; car boot; pawn; flea market; hand me down; pre loved; private sale; bloke selling; cash for; ebay
already have reuse: last boat; old boat; chuck; bin; ditch; keep or; toss; throw out; recycle; salvage; hand down; still got; got lying around; lying around; left over from
new first run: out of the box; fresh out of; brand new; unboxed; first time; never had; just bought; just arrived; unpacked; maiden
calibrate compass: spin in circles; spin circles; turn in circles; circle round; figure eights; drive in circles; do a circle; donuts; spin round; north
drifts off position: ends up; wanders; wander; not where; off the mark; yards away; feet away; cannot hold; cant hold; dances; dancing; chases its tail; loops
wont steer steering: wont turn; stays put when i; ignores; ignore me; wont go left; wont go right; only goes one way; no steering; wheel; head wont move
shakes vibration: rattles; judder; judders; juddering; shudder; wobbles; wobbly; rattle my; teeth; jackhammer; like a washing machine; shimmy; rumbles; thumps; knocks; buzzing in my feet
hit stump: bumped; whacked; clouted; smacked; clobbered; struck; ran over; log; rock; boulder; ran into; wrapped it round
water inside milky: milky; goo; gunge; gunk; chocolate milk; dribbling; dribble; dribbles; seeps; weeping; weeps; leaking; mayonnaise; mayo; slime; emulsion; cream
does not last: used to get; used to go; used to last; half of what; barely makes; hardly makes; not what it was; nothing like it was; lunch; noon; by midday; elevenses
dead nothing happens: stone dead; not a peep; not a sausage; nowt; not a squeak; zilch; zip; nada; diddly; squat; no lights; lifeless; doornail; door nail; brick dead; dead as; no life; no sign of life; wont do a thing
stops then works again: cuts out; conks out then; comes back; rest a bit; after a rest; intermittent; on and off by itself; stop start; cuts in and out; goes off and on; hiccups
starts by itself: all by itself; on its own; own accord; ghost; haunted; possessed; poltergeist; mind of its own; nobody touching; nobody touched; runs away; ran off; took off; wont stop; wont shut off; wont switch off; running when
backward leads swapped: runs back; runs the wrong; goes the wrong way; pushes the wrong; red and black; black and red; wires swapped; mixed up; rewired; rewiring; rewire; hooked up wrong; opposite direction; pushes instead of pulls
spins no push: whirring; whirrs; whirs; whizzing; freewheels; free wheels; going nowhere; goes nowhere; no go; boat stays put; aint moving; wont budge; not budging; spins freely; slips on
weak slow: gutless; feeble; puny; pathetic; sluggish; sickly; limp; lethargic; asthmatic; no oomph; no guts; half hearted; cant pull; couldnt pull; wheezy; slow as; like treacle; like a snail; knackered old; tired
only top setting: only on five; only on top; five goes; low ones dead; high only; only flat out; all or nothing; one speed only; just the top; only works on high; only works on; nothing below; dead except
meter reading: poke; prod; multimeter; multi meter; voltmeter; volt meter; avo; avometer; test meter; tester; red probe; probes; measure volts
fishing line prop wrapped: mono; braid; fishing line; wrapped round; wound round; tangled; tangle; birdnest; bird nest; knotted round; string round; snarled; spaghetti; caught round; wrapped up
chipped prop blade: nick; nicks; chip; chunk out; bite out; bit missing; ding; dinged; gouge; dent; notch out of; bent blade
winter storage: put to bed; to bed; lay up; laid up; layup; tuck away; mothball; hibernate; over winter; put away; off season; out of season; store it; close season
rinse hose wash: hosepipe; hose pipe; garden hose; bucket of; wash down; sponge; rinse off; clean up; jet wash; scrub
spares tools carry: bits to bring; bring along; pack for; packing; kit bag; toolbox; tool kit; carry with me; just in case; emergency kit; backup bits; glovebox; glove box; parts to keep; parts aboard; keep aboard; repair kit; spare parts; bring extra
charger stuck red: red light; glowing red; still red; stays red; never green; wont go green; orange light; amber light; blinks; blinking; flashing; keeps going
charger will not begin: wont take; wont start charging; wont charge; clicks; refuses; not taking; takes nothing; puts nothing in; no charge going
rotten eggs gas: rotten egg; rotten eggs; stink; stinks; pong; smell; smells; reek; bubbling; fizzing; hissing; fumes
spark short wrench: spanner; adjustable; bang; big bang; flash; flashed; arc; arced; welded; sparks; fireworks; frazzled
overnight unattended fire: house fire; burn the house; catch fire; on all night; go to bed; left on; leave it on; asleep; while we sleep; unwatched
alternator engine charges: motor top it up; while we drive; between spots; off the engine; from the engine; on the move; underway; under way
solar panel generator: sun; sunshine; panel; photovoltaic; off the grid; off grid; no mains; cabin; camp; wind turbine; genny; genset; no electricity; no power
overnight charger amps: come morning; by morning; overnight; ready for morning; ready by; next day; back to full; quick charge; fast charge
one output each bank: one lead; one charger or; three leads; each its own; a charger each; daisy chain; daisy chained; all chained; strung together; chained together
chemistry profile: wrong charger; same charger; lead charger; ordinary charger; car charger; garage charger
new lithium instead lead: swap the lead; replace lead; replace the lead; upgrade; changeover; catches; pitfalls; drop in; drop in replacement
lithium protection cuts off: bms; quits with no warning; no warning; without warning; sudden; suddenly; shuts off; shuts down; just quits; drops dead
tray fit case size: fit in; fits in; taller; wider; tub; old box; same box; compartment; big enough for; footprint
series link: gang; ganged; gang together; hook together; string together; join two; join up; daisy; wire two; coupled; hook up two; make 24
parallel longer: doubling up; double up; for longer; last longer with two; side by side; pair for longer; two for time
never tap one battery: tapped; tap; tapping; off one of; off one; steal power; steal 12; pinch twelve; radio; stereo; pump; livewell; lights off
old and new batteries: brand new; years old; twin; its mate; mismatched; odd pair; mismatch; one newer; different ages; play nice; half a pair
deep cycle not car: out of a car; from a car; out of my truck; out of the car; car one; automotive; motor factors; lorry battery; tractor battery; lawn tractor; mower battery; motorbike; forklift; truck battery; van battery; pickup battery; jeep; starter; cranker
one battery enough 12 volts: stick with one; just one; single one; with one; only one battery; keep it simple
24 volts buys: more volts; higher volts; double the volts; what do the volts; go to 24; jump to 24
many batteries volts: string of; how many do the big; why so many
wire loses volts: loses some; lose on the way; lost on the way; drop along; too much loss; how much loss; gets lost; warm; hot wires; get warm; getting warm; heats up
wire kind welding: welding; speaker wire; house wire; extension lead; extension cord; lamp cord; jump leads; jump lead; battery leads; romex; hardware shop; hardware store; diy shop; leftover
run there and back: there and back; going and returning; both ways; round trip; out and back; return; one direction; single or double; just the length; boats length
protect run chafe: rubbing; rubs; chafe; chafing; chafed; raw; grommet; bulkhead; sharp edge; pinched; sags; clip it; clips; staples
breaker place near battery: where does it live; up by; at the back; where to put; back there; near which end; which end
breaker house: fuse board; consumer unit; household; house panel; from the house; domestic; light switch; kitchen
breaker law insurance: insurance; police; warden; copper; coppers; inspector; fined; fine me; ticket; in trouble; against the law; break the law; claim
plug melted: melty; melted; melting; burnt; burned; charred; browned; scorched; toasted; cooked; discoloured
crimp hammer: hammered; hammer; pliers; twisted on; twist; soldered; tape; taped; squash; squashed; rock; vice; bodged; bodge
swap new motor stronger faster: double size; double the size; twice the size; twice as big; bigger one; no quicker; no faster; not faster; quicker; barely faster; same speed; bought the big
top speed: how fast; how quick; km h; kmh; kph; kilometres an hour; knots; miles an hour; max speed; flat out speed; keep up; outrun
boat swings wind: swings round; swing about; pivots; pendulum; tail wags; wags; back end; spins round; swivels; yaws; yawing; fishtail; fishtails
anchor instead hold: carry an anchor; need an anchor; chuck the anchor; bin the anchor; leave the anchor; mud weight; without an anchor; ditch the anchor
small pond not worth: puddle; farm pond; duck pond; mill pond; pond; tiny lake; little lake; small water; pocket sized; lily pond; garden pond; park lake; dew pond; dam on the farm; dugout
registration numbers licence: rego; register; registered; registration; licence; plates; papers; tax it; title; tags
cut off link lanyard: lanyard; red cord; kill cord; killcord; dead mans; dead man; kill switch; cord on my wrist; clip to my vest
electric only: petrol banned; gas banned; banned; engines banned; prohibited; no petrol; no engines; forbidden; not allowed engines; no combustion; quiet lake; reservoir rules; council lake; drinking water lake; sanctuary
horsepower limit: hp max; max hp; hp limit; horse limit; 10 horse; sign says; over the limit; count as; counts as
lights night lookout: lamps; lamp; torch; lantern; headlamp; dusk; dark; after dark; at night; run us down; run over by; nearly hit; in the wrong; whose fault; right of way; give way; who gives way
life jackets: flotation; floatation; buoyancy aid; buoyancy; vest; vests; pfd; float coat; lifejacket; water wings; armbands; bairns; little ones; toddlers
cold water shock: fall in; go in; fell in; fall overboard; hypothermia; freezing water; icy water; in march; in april; swim for it; survive; survival; dunking
swim motor live: jump in; jump off; dive in; dive off; bathe; paddling; swim; swims; swimming; snorkel; splash about; cool off; take a dip; dip; plunge
pick up person: haul in; haul him; drag him in; get him back; fish him out; climb back; climb in; man overboard; get back in; heave; lift her in; falls in; falls overboard; falls out; fell out; goes overboard; went overboard
hands near prop: fingers; reach down; reached in; hand near; hand in; unclog by hand; cut myself; sliced; switch off; turn off first; what should be off
thunder lightning: rumbling; rumble; dark clouds; black clouds; thundery; bolt; flash in the sky; storm; electric storm; squall
manners room others: rude; etiquette; unwritten; code; manners; polite; courtesy; cut me off; too close; crowding; crowd me; parks; jumped my spot; swore; yobs
ramp: slipway; slip way; line up; launching; launch; back the trailer; hogging; yelling; boat ramp
two motors: each end; pair of motors; two of them; twin; twins; front and back; both ends; one each end; second one as well; tandem; second motor; another motor; extra motor; both motors
jon: duck boat; punt; scow; flat bottomed; flat bottom; barge bottom; pram; square nosed; flattie
pontoon: party boat; party barge; barge; floating patio; raft; deck on tubes; bbq boat; picnic boat; floating dock
inflatable: blow up; blowup; rubber; dinghy; rubber duck; dinghies; zodiac style; air boat; pump up; rib
sailboat: dayboat; day boat; yacht; mast; sails; sailing; sail; keel; sloop; boom; becalmed
bowrider runabout: ski boat; family boat; seats in the front; speedboat; speed boat; cuddy; sports boat; wakeboard; cruiser
flats skiff: stalking; poling; sight fishing; skinny water; bonefish; permit fishing; fly casting; wading depth; mudflat; mud flats
shallow water: clunks; hitting bottom; touches bottom; scrapes; scraping; grounding; aground; runs aground; knee deep; ankle deep; foot of water; inches of water; gravel bar; mud
bay boat: bay; inlet; centre console; tides; seabass; redfish
vee: great lakes; big water; v shaped; pointed bottom; deep boat; walleye boat; big lake; multi species
vertical jigging: straight up and down; up and down; spoon; over a hole; hover over; deep hole; jigs; under the boat; directly below; ice style
drifting: sideways; float along; go with the wind; let her drift; floating; slip along; broadside
guiding: passengers; paying; clients; customers; punters; for a living; for hire; professional; every day of the week; six days; business; skipper; sports for money; passengers; fares; hire out; hired; trips for money; paying guests
trolling: pull lures; pulling lures; drag lures; behind the boat; tow lures; towing lures; trawl; walking pace; planer; crankbaits behind
glossary trade words: what on earth; dont speak; jargon; in english; translate; lingo; meaning of; what do you call; what you call; newbie; never heard
what to ask: what do you want to know; what should i tell; tell you; information; what details; what info; what do i bring; before i come in
sure figures: how sure; sure about that; honest; certain; can i trust; trust it; trust these; trust your; pinch of salt; made up; gospel; reliable are; how good are; bet on; margin of error; guess or
electronics battery fish finder: separate battery; own battery; small battery; second little; share the battery; sounder battery
rough run stowed: crossing; at speed; pounding; blasting; planing; on the plane; full speed across; big run
forecast wind: weatherman; weather man; weather app; forecast; radio says; met office; apps; wind app
clock river speed measure: clock; stopwatch; time a stick; how fast the river; how fast is the river; measure the flow; orange peel; cork
fades moving: rolling; once we are; underway it; pulls hard tied; tied to the dock; tied up; bollard; at the dock but
weeds thick: salad; jungle; lettuce; lilies; carpet; soup; thick as; water garden; kelp; duckweed; slop; matted; grass
gps tracks who needs: gizmo; gizmos; bells; whistles; fancy; frills; toys; gadgets; smart features; worth the gadget
kills battery ruin: abuse; mistreat; maltreat; spoil; destroy; deplete; cook; shorten
motor: machine; unit; engine thing; device; apparatus; contraption; propulsion
plug: adaptor; adapter; coupler; jack; fitting
enough: adequate; ample; sufficient; plenty; suffice; cope
too small enough: insufficient; inadequate; undersized; underpowered; puny; overstretched
near close distance: adjacent; nearby; vicinity; closer; beside; next to; proximity
safe danger: afraid; scared; dare; hazard; reckless; perilous; unsafe; risky; frightened; nervous; wary; lethal
estimate rough: approximate; approx; roughly; predict; guesstimate; guess
strap secure tie: belt; leash; rope; lash; tether; chain; secure; fasten; anchor down
hit stump prop: branch; obstacle; snag; crash; collide; collision; smash; thud; ram; boulder
broken prop blade: shatter; smash; snap; jagged; chunk; bitten; cracked; splinter
heavy weight: bulky; burden; hefty; weighty; ballast; lug; backbreaking
weed line wrapped prop: clog; entangle; choke; thread; string; untangle; snarl; snag
draws current amps: consume; consumption; demand; thirsty; devour; hungry; guzzle; burn; appetite
wet water inside: damp; moist; soak; soggy; waterlogged; drown; flood; submerge; seep; condensation
corrosion: decay; erode; crumble; deposit; oxidise; oxidize; tarnish; flake; pitted; rot; rotten; verdigris
fault test find: diagnose; diagnosis; defect; faulty; malfunction; symptom; troubleshoot; glitch; problem with
fault dead nothing: collapse; fail; failure; bust; unresponsive; inert; silent; lifeless; kaput
weak slow: lag; limp; stutter; hesitate; feeble; struggle; labour; labor; sluggish; drag
remove take off plate: detach; removable; demount; unhook; unbolt; dismount; quick release
old battery worn: deteriorate; expire; age; worn; tired; elderly; past it; decline
light night lights: dim; visible; visibility; fog; misty; mist; daylight; nightfall; invisible
swollen bulging battery: swell; swollen; expand; bulge; distend; balloon; bloated
wanders position: erratic; unreliable; random; unsteady; hunt; hunting; wander; stray; roam; fidget; restless
rules banned legal: forbid; forbidden; permit; permitted; lawful; outlaw; restrict; restriction; regulation; obligatory; mandatory; compulsory; authority; enforce; penalty; licence
over limit capacity: exceed; overload; excess; surplus; sink; swamp; sunk; overcrowd; crowded; passengers
longer extension shaft: extend; extension; lengthen; elongate
how often check: frequent; frequency; regular; yearly; annual; weekly; periodic; routine; interval; monthly
friction steering stiff: friction; stiff; stubborn; jerk; jerky; sticky; seize
slow crawl: gentle; gently; leisurely; idle; tickover; dawdle; unhurried; meander
beginner first: newcomer; novice; inexperienced; newbie; learner; amateur; clueless; ignorant; greenhorn
weekend angler few days: hobby; occasional; rarely; seldom; casual; infrequent; pastime; holiday
noise loud: groan; moan; roar; screech; squeak; grind; horrible; racket; rumble; whine; drone; squeal; clatter
quiet: mute; muffle; whisper; hush; discreet; stealthy; silence
stops halt: halt; stall; pause; cease; quit; abort; shutdown; cut off
stops then works again: resume; recover; intermittent; revive; restart; on off; temporary
range trip far: journey; mileage; travel; voyage; excursion; expedition; tour; destination; outing; crossing
last longer: prolong; preserve; stamina; endure; endurance; lifespan; economise; eke out; stretch
steering answer: respond; obey; react; response; unresponsive; ignore
stow fold: retract; retractable; fold; tuck; collapse; collapsible
backing plate bolts: reinforce; strengthen; sturdy; brace; solid; anchorage; rigid; flimsy
fix repair: remedy; overhaul; rectify; restore; cure; refurbish; renovate; mend; patch; bodge
replace: renew; substitute; swap; upgrade; exchange
tip roll over: unstable; instability; stable; stability; wobbly; topple; overturn; roll; lurch; tippy; balance
lean trim uneven: uneven; lopsided; unbalanced; level; squat; list; heel; nose heavy; stern heavy
disabled steering remote: disabled; handicap; handicapped; disability; limb; arthritis; frail; pensioner; elderly; ache
inflatable tube: puncture; patch; burst; deflate; inflate; leak air
joint crimp lug: splice; connection; connector; join; terminal; bond; joint
loose: slack; sloppy; play; rattle; loosen; wiggle; undone; wobble
bent shaft: warp; bend; crooked; buckle; bowed; kinked; twisted
theft stolen: snatch; thief; burglar; robber; crook; vandal; security; alarm; padlock; tracker
borrow: lend; loan; borrow; share
hold steady: stationary; motionless; steady; still; immobile; static position; fixed; stay in
speed fast: velocity; pace; accelerate; acceleration; zoom; rapidly; brisk; nippy
estimate accurate: precise; precision; accurate; exact; reliable; trustworthy; tolerance; valid; believe; verify; convince
wiring diagram: diagram; schematic; drawing; layout; sketch
spill acid: spill; leak acid; liquid; corrosive; splash; burn skin; fluid
spark ignite gas: ignite; ignition; explode; explosion; explosive; flammable; flame; smoker; cigarette; toxic; poisonous
electric shock water: shock; electrocute; electrocuted; tingle; zap; shocking
cut shaft: shorten; trim; modify; modification; saw; hacksaw; chop off; alter
cheap budget: cheaply; economical; affordable; discount; thrifty; frugal; modest; poverty; broke; bargain; wealthy; payday
used motor: vintage; antique; previous; second owner; auction; classified; pre owned; reconditioned; seller; dealer
shallow: wade; waist; ankle; puddle; silt; sandbank; shoal; riverbed; seabed; sand
rough waves: surf; turbulence; turbulent; choppy; stormy; ripple; slosh; jolt; pitch; heave
harbour dock berth: harbour; harbor; jetty; berth; mooring; quay; marina; pontoon dock; wharf
storm thunder: lightning; hail; tempest; cloud; clouds; squall; gale; blizzard; electric storm
trailer road: trolley; railway; lorry; caravan; rv; camper; towbar; tow bar; carry on the roof; roof rack
cold: ice; icy; winter; freeze; frozen; thaw; snow; arctic; chilly
lookout traffic: traffic; ferry; collision; hooter; horn; bell; overtaking; starboard; port side
two ends unequal: unequal; mismatch; different; mixture; odd; combine
seat stand pedal: chair; stool; cushion; standing; posture; pedestal
sonar camera screen: camera; scan; scanner; imaging; picture; viewer; app; tablet; phone
guide electrician professional: professional; expert; specialist; technician; mechanic; electrician; workshop
electrician wiring myself: diy; do it myself; amateur; by myself; unqualified
best choice: optimal; optimum; ideal; perfect; recommend; recommendation; suggest; advise; advice; excellent; favourite; favorite
smooth start jerk speed: jerk; jump; lurch; surge; snatch; jolt
voltage surges: fluctuate; fluctuation; surge; spike; dip; brownout; flicker
grease lubricate: lubricate; lubrication; oil; grease; squeak; squeaky; wax
how many people: crew; passenger; party; group of; gang; mob; team
wire run along: underneath; gutter; conduit; trunking; channel; route; underground; bulkhead; carpet
warranty: guarantee; refund; warrantied; return it; certificate; receipt; invoice
reserve spare: backup; emergency; contingency; standby; plan b`

// idle is what is said along the way and asks for nothing: who else was there,
// how the talker feels about it, and how a story is told.
const idle = `
	plain english; honestly; long story short; to cut a long story short; short story; so to speak;
	every single time; blessed; bloody; bleeding; blooming; flipping heck; flaming; dang; darn; damn; durn; heck; hell; crikey; blimey; strewth; cripes; gosh; lord; jeez;
	bloke; blokes; fella; fellas; fellow; feller; lad; lads; lass; lady; chap; chaps; dude; pal; cobber; sir; maam; gentleman; gents; kid brother; youngster; old timer; old boy; old man;
	mate; mates; missus; the missus; the wife; my wife; wife; husband; hubby; hubbie; boyfriend; girlfriend; fiancee; in laws; mother in law; father in law; brother in law; sister in law; son in law;
	uncle; aunt; auntie; cousin; nephew; niece; dad; daddy; pa; papa; pop; father; mum; mom; mother; ma; grandpa; grandad; granddad; gramps; grandma; granny; nan; brother; sister; late uncle;
	neighbour; neighbor; neighbours; next door; over the road; down the road; down the pub; at the pub; at work; my boss; colleague; workmate; roommate; landlord;
	lovely; gorgeous; beautiful; nice and; grand; smashing; brilliant; cheers; ta; ta very much; much obliged; appreciate it; thanks a million; please and thank you; greetings; good day; good morning; gday; howdy; yo; dear;
	what gives; so what; whats up with that; whats the deal; whats the story; what the; any ideas; any thoughts; thoughts; huh; eh; innit; right; yeah; yep; nope; nah; aye; och; um; uh; erm; well; anyway; anyhow; anyways; btw; lol; haha; fwiw; imo; tbh; asap; pls; plz; thx;
	pulling my leg; having me on; taking the mickey; is he right; is she right; am i right; am i wrong; am i crazy; am i mad; am i daft; doing something wrong; something wrong; did i do something wrong; what did i do; what am i doing wrong;
	talk me through it; walk me through it; spell it out; help me out; give me a hand; a hint; a clue; havent a clue; no clue; no idea; not a clue; dunno; beats me; search me; for the life of me;
	something terrible; something fierce; like crazy; like mad; like anything; no end; to bits; a treat; dead easy; proper; right proper; ever so; kinda; sorta; pretty much; more or less; give or take; at all; whatsoever; for some reason; all of a sudden; out of nowhere; out of the blue;
	second saturday; saturday; sunday; monday; tuesday; wednesday; thursday; friday; last week; last weekend; last month; yesterday; tomorrow; the other day; other day; once upon a time; one time; nowadays; these days; recently; lately; meanwhile; suddenly; eventually; finally;
	bought; contraption; thingamajig; thingamabob; thingy; thingie; doohickey; doodad; doodah; gizmo; gubbins; whatsit; whatchamacallit; wotsit; gadget; gadgets; widget; jobby; beastie; critter; baby; blighter; bugger; sucker; bad boy; wee; little; yonder; reckon; figure; figured; fixing to; fixin; yall; ya; yer; youse; wanna; gotta; lemme; gimme; betcha`

// phrases are listed sayings, found by the hash of their first word. They are cut
// apart no further than that, for a program that answers one question looks up a
// dozen of them; a plain table takes a quarter of the room of a map.
type phrases struct {
	list    []phrase
	buckets [1024]struct{ first, last int16 } // counted from 1; 0 for none
}

// phrase is one saying with the line's own words, "" where it has none.
type phrase struct {
	said, notes string
	next        int16 // the phrase of this bucket that was listed next
}

func (p *phrases) add(list, notes string) {
	for said := range strings.SplitSeq(list, ";") {
		if said = strings.TrimSpace(said); said == "" {
			continue
		}
		first, _, _ := strings.Cut(said, " ")
		p.list = append(p.list, phrase{said: said, notes: notes})
		b, n := &p.buckets[bucket(first)], int16(len(p.list))
		if b.first == 0 {
			b.first = n
		} else {
			p.list[b.last-1].next = n
		}
		b.last = n
	}
}

// from gives the phrases that may begin with a word, in the order of the list.
func (p *phrases) from(word string) iter.Seq[*phrase] {
	return func(yield func(*phrase) bool) {
		for i := p.buckets[bucket(word)].first; i > 0; i = p.list[i-1].next {
			if !yield(&p.list[i-1]) {
				return
			}
		}
	}
}

// bucket is the hash FNV-1a, cut to the number of buckets.
func bucket(word string) uint32 {
	h := uint32(2166136261)
	for i := 0; i < len(word); i++ {
		h = (h ^ uint32(word[i])) * 16777619
	}
	return h % uint32(len(phrases{}.buckets))
}

var idlePhrases = sync.OnceValue(func() *phrases {
	p := &phrases{list: make([]phrase, 0, strings.Count(idle, ";")+1)}
	p.add(idle, "")
	return p
})

var meantPhrases = sync.OnceValue(func() *phrases {
	p := &phrases{list: make([]phrase, 0, strings.Count(meant, ";")+strings.Count(meant, ":"))}
	for line := range strings.Lines(meant) {
		if notes, list, ok := strings.Cut(line, ": "); ok {
			p.add(list, notes)
		}
	}
	return p
})

// idleSpan is the number of words, from the first on, that ask for nothing.
func idleSpan(text []word) int {
	n := 0
	for p := range idlePhrases().from(text[0].text) {
		n = max(n, p.span(text[0].text, text[1:]))
	}
	return n
}

// meantBy gives the longest phrase that begins a text and is listed in meant, by
// its number of words, with the stems of what may be meant by it.
func meantBy(text []word) (span int, meanings [][]string) {
	for form := range forms(text[0].text) {
		if span, meanings = meantAs(form, text[1:]); span > 0 {
			break
		}
	}
	return span, meanings
}

// forms gives a word and what it may be a form of, with the commoner endings of
// English taken off: "snapped" is looked up as "snap", "spliced" as "splice".
func forms(word string) iter.Seq[string] {
	return func(yield func(string) bool) {
		if !yield(word) {
			return
		}
		for _, end := range []string{"s", "es", "d", "ed", "ing", "ly", "y"} {
			base, ok := strings.CutSuffix(word, end)
			if !ok || len(base) < 3 {
				continue
			}
			last := len(base) - 1
			doubled := base[last] == base[last-1]
			if !yield(base) || end == "ing" && !yield(base+"e") || doubled && !yield(base[:last]) {
				return
			}
		}
	}
}

// meantAs is meantBy for a first word, or a form of it, and what follows.
func meantAs(first string, rest []word) (span int, meanings [][]string) {
	for p := range meantPhrases().from(first) {
		n := p.span(first, rest)
		if n == 0 || n < span {
			continue
		}
		if n > span {
			span, meanings = n, nil
		}
		var stems []string
		for w := range strings.FieldsSeq(p.notes) {
			if !stopWords()[w] {
				stems = append(stems, stemOf(w))
			}
		}
		meanings = append(meanings, stems)
	}
	return span, meanings
}

// span is the number of words of the phrase if a text begins with it, else 0.
func (p *phrase) span(first string, rest []word) int {
	said, more, _ := strings.Cut(p.said, " ")
	if said != first {
		return 0
	}
	n := 0
	for w := range strings.FieldsSeq(more) {
		if n == len(rest) || rest[n].text != w {
			return 0
		}
		n++
	}
	return n + 1
}

package meaning

import (
	"testing"

	"heronlake.example/ask/reasoner/card"
	"heronlake.example/ask/reasoner/read"
)

// talkCorpus is conversations: each turn with all the facts that stand after it.
var talkCorpus = [][]phrasing{
	{
		{"16 ft tin boat 1100 lb loaded two of us", "people.count 2; load.total 1100 lb; boat.length 16 ft; boat.material aluminum"},
		{"add one more guy", "people.count 3; boat.length 16 ft; boat.material aluminum"},
		{"actually make it just me and him again", "people.count 2; boat.length 16 ft; boat.material aluminum; load.total 1100 lb"},
		{"and 15 mph wind", "people.count 2; boat.length 16 ft; boat.material aluminum; load.total 1100 lb; wind.speed 15 mph"},
		{"windier, like 20", "people.count 2; boat.length 16 ft; boat.material aluminum; load.total 1100 lb; wind.speed 20 mph"},
		{"forget the wind", "people.count 2; boat.length 16 ft; boat.material aluminum; load.total 1100 lb"},
	},
	{
		{"bow to water 22 inches", "mount.height 22 in; mount.place bow"},
		{"its really 24", "mount.height 24 in; mount.place bow"},
		{"what if waves are 2 ft", "mount.height 24 in; mount.place bow; chop.height 2 ft"},
		{"is a 48 ok", "mount.height 24 in; mount.place bow; chop.height 2 ft; motor.shaft 48 in"},
	},
	{
		{"20 ft pontoon 2800 loaded, 6 people", "people.count 6; load.total 2800 lb; boat.length 20 ft; boat.hull pontoon"},
		{"two more people", "people.count 8; boat.length 20 ft; boat.hull pontoon"},
		{"four of them stay home", "people.count 4; boat.length 20 ft; boat.hull pontoon"},
		{"actually its 3000 loaded", "people.count 4; boat.length 20 ft; boat.hull pontoon; load.total 3000 lb"},
		{"make it salt water", "people.count 4; boat.length 20 ft; boat.hull pontoon; load.total 3000 lb; water.kind salt"},
		{"no it's fresh", "people.count 4; boat.length 20 ft; boat.hull pontoon; load.total 3000 lb; water.kind fresh"},
	},
	{
		{"36v 112 lb, three 100 ah lithium", "battery.capacity 100 Ah; motor.thrust 112 lbf; battery.count 3; motor.voltage 36 V; battery.chemistry lithium"},
		{"how long at 50%", "battery.capacity 100 Ah; motor.thrust 112 lbf; battery.count 3; motor.voltage 36 V; battery.chemistry lithium; use.throttle 0.5"},
		{"what about agm", "battery.capacity 100 Ah; motor.thrust 112 lbf; battery.count 3; motor.voltage 36 V; battery.chemistry agm; use.throttle 0.5"},
		{"back to lithium", "battery.capacity 100 Ah; motor.thrust 112 lbf; battery.count 3; motor.voltage 36 V; battery.chemistry lithium; use.throttle 0.5"},
		{"30 percent then", "battery.capacity 100 Ah; motor.thrust 112 lbf; battery.count 3; motor.voltage 36 V; battery.chemistry lithium; use.throttle 0.3"},
		{"and 120 ah", "battery.capacity 120 Ah; motor.thrust 112 lbf; battery.count 3; motor.voltage 36 V; battery.chemistry lithium; use.throttle 0.3"},
		{"how long to charge with 10 amps", "battery.capacity 120 Ah; motor.thrust 112 lbf; battery.count 3; motor.voltage 36 V; battery.chemistry lithium; use.throttle 0.3; charger.current 10 A"},
		{"i have 6 hours", "battery.capacity 120 Ah; motor.thrust 112 lbf; battery.count 3; motor.voltage 36 V; battery.chemistry lithium; use.throttle 0.3; charger.current 10 A; charge.hours 6 h"},
	},
	{
		{"17 ft deep v 1500 lb", "boat.length 17 ft; load.total 1500 lb; boat.hull deep-vee"},
		{"i meant 1700", "boat.length 17 ft; load.total 1700 lb; boat.hull deep-vee"},
		{"its 19 ft not 17", "boat.length 19 ft; load.total 1700 lb; boat.hull deep-vee"},
	},
	{
		{"14 ft jon, 600 lb", "boat.length 14 ft; load.total 600 lb; boat.hull jon"},
		{"my buddys boat is a 20 ft bay boat, 3200 lb", "boat.length 20 ft; load.total 3200 lb; boat.hull bay"},
		{"how fast would a 55 go on it", "boat.length 20 ft; load.total 3200 lb; boat.hull bay; motor.thrust 55 lbf"},
	},
	{
		{"14 ft canoe 400 lb total", "load.total 400 lb; boat.length 14 ft; boat.hull canoe"},
		{"new boat: 18 ft vee 1,800 loaded", "load.total 1800 lb; boat.length 18 ft; boat.hull vee"},
	},
	{
		{"jon 14 ft, plate says 700 lb", "load.plate 700 lb; boat.length 14 ft; boat.hull jon"},
		{"two of us at 200, 50 lb gear", "load.plate 700 lb; boat.length 14 ft; boat.hull jon; people.count 2; load.gear 50 lb; people.each 200 lb"},
		{"add a 55 lb battery", "load.plate 700 lb; boat.length 14 ft; boat.hull jon; people.count 2; load.gear 50 lb; people.each 200 lb"},
		{"what if we bring the kid, 80 lb", "load.plate 700 lb; boat.length 14 ft; boat.hull jon; people.count 3; load.gear 130 lb; people.each 200 lb"},
	},
	{
		{"want gps anchor, 17 ft vee, 1,600 lb", "boat.length 17 ft; load.total 1600 lb; boat.hull vee; want.position-hold true"},
		{"drop the gps", "boat.length 17 ft; load.total 1600 lb; boat.hull vee; want.position-hold false"},
		{"ok put the gps back", "boat.length 17 ft; load.total 1600 lb; boat.hull vee; want.position-hold true"},
		{"and a remote", "boat.length 17 ft; load.total 1600 lb; boat.hull vee; want.position-hold true; want.remote true"},
		{"no remote", "boat.length 17 ft; load.total 1600 lb; boat.hull vee; want.position-hold true; want.remote false"},
	},
	{
		{"15 ft tin boat, 900 lbs loaded with 2 of us", "people.count 2; load.total 900 lb; boat.length 15 ft; boat.material aluminum"},
		{"does a 45 do it", "people.count 2; load.total 900 lb; boat.length 15 ft; boat.material aluminum; motor.thrust 45 lbf"},
		{"what if it blows 20", "people.count 2; load.total 900 lb; boat.length 15 ft; boat.material aluminum; motor.thrust 45 lbf; wind.speed 20 mph"},
		{"ok and a 55 then", "people.count 2; load.total 900 lb; boat.length 15 ft; boat.material aluminum; motor.thrust 55 lbf; wind.speed 20 mph"},
		{"how long on a 100 ah lithium at half throttle", "people.count 2; load.total 900 lb; boat.length 15 ft; boat.material aluminum; motor.thrust 55 lbf; wind.speed 20 mph; battery.capacity 100 Ah; use.throttle 0.5; battery.chemistry lithium"},
		{"make that two batteries", "load.total 900 lb; boat.length 15 ft; boat.material aluminum; motor.thrust 55 lbf; wind.speed 20 mph; battery.capacity 100 Ah; use.throttle 0.5; battery.chemistry lithium; battery.count 2"},
		{"in parallel", "load.total 900 lb; boat.length 15 ft; boat.material aluminum; motor.thrust 55 lbf; wind.speed 20 mph; battery.capacity 100 Ah; use.throttle 0.5; battery.chemistry lithium; battery.count 2; battery.layout parallel"},
		{"and at 30 percent", "load.total 900 lb; boat.length 15 ft; boat.material aluminum; motor.thrust 55 lbf; wind.speed 20 mph; battery.capacity 100 Ah; use.throttle 0.3; battery.chemistry lithium; battery.count 2; battery.layout parallel"},
		{"never mind the batteries, what shaft? bow is 20 inches off the water", "load.total 900 lb; boat.length 15 ft; boat.material aluminum; motor.thrust 55 lbf; wind.speed 20 mph; battery.capacity 100 Ah; use.throttle 0.3; battery.chemistry lithium; battery.count 2; battery.layout parallel; mount.height 20 in; mount.place bow"},
		{"oh wait its 23", "load.total 900 lb; boat.length 15 ft; boat.material aluminum; motor.thrust 55 lbf; wind.speed 20 mph; battery.capacity 100 Ah; use.throttle 0.3; battery.chemistry lithium; battery.count 2; battery.layout parallel; mount.height 23 in; mount.place bow"},
	},
	{
		{"21 ft bay boat, 3500 lb loaded, salt", "load.total 3500 lb; boat.length 21 ft; boat.hull bay; water.kind salt"},
		{"15 to 20 mph wind most days", "load.total 3500 lb; boat.length 21 ft; boat.hull bay; water.kind salt; wind.speed 15..20 mph"},
		{"what does that come to", "load.total 3500 lb; boat.length 21 ft; boat.hull bay; water.kind salt; wind.speed 15..20 mph"},
		{"and if i only fish when its under 10", "load.total 3500 lb; boat.length 21 ft; boat.hull bay; water.kind salt; wind.speed ..10 mph"},
		{"2 foot chop too", "load.total 3500 lb; boat.length 21 ft; boat.hull bay; water.kind salt; wind.speed ..10 mph; chop.height 2 ft"},
		{"deck to water is 28", "load.total 3500 lb; boat.length 21 ft; boat.hull bay; water.kind salt; wind.speed ..10 mph; chop.height 2 ft; mount.height 28 in"},
		{"foot control, must have gps anchor", "load.total 3500 lb; boat.length 21 ft; boat.hull bay; water.kind salt; wind.speed ..10 mph; chop.height 2 ft; mount.height 28 in; motor.control foot-electric; want.position-hold true"},
		{"budget 2000", "load.total 3500 lb; boat.length 21 ft; boat.hull bay; water.kind salt; wind.speed ..10 mph; chop.height 2 ft; mount.height 28 in; motor.control foot-electric; want.position-hold true; money.budget 2000 USD"},
		{"actually 2500", "load.total 3500 lb; boat.length 21 ft; boat.hull bay; water.kind salt; wind.speed ..10 mph; chop.height 2 ft; mount.height 28 in; motor.control foot-electric; want.position-hold true; money.budget 2500 USD"},
		{"no gps then", "load.total 3500 lb; boat.length 21 ft; boat.hull bay; water.kind salt; wind.speed ..10 mph; chop.height 2 ft; mount.height 28 in; motor.control foot-electric; want.position-hold false; money.budget 2500 USD"},
	},
	{
		{"17 foot vee", "boat.length 17 ft; boat.hull vee"},
		{"1,500 lb", "boat.length 17 ft; boat.hull vee; load.total 1500 lb"},
		{"loaded", "boat.length 17 ft; boat.hull vee; load.total 1500 lb"},
		{"no i mean dry", "boat.length 17 ft; boat.hull vee; load.dry 1500 lb"},
		{"plus three guys at 190", "boat.length 17 ft; boat.hull vee; load.dry 1500 lb; people.count 3; people.each 190 lb"},
		{"and 100 lb of gear", "boat.length 17 ft; boat.hull vee; load.dry 1500 lb; people.count 3; people.each 190 lb; load.gear 100 lb"},
	},
	{
		{"how much thrust for a 2,000 lb boat", "load.total 2000 lb"},
		{"its loaded yes", "load.total 2000 lb"},
		{"18 ft aluminum", "load.total 2000 lb; boat.length 18 ft; boat.material aluminum"},
		{"windy", "load.total 2000 lb; boat.length 18 ft; boat.material aluminum; wind.speed 12..20 mph"},
		{"what about on a calm day", "load.total 2000 lb; boat.length 18 ft; boat.material aluminum; wind.speed 0..3.355 mph"},
	},
	{
		{"24v 80 lb, 20 ft of wire", "motor.thrust 80 lbf; wire.run 20 ft; motor.voltage 24 V"},
		{"50 amps", "motor.thrust 80 lbf; wire.run 20 ft; motor.voltage 24 V; motor.current 50 A"},
		{"whats the drop with 6 gauge", "motor.thrust 80 lbf; wire.run 20 ft; motor.voltage 24 V; motor.current 50 A; wire.gauge 6 AWG"},
		{"8 gauge?", "motor.thrust 80 lbf; wire.run 20 ft; motor.voltage 24 V; motor.current 50 A; wire.gauge 8 AWG"},
		{"and at 15 feet", "motor.thrust 80 lbf; wire.run 15 ft; motor.voltage 24 V; motor.current 50 A; wire.gauge 8 AWG"},
		{"what if i go 36 volt", "motor.thrust 80 lbf; wire.run 15 ft; motor.voltage 36 V; motor.current 50 A; wire.gauge 8 AWG"},
	},
	{
		{"12 ft kayak, 320 lb total", "load.total 320 lb; boat.length 12 ft; boat.hull kayak"},
		{"30 lb motor with a 50 ah lithium", "load.total 320 lb; boat.length 12 ft; boat.hull kayak; motor.thrust 30 lbf; battery.capacity 50 Ah; battery.chemistry lithium"},
		{"how far at 3 mph", "load.total 320 lb; boat.length 12 ft; boat.hull kayak; motor.thrust 30 lbf; battery.capacity 50 Ah; battery.chemistry lithium; use.speed 3 mph"},
		{"2 mph", "load.total 320 lb; boat.length 12 ft; boat.hull kayak; motor.thrust 30 lbf; battery.capacity 50 Ah; battery.chemistry lithium; use.speed 2 mph"},
		{"what about 100 ah", "load.total 320 lb; boat.length 12 ft; boat.hull kayak; motor.thrust 30 lbf; battery.capacity 100 Ah; battery.chemistry lithium; use.speed 2 mph"},
		{"how heavy is that", "load.total 320 lb; boat.length 12 ft; boat.hull kayak; motor.thrust 30 lbf; battery.capacity 100 Ah; battery.chemistry lithium; use.speed 2 mph"},
	},
	{
		{"20 ft bass boat 2400 loaded", "load.total 2400 lb; boat.length 20 ft; boat.hull bass"},
		{"same boat but fiberglass, 21 ft", "load.total 2400 lb; boat.length 21 ft; boat.hull bass; boat.material fiberglass"},
		{"same thing with 3 people", "load.total 2400 lb; boat.length 21 ft; boat.hull bass; boat.material fiberglass; people.count 3"},
		{"change it to 4 people", "boat.length 21 ft; boat.hull bass; boat.material fiberglass; people.count 4"},
		{"without the fourth guy", "boat.length 21 ft; boat.hull bass; boat.material fiberglass; people.count 3; load.total 2400 lb"},
	},
	{
		{"14 ft jon 650 total", "load.total 650 lb; boat.length 14 ft; boat.hull jon"},
		{"why so little", "load.total 650 lb; boat.length 14 ft; boat.hull jon"},
		{"is that enough for weeds", "load.total 650 lb; boat.length 14 ft; boat.hull jon; water.weeds true"},
		{"lots of weeds actually", "load.total 650 lb; boat.length 14 ft; boat.hull jon; water.weeds true"},
		{"ok no weeds", "load.total 650 lb; boat.length 14 ft; boat.hull jon; water.weeds false"},
		{"whats the best battery for that", "load.total 650 lb; boat.length 14 ft; boat.hull jon; water.weeds false"},
		{"group 27 or 31", "load.total 650 lb; boat.length 14 ft; boat.hull jon; water.weeds false"},
		{"go with the 31", "load.total 650 lb; boat.length 14 ft; boat.hull jon; water.weeds false; battery.group 31"},
	},
	{
		{"18 ft 1,700 lb loaded, river 3 mph", "load.total 1700 lb; current.speed 3 mph; boat.length 18 ft; water.kind fresh"},
		{"river's more like 4", "load.total 1700 lb; current.speed 4 mph; boat.length 18 ft; water.kind fresh"},
		{"and the wind is 10", "load.total 1700 lb; current.speed 4 mph; boat.length 18 ft; water.kind fresh; wind.speed 10 mph"},
		{"wind 10 to 15 i mean", "load.total 1700 lb; current.speed 4 mph; boat.length 18 ft; water.kind fresh; wind.speed 10..15 mph"},
		{"no wind", "load.total 1700 lb; current.speed 4 mph; boat.length 18 ft; water.kind fresh; wind.speed 0..3.355 mph"},
	},
	{
		{"20 foot center console, 3,800 loaded, bay water with 1 to 2 foot chop", "load.total 3800 lb; chop.height 1..2 ft; boat.length 20 ft; boat.console true"},
		{"how big a motor", "load.total 3800 lb; chop.height 1..2 ft; boat.length 20 ft; boat.console true"},
		{"will 24 volts do it or do i need 36", "load.total 3800 lb; chop.height 1..2 ft; boat.length 20 ft; boat.console true"},
		{"say 36", "load.total 3800 lb; chop.height 1..2 ft; boat.length 20 ft; boat.console true; motor.voltage 36 V"},
		{"deck is 26 inches up", "load.total 3800 lb; chop.height 1..2 ft; boat.length 20 ft; boat.console true; motor.voltage 36 V; mount.height 26 in"},
		{"how many batteries and how heavy", "load.total 3800 lb; chop.height 1..2 ft; boat.length 20 ft; boat.console true; motor.voltage 36 V; mount.height 26 in"},
		{"lithium?", "load.total 3800 lb; chop.height 1..2 ft; boat.length 20 ft; boat.console true; motor.voltage 36 V; mount.height 26 in; battery.chemistry lithium"},
		{"60 ah each", "load.total 3800 lb; chop.height 1..2 ft; boat.length 20 ft; boat.console true; motor.voltage 36 V; mount.height 26 in; battery.chemistry lithium; battery.capacity 60 Ah"},
		{"what charger", "load.total 3800 lb; chop.height 1..2 ft; boat.length 20 ft; boat.console true; motor.voltage 36 V; mount.height 26 in; battery.chemistry lithium; battery.capacity 60 Ah"},
		{"10 amps", "load.total 3800 lb; chop.height 1..2 ft; boat.length 20 ft; boat.console true; motor.voltage 36 V; mount.height 26 in; battery.chemistry lithium; battery.capacity 60 Ah; charger.current 10 A"},
	},
	{
		{"wife wants a pontoon motor. 22 ft, 8 people, 3,100 lb", "people.count 8; boat.length 22 ft; load.total 3100 lb; boat.hull pontoon"},
		{"cheap as possible", "people.count 8; boat.length 22 ft; load.total 3100 lb; boat.hull pontoon"},
		{"what if only 4 of us go", "people.count 4; boat.length 22 ft; boat.hull pontoon"},
		{"and no wind", "people.count 4; boat.length 22 ft; boat.hull pontoon; wind.speed 0..3.355 mph"},
	},
	{
		{"12v 55, group 29", "battery.group 29; motor.thrust 55 lbf; motor.voltage 12 V"},
		{"how long at 40%", "battery.group 29; motor.thrust 55 lbf; motor.voltage 12 V; use.throttle 0.4"},
		{"at 60", "battery.group 29; motor.thrust 55 lbf; motor.voltage 12 V; use.throttle 0.6"},
		{"and at full", "battery.group 29; motor.thrust 55 lbf; motor.voltage 12 V; use.throttle 1"},
		{"what wire, 12 feet", "battery.group 29; motor.thrust 55 lbf; motor.voltage 12 V; use.throttle 1; wire.run 12 ft"},
	},
	{
		{"i have 2 boats. 14 ft jon 600 lb and a 19 ft bass boat 2300 lb", "boat.length 14 ft; load.total 600 lb; boat.hull jon"},
		{"the jon first", "boat.length 14 ft; load.total 600 lb; boat.hull jon"},
	},
	{
		{"how long a shaft", ""},
		{"bow is 25 in off the water", "mount.height 25 in; mount.place bow"},
		{"pontoon", "mount.height 25 in; mount.place bow; boat.hull pontoon"},
		{"what about big waves, 3 ft", "mount.height 25 in; mount.place bow; boat.hull pontoon; chop.height 3 ft"},
		{"would 60 be overkill", "mount.height 25 in; mount.place bow; boat.hull pontoon; chop.height 3 ft; motor.shaft 60 in"},
	},
	{
		{"16 ft, 1,100 lb all in", "load.total 1100 lb; boat.length 16 ft"},
		{"12 volt or 24", "load.total 1100 lb; boat.length 16 ft"},
		{"12 then", "load.total 1100 lb; boat.length 16 ft; motor.voltage 12 V"},
		{"55", "load.total 1100 lb; boat.length 16 ft; motor.voltage 12 V; motor.thrust 55 lbf"},
		{"what battery for 6 hours", "load.total 1100 lb; boat.length 16 ft; motor.voltage 12 V; motor.thrust 55 lbf; use.hours 6 h"},
	},
	{
		{"20 ft bay, 3,300 lb", "boat.length 20 ft; load.total 3300 lb; boat.hull bay"},
		{"salt", "boat.length 20 ft; load.total 3300 lb; boat.hull bay; water.kind salt"},
		{"not salt, brackish", "boat.length 20 ft; load.total 3300 lb; boat.hull bay; water.kind brackish"},
		{"position hold please", "boat.length 20 ft; load.total 3300 lb; boat.hull bay; water.kind brackish; want.position-hold true"},
		{"never mind position hold", "boat.length 20 ft; load.total 3300 lb; boat.hull bay; water.kind brackish; want.position-hold false"},
	},
	{
		{"how much thrust for 1500 lb", "load.total 1500 lb"},
		{"sorry 1,550", "load.total 1550 lb"},
		{"make that 2,550", "load.total 2550 lb"},
		{"and add 300", "load.gear 300 lb"},
	},
	{
		{"19 ft fiberglass v hull, 2,300 lb with three of us, 12 mph breeze", "people.count 3; wind.speed 12 mph; load.total 2300 lb; boat.length 19 ft; boat.material fiberglass; boat.hull vee"},
		{"what about a fourth person", "people.count 4; wind.speed 12 mph; boat.length 19 ft; boat.material fiberglass; boat.hull vee"},
		{"no never mind, three", "people.count 3; wind.speed 12 mph; boat.length 19 ft; boat.material fiberglass; boat.hull vee; load.total 2300 lb"},
		{"gusting to 25 though", "people.count 3; wind.speed 16.25..25 mph; boat.length 19 ft; boat.material fiberglass; boat.hull vee; load.total 2300 lb"},
		{"would 36 volts make more sense", "people.count 3; wind.speed 16.25..25 mph; boat.length 19 ft; boat.material fiberglass; boat.hull vee; load.total 2300 lb"},
	},
	{
		{"15' jon, 800 lb all in, me and my kid", "people.count 2; load.total 800 lb; boat.length 15 ft; boat.hull jon"},
		{"my wife wants to come too", "people.count 3; boat.length 15 ft; boat.hull jon"},
		{"she stays home", "people.count 2; boat.length 15 ft; boat.hull jon; load.total 800 lb"},
		{"what if it's just me", "people.count 1; boat.length 15 ft; boat.hull jon"},
	},
	{
		{"transom to water 14 in, 13 ft inflatable. what length", "mount.height 14 in; boat.length 13 ft; mount.place transom; boat.hull inflatable"},
		{"how come", "mount.height 14 in; boat.length 13 ft; mount.place transom; boat.hull inflatable"},
		{"hang on i remeasured, 16", "mount.height 16 in; boat.length 13 ft; mount.place transom; boat.hull inflatable"},
		{"and if theres a foot of chop", "mount.height 16 in; boat.length 13 ft; mount.place transom; boat.hull inflatable; chop.height 1 ft"},
		{"is a 30 enough", "mount.height 16 in; boat.length 13 ft; mount.place transom; boat.hull inflatable; chop.height 1 ft; motor.shaft 30 in"},
	},
	{
		{"1 group 27 flooded, 55 lb 12v, 40% throttle, how many hours", "battery.group 27; use.throttle 0.4; battery.count 1; motor.thrust 55 lbf; motor.voltage 12 V; battery.chemistry flooded"},
		{"swap it for agm", "battery.group 27; use.throttle 0.4; battery.count 1; motor.thrust 55 lbf; motor.voltage 12 V; battery.chemistry agm"},
		{"what about going lithium 100 ah", "battery.group 27; use.throttle 0.4; battery.count 1; motor.thrust 55 lbf; motor.voltage 12 V; battery.chemistry lithium; battery.capacity 100 Ah"},
		{"nah back to flooded", "battery.group 27; use.throttle 0.4; battery.count 1; motor.thrust 55 lbf; motor.voltage 12 V; battery.chemistry flooded; battery.capacity 100 Ah"},
		{"on low, like 20%", "battery.group 27; use.throttle 0.2; battery.count 1; motor.thrust 55 lbf; motor.voltage 12 V; battery.chemistry flooded; battery.capacity 100 Ah"},
		{"what distance is that at 2.5 mph", "battery.group 27; use.throttle 0.2; battery.count 1; motor.thrust 55 lbf; motor.voltage 12 V; battery.chemistry flooded; battery.capacity 100 Ah; use.speed 2.5 mph"},
		{"and the weight?", "battery.group 27; use.throttle 0.2; battery.count 1; motor.thrust 55 lbf; motor.voltage 12 V; battery.chemistry flooded; battery.capacity 100 Ah; use.speed 2.5 mph"},
	},
	{
		{"22 foot pontoon, 3,500 lb loaded, 8 mph wind", "load.total 3500 lb; wind.speed 8 mph; boat.length 22 ft; boat.hull pontoon"},
		{"lets start over. kayak 11 ft 280 lb", "boat.length 11 ft; load.total 280 lb; boat.hull kayak"},
		{"salt water", "boat.length 11 ft; load.total 280 lb; boat.hull kayak; water.kind salt"},
		{"with a 10 mph wind", "boat.length 11 ft; load.total 280 lb; boat.hull kayak; water.kind salt; wind.speed 10 mph"},
	},
	{
		{"4.2 metre boat, 450 kg all up", "load.total 992.1 lb; boat.length 13.78 ft"},
		{"make it 4.8", "load.total 992.1 lb; boat.length 15.75 ft"},
		{"8 m/s of wind", "load.total 992.1 lb; boat.length 15.75 ft; wind.speed 17.9 mph"},
		{"ignore the wind", "load.total 992.1 lb; boat.length 15.75 ft"},
		{"10 knots", "load.total 992.1 lb; boat.length 15.75 ft; wind.speed 11.51 mph"},
	},
	{
		{"plate 1,400 lb", "load.plate 1400 lb"},
		{"5 people at 170", "load.plate 1400 lb; people.count 5; people.each 170 lb"},
		{"150 lb of tackle", "load.plate 1400 lb; people.count 5; people.each 170 lb; load.gear 150 lb"},
		{"engine weighs 300", "load.plate 1400 lb; people.count 5; people.each 170 lb; load.gear 150 lb; load.engine 300 lb"},
		{"one person less", "load.plate 1400 lb; people.count 4; people.each 170 lb; load.gear 150 lb; load.engine 300 lb"},
		{"what about two less", "load.plate 1400 lb; people.count 2; people.each 170 lb; load.gear 150 lb; load.engine 300 lb"},
	},
	{
		{"20 ft center console 3,600 loaded, wants side imaging and heading hold, max 3000 dollars", "load.total 3600 lb; boat.length 20 ft; money.budget ..3000 USD; boat.console true; want.sonar-side true; want.heading-hold true"},
		{"thats too much, no side imaging", "load.total 3600 lb; boat.length 20 ft; money.budget ..3000 USD; boat.console true; want.sonar-side false; want.heading-hold true"},
		{"boss okayed 3500. put the side imaging back", "load.total 3600 lb; boat.length 20 ft; money.budget 3500 USD; boat.console true; want.sonar-side true; want.heading-hold true"},
		{"remote instead of a pedal", "load.total 3600 lb; boat.length 20 ft; money.budget 3500 USD; boat.console true; want.sonar-side true; want.heading-hold true; want.remote true"},
	},
	{
		{"17 ft vee 1,900 dry", "load.dry 1900 lb; boat.length 17 ft; boat.hull vee"},
		{"1,500 with everybody", "load.dry 1900 lb; boat.length 17 ft; boat.hull vee"},
		{"i meant 2,500 with everybody", "load.dry 1900 lb; boat.length 17 ft; boat.hull vee; load.total 2500 lb"},
	},
	{
		{"18 ft bass boat 2,100 lb, lake, 10 mph wind", "wind.speed 10 mph; boat.length 18 ft; load.total 2100 lb; boat.hull bass; water.kind fresh"},
		{"same but 20 ft and 2,700", "wind.speed 10 mph; boat.length 20 ft; load.total 2700 lb; boat.hull bass; water.kind fresh"},
		{"its a river actually", "wind.speed 10 mph; boat.length 20 ft; load.total 2700 lb; boat.hull bass; water.kind fresh"},
		{"current 2 mph", "wind.speed 10 mph; boat.length 20 ft; load.total 2700 lb; boat.hull bass; water.kind fresh; current.speed 2 mph"},
		{"new one: 10 ft pond prowler, 500 lb total", "load.total 500 lb; boat.length 10 ft; water.kind fresh"},
	},
	{
		{"what bank for 24 volts", "motor.voltage 24 V"},
		{"agm, 100 ah", "motor.voltage 24 V; battery.capacity 100 Ah; battery.chemistry agm"},
		{"i fish 6 hours", "motor.voltage 24 V; battery.capacity 100 Ah; battery.chemistry agm; use.hours 6 h"},
		{"charger? theres 7 hours overnight", "motor.voltage 24 V; battery.capacity 100 Ah; battery.chemistry agm; use.hours 6 h; charge.hours 7 h"},
		{"its below freezing in the garage", "motor.voltage 24 V; battery.capacity 100 Ah; battery.chemistry agm; use.hours 6 h; charge.hours 7 h; temperature.air -12..1 degC"},
	},
	{
		{"14 ft canoe, 2 paddlers", "people.count 2; boat.length 14 ft; boat.hull canoe"},
		{"420 all in", "people.count 2; boat.length 14 ft; boat.hull canoe; load.total 420 lb"},
		{"whats position hold", "people.count 2; boat.length 14 ft; boat.hull canoe; load.total 420 lb"},
		{"does a 30 do it", "people.count 2; boat.length 14 ft; boat.hull canoe; load.total 420 lb; motor.thrust 30 lbf"},
		{"take the second paddler out", "people.count 1; boat.length 14 ft; boat.hull canoe; motor.thrust 30 lbf"},
	},
}

// TestTalk holds the card of every conversation at every turn.
func TestTalk(t *testing.T) {
	for _, talk := range append(talkCorpus, counterTalk...) {
		var c card.Card
		for _, turn := range talk {
			out := Bind(read.Read(turn.text), c)
			compareFacts(t, turn.text, turn.want, out.Card)
			c = out.Card
			if t.Failed() {
				break
			}
		}
	}
}

package meaning

// wishesCorpus is what is said of wishes, of money and of kinds of motor.
var wishesCorpus = []phrasing{
	{"17 ft vee, got to have a gps anchor", "boat.length 17 ft; boat.hull vee; want.position-hold true"},
	{"wants heading hold and a remote on a 19 foot bass boat", "boat.length 19 ft; boat.hull bass; want.heading-hold true; want.remote true"},
	{"16 ft jon, skip the remote", "boat.length 16 ft; boat.hull jon; want.remote false"},
	{"no gps or sonar please, 14 ft canoe", "boat.length 14 ft; boat.hull canoe; want.position-hold false; want.sonar-2d false"},
	{"must follow a contour and hold a heading, 20 ft vee", "boat.length 20 ft; boat.hull vee; want.track true; want.heading-hold true"},
	{"down imaging built in would be a bonus, 18 footer", "boat.length 18 ft; want.sonar-down true"},
	{"electric steer bow motor with side scan for a 19 ft boat", "boat.length 19 ft; motor.control foot-electric; mount.place bow; want.sonar-side true"},
	{"cable steer, 17 ft bass boat", "boat.length 17 ft; boat.hull bass; motor.control foot-cable"},
	{"brushless, 24 volt, 80 pound", "motor.drive brushless; motor.voltage 24 V; motor.thrust 80 lbf"},
	{"brushed is fine, 14 ft jon", "boat.length 14 ft; boat.hull jon; motor.drive brushed"},
	{"five speed tiller motor on the transom of a 12 ft jon", "boat.length 12 ft; boat.hull jon; motor.speeds fixed; motor.control tiller; mount.place transom"},
	{"i can spend 800, 15 ft vee", "boat.length 15 ft; boat.hull vee; money.budget 800 USD"},
	{"$2,500 tops for an 18 ft bay boat", "boat.length 18 ft; boat.hull bay; money.budget ..2500 USD"},
	{"budget of around 600 bucks for a kayak motor", "boat.hull kayak; money.budget 600 USD"},
	{"less than a thousand dollars, 16 ft aluminum", "boat.length 16 ft; boat.material aluminum; money.budget ..1000 USD"},
	{"folding arm mount for rough water, 21 ft deep v", "boat.length 21 ft; boat.hull deep-vee; mount.kind folding-arm"},
	{"compact pivot because of a short deck on my 18 ft boat", "boat.length 18 ft; mount.kind compact-pivot"},
	{"dont want a foot pedal, 16 ft vee", "boat.length 16 ft; boat.hull vee"},
	{"it should stay put over a brush pile, 18 ft 1,700 lb loaded", "boat.length 18 ft; load.total 1700 lb; want.position-hold true"},
	{"without gps, with a remote, 20 ft pontoon", "boat.length 20 ft; boat.hull pontoon; want.position-hold false; want.remote true"},
}

package tests

import (
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
)

// asked is a counter's morning, a conversation on one boat and questions that
// stand alone.
var asked = []struct{ session, question string }{
	{"", "18-foot aluminum, 1,900 lb loaded, windy lake"},
	{"", "what shaft for a deck 22 inches off the water with two foot chop"},
	{"", "why does the prop suck air when it gets rough?"},
	{"", "two group 27s, a 55 at half throttle, how long"},
	{"", "wire size for 50 amps, 20 feet to the bow, 24 volts"},
	{"", "what is the capital of the next county"},
	{"heron", "16 ft jon, 2 aboard, small lake"},
	{"heron", "and if it blows 20 mph?"},
	{"heron", "make it lithium"},
	{"heron", ":why thrust.need"},
	{"heron", ":undo"},
	{"heron", ":boat"},
	{"reed", "deux cents kilos, 4.2 m canoe, 5 km/h current"},
}

// TestSameQuestionSameBytes asks everything in fresh processes under settings
// that must not matter.
func TestSameQuestionSameBytes(t *testing.T) {
	batch := batchOf(t)
	surroundings := [][]string{
		nil,
		nil, // once more the same: another process is another map order
		{"GOMAXPROCS=1"},
		{"GOMAXPROCS=8", "GOGC=1"},
		{"TZ=Pacific/Kiritimati"},
		{"LANG=tr_TR.UTF-8", "LC_ALL=tr_TR.UTF-8"},
		{"LANG=C", "LC_ALL=C", "COLUMNS=20", "TERM=dumb"},
	}
	for _, form := range [][]string{{"--json"}, {}} {
		var want string
		for i, env := range surroundings {
			got, status := ask(t, env, batch, append(form, "--batch", "-")...)
			if status != 0 {
				t.Fatalf("%q: status %d", env, status)
			}
			if i == 0 {
				want = got
			}
			if diff := cmp.Diff(want, got); diff != "" {
				t.Errorf("under %q the answers differ (-first +now):\n%s", env, diff)
			}
		}
		if want == "" {
			t.Error("nothing was answered")
		}
	}
}

// TestDoorsAgree asks one question through every door.
func TestDoorsAgree(t *testing.T) {
	const question = "18-foot aluminum, 1,900 lb loaded, windy lake"
	for _, form := range [][]string{{"--json"}, {}} {
		words, status := ask(t, nil, "", append(form, question)...)
		if status != 0 {
			t.Fatalf("status %d, want 0", status)
		}
		spread, _ := ask(t, nil, "", append(form, strings.Fields(question)...)...)
		pipe, _ := ask(t, nil, question+"\r\n", form...)
		batch, _ := ask(t, nil, `{"question": "`+question+`"}`, append(form, "--batch", "-")...)
		for door, got := range map[string]string{"unquoted words": spread, "pipe": pipe, "batch": batch} {
			if diff := cmp.Diff(words, got); diff != "" {
				t.Errorf("%s answers otherwise than quoted words (-words +%s):\n%s", door, door, diff)
			}
		}
	}
}

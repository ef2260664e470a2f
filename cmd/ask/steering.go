package main

import (
	"strings"
	"unicode"
)

// synonyms are what people write for a word that steers because other programs
// call it so, or without the colon. A whole line counts, never a part of one: a
// motor that quits is talk.
var synonyms = map[string]string{
	"help": ":help", "?": ":help", ":?": ":help", ":h": ":help", ":commands": ":help",
	"quit": ":quit", "exit": ":quit", "bye": ":quit", "q": ":quit", ":q": ":quit", ":exit": ":quit", ":bye": ":quit",
	":new": ":fresh", ":reset": ":fresh", ":save": ":keep", ":load": ":open", ":list": ":boats", ":delete": ":forget",
}

// steering brings a line that steers to the form ":word rest" that all doors
// know: a capital, a blank behind the colon or a full stop is a slip of the
// fingers. Any other line is left as it is.
func steering(line string) string {
	t := strings.TrimSpace(line)
	rest, colon := strings.CutPrefix(t, ":")
	if !colon {
		if word, ok := synonyms[strings.ToLower(strings.TrimRight(t, ".!"))]; ok {
			return word
		}
		return line
	}
	word, arg := strings.TrimSpace(rest), ""
	if i := strings.IndexFunc(word, unicode.IsSpace); i >= 0 {
		word, arg = word[:i], strings.TrimSpace(word[i:])
	}
	word = ":" + strings.ToLower(strings.TrimRight(word, ".,;!"))
	if known, ok := synonyms[word]; ok {
		word = known
	}
	if len(word) < 2 || word[1] < 'a' || word[1] > 'z' {
		return line
	}
	if arg == "" {
		return word
	}
	return word + " " + arg
}

// doorWord splits a line that steers into its word and the rest.
func doorWord(line string) (word, arg string, ok bool) {
	word, ok = strings.CutPrefix(strings.TrimSpace(line), ":")
	word, arg, _ = strings.Cut(word, " ")
	return word, strings.TrimSpace(arg), ok
}

// isQuit is true for the word that ends a conversation.
func isQuit(line string) bool {
	word, _, ok := doorWord(steering(line))
	return ok && word == "quit"
}

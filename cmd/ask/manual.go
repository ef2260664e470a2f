package main

import (
	"fmt"
	"strings"
)

// The help text is the one place where flags and words are described. The
// manual page and the shells' completions are read off it.

// helpPart is a stretch of the help text below one heading; the first has none.
type helpPart struct {
	heading string
	items   []helpItem
}

// helpItem is a paragraph, or a term with what it means.
type helpItem struct {
	term string // "" for a paragraph
	text string
	asIs bool // lines of an example, kept as they stand
}

// helpHeading is true for a line that begins a part: words and a colon alone at
// the margin, or a word or two, a colon and what goes on.
func helpHeading(l string) (heading, rest string, ok bool) {
	heading, rest, ok = strings.Cut(l, ":")
	for _, r := range heading {
		ok = ok && (r == ' ' || r >= 'a' && r <= 'z' || r >= 'A' && r <= 'Z')
	}
	rest = strings.TrimSpace(rest)
	return heading, rest, ok && heading != "" && heading[0] != ' ' && (rest == "" || strings.Count(heading, " ") < 2)
}

// helpParts reads the help text: paragraphs at the margin, terms and their
// meanings indented by two, meanings that go on indented further.
func helpParts(text string) []helpPart {
	parts := []helpPart{{}}
	fresh := true // an empty line stands before
	for l := range strings.Lines(text) {
		l = strings.TrimRight(l, " \n")
		part := &parts[len(parts)-1]
		var last *helpItem
		if n := len(part.items); n > 0 {
			last = &part.items[n-1]
		}
		begins, indented := fresh, strings.HasPrefix(l, "  ")
		fresh = l == ""
		if fresh {
			continue
		}
		if heading, rest, ok := helpHeading(l); begins && ok {
			parts = append(parts, helpPart{heading: heading})
			if rest != "" {
				parts[len(parts)-1].items = []helpItem{{text: rest}}
			}
			continue
		}
		term, meaning, _ := strings.Cut(strings.TrimSpace(l), "  ")
		meaning = strings.TrimSpace(meaning)
		switch {
		case indented && part.heading == "":
			part.items = append(part.items, helpItem{text: strings.TrimSpace(l), asIs: true})
		case strings.HasPrefix(l, "   ") && last != nil && last.term != "":
			last.text = strings.TrimSpace(last.text + " " + strings.TrimSpace(l))
		case indented:
			part.items = append(part.items, helpItem{term: term, text: meaning})
		case begins || last == nil || last.asIs || last.term != "":
			part.items = append(part.items, helpItem{text: l})
		default:
			last.text += " " + l
		}
	}
	return parts
}

// flagHelp is a flag as the help text has it.
type flagHelp struct {
	name    string
	wants   string // the value: FILE, DIR, FIGURE, or words with bars between them; "" for none
	meaning string
}

// helpFlags lists the flags of the help text in its order.
func helpFlags() []flagHelp {
	var flags []flagHelp
	for _, part := range helpParts(help) {
		for _, item := range part.items {
			if rest, ok := strings.CutPrefix(item.term, "--"); ok {
				name, wants, _ := strings.Cut(rest, " ")
				flags = append(flags, flagHelp{name, wants, item.text})
			}
		}
	}
	return flags
}

// manual is the help text as a manual page, in the man macros of roff.
func manual(version string) string {
	var b strings.Builder
	parts := helpParts(help)
	name, what := "ask", ""
	if items := parts[0].items; len(items) > 0 {
		name, what, _ = strings.Cut(items[0].text, " - ")
		parts[0].items = items[1:]
	}
	fmt.Fprintf(&b, ".TH %s 1 \"\" \"%s %s\"\n.SH NAME\n%s \\- %s\n.SH SYNOPSIS\n", roff(strings.ToUpper(name)), roff(name), roff(version), roff(name), roff(what))
	described := false
	for _, part := range parts {
		if part.heading != "" {
			fmt.Fprintf(&b, ".SH %s\n", roff(strings.ToUpper(part.heading)))
		}
		for _, item := range part.items {
			switch {
			case item.asIs:
				fmt.Fprintf(&b, ".nf\n%s\n.fi\n", roff(item.text))
			case item.term != "":
				fmt.Fprintf(&b, ".TP\n.B %s\n%s\n", roff(item.term), roff(item.text))
			default:
				if part.heading == "" && !described {
					described = true
					b.WriteString(".SH DESCRIPTION\n")
				}
				fmt.Fprintf(&b, ".PP\n%s\n", roff(item.text))
			}
		}
	}
	return b.String()
}

// roff makes text safe for the formatter: a backslash and a hyphen as such, and
// no line that begins with a mark of its own.
func roff(text string) string {
	text = strings.NewReplacer(`\`, `\e`, "-", `\-`).Replace(text)
	if strings.HasPrefix(text, ".") || strings.HasPrefix(text, "'") {
		text = `\&` + text
	}
	return text
}

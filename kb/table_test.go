package kb

import "testing"

// What a table is, and how its rows are cut, follows GitHub Flavored Markdown,
// section 4.10; the examples are our own.
func TestTables(t *testing.T) {
	tests := []struct{ name, in, want string }{
		{"with bars at the ends", "| wire | amps |\n| --- | ---: |\n| 8 | 40 |", "wire | amps\n8 | 40"},
		{"without", "wire | amps\n:-- | :-:\n8 | 40", "wire | amps\n8 | 40"},
		{"one column", "| wire |\n|---|\n| 8 |\n", "wire\n8"},
		{"a paragraph before it", "Sizes:\nwire | amps\n--- | ---\n8 | 40", "Sizes:\n\nwire | amps\n8 | 40"},
		{"cells too many and missing", "a | b\n--- | ---\n1 | 2 | 3\n4", "a | b\n1 | 2\n4 | "},
		{"an empty cell", "a | b | c\n--- | --- | ---\n1 | | 3", "a | b | c\n1 |  | 3"},
		{"a bar that is text", "a | b\n--- | ---\n1 \\| 2 | 3\\|", "a | b\n1 | 2 | 3|"},
		{"a bar in code", "a | b\n--- | ---\n`1 \\| 2` | 3", "a | b\n1 | 2 | 3"},
		{"marked words", "a | *b*\n--- | ---\n**1** | [2](x)", "a | b\n1 | 2"},
		{"ends at an empty line", "a | b\n--- | ---\n1 | 2\n\n3 | 4", "a | b\n1 | 2\n\n3 | 4"},
		{"no row of dashes", "a | b\n1 | 2", "a | b 1 | 2"},
		{"fewer dashes than names", "a | b\n--- |\n1 | 2", "a | b --- | 1 | 2"},
		{"other marks among the dashes", "a | b\n--- | -+-\n1 | 2", "a | b --- | -+- 1 | 2"},
		{"a heading", "a\n---\n\nb", "b"},
	}
	for _, tt := range tests {
		n, faults := Parse("t.md", []byte("## T\n\n"+tt.in))
		if len(faults) > 0 {
			t.Errorf("%s: %v", tt.name, faults)
		}
		if got := n.Passages[len(n.Passages)-1].Text; got != tt.want {
			t.Errorf("%s: %q, want %q", tt.name, got, tt.want)
		}
	}
}

package main

import (
	"fmt"
	"strings"
)

// completers write the completion of the command line for a shell.
var completers = []struct {
	shell string
	write func([]flagHelp) string
}{
	{"bash", completeBash},
	{"zsh", completeZsh},
	{"fish", completeFish},
	{"powershell", completePowerShell},
}

// completion is the script that teaches a shell the flags.
func completion(shell string) (string, error) {
	var known []string
	for _, c := range completers {
		if c.shell == shell {
			return c.write(helpFlags()), nil
		}
		known = append(known, c.shell)
	}
	return "", usage("", "--completion: %q is none of %s", shell, strings.Join(known, ", "))
}

// words are what a value may be, where that is a short list.
func (f flagHelp) words() []string {
	if !strings.Contains(f.wants, "|") {
		return nil
	}
	return strings.Split(f.wants, "|")
}

// short is the meaning up to its first stop, for a line of a menu.
func (f flagHelp) short() string {
	end := len(f.meaning)
	for _, stop := range []string{"; ", ", - ", ": ", " ("} {
		if i := strings.Index(f.meaning, stop); i > 0 {
			end = min(end, i)
		}
	}
	return f.meaning[:end]
}

func completeBash(flags []flagHelp) string {
	var names []string
	var b strings.Builder
	b.WriteString("# completion of ask for bash: ask --completion bash >~/.local/share/bash-completion/completions/ask\n")
	b.WriteString("_ask() {\n  local cur=${COMP_WORDS[COMP_CWORD]} prev=${COMP_WORDS[COMP_CWORD-1]}\n  COMPREPLY=()\n  case $prev in\n")
	for _, f := range flags {
		names = append(names, "--"+f.name)
		switch {
		case f.words() != nil:
			fmt.Fprintf(&b, "    --%s) COMPREPLY=($(compgen -W '%s' -- \"$cur\")); return ;;\n", f.name, strings.Join(f.words(), " "))
		case f.wants == "DIR":
			fmt.Fprintf(&b, "    --%s) compopt -o filenames; mapfile -t COMPREPLY < <(compgen -d -- \"$cur\"); return ;;\n", f.name)
		case f.wants == "FILE":
			fmt.Fprintf(&b, "    --%s) compopt -o filenames; mapfile -t COMPREPLY < <(compgen -f -- \"$cur\"); return ;;\n", f.name)
		case f.wants != "":
			fmt.Fprintf(&b, "    --%s) return ;;\n", f.name)
		}
	}
	fmt.Fprintf(&b, "  esac\n  if [[ $cur == -* ]]; then\n    COMPREPLY=($(compgen -W '%s' -- \"$cur\"))\n  fi\n}\ncomplete -F _ask ask\n", strings.Join(names, " "))
	return b.String()
}

func completeZsh(flags []flagHelp) string {
	var b strings.Builder
	b.WriteString("#compdef ask\n# completion of ask for zsh: ask --completion zsh >a folder of $fpath/_ask\n_arguments \\\n")
	inMessage := strings.NewReplacer("'", "'\\''", "[", "(", "]", ")", ":", " ")
	for _, f := range flags {
		value := ""
		switch {
		case f.words() != nil:
			value = ":" + f.name + ":(" + strings.Join(f.words(), " ") + ")"
		case f.wants == "DIR":
			value = ":folder:_files -/"
		case f.wants == "FILE":
			value = ":file:_files"
		case f.wants != "":
			value = ":" + strings.ToLower(f.wants) + ":"
		}
		fmt.Fprintf(&b, "  '--%s[%s]%s' \\\n", f.name, inMessage.Replace(f.short()), value)
	}
	b.WriteString("  '*:question:'\n")
	return b.String()
}

func completeFish(flags []flagHelp) string {
	var b strings.Builder
	b.WriteString("# completion of ask for fish: ask --completion fish >~/.config/fish/completions/ask.fish\ncomplete -c ask -f\n")
	for _, f := range flags {
		value := ""
		switch {
		case f.words() != nil:
			value = " -x -a '" + strings.Join(f.words(), " ") + "'"
		case f.wants == "DIR":
			value = " -x -a '(__fish_complete_directories)'"
		case f.wants == "FILE":
			value = " -r -F"
		case f.wants != "":
			value = " -x"
		}
		fmt.Fprintf(&b, "complete -c ask -l %s%s -d '%s'\n", f.name, value, strings.ReplaceAll(f.short(), "'", "\\'"))
	}
	return b.String()
}

func completePowerShell(flags []flagHelp) string {
	quoted := func(s string) string { return "'" + strings.ReplaceAll(s, "'", "''") + "'" }
	var b strings.Builder
	b.WriteString("# completion of ask for PowerShell: ask --completion powershell >>$PROFILE\n")
	b.WriteString("Register-ArgumentCompleter -Native -CommandName ask -ScriptBlock {\n  param($word, $line, $at)\n")
	b.WriteString("  $before = $line.ToString().Substring(0, [Math]::Min($at, $line.ToString().Length) - $word.Length).TrimEnd().Split(' ')[-1]\n  $values = @{\n")
	for _, f := range flags {
		if ws := f.words(); ws != nil {
			for i := range ws {
				ws[i] = quoted(ws[i])
			}
			fmt.Fprintf(&b, "    '--%s' = @(%s)\n", f.name, strings.Join(ws, ", "))
		}
	}
	b.WriteString("  }\n  if ($values.ContainsKey($before)) {\n    $values[$before] | Where-Object { $_ -like \"$word*\" }\n    return\n  }\n  @(\n")
	for _, f := range flags {
		fmt.Fprintf(&b, "    ,@('--%s', %s)\n", f.name, quoted(f.short()))
	}
	b.WriteString("  ) | Where-Object { $_[0] -like \"$word*\" } | ForEach-Object {\n")
	b.WriteString("    [System.Management.Automation.CompletionResult]::new($_[0], $_[0], 'ParameterName', $(if ($_[1]) { $_[1] } else { $_[0] }))\n  }\n}\n")
	return b.String()
}

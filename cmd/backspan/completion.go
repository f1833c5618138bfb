package main

import (
	"flag"
	"fmt"
	"slices"
	"strings"
	"unicode"

	"backspan/store/report"
)

func (p program) completion(args []string) int {
	rest, status, done := p.parse(flag.NewFlagSet("completion", flag.ContinueOnError), args, 1)
	if done {
		return status
	}
	var script string
	switch first(rest) {
	case "bash":
		script = p.bash()
	case "zsh":
		script = p.zsh()
	case "fish":
		script = p.fish()
	default:
		return p.cannot(fmt.Errorf("completion: give bash, zsh or fish, for example: source <(backspan completion bash)"))
	}
	fmt.Fprint(p.out, script)
	return statusFine
}

// flagWords are a command's flags as they are typed.
func (p program) flagWords(c command) string {
	words := []string{"--help"}
	for _, f := range p.flagsOf(c) {
		words = append(words, "--"+f.Name)
	}
	return strings.Join(words, " ")
}

// formats are the words that a command's --format takes, as its help names
// them; empty for a command without one.
func (p program) formats(c command) string {
	known := append(report.Formats[:], report.HTML)
	var words []string
	for _, f := range p.flagsOf(c) {
		if f.Name != "format" {
			continue
		}
		for _, word := range strings.FieldsFunc(f.Usage, func(r rune) bool { return !unicode.IsLetter(r) }) {
			if slices.Contains(known, report.Format(word)) && !slices.Contains(words, word) {
				words = append(words, word)
			}
		}
	}
	return strings.Join(words, " ")
}

func (p program) bash() string {
	var names []string
	cases := ""
	for _, c := range commands() {
		names = append(names, c.name)
		cases += fmt.Sprintf("\t\t%s) flags='%s' formats='%s' ;;\n", c.name, p.flagWords(c), p.formats(c))
	}
	return fmt.Sprintf(`# bash completion for backspan; to use it now: source <(backspan completion bash)
_backspan() {
	local IFS=$' \t\n' word=${COMP_WORDS[COMP_CWORD]} before=${COMP_WORDS[COMP_CWORD-1]} flags= formats=
	COMPREPLY=()
	if [ "$COMP_CWORD" -eq 1 ]; then
		COMPREPLY=($(compgen -W '%s help' -- "$word"))
		return
	fi
	case ${COMP_WORDS[1]} in
%s	esac
	if [ "$before" = --format ]; then
		COMPREPLY=($(compgen -W "$formats" -- "$word"))
		return
	fi
	case $word in
		-*) COMPREPLY=($(compgen -W "$flags" -- "$word")) ;;
		*)
			if [ "${COMP_WORDS[1]}" = completion ]; then
				COMPREPLY=($(compgen -W 'bash zsh fish' -- "$word"))
				return
			fi
			IFS=$'\n'
			COMPREPLY=($(compgen -f -X '!*.toml' -- "$word") $(compgen -d -- "$word"))
			;;
	esac
}
complete -o filenames -F _backspan backspan
`, strings.Join(names, " "), cases)
}

func (p program) zsh() string {
	names, cases := "", ""
	for _, c := range commands() {
		names += fmt.Sprintf("\t\t'%s:%s'\n", c.name, quoted(c.does))
		cases += fmt.Sprintf("\t\t%s) flags='%s' formats='%s' ;;\n", c.name, p.flagWords(c), p.formats(c))
	}
	return fmt.Sprintf(`#compdef backspan
# zsh completion for backspan; to use it now: source <(backspan completion zsh)
_backspan() {
	local -a commands
	commands=(
%s	)
	if (( CURRENT == 2 )); then
		_describe command commands
		return
	fi
	local flags= formats=
	case $words[2] in
%s	esac
	if [[ $words[CURRENT-1] == --format ]]; then
		compadd -- ${=formats}
		return
	fi
	compadd -- ${=flags}
	_files -g '*.toml'
}
compdef _backspan backspan
`, names, cases)
}

func (p program) fish() string {
	lines := "# fish completion for backspan; to use it now: backspan completion fish | source\n" +
		"complete -c backspan -n __fish_use_subcommand -f\n"
	for _, c := range commands() {
		lines += fmt.Sprintf("complete -c backspan -n __fish_use_subcommand -a %s -d '%s'\n", c.name, quoted(c.does))
		for _, f := range p.flagsOf(c) {
			value := ""
			switch {
			case f.Name == "format":
				value = " -x -a '" + p.formats(c) + "'"
			case valued(f):
				value = " -r"
			}
			lines += fmt.Sprintf("complete -c backspan -n '__fish_seen_subcommand_from %s' -l %s%s -d '%s'\n", c.name, f.Name, value, quoted(f.Usage))
		}
	}
	return lines
}

// quoted makes text fit to stand between single quotes in a shell's script.
func quoted(s string) string { return strings.NewReplacer("'", "", ":", ",", "\\", "").Replace(s) }

package main

import (
	"flag"
	"fmt"
	"regexp"
	"slices"
	"strings"
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

// oneOf is how a flag says that it takes one of a few words.
var oneOf = regexp.MustCompile(`^([a-z]+(?:, [a-z]+)* or [a-z]+)(?:[;:].*)?$`)

// valuesOf are the words that a flag takes; empty where any value may stand.
func valuesOf(f *flag.Flag) string {
	m := oneOf.FindStringSubmatch(f.Usage)
	if m == nil || !valued(f) {
		return ""
	}
	return strings.NewReplacer(", ", " ", " or ", " ").Replace(m[1])
}

// fewerWith is how a flag says that it takes fewer words beside another flag.
var fewerWith = regexp.MustCompile(`; with --([a-z-]+) ((?:[a-z]+, )*[a-z]+ or [a-z]+)$`)

// fewer are the words that a flag takes beside another one; both empty where
// no other matters.
func fewer(f *flag.Flag) (beside, words string) {
	m := fewerWith.FindStringSubmatch(f.Usage)
	if m == nil {
		return "", ""
	}
	return m[1], strings.NewReplacer(", ", " ", " or ", " ").Replace(m[2])
}

// takesFile reports whether any file may be a flag's value.
func takesFile(f *flag.Flag) bool { return f.Name == "out" || f.Name == "csv" }

// ending is that of the files a command works on.
func ending(c command) string {
	if c.name == "merge" {
		return "part"
	}
	return "toml"
}

func names() string {
	var names []string
	for _, c := range commands() {
		names = append(names, c.name)
	}
	return strings.Join(names, " ")
}

const shells = "bash zsh fish"

func (p program) bash() string {
	flags, values := "", ""
	for _, c := range commands() {
		flags += fmt.Sprintf("\t\t%s) flags='%s' ending=%s ;;\n", c.name, p.flagWords(c), ending(c))
		for _, f := range p.flagsOf(c) {
			var does string
			switch words := valuesOf(f); {
			case words != "":
				does = fmt.Sprintf("words='%s'", words)
				if beside, rest := fewer(f); beside != "" {
					does += fmt.Sprintf("; case \" ${COMP_WORDS[*]} \" in *' --%s '*) words='%s' ;; esac", beside, rest)
				}
			case takesFile(f):
				does = "ending='*'"
			case valued(f):
				does = "return"
			default:
				continue
			}
			values += fmt.Sprintf("\t\t'%s --%s') %s ;;\n", c.name, f.Name, does)
		}
	}
	return fmt.Sprintf(`# bash completion for backspan; to use it now: source <(backspan completion bash)
_backspan() {
	local IFS=$' \t\n' word=${COMP_WORDS[COMP_CWORD]} before=${COMP_WORDS[COMP_CWORD-1]} flags= words= ending=
	COMPREPLY=()
	if [ "$COMP_CWORD" -eq 1 ]; then
		COMPREPLY=($(compgen -W '%[1]s help' -- "$word"))
		return
	fi
	if [ "$word" = = ]; then
		word=
	elif [ "$before" = = ]; then
		before=${COMP_WORDS[COMP_CWORD-2]}
	fi
	case ${COMP_WORDS[1]} in
		completion) words='%[2]s' ;;
		help) words='%[1]s' ;;
	esac
	case ${COMP_WORDS[1]} in
%[3]s	esac
	case "${COMP_WORDS[1]} $before" in
%[4]s	esac
	case $word in
		-*) COMPREPLY=($(compgen -W "$flags" -- "$word")) ;;
		*)
			if [ -n "$words" ]; then
				COMPREPLY=($(compgen -W "$words" -- "$word"))
				return
			fi
			IFS=$'\n'
			if [ "$ending" = '*' ]; then
				COMPREPLY=($(compgen -f -- "$word"))
				return
			fi
			COMPREPLY=($(compgen -f -X "!*.$ending" -- "$word") $(compgen -d -- "$word"))
			;;
	esac
}
complete -o filenames -F _backspan backspan
`, names(), shells, flags, values)
}

func (p program) zsh() string {
	described, flags, values := "", "", ""
	for _, c := range commands() {
		described += fmt.Sprintf("\t\t'%s:%s'\n", c.name, quoted(c.does))
		flags += fmt.Sprintf("\t\t%s) [[ $PREFIX == -* ]] && compadd -- %s && return; ending=%s ;;\n", c.name, p.flagWords(c), ending(c))
		for _, f := range p.flagsOf(c) {
			does := ""
			switch words := valuesOf(f); {
			case words != "":
				does = "compadd -- " + words + "; "
				if beside, rest := fewer(f); beside != "" {
					does = fmt.Sprintf("if (( $words[(Ie)--%s] )); then compadd -- %s; else compadd -- %s; fi; ", beside, rest, words)
				}
			case takesFile(f):
				does = "_files; "
			case !valued(f):
				continue
			}
			values += fmt.Sprintf("\t\t'%s --%s') %sreturn ;;\n", c.name, f.Name, does)
		}
	}
	return fmt.Sprintf(`#compdef backspan
# zsh completion for backspan; to use it now: source <(backspan completion zsh)
_backspan() {
	local before=$words[CURRENT-1] ending=toml
	local -a commands
	commands=(
%[1]s	)
	if (( CURRENT == 2 )); then
		_describe command commands
		return
	fi
	if [[ $PREFIX == --*=* ]]; then
		before=${PREFIX%%%%=*}
		compset -P '*='
	fi
	case $words[2] in
		completion) compadd -- %[2]s; return ;;
		help) _describe command commands; return ;;
	esac
	case "$words[2] $before" in
%[3]s	esac
	case $words[2] in
%[4]s	esac
	_files -g "*.$ending"
}
if [ "$funcstack[1]" = _backspan ]; then
	_backspan "$@"
else
	compdef _backspan backspan
fi
`, described, shells, values, flags)
}

func (p program) fish() string {
	lines := "# fish completion for backspan; to use it now: backspan completion fish | source\n" +
		"function __backspan_files\n\t__fish_complete_path (commandline -ct) | string match -r \"^.*(?:/|[.]$argv[1])(?=\\t|\\$)\"\nend\n" +
		"complete -c backspan -n __fish_use_subcommand -f\n" +
		"complete -c backspan -n '__fish_seen_subcommand_from completion' -f -a '" + shells + "'\n" +
		"complete -c backspan -n '__fish_seen_subcommand_from help' -f -a '" + names() + "'\n"
	for _, c := range commands() {
		lines += fmt.Sprintf("complete -c backspan -n __fish_use_subcommand -a %s -d '%s'\n", c.name, quoted(c.does))
		lines += fmt.Sprintf("complete -c backspan -n '__fish_seen_subcommand_from %s' -l help -d 'say more'\n", c.name)
		if !slices.Contains([]string{"completion", "help"}, c.name) {
			lines += fmt.Sprintf("complete -c backspan -n '__fish_seen_subcommand_from %s' -f -a '(__backspan_files %s)'\n", c.name, ending(c))
		}
		for _, f := range p.flagsOf(c) {
			value := ""
			switch words := valuesOf(f); {
			case words != "":
				value = " -x -a '" + words + "'"
				if beside, rest := fewer(f); beside != "" {
					value = fmt.Sprintf(" -x -a '(if __fish_contains_opt %s; string split \" \" \"%s\"; else; string split \" \" \"%s\"; end)'", beside, rest, words)
				}
			case takesFile(f):
				value = " -r -F"
			case valued(f):
				value = " -x"
			}
			lines += fmt.Sprintf("complete -c backspan -n '__fish_seen_subcommand_from %s' -l %s%s -d '%s'\n", c.name, f.Name, value, quoted(f.Usage))
		}
	}
	return lines
}

// quoted makes text fit to stand between single quotes in a shell's script.
func quoted(s string) string { return strings.NewReplacer("'", "", ":", ",", "\\", "").Replace(s) }

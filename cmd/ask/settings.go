package main

import (
	"bytes"
	"errors"
	"fmt"
	"io"
	"os"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"syscall"

	"github.com/spf13/pflag"
	"github.com/spf13/viper"
	"go.yaml.in/yaml/v3"
)

// settings is what the person asked of the program itself. The fields with a
// mapstructure name may also stand in the settings file and the environment.
type settings struct {
	JSON    bool   `mapstructure:"json"`
	Units   string `mapstructure:"units"`
	Notes   string `mapstructure:"notes"`
	Stock   string `mapstructure:"stock"`
	NoColor bool   `mapstructure:"no-color"`
	Plain   bool   `mapstructure:"plain"`

	Contrast bool `mapstructure:"contrast"`

	Help, Version bool   `mapstructure:"-"`
	Batch         string `mapstructure:"-"`
	Why           string `mapstructure:"-"`
	CheckNotes    string `mapstructure:"-"`
	Home          string `mapstructure:"-"`
	Completion    string `mapstructure:"-"`
	Manual        bool   `mapstructure:"-"`
	CheckStock    string `mapstructure:"-"`
	Sheet, Boat   string `mapstructure:"-"`
	Force         bool   `mapstructure:"-"`

	Drill, Scores             bool   `mapstructure:"-"`
	Seed                      seed   `mapstructure:"-"`
	Trainee, CSV              string `mapstructure:"-"`
	Scenarios, CheckScenarios string `mapstructure:"-"`
	Lesson, HTML              string `mapstructure:"-"`
	DrillTopic                string `mapstructure:"-"` // the words behind --drill
}

// A setting may be given as a flag, in the environment (ASK_NO_COLOR) and in
// the settings file. A later source of this list yields to an earlier one.
type setting struct {
	name    string
	initial any // its type is the type of the setting
	folder  bool
	known   []string // for a folder: words that stand for one of the program's own
	oneOf   []string
}

var settingRows = []setting{
	{name: "json", initial: false},
	{name: "units", initial: "", oneOf: []string{"", "us", "metric"}},
	{name: "notes", initial: "", folder: true},
	{name: "stock", initial: "", folder: true, known: []string{demoShelf, noShelf}},
	{name: "no-color", initial: false},
	{name: "plain", initial: false},
	{name: "contrast", initial: false},
}

// seed is the number that a drill's customers come from, where one was given.
type seed struct {
	value uint64
	set   bool
}

const envPrefix = "ASK"

// largestSettings bounds what is read of a settings file; a real one is a few
// lines.
const largestSettings = 64 << 10

// newFlags are the flags of the command line; those that are no settings are read
// into set. config is the settings file that is named.
func newFlags(set *settings) (flags *pflag.FlagSet, config *string) {
	flags = pflag.NewFlagSet("ask", pflag.ContinueOnError)
	flags.SetOutput(io.Discard) // the help text is help.txt, and main prints errors
	for _, row := range settingRows {
		switch v := row.initial.(type) {
		case bool:
			flags.Bool(row.name, v, "")
		case string:
			flags.String(row.name, v, "")
		}
	}
	flags.BoolVarP(&set.Help, "help", "h", false, "")
	flags.BoolVar(&set.Version, "version", false, "")
	flags.StringVar(&set.Batch, "batch", "", "")
	flags.StringVar(&set.Why, "why", "", "")
	flags.StringVar(&set.CheckNotes, "check-notes", "", "")
	flags.StringVar(&set.Home, "home", os.Getenv(envPrefix+"_HOME"), "")
	flags.StringVar(&set.Completion, "completion", "", "")
	flags.BoolVar(&set.Manual, "man", false, "")
	flags.StringVar(&set.CheckStock, "check-stock", "", "")
	flags.StringVar(&set.Sheet, "sheet", "", "")
	flags.StringVar(&set.Boat, "boat", "", "")
	flags.BoolVar(&set.Force, "force", false, "")
	flags.BoolVar(&set.Drill, "drill", false, "")
	flags.BoolVar(&set.Scores, "scores", false, "")
	flags.Uint64Var(&set.Seed.value, "seed", 0, "")
	for name, to := range map[string]*string{"trainee": &set.Trainee, "csv": &set.CSV, "scenarios": &set.Scenarios,
		"check-scenarios": &set.CheckScenarios, "lesson": &set.Lesson, "html": &set.HTML} {
		flags.StringVar(to, name, "", "")
	}
	config = flags.String("config", os.Getenv(envPrefix+"_CONFIG"), "")
	return flags, config
}

// readSettings reads the command line, then the environment and the settings
// file, and returns the settings and the words that are no flag. A fault names
// the flag, the variable, or the file with its line.
func readSettings(args []string) (settings, []string, error) {
	var set settings
	flags, config := newFlags(&set)
	if err := flags.Parse(args); err != nil {
		return set, nil, flagFault(err)
	}
	if set.Help || set.Version || set.Manual || set.Completion != "" {
		return set, nil, nil // neither may fail for a damaged file
	}
	for _, name := range []string{"batch", "why", "check-notes", "check-stock", "sheet", "boat", "config", "home", "completion",
		"trainee", "csv", "scenarios", "check-scenarios", "lesson", "html"} {
		if f := flags.Lookup(name); f.Changed && f.Value.String() == "" {
			return set, nil, usage("ask --"+name+" "+wants(name), "--%s wants a value and got an empty one", name)
		}
	}

	set.Seed.set = flags.Changed("seed")

	if info, err := os.Stat(set.Home); err == nil && !info.IsDir() {
		return set, nil, usage("", "--home: %s is no folder", set.Home)
	}

	v := viper.New()
	v.SetEnvPrefix(envPrefix)
	v.SetEnvKeyReplacer(strings.NewReplacer("-", "_"))
	for _, row := range settingRows {
		v.SetDefault(row.name, row.initial)
		if err := errors.Join(v.BindEnv(row.name), v.BindPFlag(row.name, flags.Lookup(row.name))); err != nil {
			return set, nil, err
		}
	}
	file, err := readSettingsFile(v, *config, set.folders())
	if err != nil {
		return set, nil, err
	}
	origin := func(name string) string {
		switch {
		case flags.Changed(name):
			return "--" + name
		case os.Getenv(envName(name)) != "":
			return envName(name)
		}
		return file.where(name)
	}
	for _, row := range settingRows {
		if err := row.check(v.Get(row.name)); err != nil {
			return set, nil, usage("", "%s: %w", origin(row.name), err)
		}
	}
	if err := v.UnmarshalExact(&set); err != nil {
		return set, nil, usage("", "settings: %w", err)
	}
	for _, row := range settingRows {
		if folder := v.GetString(row.name); row.folder && folder != "" && !slices.Contains(row.known, folder) {
			if origin(row.name) == file.where(row.name) && !filepath.IsAbs(folder) {
				// A folder named in a file is meant from where that file is.
				folder = filepath.Join(filepath.Dir(file.path), folder)
			}
			if err := isFolder(folder); err != nil {
				return set, nil, usage("", "%s: %w", origin(row.name), err)
			}
			set.put(row.name, folder)
		}
	}
	return set, flags.Args(), nil
}

// put replaces a folder by the path that it was resolved to.
func (s *settings) put(name, folder string) {
	switch name {
	case "notes":
		s.Notes = folder
	case "stock":
		s.Stock = folder
	}
}

func envName(name string) string {
	return envPrefix + "_" + strings.ToUpper(strings.ReplaceAll(name, "-", "_"))
}

// check accepts what viper's own conversions would turn into a wrong value in
// silence, or refuse without saying where it stands.
func (s setting) check(value any) error {
	word := strings.TrimSpace(fmt.Sprint(value))
	if _, truth := s.initial.(bool); truth {
		if _, err := strconv.ParseBool(word); err != nil {
			return fmt.Errorf("%q is neither true nor false", word)
		}
		return nil
	}
	if _, ok := value.(string); !ok {
		return fmt.Errorf("wants a word and got %q", word)
	}
	if s.oneOf != nil && !slices.Contains(s.oneOf, word) {
		return fmt.Errorf("%q is none of %s", word, strings.Join(s.oneOf[1:], ", "))
	}
	return nil
}

func isFolder(path string) error {
	info, err := os.Stat(path)
	if err != nil {
		return plainly("folder", err)
	}
	if !info.IsDir() {
		return fmt.Errorf("%s is no folder", path)
	}
	return nil
}

// settingsFile is the file that was read, with the line of each key.
type settingsFile struct {
	path  string
	lines map[string]int
}

func (f settingsFile) where(name string) string {
	return fmt.Sprintf("%s:%d: %s", f.path, f.lines[name], name)
}

// readSettingsFile hands the settings file to viper. A file that nobody named
// may be missing; whatever is there must be sound.
func readSettingsFile(v *viper.Viper, named string, own folders) (settingsFile, error) {
	f := settingsFile{path: named, lines: map[string]int{}}
	if named == "" {
		f.path = own.settings()
		if _, err := os.Stat(f.path); f.path == "" || errors.Is(err, os.ErrNotExist) || errors.Is(err, syscall.ENOTDIR) {
			return f, nil
		}
	}
	data, err := readSmall(f.path, largestSettings)
	if err != nil {
		return f, usage("", "settings: %w", plainly("file", err))
	}
	var doc yaml.Node
	if err := yaml.Unmarshal(data, &doc); err != nil {
		return f, usage("", "settings: %s: %s", f.path, yamlFault(err))
	}
	if len(doc.Content) == 0 {
		return f, nil // nothing but comments
	}
	root := doc.Content[0]
	if root.Kind != yaml.MappingNode {
		return f, usage("a line reads, for instance, units: metric", "settings: %s: line %d: not a list of settings with their values", f.path, root.Line)
	}
	for i := 0; i+1 < len(root.Content); i += 2 {
		key, value := root.Content[i], root.Content[i+1]
		if !slices.ContainsFunc(settingRows, func(s setting) bool { return s.name == key.Value }) {
			return f, usage("ask --help lists the settings", "settings: %s: line %d: unknown setting %q", f.path, key.Line, key.Value)
		}
		if value.Kind != yaml.ScalarNode {
			return f, usage("", "settings: %s: line %d: %s wants one value", f.path, key.Line, key.Value)
		}
		f.lines[key.Value] = key.Line
	}
	v.SetConfigType("yaml")
	if err := v.ReadConfig(bytes.NewReader(data)); err != nil {
		return f, usage("", "settings: %s: %s", f.path, yamlFault(err))
	}
	return f, nil
}

// yamlFault is the parser's message, which holds the line, on one line and
// without the names of the libraries that it passed through.
func yamlFault(err error) string {
	t := strings.Join(strings.Fields(err.Error()), " ")
	for _, lead := range []string{"While parsing config: ", "yaml: ", "unmarshal errors: "} {
		t = strings.TrimPrefix(t, lead)
	}
	return t
}

// readSmall reads a regular file of at most limit bytes: a pipe in its place
// would hang the program, and a disk image would fill its memory.
func readSmall(path string, limit int64) ([]byte, error) {
	info, err := os.Stat(path)
	if err != nil {
		return nil, err
	}
	if !info.Mode().IsRegular() {
		return nil, fmt.Errorf("%s is no regular file", path)
	}
	if info.Size() > limit {
		return nil, fmt.Errorf("%s: %d bytes, and %d are the most that is read", path, info.Size(), limit)
	}
	return os.ReadFile(path)
}

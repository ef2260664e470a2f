//go:build ignore

// Bill lists the modules that the program is linked from: as a bill of materials
// (CycloneDX 1.5), or their licences in full, as those ask for.
//
//	go run .ci/bill.go sbom VERSION >sbom.cdx.json
//	go run .ci/bill.go licences >THIRD-PARTY.txt
//
// It writes no date and no random number, so that a release can be made again
// byte for byte. Licences are told by the words that the common ones begin with.
package main

import (
	"bytes"
	"encoding/base64"
	"encoding/hex"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"os"
	"os/exec"
	"path/filepath"
	"slices"
	"strings"
)

const program = "heronlake.example/ask"

type module struct {
	Path, Version, Dir, Sum string
	Main                    bool
	Replace                 *module
}

func main() {
	err := errors.New("say \"sbom VERSION\" or \"licences\"")
	switch args := os.Args[1:]; {
	case len(args) == 2 && args[0] == "sbom":
		err = sbom(os.Stdout, args[1])
	case len(args) == 1 && args[0] == "licences":
		err = licences(os.Stdout)
	}
	if err != nil {
		fmt.Fprintln(os.Stderr, "bill:", err)
		os.Exit(1)
	}
}

// linked lists the modules of all systems that a release is built for.
func linked() ([]module, error) {
	seen := map[string]module{}
	for _, goos := range []string{"linux", "darwin", "windows"} {
		cmd := exec.Command("go", "list", "-deps", "-json=Module", "./cmd/ask")
		cmd.Env = append(os.Environ(), "CGO_ENABLED=0", "GOOS="+goos, "GOARCH=amd64")
		cmd.Stderr = os.Stderr
		out, err := cmd.Output()
		if err != nil {
			return nil, err
		}
		for d := json.NewDecoder(bytes.NewReader(out)); ; {
			var pkg struct{ Module *module }
			if err := d.Decode(&pkg); errors.Is(err, io.EOF) {
				break
			} else if err != nil {
				return nil, err
			}
			if m := pkg.Module; m != nil && !m.Main {
				seen[m.Path] = *m
			}
		}
	}
	var list []module
	for _, m := range seen {
		list = append(list, m)
	}
	slices.SortFunc(list, func(a, b module) int { return strings.Compare(a.Path, b.Path) })
	return list, nil
}

// licenceWords are what a licence's text holds, by its SPDX name; the first row
// that fits counts.
var licenceWords = []struct{ id, words string }{
	{"Apache-2.0", "apache license version 2.0"},
	{"MPL-2.0", "mozilla public license version 2.0"},
	{"BSD-3-Clause", "redistribution and use in source and binary forms neither the name"},
	{"BSD-2-Clause", "redistribution and use in source and binary forms"},
	{"MIT", "permission is hereby granted, free of charge, to any person obtaining a copy"},
	{"ISC", "permission to use, copy, modify, and/or distribute this software for any purpose"},
	{"ISC", "permission to use, copy, modify, and distribute this software for any purpose"},
}

// licence finds a module's licence files and its SPDX name.
func licence(m module) (id string, texts []string, err error) {
	entries, err := os.ReadDir(m.Dir)
	if err != nil {
		return "", nil, err
	}
	for _, e := range entries {
		name := strings.ToUpper(e.Name())
		if e.IsDir() || !strings.HasPrefix(name, "LICEN") && !strings.HasPrefix(name, "COPYING") && !strings.HasPrefix(name, "NOTICE") {
			continue
		}
		data, err := os.ReadFile(filepath.Join(m.Dir, e.Name()))
		if err != nil {
			return "", nil, err
		}
		texts = append(texts, strings.TrimSpace(strings.ReplaceAll(string(data), "\r\n", "\n")))
	}
	flat := strings.ToLower(strings.Join(strings.Fields(strings.Join(texts, " ")), " "))
	flat = strings.ReplaceAll(flat, "license, version", "license version")
	for _, l := range licenceWords {
		first, second, _ := strings.Cut(l.words, " neither ")
		if i := strings.Index(flat, first); i >= 0 && (second == "" || strings.Contains(flat[i:], second)) {
			return l.id, texts, nil
		}
	}
	return "", texts, fmt.Errorf("%s: no licence that is known here", m.Path)
}

func sbom(w io.Writer, version string) error {
	type hash struct {
		Alg     string `json:"alg"`
		Content string `json:"content"`
	}
	type licenceID struct {
		Licence struct {
			ID string `json:"id"`
		} `json:"license"`
	}
	type component struct {
		Type     string      `json:"type"`
		Ref      string      `json:"bom-ref"`
		Name     string      `json:"name"`
		Version  string      `json:"version"`
		Hashes   []hash      `json:"hashes,omitempty"`
		Licences []licenceID `json:"licenses,omitempty"`
		PURL     string      `json:"purl,omitempty"`
	}
	as := func(id string) []licenceID {
		var l licenceID
		l.Licence.ID = id
		return []licenceID{l}
	}
	modules, err := linked()
	if err != nil {
		return err
	}
	var components []component
	var refs []string
	for _, m := range modules {
		id, _, err := licence(m)
		if err != nil {
			return err
		}
		purl := "pkg:golang/" + m.Path + "@" + m.Version
		c := component{Type: "library", Ref: purl, Name: m.Path, Version: m.Version, Licences: as(id), PURL: purl}
		if sum, err := base64.StdEncoding.DecodeString(strings.TrimPrefix(m.Sum, "h1:")); err == nil && len(sum) == 32 {
			c.Hashes = []hash{{"SHA-256", hex.EncodeToString(sum)}}
		}
		components, refs = append(components, c), append(refs, purl)
	}
	self := component{Type: "application", Ref: program, Name: program, Version: version, Licences: as("MIT")}
	e := json.NewEncoder(w)
	e.SetEscapeHTML(false)
	e.SetIndent("", "  ")
	return e.Encode(map[string]any{
		"bomFormat": "CycloneDX", "specVersion": "1.5", "version": 1,
		"metadata":     map[string]any{"component": self},
		"components":   components,
		"dependencies": []map[string]any{{"ref": program, "dependsOn": refs}},
	})
}

func licences(w io.Writer) error {
	modules, err := linked()
	if err != nil {
		return err
	}
	fmt.Fprintln(w, "ask is linked from these modules. Their licences follow.")
	fmt.Fprintln(w)
	texts := map[string][]string{}
	for _, m := range modules {
		id, list, err := licence(m)
		if err != nil {
			return err
		}
		fmt.Fprintf(w, "%s %s: %s\n", m.Path, m.Version, id)
		texts[m.Path] = list
	}
	for _, m := range modules {
		fmt.Fprintf(w, "\n%s\n%s\n\n%s\n", strings.Repeat("=", 72), m.Path, strings.Join(texts[m.Path], "\n\n"))
	}
	// The Go library itself is linked as well.
	root, err := exec.Command("go", "env", "GOROOT").Output()
	if err != nil {
		return err
	}
	text, err := os.ReadFile(filepath.Join(strings.TrimSpace(string(root)), "LICENSE"))
	if err != nil {
		return err
	}
	_, err = fmt.Fprintf(w, "\n%s\nThe Go library\n\n%s\n", strings.Repeat("=", 72), strings.TrimSpace(string(text)))
	return err
}

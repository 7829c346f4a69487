#!/usr/bin/env bash
# Writes scripts/libraries.sha256 anew, the digest of every library that the program or its tests use, and docs/sbom.json, the bill of
# materials of those the program ships with (CycloneDX). To be run, and the difference read, whenever the pom names another version; the
# build and LibrariesIT hold what Maven brings to both.
set -euo pipefail
here=$(cd "$(dirname "$(readlink -f "${BASH_SOURCE[0]}")")/.." && pwd)
cd "$here"

scratch=$(mktemp -d)
trap 'rm -rf "$scratch"' EXIT
mvn -q -Psbom cyclonedx:makeBom
cp target/bom.json docs/sbom.json
mvn -q dependency:build-classpath -Dmdep.includeScope=test "-Dmdep.outputFile=$scratch/classpath"
{ tr : "\n" < "$scratch/classpath"; echo; } | while read -r jar; do
    printf '%s  %s\n' "$(sha256sum < "$jar" | cut -d ' ' -f 1)" "$(basename "$jar")"
done | LC_ALL=C sort -k 2 > scripts/libraries.sha256

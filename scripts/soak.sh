#!/usr/bin/env bash
# scripts/soak.sh SECONDS [SEED]    ten devices' day compressed into so long, see Soak; ./campaign soak calls it.
# The disk is filled by a limit on the size of any file that the server writes (prlimit --fsize), and emptied by taking the limit away.
set -euo pipefail
here=$(cd "$(dirname "$(readlink -f "${BASH_SOURCE[0]}")")/.." && pwd)
cd "$here"
. scripts/build.sh

find_java
build_if_stale
scratch=$(mktemp -d "$run/soak.XXXXXX")
trap 'rm -rf "$scratch"' EXIT
mkdir "$scratch/classes" "$scratch/store"
compiler+=(-proc:none)
compile_tests "$scratch/classes" src/test/java/turnalike/web/load/Soak.java src/test/java/turnalike/web/load/SoakServer.java
"$java" -XX:+UseSerialGC -cp "$tests" turnalike.web.load.Soak "$scratch/store" "$1" "${2:-$RANDOM}"

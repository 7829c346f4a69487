#!/usr/bin/env bash
# scripts/fuzz.sh SECONDS [NAME…]    random input into each harness of src/test/java/turnalike/fuzz for so long; ./campaign fuzz calls it.
# What was found worth going on from stays in target/run/fuzz/NAME between runs; what broke a reader in target/run/fuzz/found/NAME.
set -euo pipefail
here=$(cd "$(dirname "$(readlink -f "${BASH_SOURCE[0]}")")/.." && pwd)
cd "$here"
. scripts/build.sh

seconds=$1
names="${*:2}"
find_java
build_if_stale
if [ "$(sum_of pom.xml)" != "$(cat "$run/fuzz.sum" 2> /dev/null)" ]; then
    mvn -B -ntp -q -Dquick -Pfuzz dependency:build-classpath -Dmdep.includeGroupIds=com.code-intelligence "-Dmdep.outputFile=$run/fuzz.classpath" \
        >> "$run/build.log" 2>&1 || failed
    sum_of pom.xml > "$run/fuzz.sum"
fi
scratch=$(mktemp -d "$run/fuzzing.XXXXXX")
trap 'rm -rf "$scratch"' EXIT
compiler+=(-proc:none)
mapfile -t files < <(find src/test/java/turnalike/fuzz -name '*Fuzz.java' | LC_ALL=C sort)
compile_tests "$scratch" "${files[@]}"

# What Jazzer watches for beside faults of ours would be found in the harness itself: it opens connections and files on purpose.
sanitizers=com.code_intelligence.jazzer.sanitizers
watched=$sanitizers.ServerSideRequestForgery:$sanitizers.FilePathTraversal:$sanitizers.RegexInjection:$sanitizers.RegexRoadblocks
total=0
found=0
for name in ${names:-length job pieces kept points svg dxf photo form}; do
    class=${name^}Fuzz
    mkdir -p "$run/fuzz/$name" "$run/fuzz/found/$name"
    broke=0
    "$java" -XX:+UseSerialGC -Djava.awt.headless=true -cp "$(cat "$run/fuzz.classpath"):$tests" com.code_intelligence.jazzer.Jazzer \
        "--target_class=turnalike.fuzz.$class" '--instrumentation_includes=turnalike.**' "--disabled_hooks=$watched" \
        "--reproducer_path=$run/fuzz/found/$name" "-artifact_prefix=$run/fuzz/found/$name/" "-max_total_time=$seconds" -max_len=20000 \
        -timeout=60 -print_final_stats=1 "$run/fuzz/$name" "src/test/resources/turnalike/fuzz/$name" > "$run/fuzz/$name.log" 2>&1 || broke=1
    inputs=$(sed -n 's/^stat::number_of_executed_units: *//p' "$run/fuzz/$name.log" | tail -n 1)
    total=$((total + ${inputs:-0}))
    if [ "$broke" = 0 ]; then
        echo "$name: ${inputs:-0} inputs, nothing found"
    else
        found=1
        echo "$name: ${inputs:-0} inputs, BROKEN: $(grep -m 1 '^== ' "$run/fuzz/$name.log" || echo "see the log")"
        echo "  log $run/fuzz/$name.log, input in $run/fuzz/found/$name: it joins src/test/resources/turnalike/fuzz/$name"
    fi
done
echo "$total inputs in all"
exit "$found"

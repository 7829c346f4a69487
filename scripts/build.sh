# The quick build behind ./turnalike, ./check CLASS and ./bench; they source it. Everything it makes lies in target/run and target/lib.
# Maven is asked only for what hangs on the pom or the templates; the rest is one run of the compiler without the checks of ./check.
# Wants $here; sets $run, $lib, $jar, $java, $java_home and $build_id. A build is taken up by renaming, so that a program that runs
# meanwhile keeps what it started with.

run="$here/target/run"
lib="$here/target/lib"
jar="$run/turnalike.jar"

say() { printf '%s: %s\n' "$(basename "$0")" "$*" >&2; }

find_java() {
    java=${JAVA_HOME:+$JAVA_HOME/bin/java}
    java=${java:-$(command -v java || true)}
    if [ -z "$java" ] || [ ! -x "$java" ]; then
        say "set-up: no Java found; install a JDK 17 or later, on Debian: apt-get install openjdk-17-jdk-headless maven"
        exit 2
    fi
    java_home=$(dirname "$(dirname "$(readlink -f "$java")")")
}

# Names and contents of all files below the given paths, in one line.
sum_of() { (cd "$here" && find "$@" -type f -print0 | LC_ALL=C sort -z | xargs -0 cksum | cksum | tr ' ' -); }

sources=(src/main CHANGELOG.md pom.xml scripts/build.sh scripts/libraries.sha256)

# Is the build that of the sources as they are? Times only raise the question, contents answer it.
fresh() {
    [ -f "$run/stamp" ] && [ -f "$jar" ] && libraries_whole || return 1
    local newer
    # Read once: another start may be building by now.
    build_id=$(cat "$run/stamp" 2> /dev/null) && [ -n "$build_id" ] || return 1
    newer=$(cd "$here" && find "${sources[@]}" \( -newer "$run/stamp" -o -cnewer "$run/stamp" \) -print -quit) || return 1
    [ -z "$newer" ] && return 0
    touch "$run/stamp.now" 2> /dev/null || true
    [ "$(sum_of "${sources[@]}")" = "$build_id" ] || return 1
    touch -r "$run/stamp.now" "$run/stamp" 2> /dev/null || true
}

libraries_whole() {
    [ -s "$run/libraries" ] || return 1
    local each
    while read -r each; do [ -f "$lib/$each" ] || return 1; done < "$run/libraries"
}

library_path() {
    local each colon=
    while read -r each; do
        printf '%s%s' "$colon" "$lib/$each"
        colon=:
    done < "$run/libraries"
}

failed() {
    tail -n 30 "$run/build.log" >&2
    say "build: failed; the whole log is $run/build.log"
    exit 70
}

# Is each library to the letter the one we worked with? What Maven brought may be another under the same name.
libraries_known() {
    command -v sha256sum > /dev/null || return 0
    local each
    for each in "$lib.new"/*.jar; do
        if ! grep -qxF "$(sha256sum < "$each" | cut -d ' ' -f 1)  $(basename "$each")" "$here/scripts/libraries.sha256"; then
            echo "$(basename "$each") is not the library that scripts/libraries.sha256 names" >> "$run/build.log"
            rm -rf "$lib.new"
            return 1
        fi
    done
}

# The libraries, when the pom or the list of their digests changed; the templates as Java, when they or the pom changed.
ask_maven() {
    local pom templates goals=()
    pom=$(sum_of pom.xml scripts/libraries.sha256)
    templates=$pom$(sum_of src/main/jte)
    if [ "$pom" != "$(cat "$run/pom.sum" 2> /dev/null)" ] || ! libraries_whole; then
        rm -rf "$lib.new" "$run/pom.sum"
        goals+=(dependency:copy-dependencies@runtime-libraries "-Dlib=$lib.new"
            dependency:build-classpath -Dmdep.includeScope=test "-Dmdep.outputFile=$run/test.classpath")
    fi
    if [ "$templates" != "$(cat "$run/templates.sum" 2> /dev/null)" ]; then
        rm -rf "$run/generated-sources" "$run/templates.sum"
        goals+=(jte:generate@default)
    fi
    [ ${#goals[@]} -gt 0 ] || return 0
    if ! command -v mvn > /dev/null; then
        say "set-up: no Maven found; on Debian: apt-get install maven"
        exit 2
    fi
    (cd "$here" && mvn -B -ntp -q -Dquick -Dfolder=target/run "${goals[@]}") >> "$run/build.log" 2>&1 || failed
    if [ -d "$lib.new" ]; then
        libraries_known || failed
        (cd "$lib.new" && printf '%s\n' *.jar) | LC_ALL=C sort > "$run/libraries"
        rm -rf "$lib"
        mv "$lib.new" "$lib"
        echo "$pom" > "$run/pom.sum"
    fi
    echo "$templates" > "$run/templates.sum"
}

# Short-lived and heavy on memory: the first compiler stage and few collections halve its time.
compiler=(-J-XX:+UseSerialGC -J-XX:TieredStopAtLevel=1 -J-Xms512m -J-Xmn320m -nowarn -Xlint:none -parameters -g --release 17
    -encoding UTF-8)

compile() {
    if [ ! -x "$java_home/bin/javac" ]; then
        say "set-up: $java is no JDK: it has no compiler; on Debian: apt-get install openjdk-17-jdk-headless"
        exit 2
    fi
    rm -rf "$run/classes.new"
    mkdir -p "$run/classes.new"
    (cd "$here" && find src/main/java target/run/generated-sources/jte -name '*.java') > "$run/sources.list"
    (cd "$here" && "$java_home/bin/javac" "${compiler[@]}" -proc:none -cp "$(library_path)" -d target/run/classes.new \
        "@$run/sources.list") >> "$run/build.log" 2>&1 || failed
    cp -R "$here/src/main/resources/." "$run/classes.new"
    mkdir -p "$run/classes.new/turnalike/release"
    cp "$here/CHANGELOG.md" "$run/classes.new/turnalike/release"
    local version
    version=$(sed -n 's:.*<version>\(.*\)</version>.*:\1:p' "$here/pom.xml" | sed -n 1p)
    printf 'Implementation-Title: Turnalike\nImplementation-Version: %s\n' "$version" > "$run/manifest"
    "$java_home/bin/jar" -J-XX:+UseSerialGC -J-XX:TieredStopAtLevel=1 --create --no-compress --file "$jar.new" --manifest "$run/manifest" \
        -C "$run/classes.new" . >> "$run/build.log" 2>&1 || failed
}

build() {
    [ -t 2 ] && say "building, once after each change …"
    : > "$run/build.log"
    touch "$run/stamp.new"
    build_id=$(sum_of "${sources[@]}")
    rm -f "$run/stamp"
    ask_maven
    compile
    rm -rf "$run/classes"
    mv "$run/classes.new" "$run/classes"
    mv "$jar.new" "$jar"
    rm -f "$run"/*.jsa*
    echo "$build_id" > "$run/stamp"
    touch -r "$run/stamp.new" "$run/stamp"
}

build_if_stale() {
    fresh && return
    mkdir -p "$run"
    if command -v flock > /dev/null; then
        exec 9> "$run/lock"
        flock 9
        fresh || build
        exec 9>&-
    else
        build
    fi
}

# The sources of the test classes of that name, each on a line: Necks, NecksTest, 'Neck*'. Before its last dot may stand their package, whole or
# its last words; a * there is within one word, and the packages below it are others.
tests_named() {
    local class=${1##*.} package='.*'
    [[ $1 == *.* ]] && package=".*/$(pattern "${1%.*}")"
    class=$(pattern "$class")
    (cd "$here" && find src/test/java -regextype posix-extended -regex "$package/($class(Test|IT)|$class)\.java" -regex '.*(Test|IT)\.java' | LC_ALL=C sort)
}

# A name with * and ? as an expression of find for a path.
pattern() { sed -e 's:[.]:/:g' -e 's:[*]:[^/]*:g' -e 's:[?]:[^/]:g' <<< "$1"; }

# Compiles the given test sources and what they use, no others, into the folder; the path on which they run is then $tests.
compile_tests() {
    local folder=$1
    shift
    mkdir -p "$folder"
    tests="$folder:$run/classes:$(cat "$run/test.classpath")"
    (cd "$here" && "$java_home/bin/javac" "${compiler[@]}" -sourcepath src/test/java -implicit:class -cp "$tests" -d "$folder" "$@") \
        > "$folder/compile.log" 2>&1 || {
        tail -n 30 "$folder/compile.log" >&2
        say "build: failed"
        exit 70
    }
    cp -R "$here/src/test/resources/." "$folder"
}

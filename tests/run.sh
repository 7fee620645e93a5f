#!/usr/bin/env bash
# The one test command. Installs what is missing (Debian 12, as root or with sudo), builds and checks everything.
#
# One line per stage: what passed and failed, and the seconds it took; a failing stage prints all it said. The last line
# is "N passed, N failed": the tests of every GoogleTest program under clang with sanitizers, those of whole answers and
# published values under gcc as well, and one for each other check.
# A stage whose inputs did not change since it passed is not run again; its tests still count. All is kept in build/, so
# "rm -rf build" starts from nothing.
#
#   SILLFLOW_JOBS=1 tests/run.sh     compiles one file at a time (default: one per processor)
#   SILLFLOW_FUZZ_RUNS=1000000       fuzzes for longer (default 300000 inputs each; NAME.options may set fewer)
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/.."
exec </dev/null 2>&1

all_passed=0 all_failed=0 finished=no
finish() {  # the count comes last, whatever stopped the run
    if [[ $finished == no ]]; then
        echo "stopped before the end"
        all_failed=$((all_failed + 1))
    fi
    echo "$all_passed passed, $all_failed failed"
    if ((all_failed > 0)); then exit 1; fi
    exit 0
}
trap finish EXIT
trap 'exit 1' INT TERM

if ! source tests/install.sh test; then exit 1; fi

mkdir -p build
exec 9>build/lock
flock 9  # two runs at once would build into the same folders

jobs=${SILLFLOW_JOBS:-$(nproc)}
fuzz_runs=${SILLFLOW_FUZZ_RUNS:-300000}
compilers=$(g++ --version; clang++ --version)
export CCACHE_DIR=${CCACHE_DIR:-$PWD/build/ccache}
export RC_PARAMS="seed=7"  # rapidcheck draws the same cases every time
export ASAN_OPTIONS=detect_leaks=1:allow_addr2line=1 UBSAN_OPTIONS=print_stacktrace=1:allow_addr2line=1
unset GTEST_FILTER

# --- Stages ----------------------------------------------------------------------------------------------------------

# The files under the paths given, as git sees them (new ones too, ignored ones not); without git all of them.
list_files() {
    git -c safe.directory='*' ls-files -z -co --exclude-standard -- "$@" 2>/dev/null ||
        find . -type f -not -path './build*' -not -path './.git/*' -print0
}

hash_inputs() {
    { echo "$compilers $fuzz_runs $RC_PARAMS"
      list_files tests/run.sh "$@" | sort -zu | xargs -0 -r sha256sum 2>/dev/null || true  # deleted ones are not there
    } | sha256sum
}

# stage "name" FOLDER FUNCTION INPUT...: runs FUNCTION FOLDER unless its inputs are those it last passed with. It sets
# passed and failed. The stamp lies in the folder it is about, so that it goes when the folder goes.
declare -A broken=()
stage() {
    local name=$1 folder=$2 run=$3 begin=$SECONDS
    shift 3
    if [[ -n ${broken[$folder]:-} ]]; then
        echo "$name: not run, the build failed"
        return 0
    fi
    mkdir -p "build/$folder"
    local stamp="build/$folder/${name//[^a-z]/-}.stamp" log="build/$folder/${name//[^a-z]/-}.log" key last="" note=""
    key=$(hash_inputs "$@")
    passed=0 failed=0
    if [[ -f $stamp ]]; then { read -r last; read -r passed; } <"$stamp"; fi
    if [[ $last == "$key" ]]; then
        note=", unchanged"
    else
        rm -f "$stamp"
        passed=0
        "$run" "$folder" >"$log" 2>&1 || true
        if ((failed > 0)); then
            cat "$log"
        else
            printf '%s\n%s\n' "$key" "$passed" >"$stamp"
        fi
    fi
    all_passed=$((all_passed + passed))
    all_failed=$((all_failed + failed))
    echo "$name: $passed passed, $failed failed, $((SECONDS - begin)) s$note"
}

check() {  # counts one check that is not a GoogleTest test
    if "$@"; then passed=$((passed + 1)); else failed=$((failed + 1)); fi
}

count_last_line() {  # of a script that ends with "N passed, N failed"
    local output last
    output=$("$@") || true
    echo "$output"
    last=${output##*$'\n'}
    if [[ $last =~ ^([0-9]+)\ passed,\ ([0-9]+)\ failed$ ]]; then
        passed=$((passed + BASH_REMATCH[1]))
        failed=$((failed + BASH_REMATCH[2]))
    else
        failed=$((failed + 1))
    fi
}

# --- What each stage does --------------------------------------------------------------------------------------------

layering() { count_last_line tests/layering/run.sh; }

# What gcc's optimised build is asked besides its answers and the published values, the sanitized one is asked too: two
# builds of every test would take twice the time and say the same.
released=(command_line_test published_test psychro_test)

build() {  # FOLDER option... -- target...
    local folder=$1 options=()
    shift
    while [[ $# -gt 0 && $1 != -- ]]; do options+=("$1") && shift; done
    [[ $# -gt 0 ]] && shift
    cmake -S . -B "build/$folder" -G Ninja -DCMAKE_BUILD_TYPE=Release -DSILLFLOW_TESTS=ON "${options[@]}" &&
        cmake --build "build/$folder" -j "$jobs" ${1:+--target "$@"}
}
build_release() {
    local benches
    mapfile -t benches < <(basename -s .cpp tests/bench/*_bench.cpp)
    check build "$1" -DCMAKE_CXX_COMPILER=g++ -DSILLFLOW_BENCH=ON -- sillflow "${released[@]}" "${benches[@]}"
    if ((failed > 0)); then broken[$1]=yes; fi
}
build_sanitized() {
    # Two at a time at most: a unity file under clang takes over a gigabyte.
    local jobs=$((jobs > 2 ? 2 : jobs))
    check build "$1" -DCMAKE_CXX_COMPILER=clang++ -DSILLFLOW_SANITIZE=ON -DSILLFLOW_FUZZ=ON
    if ((failed > 0)); then broken[$1]=yes; fi
}

# Each program writes its results as XML; one that wrote none, or that failed after writing them (a leak), counts as one.
run_program() {  # RESULTS PROGRAM
    local name=${2##*/} status=0
    # Each draw of its laws is a whole answer of the whole system, ten times slower here.
    if [[ $name == questions_test ]]; then export RC_PARAMS="$RC_PARAMS max_success=25"; fi
    GTEST_OUTPUT="xml:$1/$name.xml" timeout 1200 "$2" >"$1/$name.log" 2>&1 || status=$?
    echo "$status" >"$1/$name.status"
}
export -f run_program
suite() {
    local results="$PWD/build/$1/results" program name status good bad
    rm -rf "$results"
    mkdir -p "$results"
    local programs="build/$1/programs"
    cp "build/$1/tests/programs" "$programs"
    if [[ $1 == release ]]; then grep -E "/($(IFS='|'; echo "${released[*]}"))\$" "build/$1/tests/programs" >"$programs"; fi
    xargs -r -d '\n' -P "$jobs" -I {} bash -c 'run_program "$@"' _ "$results" {} <"$programs"
    while read -r program; do
        name=${program##*/} good=0 bad=0
        status=$(<"$results/$name.status")
        if [[ -f $results/$name.xml ]]; then
            # A test with two failed checks is one failed test; a skipped or disabled one counts as neither.
            read -r good bad < <(awk '/<testcase /{ n += /result="completed"/ }
                /<testsuites /{ match($0, /failures="[0-9]+"/); f = substr($0, RSTART + 10, RLENGTH - 11) }
                END { print n - f, f + 0 }' "$results/$name.xml")
        fi
        if ((status != 0 && bad == 0)); then bad=1; fi
        if ((bad > 0)); then
            echo "--- $name, exit status $status"
            # Of a program that ended in the middle all is shown: its last line is the test that ended it.
            if [[ -f $results/$name.xml ]]; then
                grep -vE '^\[ +(OK|RUN) +\]' "$results/$name.log" || true
            else
                cat "$results/$name.log"
            fi
        fi
        passed=$((passed + good))
        failed=$((failed + bad))
    done <"$programs"
}

# Found inputs go to a copy of the corpus, made anew, so that every run starts from the same one.
fuzz_one() {  # FOLDER NAME
    local corpus="build/$1/corpus/$2"
    rm -rf "$corpus"
    mkdir -p "$corpus"
    if [[ -d tests/fuzz/corpus/$2 ]]; then cp -r "tests/fuzz/corpus/$2/." "$corpus/"; fi
    local options=()  # of this fuzzer alone; a later one of a kind wins
    if [[ -f tests/fuzz/$2.options ]]; then read -ra options <"tests/fuzz/$2.options"; fi
    "build/$1/tests/fuzz/$2_fuzz" -runs="$fuzz_runs" -seed=1 -max_len=4096 -timeout=10 -rss_limit_mb=2048 \
        "${options[@]}" -artifact_prefix="build/$1/$2-" "$corpus" >"build/$1/$2_fuzz.log" 2>&1
}
fuzz() {
    local source names=() running=() name i
    for source in tests/fuzz/*_fuzz.cpp; do
        if [[ -f $source ]]; then names+=("$(basename "$source" _fuzz.cpp)"); fi
    done
    for ((i = 0; i < ${#names[@]}; i += 2)); do  # two at a time
        running=()
        for name in "${names[@]:i:2}"; do
            fuzz_one "$1" "$name" &
            running+=("$name $!")
        done
        for name in "${running[@]}"; do
            if wait "${name#* }"; then
                passed=$((passed + 1))
            else
                cat "build/$1/${name% *}_fuzz.log"
                failed=$((failed + 1))
            fi
        done
    done
}

# The library for moist air is used without the rest as well.
psychro_alone() {
    check eval 'cmake -S psychro -B "build/$1" -G Ninja -DCMAKE_CXX_COMPILER=g++ &&
        cmake --build "build/$1" -j "$jobs" --target psychro'
}

lone_headers() { check cmake --build "build/$1" -j "$jobs" --target lone_headers; }

does_not_compile() {
    local script
    for script in tests/*/does_not_compile/run.sh; do
        if [[ -f $script ]]; then count_last_line bash "$script" g++ "$PWD/src"; fi
    done
}

benchmarks() {  # that they run; their figures are for people
    local source
    for source in tests/bench/*_bench.cpp; do
        if [[ -f $source ]]; then
            check "build/$1/tests/bench/$(basename "$source" .cpp)" --benchmark_min_time=0.01
        fi
    done
}

# --- The run ---------------------------------------------------------------------------------------------------------

code=(CMakeLists.txt src psychro tests cases/least-sheet ':!tests/layering' ':!tests/fuzz/corpus')
text=(cases README.md DEVELOPERS.md)  # what tests read besides the code

stage "layering" layering layering .
stage "gcc build" release build_release "${code[@]}"
stage "suite, gcc" release suite "${code[@]}" "${text[@]}"
stage "clang sanitizer build" sanitize build_sanitized "${code[@]}"
stage "suite, sanitizers" sanitize suite "${code[@]}" "${text[@]}"
stage "lone headers" sanitize lone_headers "${code[@]}"
stage "fuzzers" sanitize fuzz CMakeLists.txt src psychro tests/fuzz
stage "psychro alone" psychro_alone psychro_alone psychro
stage "does not compile" does_not_compile does_not_compile src 'tests/*/does_not_compile/*'
stage "benchmarks" release benchmarks "${code[@]}"
if [[ -x build/release/sillflow && -z ${broken[release]:-} ]]; then
    tests/bench/startup.sh build/release/sillflow || true  # a time is told, never judged
fi
finished=yes

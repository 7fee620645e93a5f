#!/bin/sh
# Mixing quantities must not compile: every case here has to fail, and to compile once its one wrong line is exchanged
# for the right one with -DCOMPILES, so that a broken include cannot pass for a refusal.
# Usage: run.sh CXX SRC_DIR
set -u
compiler=$1
sources=$2
cases=$(dirname "$0")
passed=0
failed=0

compiles() { "$compiler" -std=c++20 -fsyntax-only -I"$sources" "$@" >/dev/null 2>&1; }

for file in "$cases"/*.cpp; do
    name=$(basename "$file" .cpp)
    if ! compiles -DCOMPILES "$file"; then
        echo "FAILED $name: the correct line does not compile"
        failed=$((failed + 1))
    elif compiles "$file"; then
        echo "FAILED $name: the wrong line compiles"
        failed=$((failed + 1))
    else
        echo "passed $name"
        passed=$((passed + 1))
    fi
done

echo "$passed passed, $failed failed"
[ "$passed" -gt 0 ] && [ "$failed" -eq 0 ]

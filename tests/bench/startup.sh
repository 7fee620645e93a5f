#!/usr/bin/env bash
# How long a whole answer takes, launch included, beside an empty C++ program:  tests/bench/startup.sh PROGRAM
# The aim is 1.5 times as long at most. It prints and never fails: times belong to people and to quiet machines.
set -euo pipefail
program=$(realpath "${1:-build/release/sillflow}")
cd "$(dirname "${BASH_SOURCE[0]}")/../.."
sheet=cases/upstairs-bath/house.toml
if [[ ! -x $program || ! -f $sheet ]]; then exit 0; fi

# The empty program is what a tool in C++ costs before it does anything: dynamically linked, streams set up.
mkdir -p build/startup
printf '#include <iostream>\nint main() {}\n' >build/startup/empty.cpp
g++ -O2 -o build/startup/empty build/startup/empty.cpp
g++ -std=c++20 -O2 -o build/startup/timer tests/bench/startup_timer.cpp
echo "sillflow branch $sheet: $(build/startup/timer 300 "$program" branch "$sheet" -- build/startup/empty)"

#!/usr/bin/env bash
# Answers a case's question:  cases/run.sh [NAME]
#
# Installs what is missing to build (Debian 12, as root or with sudo), builds the program in build/program and runs, from
# the top of the repository, the first command shown in cases/NAME/README.md; without a name the main question, the pipe
# for the upstairs bath. The exit status is the program's: 0 yes or probably, 1 no or probably not, 2 the sheet is wrong,
# 3 no solution; 70 when the program could not be built.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/.."

question="sillflow branch cases/upstairs-bath/house.toml"
if (($# > 0)); then
    # The question is shown indented, as a person types it:   "    $ sillflow branch cases/NAME/house.toml"
    readme=cases/$1/README.md
    if [[ ! -f $readme ]]; then
        echo "no case named \"$1\"; there are:" cases/*/ >&2
        exit 2
    fi
    question=$(sed -n 's/^    \$ \(sillflow .*\)$/\1/p' "$readme" | head -n 1)
    if [[ -z $question ]]; then
        echo "$readme shows no line starting with \"    \$ sillflow \"" >&2
        exit 2
    fi
fi

source tests/install.sh build || exit 70
mkdir -p build/program
export CCACHE_DIR=${CCACHE_DIR:-$PWD/build/ccache}
if ! { cmake -S . -B build/program -G Ninja -DCMAKE_CXX_COMPILER=g++ -DCMAKE_BUILD_TYPE=Release &&
    cmake --build build/program; } </dev/null >build/program/log 2>&1; then
    cat build/program/log >&2
    echo "the program could not be built" >&2
    exit 70
fi

echo "\$ $question"
export PATH=$PWD/build/program:$PATH
exec bash -c "$question"  # by the shell, as a question may hold quoted words: --room "north bedroom"

#!/usr/bin/env bash
# Checks what holds the house together, on the sources as text: who includes whom, where streams and third-party libraries
# may be, what stands at the top of the repository. The rules are in rules.awk and in check_tree below. Before that each
# rule proves on a planted mistake that it would be seen. Last line: "N passed, N failed".
set -euo pipefail
here=$(cd "$(dirname "${BASH_SOURCE[0]}")" && pwd)
rules=(include-order psychro third-party streams given subset long-file folder folder-name top-level)

# check_tree ROOT prints the findings in a repository, nothing when there are none.
check_tree() (
    cd "$1"
    find src psychro -path psychro/tests -prune -o \( -name '*.hpp' -o -name '*.cpp' \) -print | LC_ALL=C sort |
        LC_ALL=C xargs -r -d '\n' awk -f "$here/rules.awk"
    # A folder is named after what it is about; these are cupboards.
    find src psychro tests cases -type d \( -name utils -o -name util -o -name common -o -name core -o -name misc \
        -o -name helpers \) -printf '%p:1: folder-name: a cupboard; name what it is about\n'
    # Hidden files and the build folders git ignores are nobody's business.
    { diff <(printf '%s\n' CMakeLists.txt DEVELOPERS.md LICENSE README.md cases psychro src tests | LC_ALL=C sort) \
        <(find . -mindepth 1 -maxdepth 1 -not -name '.*' -not -name build -not -name 'build-*' -printf '%f\n' | LC_ALL=C sort) ||
        true; } |
        sed -n 's/^< \(.*\)/\1:1: top-level: missing/p; s/^> \(.*\)/\1:1: top-level: does not belong at the top/p'
)

passed=0 failed=0
scratch=$(mktemp -d)
trap 'rm -rf "$scratch"' EXIT

clean_tree() {
    rm -rf "$scratch/tree"
    mkdir -p "$scratch/tree"/{src/{units,house,sheet},psychro/tests,tests,cases,build}
    touch "$scratch/tree"/{README.md,DEVELOPERS.md,CMakeLists.txt,LICENSE,.gitignore}
}

# expect RULE FILE TEXT: with TEXT in FILE, exactly RULE is broken ("" for none).
expect() {
    clean_tree
    mkdir -p "$(dirname "$scratch/tree/$2")"
    printf '%b\n' "$3" >"$scratch/tree/$2"
    local findings broken
    findings=$(check_tree "$scratch/tree")
    broken=$(sed -n 's/^[^:]*:[0-9]*: \([a-z-]*\): .*/\1/p' <<<"$findings" | sort -u)
    if [[ $broken == "$1" ]]; then
        passed=$((passed + 1))
    else
        failed=$((failed + 1))
        printf 'planted in %s:  %s\n  should break "%s", breaks "%s"\n%s\n' "$2" "$3" "$1" "$broken" "$findings"
    fi
}

expect "" src/house/room.hpp '#include "units/quantity.hpp"\n#include "house/site.hpp"\n#include <vector>\nGiven<int> a;'
expect "" src/ducts/a.cpp '// std::cout, Given<int>, printf("x")\n/* std::ranges\n Given<int> */ auto a = "std::cout << FILE *";\n#include <boost/graph/a.hpp>'
expect "" src/loads/air.cpp '#include "psychro/density.hpp"\nint forgiven = 1;\nreformat(a);\nsnprintf_like(a);'
expect "" src/command_line/run.cpp '#include <iostream>\n#include <sys/ioctl.h>\n#include "report/page.hpp"\n#include "sheet/read.hpp"'
expect "" src/sillflow.cpp '#include "command_line/run.hpp"\n#include <cstdio>'
expect "" psychro/tests/a_test.cpp '#include <gtest/gtest.h>\n#include <fstream>'
expect "" src/units/write.cpp '#include <fmt/format.h>'
expect include-order src/house/room.hpp '#include "loads/air.hpp"'
expect include-order src/sheet/read.cpp '#include "report/page.hpp"'
expect include-order src/report/page.cpp '  #  include "sheet/read.hpp"'
expect include-order src/units/read.cpp '#include "read.hpp"'
expect include-order src/units/read.cpp '#include "../house/room.hpp"'
expect include-order src/command_line/run.cpp '#include "sillflow.cpp"'
expect psychro psychro/density.cpp '#include "units/quantity.hpp"'
expect psychro src/ducts/friction.cpp '#include "psychro/density.hpp"'
expect third-party psychro/density.cpp '#include <fmt/format.h>'
expect third-party psychro/density.cpp '#include <unistd.h>'
expect third-party src/ducts/tree.hpp '#include <boost/graph/adjacency_list.hpp>'
expect third-party src/loads/a.cpp '#include <boost/graph/adjacency_list.hpp>'
expect third-party src/ducts/a.cpp '#include <Eigen/Sparse>'
expect third-party src/report/a.cpp '#include <toml++/toml.h>'
expect third-party src/sheet/a.hpp '#include <toml++/toml.h>'
expect third-party src/sheet/a.cpp '#include <CLI/CLI.hpp>'
expect third-party src/sheet/a.cpp '#include <nlohmann/json.hpp>'
expect third-party src/units/a.hpp '#include <fmt/format.h>'
expect third-party src/house/a.cpp '#include <valijson/schema.hpp>'
expect streams src/report/a.cpp '#include <iostream>'
expect streams src/sheet/a.cpp '#include <fstream>'
expect streams src/loads/a.cpp '#include <cstdio>'
expect streams psychro/a.cpp '#include <cstdio>'
expect streams src/loads/a.cpp 'void f() { std::printf("%d", 1); }'
expect streams src/loads/a.cpp "char c = '\"'; std::cout << c << '\"';"
expect streams src/loads/a.cpp 'void f(FILE* out);'
expect streams src/loads/a.cpp 'fmt::print("x");'
expect given src/loads/a.hpp 'void f(house::Given<int> a);'
expect given src/report/a.cpp 'Given<int> a;'
expect subset src/questions/a.cpp 'std::ranges::sort(a);'
expect subset src/units/a.cpp 'auto b = a | std::views::reverse;'
expect subset src/house/a.cpp '#include <format>'
expect subset src/house/a.cpp 'std::source_location here;'
expect "" src/report/a.cpp 'std::ranges::sort(a);'
expect long-file src/units/a.cpp "$(printf 'int a;\\n%.0s' {1..301})"
expect "" src/units/a.cpp "$(printf '\\n%.0s' {1..299})"
expect folder src/boxes/a.cpp 'int a;'
expect folder-name tests/helpers/a.hpp 'int a;'
expect folder-name src/units/core/readme.txt 'nothing'
expect top-level docs/a.md 'a'
expect top-level Makefile 'all:'
clean_tree
rm "$scratch/tree/LICENSE"
if [[ $(check_tree "$scratch/tree") == "LICENSE:1: top-level: missing" ]]; then
    passed=$((passed + 1))
else
    failed=$((failed + 1))
    echo "a missing LICENSE was not seen"
fi

# Now the repository itself: one check per rule.
findings=$(check_tree "$here/../..")
for rule in "${rules[@]}"; do
    if grep "^[^:]*:[0-9]*: $rule: " <<<"$findings"; then failed=$((failed + 1)); else passed=$((passed + 1)); fi
done
echo "$passed passed, $failed failed"
if ((failed > 0)); then exit 1; fi

# The rules of the source, one finding a line:  file:line: rule: what is wrong
# Given all .hpp and .cpp of src/ and psychro/ (not its tests), from the top of the repository. See run.sh.

BEGIN {
    count = split("psychro units house loads ducts network registers routes questions sheet report command_line sillflow.cpp",
                  order)
    for (i = 1; i <= count; i++) rank[order[i]] = i
    rank["report"] = rank["sheet"]  # neither is on the other's left

    # Third-party libraries by the start of their includes, and the folders whose .cpp files may use them.
    owner["boost/"] = "ducts routes"; owner["Eigen/"] = "network"; owner["unsupported/"] = "network"
    owner["toml++/"] = "sheet"; owner["CLI/"] = "command_line"; owner["nlohmann/"] = "report"
    owner["pugixml.hpp"] = "report"; owner["mustache.hpp"] = "report"
    owner["fmt/"] = "units house loads ducts network registers routes questions sheet report command_line sillflow.cpp"
}

function found(rule, what) { print FILENAME ":" FNR ": " rule ": " what }

function check_length() {
    if (lines > 300) print file ":" lines ": long-file: over 300 lines; what is the second thing it does?"
}

FNR == 1 {
    check_length()
    file = FILENAME
    split(FILENAME, part, "/")
    folder = part[1] == "psychro" ? "psychro" : part[2]
    header = FILENAME ~ /\.hpp$/
    in_comment = 0
    if (!(folder in rank)) found("folder", "src/" folder " has no place in the order of folders; give it one in " \
                                 "tests/layering/rules.awk and src/CMakeLists.txt")
}
{ lines = FNR }

/^[ \t]*#[ \t]*include[ \t]*"/ {
    split($0, quoted, "\"")
    target = quoted[2]
    slash = index(target, "/")
    target_folder = substr(target, 1, slash - 1)
    if (!slash || !(target_folder in rank))
        found("include-order", "\"" target "\" does not begin with a folder of src or psychro")
    else if (target_folder == folder) ;
    else if (folder == "psychro") found("psychro", "psychro stands alone and may not include \"" target "\"")
    else if (target_folder == "psychro") {
        if (folder != "loads") found("psychro", "only src/loads includes psychro")
    } else if (rank[target_folder] >= rank[folder])
        found("include-order", folder " may not include " target_folder ": it is not on its left")
}

/^[ \t]*#[ \t]*include[ \t]*</ {
    target = $0
    sub(/^[^<]*</, "", target)
    sub(/>.*$/, "", target)
    known = 0
    for (start in owner) {
        if (index(target, start) != 1) continue
        known = 1
        if (header) found("third-party", "<" target "> in a header: keep it in a .cpp")
        else if (index(" " owner[start] " ", " " folder " ") == 0) found("third-party", "<" target "> belongs in " owner[start])
    }
    # The standard library's headers have neither dot nor slash; the system's own are for the command line.
    if (!known && target ~ /[.\/]/ && folder != "command_line") found("third-party", "<" target "> is not the standard library's")
    if (folder != "command_line" && folder != "sillflow.cpp" && target ~ /^(iostream|fstream|cstdio|stdio\.h|ostream|istream|print)$/)
        found("streams", "<" target "> only in src/command_line")
    if (rank[folder] <= rank["questions"] && target ~ /^(ranges|format|source_location)$/)
        found("subset", "<" target "> is missing from clang 14's library")
}

{
    # Code only: without what stands in strings and comments.
    text = $0
    gsub(/'"'/, "' '", text)
    gsub(/"([^"\\]|\\.)*"/, "\"\"", text)
    sub(/\/\/.*$/, "", text)
    gsub(/\/\*[^*]*\*\//, " ", text)
    if (in_comment && sub(/^.*\*\//, "", text)) in_comment = 0
    if (in_comment) next
    if (sub(/\/\*.*$/, "", text)) in_comment = 1
    text = " " text

    if (folder != "command_line" && folder != "sillflow.cpp" &&
        text ~ /[^A-Za-z0-9_](std::w?(cout|cerr|clog|cin)|v?f?printf *\(|fmt::print|f?puts *\(|putchar *\(|fopen *\(|FILE *\*|(std::)?[io]?fstream )/)
        found("streams", "files and streams are read and written in src/command_line only")
    if (folder != "house" && folder != "sheet" && text ~ /[^A-Za-z0-9_]Given *</)
        found("given", "Given<> is known to house and sheet only")
    if (rank[folder] <= rank["questions"] && text ~ /[^A-Za-z0-9_](std::(ranges|views|format)|(std::)?source_location)[^A-Za-z0-9_]/)
        found("subset", "std::ranges, views, format and source_location are missing from clang 14's library")
}

END { check_length() }

#include "command_line/files.hpp"

#include <unistd.h>

#include <cerrno>
#include <cstdio>
#include <cstring>
#include <filesystem>
#include <memory>

namespace command_line {
namespace {

struct Closer {
    void operator()(std::FILE* file) const { std::fclose(file); }
};
using File = std::unique_ptr<std::FILE, Closer>;

[[noreturn]] void fail(const std::string& name, const std::string& why) {
    throw FileTrouble(name + ": " + why);
}

// Written beside and then put into place by its name: a half file is never seen.
std::string written_beside(const std::string& name, std::string_view text) {
    std::string beside = name + ".part-" + std::to_string(getpid());
    const File file(std::fopen(beside.c_str(), "wbx"));
    if (!file) fail(name, std::strerror(errno));
    const bool whole =
        std::fwrite(text.data(), 1, text.size(), file.get()) == text.size() && !std::fflush(file.get());
    if (whole) return beside;
    std::remove(beside.c_str());
    fail(name, "cannot be written");
}

}  // namespace

std::string read_file(const std::string& name) {
    constexpr std::size_t most = std::size_t{2} << 20;
    std::error_code ignored;
    if (std::filesystem::is_directory(name, ignored)) fail(name, "that is a folder, not a sheet");
    const File file(std::fopen(name.c_str(), "rb"));
    if (!file) fail(name, std::strerror(errno));
    std::string text;
    char part[1 << 14];
    while (const std::size_t got = std::fread(part, 1, sizeof part, file.get())) {
        text.append(part, got);
        if (text.size() > most) fail(name, "larger than 2 MiB: that is no house sheet");
    }
    if (std::ferror(file.get())) fail(name, "cannot be read");
    return text;
}

void write_new_file(const std::string& name, std::string_view text) {
    const std::string beside = written_beside(name, text);
    const int linked = link(beside.c_str(), name.c_str());
    const int why = errno;
    std::remove(beside.c_str());
    if (linked != 0) fail(name, why == EEXIST ? "exists already; nothing was written" : std::strerror(why));
}

void write_file(const std::string& name, std::string_view text) {
    const std::string beside = written_beside(name, text);
    if (std::rename(beside.c_str(), name.c_str()) == 0) return;
    const int why = errno;
    std::remove(beside.c_str());
    fail(name, std::strerror(why));
}

void print(std::string_view text) {
    if (std::fwrite(text.data(), 1, text.size(), stdout) != text.size() || std::fflush(stdout) != 0)
        throw FileTrouble("standard output cannot be written");
}

void print_error(std::string_view text) { std::fwrite(text.data(), 1, text.size(), stderr); }

}  // namespace command_line

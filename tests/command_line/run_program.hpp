// Runs the built program as a user would, from the repository's root, and keeps what it said.
#pragma once

#include <sys/wait.h>
#include <unistd.h>

#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <string>

namespace command_line_test {

inline std::string read(const std::filesystem::path& file) {
    std::ifstream in(file, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), {}};
}

// A folder of this test's own, gone when it ends.
class Scratch {
  public:
    Scratch() {
        const std::string unique(6, 'X');  // mkdtemp puts letters of its own in their place
        std::string name = (std::filesystem::temp_directory_path() / ("sillflow-" + unique)).string();
        folder_ = mkdtemp(name.data());
    }
    ~Scratch() { std::filesystem::remove_all(folder_); }
    Scratch(const Scratch&) = delete;
    Scratch& operator=(const Scratch&) = delete;
    std::filesystem::path operator/(const std::string& name) const { return folder_ / name; }
    const std::filesystem::path& folder() const { return folder_; }
    std::filesystem::path write(const std::string& name, const std::string& text) const {
        std::ofstream(folder_ / name, std::ios::binary) << text;
        return folder_ / name;
    }

  private:
    std::filesystem::path folder_;
};

struct Ran {
    int status = -1;
    std::string out, err;
};

// `words`: everything after the program's name, as typed in a shell.
inline Ran run(const std::string& words, const std::string& before = {}) {
    const Scratch scratch;
    const std::string command = "cd '" SILLFLOW_SOURCE_DIR "' && " + before + " '" SILLFLOW_PROGRAM "' " +
                                words + " >'" + (scratch / "out").string() + "' 2>'" +
                                (scratch / "err").string() + "' </dev/null";
    const int status = std::system(command.c_str());
    return {WIFEXITED(status) ? WEXITSTATUS(status) : 128 + WTERMSIG(status), read(scratch / "out"),
            read(scratch / "err")};
}

}  // namespace command_line_test

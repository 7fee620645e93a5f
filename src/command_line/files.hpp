// Reading and writing files and the standard streams.
#pragma once

#include <stdexcept>
#include <string>
#include <string_view>

namespace command_line {

// "house.toml: no such file". The message is ready to print.
class FileTrouble : public std::runtime_error {
  public:
    using std::runtime_error::runtime_error;
};

// The whole file, at most 2 MiB (the sheet's own reader refuses less politely sized ones); throws
// FileTrouble.
std::string read_file(const std::string& name);
// Writes a new file whole or not at all; throws FileTrouble, also where the file exists already.
void write_new_file(const std::string& name, std::string_view text);
// The same, but what the file held is replaced.
void write_file(const std::string& name, std::string_view text);

void print(std::string_view text);        // standard output; throws FileTrouble where it cannot be written
void print_error(std::string_view text);  // standard error

}  // namespace command_line

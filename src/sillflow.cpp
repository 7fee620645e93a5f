// sillflow: residential supply-and-return duct sizing for a house with its walls open.
#include "command_line/run.hpp"

int main(int argc, char** argv) { return command_line::run(argc, argv); }

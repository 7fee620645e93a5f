// Times how long commands take from launch to end, side by side:  startup_timer RUNS COMMAND... -- COMMAND...
//
// The two commands take turns, so that whatever else the machine does falls on both. They are started by
// posix_spawn with all output thrown away; medians in ms and their ratio (first to second) are printed. Exit
// status 2 when one cannot start.
#include <fcntl.h>
#include <spawn.h>
#include <sys/wait.h>
#include <unistd.h>

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <cstring>
#include <vector>

namespace {

double run_once(char** words) {
    posix_spawn_file_actions_t actions;
    posix_spawn_file_actions_init(&actions);
    posix_spawn_file_actions_addopen(&actions, 1, "/dev/null", O_WRONLY, 0);
    posix_spawn_file_actions_addopen(&actions, 2, "/dev/null", O_WRONLY, 0);
    const auto begin = std::chrono::steady_clock::now();
    pid_t child = 0;
    if (posix_spawn(&child, words[0], &actions, nullptr, words, environ) != 0) {
        std::printf("cannot start %s\n", words[0]);
        std::exit(2);
    }
    int status = 0;
    waitpid(child, &status, 0);
    const std::chrono::duration<double, std::milli> taken = std::chrono::steady_clock::now() - begin;
    posix_spawn_file_actions_destroy(&actions);
    return taken.count();
}

double median(std::vector<double> times) {
    const auto middle = times.begin() + static_cast<std::ptrdiff_t>(times.size() / 2);
    std::nth_element(times.begin(), middle, times.end());
    return *middle;
}

}  // namespace

int main(int count, char** words) {
    char** const end = words + count;
    char** const split =
        std::find_if(words, end, [](const char* word) { return std::strcmp(word, "--") == 0; });
    if (count < 5 || split == end || split + 1 == end) return 2;
    *split = nullptr;  // ends the first command; argv itself ends the second

    const int runs = std::atoi(words[1]);
    if (runs < 1) return 2;
    std::vector<double> first, second;
    for (int run = 0; run < runs; ++run) {
        first.push_back(run_once(words + 2));
        second.push_back(run_once(split + 1));
    }
    std::printf("%.2f ms, %.2f ms for an empty program: %.2f times\n", median(first), median(second),
                median(first) / median(second));
}

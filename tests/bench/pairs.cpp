// pairs: times two commands as fresh processes, turn by turn, and compares them pair by pair, so
// that a machine that drifts touches both alike.
//   pairs COUNT 'COMMAND A' 'COMMAND B'
#include <sys/wait.h>
#include <unistd.h>

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <string>
#include <vector>

namespace {

// Runs a command to its end without its output; milliseconds. Leaves when the command fails.
double run(const std::string& command) {
  const std::string quiet = "exec " + command + " >/dev/null";
  const auto begin = std::chrono::steady_clock::now();
  const pid_t child = fork();
  if (child == 0) {
    execl("/bin/sh", "sh", "-c", quiet.c_str(), static_cast<char*>(nullptr));
    _exit(127);
  }
  int status = 0;
  waitpid(child, &status, 0);
  const std::chrono::duration<double, std::milli> took = std::chrono::steady_clock::now() - begin;
  if (status != 0) {
    std::fprintf(stderr, "failed: %s\n", command.c_str());
    std::exit(1);
  }
  return took.count();
}

double median(std::vector<double> values) {
  std::sort(values.begin(), values.end());
  const size_t middle = values.size() / 2;
  return values.size() % 2 ? values[middle] : (values[middle - 1] + values[middle]) / 2;
}

}  // namespace

int main(int count, char** arguments) {
  const int pairs = count == 4 ? std::atoi(arguments[1]) : 0;
  if (pairs < 1) return std::fputs("usage: pairs COUNT 'COMMAND A' 'COMMAND B'\n", stderr), 2;
  std::vector<double> a, b, ratios;
  for (int i = -1; i < pairs; ++i) {  // the first pair warms the file cache and is not counted
    const bool a_first = i % 2 == 0;
    const double first = run(arguments[a_first ? 2 : 3]), second = run(arguments[a_first ? 3 : 2]);
    if (i < 0) continue;
    a.push_back(a_first ? first : second);
    b.push_back(a_first ? second : first);
    ratios.push_back(a.back() / b.back());
  }
  std::printf("A: %.1f ms\nB: %.1f ms\nA / B, median of %d pairs: %.2f\n", median(a), median(b),
              pairs, median(ratios));
}

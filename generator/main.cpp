#include <cstdio>
#include <string>
#include <vector>

#include "cli/cli.h"
#include "world/world.h"

int main(int argc, char** argv) {
  const auto to = [](std::FILE* file) {
    return [file](std::string_view text) { std::fwrite(text.data(), 1, text.size(), file); };
  };
  const auto world = loamsheet::real_world();
  const int code = loamsheet::run({argv + 1, argv + argc}, *world, {to(stdout), to(stderr)});
  const bool written = std::fflush(stdout) == 0 && std::ferror(stdout) == 0;
  return written || code > 3 ? code : 3;
}

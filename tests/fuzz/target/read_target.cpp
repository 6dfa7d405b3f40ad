// A libFuzzer target for the reader, built by hand:
//   clang++ -std=c++20 -g -O1 -fsanitize=fuzzer,address,undefined -Igenerator \
//     tests/fuzz/target/read_target.cpp generator/read/*.cpp generator/base/*.cpp -lyaml-cpp -o
//     fuzz
//   ./fuzz -max_len=4096 COPY_OF_THE_CORPUS tests/cases/broken
// What it finds goes into tests/fuzz/corpus, which every test run replays.
#include <cstdint>
#include <cstdlib>

#include "read/read.h"

extern "C" int LLVMFuzzerTestOneInput(const uint8_t* data, size_t size) {
  loamsheet::MemoryWorld world;
  world.files["spec.yaml"].assign(reinterpret_cast<const char*>(data), size);
  const auto read = loamsheet::read_spec(world, "spec.yaml", "");
  if (read.value.has_value() == !read.messages.empty()) std::abort();
  loamsheet::render(read.messages, [](const std::string&, int) { return "a line"; });
  if (read.value) loamsheet::dump(*read.value);
  return 0;
}

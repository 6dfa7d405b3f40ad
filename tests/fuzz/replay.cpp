// The reader never crashes or hangs, and always says something: the corpus, texts too large to
// keep in files, and a spec with bytes changed in a fixed random order.
#include <algorithm>
#include <catch2/catch.hpp>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <random>

#include "base/text.h"
#include "read/read.h"

using namespace loamsheet;

namespace {

std::string file_text(const std::filesystem::path& path) {
  std::ifstream in(path, std::ios::binary);
  return {std::istreambuf_iterator<char>(in), {}};
}

const std::filesystem::path source(LOAMSHEET_SOURCE);

// Reads a text and holds what must be true of any text.
Outcome<Spec> read_any(const std::string& text) {
  MemoryWorld world;
  world.files["spec.yaml"] = text;
  auto read = read_spec(world, "spec.yaml", "");
  CHECK(read.value.has_value() == read.messages.empty());
  const auto lines = split(text, '\n');
  for (const auto& d : read.messages) {
    CHECK_FALSE(d.message.empty());
    CHECK(d.where.line >= 1);
    CHECK(d.where.line <= static_cast<int>(lines.size()));
    CHECK(d.where.column >= 1);
    CHECK(d.where.length >= 1);
    CHECK((!d.edit || d.edit->where.file == "spec.yaml"));
  }
  if (read.messages.size() < 50) {
    render(read.messages,
           [&](const std::string&, int n) { return lines[static_cast<size_t>(n - 1)]; });
  }
  return read;
}

std::string repeated(std::string_view piece, size_t times) {
  std::string out;
  for (size_t i = 0; i < times; ++i) out += piece;
  return out;
}

std::string first_message(const std::string& text) {
  const auto read = read_any(text);
  return read.messages.empty() ? "" : read.messages.front().message;
}

}  // namespace

TEST_CASE("the corpus is read without a crash") {
  size_t files = 0;
  for (const auto& entry : std::filesystem::directory_iterator(source / "tests/fuzz/corpus")) {
    INFO(entry.path().filename().string());
    read_any(file_text(entry.path()));
    ++files;
  }
  CHECK(files >= 20);
}

TEST_CASE("hostile sizes are refused or survived") {
  constexpr size_t mebibyte = 1024 * 1024;
  CHECK(first_message(std::string(mebibyte + 1, ' ')) == "the file is larger than 1 MiB");
  CHECK(first_message(repeated("[", 10000)) == "more than 16 levels of maps and lists");
  CHECK(first_message(repeated("{a: ", 10000)) == "more than 16 levels of maps and lists");
  CHECK(first_message(repeated("- ", 10000)) == "more than 16 levels of maps and lists");
  CHECK(first_message("a: \"" + std::string(500000, 'x')) == "this quote is never closed");
  CHECK(first_message("title: " + std::string(500000, 'x')).starts_with("unknown key"));
  read_any(std::string(500000, 'k') + ": 1");
  read_any("use: [" + repeated("a,", 50000) + "a]");
  read_any("lamps: [" + repeated("{a: b},", 20000) + "{}]");
  read_any(repeated("? ", 100000));
  read_any(repeated("a: ?\n", 20000));
  read_any("enclosure: {height: " + repeated("½", 100000) + " cm}");
}

TEST_CASE("control characters and foreign encodings are refused") {
  CHECK(first_message(std::string("a: \0b", 5)) == "a control character stands here");
  CHECK(first_message("a: \x04") == "a control character stands here");
  CHECK(first_message("a: \xC2\x85 \xC2\x80") == "a control character stands here");
  CHECK(first_message("a: \xFF") == "the file is not UTF-8 text");
  CHECK(first_message("a: \xC0\xAF") == "the file is not UTF-8 text");
  CHECK(first_message("a: \xED\xA0\x80") == "the file is not UTF-8 text");
  CHECK(first_message(std::string("\xFE\xFF\0a", 4)) == "the file is not UTF-8 text");
  CHECK(first_message("a\rb: 1") == "a control character stands here");
}

TEST_CASE("a spec with changed bytes is read without a crash") {
  const std::string whole = file_text(source / "tests/cases/design-example.yaml");
  const std::string_view signs = "{}[],:#?&*!|>'\"%@`-\n \t\\~<=";
  std::mt19937 random(20260307);
  for (int round = 0; round < 600; ++round) {
    std::string text = whole;
    for (int i = 0; i < 3; ++i) text[random() % text.size()] = signs[random() % signs.size()];
    read_any(text);
  }
}

TEST_CASE("a spec cut off anywhere is read without a crash") {
  const std::string whole = file_text(source / "tests/cases/design-example.yaml");
  for (size_t length = 0; length < whole.size(); length += 13) read_any(whole.substr(0, length));
}

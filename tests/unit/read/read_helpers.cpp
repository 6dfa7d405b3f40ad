#include "read_helpers.h"

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <tuple>

#include "base/text.h"

using namespace loamsheet;

std::string source_path(const std::string& name) {
  return std::string(LOAMSHEET_SOURCE) + '/' + name;
}

std::string file_text(const std::string& path) {
  std::ifstream in(path, std::ios::binary);
  return {std::istreambuf_iterator<char>(in), {}};
}

void write_file(const std::string& path, const std::string& text) {
  std::ofstream(path, std::ios::binary) << text;
}

MemoryWorld world_with_profiles() {
  MemoryWorld world;
  for (const auto& entry : std::filesystem::directory_iterator(source_path("specs/profiles"))) {
    const std::string name = entry.path().filename().string();
    world.files["specs/profiles/" + name] = file_text(entry.path().string());
  }
  return world;
}

std::string rendered(World& world, const std::vector<Diagnostic>& messages) {
  return render(messages, [&](const std::string& file, int line) -> std::string {
    const auto lines = split(world.read(file).value_or(""), '\n');
    const auto at = static_cast<size_t>(line - 1);
    return at < lines.size() ? lines[at] : "";
  });
}

namespace {

size_t byte_of(const std::string& text, int line, int column) {
  size_t at = 0;
  for (int i = 1; i < line; ++i) at = text.find('\n', at) + 1;
  const std::string rest = text.substr(at);
  return at + slice(rest, 0, column - 1).size();
}

}  // namespace

std::string edited(const std::string& text, const std::vector<Diagnostic>& messages) {
  std::vector<Edit> edits;
  for (const auto& d : messages) {
    if (d.edit) edits.push_back(*d.edit);
  }
  std::sort(edits.begin(), edits.end(), [](const Edit& a, const Edit& b) {
    return std::tie(b.where.line, b.where.column) < std::tie(a.where.line, a.where.column);
  });
  std::string out = text;
  for (const auto& e : edits) {
    const size_t begin = byte_of(out, e.where.line, e.where.column);
    const size_t end = byte_of(out, e.where.line, e.where.column + e.where.length);
    out.replace(begin, end - begin, e.text);
  }
  return out;
}

std::string small_spec(const std::string& more) {
  return "use: [tank-90x45x60, humid-sloped]\n"
         "build: {title: Fern ravine, reference: TT-0142, plant_on: 2026-03-07}\n" +
         more;
}

Outcome<Spec> read_small(const std::string& more) {
  MemoryWorld world = world_with_profiles();
  world.files["spec.yaml"] = small_spec(more);
  return read_spec(world, "spec.yaml", "");
}

// Each key of the spec moves an output that keys.txt names.
#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>
#include <set>

#include "base/text.h"
#include "compose/compose.h"
#include "data/data.h"
#include "job/job.h"
#include "layout/layout.h"
#include "overlay.h"
#include "read/key.h"
#include "texts.h"

namespace {

using namespace loamsheet;
using Json = nlohmann::json;

struct Row {
  std::string key, place, before, after, output;
};

std::vector<std::string> parted(std::string text, const std::string& at) {
  std::vector<std::string> parts;
  for (size_t found; (found = text.find(at)) != std::string::npos;
       text.erase(0, found + at.size())) {
    parts.push_back(text.substr(0, found));
  }
  parts.push_back(text);
  return parts;
}

std::vector<Row> rows() {
  std::vector<Row> all;
  for (const auto& line : parted(slurp("keys.txt"), "\n")) {
    if (line.empty() || line[0] == '#') continue;
    const auto cells = parted(line, " | ");
    REQUIRE(cells.size() == 3);
    if (cells[1] == "elsewhere") {
      all.push_back({cells[0], "", "", "", ""});
      continue;
    }
    auto texts = parted(cells[1], " -> ");
    for (auto& text : texts) text = join(split(text, '@'), "\n");
    REQUIRE(texts.size() >= 2);
    const std::string& before = texts.size() == 3 ? texts[1] : texts[0];
    all.push_back({cells[0], texts[0], before, texts.back(), cells[2]});
  }
  return all;
}

std::string drafted(World& world, const Planned& planned, const std::string& output) {
  const auto draft = loamsheet::draft(world, planned, {});
  REQUIRE(draft);
  if (output == "figures") return dump(draft.value->figures);
  return output == "pages" ? dump(draft.value->pages) : dump(draft.value->sheet);
}

std::string output_of(const std::string& spec, const std::string& output) {
  Overlay world("keys.yaml", spec);
  const auto planned = plan_spec(world, "keys.yaml", "");
  INFO(render(planned.messages, nullptr));
  REQUIRE(planned);
  const Planned& p = *planned.value;
  if (output == "files") return file_stem(p.build, false);
  if (output == "sheet" || output == "figures" || output == "pages") {
    return drafted(world, p, output);
  }
  const auto numbers = Json::parse(numbers_json({p.build, p.plan, p.wording}));
  std::string path;
  for (const auto& step : split(output, '.')) path += '/' + step;
  const Json::json_pointer at(path);
  REQUIRE(numbers.contains(at));
  return numbers.at(at).dump();
}

// True when a row tests the key, or something inside it.
bool covered(std::string_view path, const std::set<std::string>& tested) {
  for (const auto& key : tested) {
    const bool inside =
        key.starts_with(path) &&
        (key.size() == path.size() || key[path.size()] == '.' || key[path.size()] == '[');
    if (inside || path.starts_with(key + '[')) return true;
  }
  return false;
}

}  // namespace

TEST_CASE("each key moves the output that its row names") {
  const std::string base = slurp("keys-base.yaml");
  for (const Row& row : rows()) {
    const Key* key = find_key(spec_keys(), row.key);
    INFO(row.key);
    REQUIRE(key);
    if (row.output.empty()) continue;
    DYNAMIC_SECTION(row.key << " moves " << row.output) {
      CHECK(output_of(changed(base, row.place, row.before), row.output) !=
            output_of(changed(base, row.place, row.after), row.output));
    }
  }
}

TEST_CASE("each key that means something has a row") {
  std::set<std::string> tested;
  for (const Row& row : rows()) tested.insert(row.key);
  for (const Key& key : spec_keys()) {
    INFO(key.path);
    CHECK(covered(key.path, tested));
  }
}

// What is compiled at build time is what the YAML files say, and is never taken for another file.
#include "read/compiled.h"

#include <catch2/catch.hpp>

#include "read_helpers.h"
#include "world/world.h"

using namespace loamsheet;

namespace {

std::string shown(const Span& s) {
  return s.file + ':' + std::to_string(s.line) + ':' + std::to_string(s.column) + '+' +
         std::to_string(s.length);
}

// Everything that a tree says, value by value.
std::string listed(const Raw& raw) {
  std::string out = std::to_string(static_cast<int>(raw.form)) + (raw.quoted ? 'q' : '-') +
                    (raw.flow ? 'f' : '-') + ' ' + shown(raw.where) + ' ' +
                    std::to_string(raw.begin) + '-' + std::to_string(raw.end) + " <" + raw.text +
                    ">\n";
  for (const RawEntry& e : raw.entries) {
    out += "key " + e.key + ' ' + shown(e.name) + ' ' + std::to_string(e.begin) + '-' +
           std::to_string(e.end) + ' ' + listed(e.value);
  }
  for (const Raw& item : raw.items) out += "item " + listed(item);
  return out;
}

std::string as_read(const std::string& name, const std::string& text) {
  return listed(parse_yaml(SourceText(name, text)).root);
}

std::string as_opened(const YamlFile& file) {
  return listed(file.tree().opened());
}

CompiledData data_of(const std::string& name, const std::string& text) {
  return std::make_shared<const std::string>(
      compile({std::make_shared<const YamlFile>(name, text)}));
}

const std::string small =
    "a: one two\nb: {c: [1, \"2\"], d: ?}\n\"e f\": |\n  lines\n  of it\nempty:\nlist:\n  - x\n";

}  // namespace

TEST_CASE("every file that ships is compiled, and gives what its YAML gives") {
  const auto world = real_world();
  const std::string root = LOAMSHEET_SOURCE;
  const auto names = shipped_files(*world, root);
  CHECK(names.size() > 50);
  CHECK(compiled_names(world->compiled()) == names);
  for (const std::string& name : names) {
    INFO(name);
    const std::string text = world->read(root + '/' + name).value();
    const auto file = compiled_file(world->compiled(), name);
    REQUIRE(file);
    CHECK(file->bytes() == text);
    CHECK((as_opened(*file) == as_read(name, text)));
    CHECK(file->problems().empty());
  }
}

TEST_CASE("a packed tree opens as it was, in whole and in parts") {
  for (const std::string text :
       {small.c_str(), "[]", "{}", "one", "'it''s'", "- - - a\n", "a: ~\nb: null\nc:\n",
        "\xEF\xBB\xBFx: °C\r\ny: {z: \"\\u00B0 \\\" ½\"}\r\n", "? a\n: b\n", "a: &x 1\nb: *x\n"}) {
    INFO(text);
    const YamlFile file("d.yaml", text);
    CHECK(as_opened(file) == as_read("d.yaml", text));
    const Raw whole = file.tree().opened();
    const auto entries = file.tree().entries();
    REQUIRE(entries.size() == whole.entries.size());
    for (size_t i = 0; i < entries.size(); ++i) {
      CHECK(entries[i].key == whole.entries[i].key);
      CHECK(entries[i].name() == whole.entries[i].name);
      CHECK(listed(entries[i].value.opened()) == listed(whole.entries[i].value));
      CHECK(entries[i].value.end() == whole.entries[i].value.end);
    }
    REQUIRE(file.tree().items().size() == whole.items.size());
    for (size_t i = 0; i < whole.items.size(); ++i) {
      CHECK(listed(file.tree().items()[i].opened()) == listed(whole.items[i]));
    }
  }
}

TEST_CASE("a file that was changed is read afresh, be it by one letter") {
  const auto data = data_of("d.yaml", small);
  const auto same = shipped_file(data, "d.yaml", small);
  CHECK(same->packed().data() == compiled_file(data, "d.yaml")->packed().data());
  std::string other = small;
  other[3] = '2';
  const auto changed = shipped_file(data, "d.yaml", other);
  CHECK(changed->packed().data() != same->packed().data());
  CHECK(as_opened(*changed) == as_read("d.yaml", other));
  CHECK(as_opened(*shipped_file(data, "new.yaml", small)) == as_read("new.yaml", small));
  CHECK(as_opened(*shipped_file(nullptr, "d.yaml", small)) == as_read("d.yaml", small));
}

TEST_CASE("data that are torn or damaged anywhere change no answer") {
  const std::string whole = *data_of("d.yaml", small);
  const std::string right = as_read("d.yaml", small);
  for (size_t at = 0; at < whole.size(); ++at) {
    std::string damaged = whole;
    damaged[at] = static_cast<char>(damaged[at] ^ 0x11);
    const auto data = std::make_shared<const std::string>(std::move(damaged));
    const auto torn = std::make_shared<const std::string>(whole.substr(0, at));
    INFO(at);
    CHECK(as_opened(*shipped_file(data, "d.yaml", small)) == right);
    CHECK(as_opened(*shipped_file(torn, "d.yaml", small)) == right);
    CHECK_FALSE(compiled_file(torn, "d.yaml"));
  }
}

TEST_CASE("data of another version of the program are left alone") {
  std::string other = *data_of("d.yaml", small);
  other.replace(other.find("loamsheet "), 11, "loamsheet 9");
  CHECK(compiled_names(std::make_shared<const std::string>(other)).empty());
}

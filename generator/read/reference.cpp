#include "base/text.h"
#include "read/read.h"
#include "read/unit.h"

namespace loamsheet {
namespace {

std::string first_name(std::string_view path) {
  return std::string(path.substr(0, path.find_first_of(".[")));
}

// A pipe would end the cell.
std::string cell(std::string_view text) {
  std::string out;
  for (char c : text) out += c == '|' ? std::string("\\|") : std::string(1, c);
  return out;
}

std::string code(std::string_view text) {
  return text.empty() ? "" : '`' + cell(text) + '`';
}

std::string value_words(const Key& key) {
  Key bare = key;
  bare.example = "";
  std::string words = expectation(bare);
  if (!key.unknown.empty()) words += " (then " + std::string(key.unknown) + ')';
  return words;
}

std::string when_words(const Key& key) {
  if (key.when.starts_with('-')) return "without `" + std::string(key.when.substr(1)) + '`';
  const size_t equals = key.when.find('=');
  return "with `" + std::string(key.when.substr(0, equals)) + "` " +
         join(split(key.when.substr(equals + 1), '|'), ", ");
}

std::string needed_words(const Key& key) {
  std::string words;
  if (key.has(flag::required)) words = "required";
  if (!key.when.empty()) words += (words.empty() ? "only " : " ") + when_words(key);
  if (!key.fallback.empty())
    words += (words.empty() ? "" : ", ") + code(key.fallback) + " if absent";
  return words;
}

std::string row_of(const Key& key) {
  return "| " + code(key.path) + " | " + cell(value_words(key)) + " | " + needed_words(key) +
         " | " + (key.has(flag::profile_ok) ? "yes" : "") + " | " + cell(key.help) + " | " +
         code(key.example) + " |\n";
}

std::string head_of(const std::string& name) {
  return "\n## " + name +
         "\n\n| key | value | needed | in a profile | what it says | example |\n"
         "|---|---|---|---|---|---|\n";
}

std::string contents() {
  std::string out, last;
  for (const Key& key : spec_keys()) {
    const std::string name = first_name(key.path);
    if (name != last) out += "- [" + name + "](#" + name + ")\n";
    last = name;
  }
  return out;
}

}  // namespace

std::string key_reference() {
  std::string out =
      "# The keys of a spec\n\nMade from the table that the reader uses; do not edit. `[]` is an "
      "item of a list, `*` a free name.\n\n" +
      contents();
  std::string last;
  for (const Key& key : spec_keys()) {
    const std::string name = first_name(key.path);
    if (name != last) out += head_of(name);
    last = name;
    out += row_of(key);
  }
  return out;
}

}  // namespace loamsheet

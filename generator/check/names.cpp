#include "check/names.h"

#include "base/text.h"

namespace loamsheet {

void unknown_name(Checking& c, const Word& word, std::string_view what,
                  const std::vector<std::string>& known) {
  Diagnostic d{.where = word.where,
               .message = "unknown " + std::string(what) + " '" + word.typed + "'"};
  if (const auto near = closest(word.typed, known)) {
    d.hint = "did you mean '" + *near + "'?";
    d.edit = Edit{word.where, *near};
  } else if (known.size() <= 12) {
    d.expected = "one of " + join(known, ", ");
  } else {
    d.expected = "an id of the catalogue, such as " + known.front();
  }
  c.error(std::move(d));
}

Word word_of(const Node& leaf) {
  const auto* text = std::get_if<std::string>(&leaf.leaf);
  return {text ? *text : "", leaf.where};
}

std::string resolve(Checking& c, const Node& leaf, std::string_view what, const Shelf& shelf) {
  const auto* typed = std::get_if<std::string>(&leaf.leaf);
  if (!typed) return "";
  if (shelf.has(*typed)) return *typed;
  const auto now = shelf.renamed(*typed);
  if (!now) {
    unknown_name(c, word_of(leaf), what, shelf.ids());
    return "";
  }
  c.error({.severity = Severity::warning,
           .where = leaf.where,
           .message = "'" + *typed + "' is now called '" + *now + "'",
           .hint = "write '" + *now + "'",
           .edit = Edit{leaf.where, *now}});
  return *now;
}

}  // namespace loamsheet

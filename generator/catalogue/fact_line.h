// fact_line: one line of an entry's `facts`, values that share an origin.
#pragma once
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "base/diagnostic.h"
#include "base/units.h"
#include "catalogue/catalogue.h"
#include "catalogue/fact.h"
#include "read/node.h"

namespace loamsheet {

// The origin that a leaf names; an error when it is neither a source nor one of the two words.
Origin origin_of(const Node& from, const Shelf& sources, Sink&);

class FactLine {
 public:
  FactLine(const Node& line, const Shelf& sources, Sink& sink);

  const Node& node() const { return line_; }
  const Origin& origin() const { return origin_; }

  // Each puts the value of a key, if the line has it, where it belongs. A fact that an earlier
  // line stated already is an error.
  template <class U>
  void take(std::string_view key, std::optional<Fact<Range<Amount<U>>>>& into) const {
    if (const auto r = range(key, into.has_value())) into = {{{r->low}, {r->high}}, origin_};
  }
  template <class U>
  void take(std::string_view key, std::optional<Fact<Amount<U>>>& into) const {
    if (const auto r = range(key, into.has_value())) into = {{r->low}, origin_};
  }
  void take(std::string_view key, std::optional<Fact<Range<double>>>& into) const;
  void take(std::string_view key, std::optional<Fact<double>>& into) const;
  void take(std::string_view key, std::optional<Fact<int>>& into) const;
  void take(std::string_view key, std::optional<Fact<bool>>& into) const;
  void take(std::string_view key, std::optional<Fact<std::string>>& into) const;
  void take(std::string_view key, std::optional<Fact<std::vector<std::string>>>& into) const;

  // The line's hazards go behind those of earlier lines.
  void take(std::vector<Hazard>& hazards) const;

 private:
  const Node* fresh(std::string_view key, bool stated) const;
  std::vector<std::string> names(std::string_view key) const;
  std::optional<Range<double>> range(std::string_view key, bool stated) const;

  const Node& line_;
  Sink& sink_;
  Origin origin_;
};

}  // namespace loamsheet

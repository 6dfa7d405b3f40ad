// wording: every sentence the sheets say, by name, with named slots; and how amounts are written
// in the spec's units and language.
#pragma once
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <variant>
#include <vector>

#include "base/arg.h"
#include "base/date.h"
#include "base/diagnostic.h"
#include "base/units.h"
#include "base/world.h"
#include "catalogue/amounts.h"
#include "catalogue/lacking.h"

namespace loamsheet {

enum class UnitSystem { metric, us };

// The words of templates/LANGUAGE/*.yaml (flat "name: sentence" files; file layers.yaml holds the
// names that start with "layers.").
class Wording {
 public:
  Wording(std::map<std::string, std::string> sentences, UnitSystem units,
          std::string language = "en");

  // The sentence with its slots filled. Throws Lacking for a name, slot or form that is not there.
  //
  // A slot may name the form of its amount: "{volume:dry}" is written in litres or, in the US, in
  // dry quarts, by which loose goods are sold there; "{volume}" of water in liquid units. The forms
  // are the lines of templates/LANGUAGE/units.yaml.
  std::string say(std::string_view name, const Args& = {}) const;
  bool knows(std::string_view name) const;

  // An amount on its own, with a no-break space before its unit: "13.5 L".
  std::string amount(const Arg&, std::string_view form = "") const;
  UnitSystem units() const { return units_; }
  const std::map<std::string, std::string>& sentences() const { return sentences_; }

 private:
  std::optional<std::string> slot(std::string_view slot, const Args& args) const;
  Lacking lack(std::string_view name, std::string message) const;
  Lacking no_line(std::string_view name) const;
  Lacking unfilled(std::string_view name, std::string_view slot) const;
  std::string written(const Arg&, const std::string& form) const;
  std::string written(Date, const std::string& form) const;
  void read_steps(const std::string& prefix);

  std::map<std::string, std::string> sentences_;
  std::map<std::string, std::vector<UnitStep>> steps_;  // by kind of amount and form
  std::optional<NumberForm> numbers_;
  UnitSystem units_;
  std::string language_;
};

// Reads templates/LANGUAGE/. A file, sentence or slot that English has and the language has not, or
// the other way round, is an error, and so is a name that does not start with its file's stem.
Outcome<Wording> read_wording(World&, const std::string& language, UnitSystem);

}  // namespace loamsheet

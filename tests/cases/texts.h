// texts: the base specs of this folder, and changes to them.
#pragma once
#include <catch2/catch.hpp>
#include <fstream>
#include <sstream>
#include <string>

namespace loamsheet {

inline std::string slurp(const std::string& name) {
  std::ostringstream text;
  text << std::ifstream(LOAMSHEET_SOURCE "/tests/cases/" + name).rdbuf();
  return text.str();
}

// A spec with the text at `place`, which stands there once, put otherwise.
inline std::string changed(const std::string& spec, const std::string& place,
                           const std::string& text) {
  if (place == "(end)") return spec + text + '\n';
  const size_t at = spec.find(place);
  REQUIRE(at != std::string::npos);
  REQUIRE(spec.find(place, at + 1) == std::string::npos);
  return std::string(spec).replace(at, place.size(), text);
}

}  // namespace loamsheet

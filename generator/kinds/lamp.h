// lamp: the kinds of lamp, a row each.
#pragma once
#include <span>
#include <string_view>

namespace loamsheet {

struct LampKind {
  std::string_view id;
  std::string_view keys;   // "width|depth": the measures that its light is worked out from
  std::string_view item;   // on the pull list
  std::string_view label;  // the sentence that names it in drawings

  // How its light spreads: from along a line, from a level panel, or in a beam from a point.
  enum class Shines { line, panel, beam } shines = Shines::line;

  // How it is drawn: by its measures, or as a disc from above and a cone from the side.
  enum class Sign { box, cone } sign = Sign::box;

  bool uv = false;             // is there for its UV: wants a table of it
  bool warms_a_place = false;  // an animal basks in its beam

  static std::span<const LampKind> all();
};

}  // namespace loamsheet

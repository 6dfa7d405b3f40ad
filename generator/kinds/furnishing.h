// furnishing: the kinds of furnishing, a row each.
#pragma once
#include <span>
#include <string_view>

namespace loamsheet {

struct FurnishingKind {
  std::string_view id;
  std::string_view keys;
  std::string_view item = "";  // on the pull list; none of a mere place
  std::string_view label;      // the sentence that names it in drawings

  // How it is drawn; figure/furnishing_signs.cpp has the drawings.
  enum class Sign { tube, rod, board, bowl, stone, roofed, rimmed } sign = Sign::stone;

  // What of space it takes up: an upright box, which stands or hangs; a rod from one place to
  // another; a board, whose place is its top; or none, for it is but a place on something else.
  enum class Form { box, rod, board, place } form = Form::box;

  // What of the floor it takes up: what is stated, round with a diameter and else a box; a disc
  // always; or its length by its diameter, for it lies on its side.
  enum class Footprint { stated, disc, lying } footprint = Footprint::stated;

  // How high it is where that is not stated: not known, as much as it measures across, or its
  // depth.
  enum class Height { unknown, diameter, depth } height = Height::unknown;

  // Where an animal goes in: that stays free of plants.
  enum class Mouth { none, front, ends } mouth = Mouth::none;

  bool stands = false;  // unless it is fixed; others are always fixed

  bool offers_mounts = false;  // plants grow along it
  bool offers_pocket = false;  // plants grow in its pocket
  bool holds_terrace = false;  // holds the edge of a terrace
  bool holds_water = false;    // animals drink and bathe in it, and may drown
  bool shelters = false;       // animals hide in it
  bool lain_on = false;        // animals lie on it
  bool basked_on = false;      // the place where they bask
  bool climbed = false;        // what climbs gets everywhere along it
  bool leads_out = false;      // out of the water that it stands in or hangs over
  bool laid_in = false;        // animals lay their eggs in it
  bool loose_weight = false;   // falls when what it stands on is dug away

  bool spans() const { return form == Form::rod; }
  bool is_a_thing() const { return form != Form::place; }
  bool on_ground() const { return form == Form::box || form == Form::place; }

  static std::span<const FurnishingKind> all();
};

}  // namespace loamsheet

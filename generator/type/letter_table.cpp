#include "type/letter_table.h"

#include <bit>
#include <initializer_list>
#include <utility>
#include <vector>

namespace loamsheet {
namespace {

constexpr char32_t widest_gap = 256;  // between two letters of a segment

struct Segment {
  char32_t first, last;
  int count() const { return static_cast<int>(last - first + 1); }
};

std::vector<Segment> segments_of(const std::set<char32_t>& letters) {
  std::vector<Segment> all;
  for (char32_t c : letters) {
    if (c >= 0xFFFF) break;
    if (all.empty() || c > all.back().last + widest_gap) all.push_back({c, c});
    all.back().last = c;
  }
  return all;
}

// Two bytes each, the high one first.
class Words {
 public:
  void add(std::initializer_list<unsigned> words) {
    for (unsigned w : words) add(w);
  }
  void add(unsigned word) {
    bytes_ += static_cast<char>(word >> 8 & 0xFF);
    bytes_ += static_cast<char>(word & 0xFF);
  }
  std::string take() { return std::move(bytes_); }

 private:
  std::string bytes_;
};

unsigned glyph_of(hb_font_t* font, char32_t c) {
  hb_codepoint_t glyph = 0;
  hb_font_get_nominal_glyph(font, c, &glyph);
  return glyph;
}

// Where each segment's glyphs stand, counted from its own entry.
void add_offsets(Words& out, const std::vector<Segment>& segments) {
  unsigned before = 0, entries = static_cast<unsigned>(segments.size()) + 1;
  for (const Segment& s : segments) {
    out.add(2 * (entries-- + before));
    before += static_cast<unsigned>(s.count());
  }
  out.add(0);
}

std::string subtable(hb_font_t* font, const std::vector<Segment>& segments) {
  const unsigned count = static_cast<unsigned>(segments.size()) + 1;  // and the one that ends all
  const unsigned selector = static_cast<unsigned>(std::bit_width(count)) - 1;
  const unsigned range = 2u << selector;
  unsigned glyphs = 0;
  for (const Segment& s : segments) glyphs += static_cast<unsigned>(s.count());
  Words out;
  out.add({4, 16 + 8 * count + 2 * glyphs, 0, 2 * count, range, selector, 2 * count - range});
  for (const Segment& s : segments) out.add(s.last);
  out.add({0xFFFF, 0});
  for (const Segment& s : segments) out.add(s.first);
  out.add(0xFFFF);
  for (size_t i = 0; i < segments.size(); ++i) out.add(0);
  out.add(1);
  add_offsets(out, segments);
  for (const Segment& s : segments) {
    for (char32_t c = s.first; c <= s.last; ++c) out.add(glyph_of(font, c));
  }
  return out.take();
}

}  // namespace

std::string letter_table(hb_font_t* font, const std::set<char32_t>& letters) {
  Words head;
  head.add({0, 1, 3, 1, 0, 12});  // one table, of Windows' Unicode, right after this
  return head.take() + subtable(font, segments_of(letters));
}

}  // namespace loamsheet

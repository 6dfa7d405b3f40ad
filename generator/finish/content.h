// content: marked content in a page's content stream. Knows the syntax of content streams
// (ISO 32000-1, 7.8.2) as far as libharu writes it: no inline images.
#pragma once
#include <string>
#include <string_view>
#include <vector>

namespace loamsheet {

// What a text object shows: a piece of the structure tree, or an artifact when id is -1.
struct TextPiece {
  int id = -1;
  std::string role;
  bool blank_after = false;  // the words go on elsewhere after a blank
};

// The stream with its n-th BT ... ET inside marked content of the n-th piece, and everything else
// that paints inside artifacts. Neighbours of the same piece share one marked content. A text
// that goes on after a blank gets one at its end, since readers of the structure put none between
// lines (ISO 32000-1, 14.8.2.5); its font has the two-byte codes of libharu. Throws Mismatch when
// the stream has not exactly as many text objects as there are pieces.
std::string with_marks(std::string_view stream, const std::vector<TextPiece>&);

}  // namespace loamsheet

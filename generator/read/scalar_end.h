// scalar_end: where values end in YAML text, which the library does not tell.
#pragma once
#include <string>
#include <string_view>

namespace loamsheet {

struct ScalarExtent {
  size_t end = 0;
  bool quoted = false;
};

// The end of the scalar that starts at `begin` and was read as `value`.
ScalarExtent scalar_extent(std::string_view text, size_t begin, std::string_view value);

// The byte after the brace that closes what ends, or has its last entry end, at `from`.
size_t brace_end(std::string_view text, size_t from);

// The first byte from `at` on that is blank, a line end, a comma or a closing brace.
size_t word_end(std::string_view text, size_t at);

// YAML takes a lone '?' for the start of a key. Where one stands as a value it is replaced by a
// control character, which the text may not hold otherwise; bytes keep their places.
inline constexpr char unknown_mark = '\x01';
std::string mark_unknowns(std::string_view text);

// A user's word for use in a message: at most 40 code points, no control characters.
std::string shortened(std::string_view word);

}  // namespace loamsheet

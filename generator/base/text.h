// text: numbers and UTF-8 as text, the same on every machine and in every locale.
#pragma once
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace loamsheet {

// A number with so many decimals; "-0" never appears.
std::string fixed(double v, int decimals);

// A number with at most so many significant digits and no trailing zeros; never an exponent
// between 1e-6 and 1e15.
std::string significant(double v, int digits);

// The nearest double that has at most `digits` significant decimal digits.
double rounded(double v, int digits);

// Code points of UTF-8 text (invalid bytes count as one each).
int code_points(std::string_view utf8);

// `count` code points from code point `first` (from 0).
std::string slice(std::string_view utf8, int first, int count);

// The text with control characters shown as blanks, so that a caret lines up under it.
std::string visible(std::string_view utf8);

// The byte where the text stops being UTF-8, if it does.
std::optional<size_t> invalid_utf8(std::string_view bytes);

// One code point as UTF-8, and the code points of a text.
std::string utf8(char32_t code_point);
std::u32string decoded(std::string_view utf8);

// Levenshtein distance with neighbouring transpositions counted as one edit.
int edit_distance(std::string_view a, std::string_view b);

// The nearest known name, if it is near enough to be meant. The limit grows with the word.
std::optional<std::string> closest(std::string_view typed, std::span<const std::string> known);

std::vector<std::string> split(std::string_view text, char at);
std::string join(std::span<const std::string> parts, std::string_view between);
std::string trimmed(std::string_view text);

}  // namespace loamsheet

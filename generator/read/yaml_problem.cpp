#include "read/yaml_problem.h"

#include <yaml-cpp/exceptions.h>

#include <algorithm>
#include <array>

#include "read/complaints.h"

namespace loamsheet {
namespace {

struct Wording {
  std::string_view library, message, hint;
};

constexpr std::string_view colon_hint =
    "every line is 'key: value' with a blank after the colon, indented like its neighbours";

constexpr Wording fallback{"", "the text cannot be read as YAML from here on", colon_hint};

const Wording& wording_of(std::string_view library_words) {
  static const std::array wordings{
      Wording{YAML::ErrorMsg::END_OF_MAP, "this line does not fit among the keys around it",
              colon_hint},
      Wording{YAML::ErrorMsg::END_OF_SEQ, "this line does not fit in the list above it",
              "every item starts with '- ' below the first one"},
      Wording{YAML::ErrorMsg::MAP_VALUE, "a second ': ' stands in this line",
              "put a value that holds ': ' in quotes, or start a new line"},
      Wording{YAML::ErrorMsg::MAP_KEY, "a key may not start here", colon_hint},
      Wording{YAML::ErrorMsg::BLOCK_ENTRY, "a list item ('- ') may not start here",
              "put the list on lines of its own below its key"},
      Wording{YAML::ErrorMsg::FLOW_END, "this closing brace was never opened",
              "delete it, or open it with '[' or '{'"},
      Wording{YAML::ErrorMsg::DOC_IN_SCALAR, "a document mark stands inside a quoted text",
              "close the quote before it"},
      Wording{YAML::ErrorMsg::UNKNOWN_TOKEN, "a value may not start with this character",
              "put the value in quotes"},
      Wording{YAML::ErrorMsg::CHAR_IN_SCALAR, "this character may not stand here",
              "put the value in quotes"},
      Wording{YAML::ErrorMsg::INVALID_HEX, "this is not a hexadecimal escape",
              "in double quotes a backslash starts an escape; write two for a plain one"},
      Wording{YAML::ErrorMsg::INVALID_ESCAPE, "this escape is not known",
              "in double quotes a backslash starts an escape; write two for a plain one"},
      Wording{YAML::ErrorMsg::INVALID_UNICODE, "this escape is not a character",
              "write the character itself"},
  };
  for (const auto& w : wordings) {
    if (library_words.starts_with(w.library)) return w;
  }
  return fallback;
}

Diagnostic problem(Span where, std::string_view message, std::string_view hint) {
  return complaint(std::move(where), std::string(message), "", std::string(hint));
}

// Indentation with a tab is the commonest cause and the library names it only at times.
std::optional<Diagnostic> tab_problem(const SourceText& source, size_t at) {
  const std::string_view line = source.line_at(at);
  const size_t text = line.find_first_not_of(" \t");
  const size_t tab = line.substr(0, text).find('\t');
  if (tab == std::string_view::npos) return std::nullopt;
  const size_t begin = source.line_start(at) + tab;
  Diagnostic d = problem(source.span(begin, begin + 1), "a tab is used to indent this line",
                         "indent with blanks");
  d.edit = Edit{d.where, "  "};
  return d;
}

bool token_may_start_after(std::string_view text, size_t at) {
  return at == 0 || std::string_view(" \t\n[{,").find(text[at - 1]) != std::string_view::npos;
}

// The byte after the closing quote; past the end when there is none.
size_t after_quote(std::string_view text, size_t at) {
  const char quote = text[at++];
  while (at < text.size() && text[at] != quote) at += text[at] == '\\' && quote == '"' ? 2 : 1;
  return at + 1;
}

// The quote that was opened and never closed.
std::optional<size_t> open_quote(std::string_view text) {
  for (size_t at = 0; at < text.size();) {
    const bool starts = token_may_start_after(text, at);
    if (text[at] == '#' && starts) {
      at = std::min(text.find('\n', at), text.size());
    } else if ((text[at] == '"' || text[at] == '\'') && starts) {
      const size_t after = after_quote(text, at);
      if (after > text.size()) return at;
      at = after;
    } else {
      ++at;
    }
  }
  return std::nullopt;
}

bool is_word(std::string_view text) {
  return !text.empty() && std::all_of(text.begin(), text.end(), [](char c) {
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || c == '_' || c == '-';
  });
}

// "humidity:40 %" is taken for text that goes on in the next line, where the library stops.
std::optional<Diagnostic> blank_problem(const SourceText& source, size_t at) {
  for (size_t start :
       {source.line_start(at), source.line_start(std::max<size_t>(source.line_start(at), 1) - 1)}) {
    const std::string_view line = source.line_at(start);
    const size_t text = std::min(line.find_first_not_of(' '), line.size());
    const size_t colon = line.find(':', text);
    if (colon == std::string_view::npos || !is_word(line.substr(text, colon - text))) continue;
    if (colon + 1 >= line.size() || line[colon + 1] == ' ') continue;
    Diagnostic d = problem(source.span(start + colon, start + colon + 1),
                           "a blank is missing after this colon", "write ': '");
    d.edit = Edit{d.where, ": "};
    return d;
  }
  return std::nullopt;
}

// A brace that is not closed, or closed by the wrong one.
std::optional<Diagnostic> brace_problem(const SourceText& source, const SyntaxTrouble& trouble,
                                        size_t at) {
  if (!trouble.open) return std::nullopt;
  const std::string_view words = trouble.library_words, text = source.text();
  const std::string open(1, text[*trouble.open]);
  if (words.starts_with(YAML::ErrorMsg::FLOW_END) && at < text.size()) {
    return problem(source.span(at, at + 1),
                   "'" + std::string(1, text[at]) + "' cannot close the '" + open + "' before it",
                   open == "{" ? "close it with '}'" : "close it with ']'");
  }
  const bool unclosed = words.starts_with(YAML::ErrorMsg::END_OF_MAP_FLOW) ||
                        words.starts_with(YAML::ErrorMsg::END_OF_SEQ_FLOW);
  if (!unclosed) return std::nullopt;
  return problem(source.span(*trouble.open, *trouble.open + 1),
                 "this '" + open + "' is not closed where it should be",
                 open == "{" ? "entries are parted by commas and end with '}'"
                             : "items are parted by commas and end with ']'");
}

}  // namespace

Diagnostic syntax_problem(const SourceText& source, const SyntaxTrouble& trouble) {
  const std::string_view words = trouble.library_words;
  const size_t at = std::min(trouble.at, source.text().size());
  if (auto tab = tab_problem(source, at)) return *tab;
  const bool to_the_end = words.starts_with("illegal EOF") || words.starts_with("end of");
  const auto quote = to_the_end ? open_quote(source.text()) : std::nullopt;
  if (quote) {
    return problem(source.span(*quote, *quote + 1), "this quote is never closed",
                   "close it at the end of the value");
  }
  if (auto brace = brace_problem(source, trouble, at)) return *brace;
  if (auto blank = blank_problem(source, at)) return *blank;
  const Wording& w = wording_of(words);
  return problem(source.span(at, at + 1), w.message, w.hint);
}

}  // namespace loamsheet

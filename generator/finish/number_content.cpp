#include <cmath>
#include <map>
#include <optional>

#include "base/text.h"
#include "finish/steps.h"

namespace loamsheet {
namespace {

// The tag of a text or figure; nothing for rules and boxes.
std::optional<int> tag_of(const PageMark& mark) {
  if (const auto* text = std::get_if<TextMark>(&mark)) return text->tag;
  if (const auto* figure = std::get_if<FigureMark>(&mark)) return figure->tag;
  return std::nullopt;
}

PageContent number_page(const Page& page, int tags) {
  PageContent content;
  int open_tag = -1;  // of the text just before, which the next may go on with
  for (const auto& mark : page.marks) {
    const int tag = tag_of(mark).value_or(-1);
    if (tag >= tags) throw Mismatch("a mark has a tag that the structure tree lacks");
    const bool text = std::holds_alternative<TextMark>(mark);
    if (tag >= 0 && !(text && tag == open_tag)) content.tag_of_id.push_back(tag);
    content.id_of_mark.push_back(tag < 0 ? -1 : static_cast<int>(content.tag_of_id.size()) - 1);
    open_tag = text ? tag : -1;
  }
  content.blank_after.resize(page.marks.size());
  return content;
}

// Whether a text ends at a joint within a word ("self-"), where a line may break without a blank.
bool ends_at_joint(const std::string& text) {
  const std::u32string letters = decoded(text);
  if (letters.size() < 2 || letters[letters.size() - 2] == U' ') return false;
  return std::u32string_view(U"-/\u2010\u2013").find(letters.back()) != std::u32string_view::npos;
}

// Whether a reader sees a blank between two texts that follow each other: on one line when there
// is a gap, otherwise unless a word was broken.
bool blank_between(const TextMark& a, const TextMark& b, bool one_page) {
  if (a.text.ends_with(' ') || b.text.starts_with(' ')) return false;
  const bool one_line = one_page && std::abs(a.at.y - b.at.y) < a.size / 2;
  if (one_line) return b.at.x - (a.at.x + a.width) > a.size / 10;
  return !ends_at_joint(a.text);
}

// The last text of each tag, while the blanks after them are found.
struct Last {
  size_t page, mark;
  const TextMark* text;
};

void find_blanks(const Pages& pages, Content& content) {
  std::map<int, Last> last_of_tag;
  for (size_t page = 0; page < pages.pages.size(); ++page) {
    const auto& marks = pages.pages[page].marks;
    for (size_t i = 0; i < marks.size(); ++i) {
      const auto* text = std::get_if<TextMark>(&marks[i]);
      if (!text || text->tag < 0) continue;
      const auto [at, is_first] = last_of_tag.try_emplace(text->tag, Last{page, i, text});
      const Last& last = at->second;
      if (!is_first) {
        content[last.page].blank_after[last.mark] =
            blank_between(*last.text, *text, last.page == page);
      }
      at->second = {page, i, text};
    }
  }
}

}  // namespace

Content number_content(const Pages& pages) {
  Content content;
  for (const auto& page : pages.pages) {
    content.push_back(number_page(page, static_cast<int>(pages.tags.size())));
  }
  find_blanks(pages, content);
  return content;
}

}  // namespace loamsheet

#include <optional>

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
  return content;
}

}  // namespace

Content number_content(const Pages& pages) {
  Content content;
  for (const auto& page : pages.pages) {
    content.push_back(number_page(page, static_cast<int>(pages.tags.size())));
  }
  return content;
}

}  // namespace loamsheet

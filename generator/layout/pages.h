// pages: blocks at fixed places on paper. Points (1/72 in), y up from the page's lower edge,
// rounded to 0.01. Paint order is list order; reading order is the order of the tags.
#pragma once
#include <string>
#include <variant>
#include <vector>

#include "base/geometry.h"
#include "type/type.h"

namespace loamsheet {

// tag: position in Pages::tags; -1: an artifact (rules, running heads, page numbers).
struct TextMark {
  std::string text;
  Point at;                    // left end of the base line
  double size = 9, width = 0;  // width as measured, without a blank at a line's end
  Face face = Face::regular;
  double grey = 0;
  int tag = -1;
};

struct RuleMark {
  Point from, to;
  double width = 0.5, grey = 0;
  std::vector<double> dashes;
};

struct BoxMark {
  Box box;
  double fill = -1;    // grey; -1: not filled
  double stroke = -1;  // grey; -1: no edge
  double stroke_width = 0.5;
};

struct FigureMark {
  std::string id;
  Box box;  // where the figure lies; its own size, never stretched
  int tag = -1;
};

using PageMark = std::variant<BoxMark, RuleMark, FigureMark, TextMark>;

struct Page {
  double width = 0, height = 0;
  std::vector<PageMark> marks;
  Box body{};  // where all but running heads and feet lies
};

// The structure tree: element 0 is the Document. Roles are standard structure types of PDF 1.7
// (H1, P, L, LI, Lbl, LBody, Table, TR, TH, TD, Figure, Caption, Sect, Note).
struct Tag {
  std::string role;
  int parent = -1;
  std::string alt;    // of figures
  std::string scope;  // of TH: Column or Row
  int columns = 1;    // that a TH or TD spans
};

struct Bookmark {
  std::string title;
  int level = 1, page = 0;  // page from 0
  double top = 0;           // y of what it points at
};

struct Pages {
  std::string title, author, subject, language;
  std::vector<Page> pages;
  std::vector<Tag> tags;  // in reading order: a parent before its children
  std::vector<Bookmark> bookmarks;
};

}  // namespace loamsheet
